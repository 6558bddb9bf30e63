import type { SerializedError } from 'vitest';
import type { Reporter, TestModule } from 'vitest/node';

/**
 * Ends a run with one plain line, `12 passed, 0 failed`, that counts tests. A file that could not be loaded
 * and an error outside any test count as failures, so that the line never says 0 failed of a broken run.
 */
export default class ClosingLineReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly SerializedError[]): void {
    console.log(`\n${closingLine(modules, errors.length)}`);
  }
}

/** The closing line for the modules of a run and the number of errors outside them. */
export function closingLine(
  modules: readonly Pick<TestModule, 'children' | 'errors'>[],
  errorsOutside: number,
): string {
  const count = { passed: 0, failed: errorsOutside, skipped: 0, pending: 0 };
  for (const module of modules) {
    count.failed += module.errors().length;
    for (const test of module.children.allTests()) count[test.result().state] += 1;
    for (const suite of module.children.allSuites()) count.failed += suite.errors().length;
  }
  const skipped = count.skipped + count.pending;
  return `${count.passed} passed, ${count.failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}
