import { defineConfig } from 'vitest/config';

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
    reporters: ['default', './tools/plain-line.ts'],
    setupFiles: ['./tools/property-seed.ts'],
    testTimeout: 60_000,
  },
});
