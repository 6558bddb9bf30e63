import { describe, expect, it } from 'vitest';
import { closingLine } from './closing-line-reporter.js';

type Module = Parameters<typeof closingLine>[0][number];
type State = 'passed' | 'failed' | 'skipped' | 'pending';

const run = (states: State[], moduleErrors = 0, suiteErrors = 0): Module =>
  ({
    errors: () => Array.from({ length: moduleErrors }, () => ({ message: 'broken' })),
    children: {
      allTests: () => states.map((state) => ({ result: () => ({ state }) })),
      allSuites: () => [{ errors: () => Array.from({ length: suiteErrors }, () => ({ message: 'broken' })) }],
    },
  }) as unknown as Module;

describe('the closing line', () => {
  it.each([
    ['counts tests over files', [run(['passed', 'failed']), run(['passed'])], 0, '2 passed, 1 failed'],
    ['adds what was skipped', [run(['passed', 'skipped', 'pending'])], 0, '1 passed, 0 failed, 2 skipped'],
    ['counts a file that could not be loaded', [run([], 1)], 0, '0 passed, 1 failed'],
    ['counts a set-up that broke', [run(['skipped'], 0, 1)], 0, '0 passed, 1 failed, 1 skipped'],
    ['counts an error outside any test', [run(['passed'])], 1, '1 passed, 1 failed'],
    ['is honest of an empty run', [], 0, '0 passed, 0 failed'],
  ])('%s', (_name, modules, errorsOutside, line) => {
    expect(closingLine(modules, errorsOutside)).toBe(line);
  });
});
