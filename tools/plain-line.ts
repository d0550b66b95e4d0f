/** Closes a test run on one plain line that any reader of logs understands. */
import type { Reporter, TestModule } from 'vitest/node';

interface Counts {
  passed: number;
  failed: number;
}

export default class PlainLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const steps = JSON.parse(process.env.FIRSTFIRE_STEPS || '{"passed":0,"failed":0}') as Counts;
    const counts = { passed: steps.passed, failed: steps.failed + unhandled.length };
    for (const module of modules) {
      if (module.state() === 'failed' && module.errors().length > 0) counts.failed += 1;
      for (const test of module.children.allTests()) {
        if (test.result().state === 'passed') counts.passed += 1;
        if (test.result().state === 'failed') counts.failed += 1;
      }
    }
    // After the runner's own summary, so that it is the last line.
    process.on('exit', () => process.stdout.write(`${counts.passed} passed, ${counts.failed} failed\n`));
  }
}
