import type { Reporter, TestModule } from 'vitest/node';

/** Ends a run with the plain line `N passed, N failed`, so that a log reader can tell a run that tested nothing. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandledErrors: readonly unknown[]): void {
    let passed = 0;
    let failed = unhandledErrors.length;
    let skipped = 0;
    for (const module of modules) {
      if (
        module.state() === 'failed' &&
        [...module.children.allTests()].every((test) => test.result().state !== 'failed')
      )
        failed += 1;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === 'passed') passed += 1;
        else if (state === 'failed') failed += 1;
        else skipped += 1;
      }
    }
    // After the default reporter's own summary, which prints in the same turn.
    process.once('exit', () =>
      console.log(`${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`),
    );
  }
}
