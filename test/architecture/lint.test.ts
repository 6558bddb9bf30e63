import { ESLint } from 'eslint';
import { beforeAll, describe, expect, it } from 'vitest';

/** Each rule of the linter that guards the house, with a text that breaks it and the file it pretends to be. */
const FAULTS: [rule: string, file: string, text: string][] = [
  ['@typescript-eslint/no-floating-promises', 'shared/kernel/truth.ts', 'Promise.resolve(1);'],
  [
    '@typescript-eslint/no-misused-promises',
    'shared/kernel/truth.ts',
    'export const a = [1].filter(async () => Promise.resolve(true));',
  ],
  [
    '@typescript-eslint/switch-exhaustiveness-check',
    'shared/kernel/truth.ts',
    "export function f(a: 'x' | 'y'): void { switch (a) { case 'x': break; } }",
  ],
  ['@typescript-eslint/no-explicit-any', 'shared/kernel/truth.ts', 'export const a: any = 1;'],
  [
    '@typescript-eslint/consistent-type-imports',
    'shared/law/rule-pack.ts',
    "import { Ternary } from '../kernel/truth.js';\nexport type A = Ternary;",
  ],
  ['eqeqeq', 'shared/kernel/truth.ts', 'export const f = (a: string): boolean => a == null;'],
  ['max-lines', 'shared/kernel/truth.ts', 'export {};\n'.repeat(301)],
  ['no-restricted-properties', 'shared/kernel/truth.ts', 'export const a = Date.now();'],
  ['no-restricted-properties', 'shared/kernel/truth.ts', 'export const a = Math.random();'],
  ['no-restricted-syntax', 'shared/kernel/truth.ts', 'export const a = new Date();'],
  ['no-restricted-globals', 'shared/kernel/truth.ts', 'console.log(1);'],
  ['no-restricted-globals', 'shared/kernel/truth.ts', "void fetch('/');"],
  ['no-restricted-globals', 'shared/kernel/truth.ts', 'export const a = process.argv;'],
  [
    'no-restricted-imports',
    'vitest.config.ts',
    "import { forwardRef } from '@nestjs/common';\nforwardRef(() => 1);",
  ],
];

describe('the linter, each guard with a fault planted', () => {
  let eslint: ESLint;
  beforeAll(() => {
    eslint = new ESLint();
  });

  it.each(FAULTS)('%s fails in %s (%#)', async (rule, filePath, text) => {
    const [result] = await eslint.lintText(text, { filePath });
    expect(result?.messages.map(({ ruleId }) => ruleId)).toContain(rule);
  });

  it('lets no comment switch a rule off', async () => {
    const text = '// eslint-disable-next-line eqeqeq\nexport const f = (a: string): boolean => a == null;';
    const [result] = await eslint.lintText(text, { filePath: 'shared/kernel/truth.ts' });
    expect(result?.messages.map(({ ruleId }) => ruleId)).toContain('eqeqeq');
  });
});
