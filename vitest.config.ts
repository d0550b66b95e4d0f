import { availableParallelism } from 'node:os';
import { configDefaults, defineConfig } from 'vitest/config';

/** Tests that start the command line, or a browser, again and again: part of the full run alone. */
const STARTING = ['apps/cli/test/program/**', 'apps/field/test/browser/**', 'examples/bad-input.test.ts'];

export default defineConfig({
  test: {
    include: [
      'packages/*/src/**/*.test.ts',
      'apps/*/{src,test}/**/*.test.ts',
      'validation/**/*.test.ts',
      'checks/**/*.test.ts',
      'examples/**/*.test.ts',
      'tools/**/*.test.ts',
    ],
    exclude: [...configDefaults.exclude, ...(process.env['FIRSTFIRE_FAST'] ? STARTING : [])],
    reporters: ['default', './tools/plain-line.ts'],
    setupFiles: ['./tools/property-seed.ts'],
    testTimeout: 60_000,
    // One worker a core, which keeps what it has read from file to file: half of the time was reading it again.
    isolate: false,
    maxWorkers: availableParallelism(),
  },
});
