import tseslint from 'typescript-eslint';

const NO_CLOCK =
  'shared/ has no clock: take the instant as an argument, so that the same facts give the same answer.';
const NO_OUTSIDE = 'shared/ is pure and runs anywhere: take what you need as an argument.';

export default tseslint.config(
  { ignores: ['dist/', 'coverage/', 'screenshots/', 'var/'] },
  tseslint.configs.base,
  {
    files: ['**/*.ts', '**/*.tsx', '**/*.js', '**/*.mjs'],
    linterOptions: { reportUnusedDisableDirectives: 'error', noInlineConfig: true },
    rules: {
      eqeqeq: 'error',
      'no-var': 'error',
      'prefer-const': 'error',
      'max-lines': ['error', 300],
    },
  },
  {
    files: ['**/*.ts', '**/*.tsx'],
    extends: [tseslint.configs.recommendedTypeChecked],
    languageOptions: { parserOptions: { projectService: true } },
    rules: {
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      'no-restricted-imports': [
        'error',
        {
          paths: [
            {
              name: '@nestjs/common',
              importNames: ['forwardRef'],
              message: 'Two modules that need each other are one: move the common part down.',
            },
          ],
        },
      ],
    },
  },
  {
    files: ['shared/**/*.ts'],
    rules: {
      'no-restricted-globals': [
        'error',
        ...['process', 'fetch', 'console', 'performance', 'crypto', 'setTimeout', 'setInterval'].map(
          (name) => ({
            name,
            message: NO_OUTSIDE,
          }),
        ),
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Date', property: 'now', message: NO_CLOCK },
        { object: 'Temporal', property: 'Now', message: NO_CLOCK },
        {
          object: 'Math',
          property: 'random',
          message: 'shared/ has no chance: take the value as an argument.',
        },
      ],
      'no-restricted-syntax': [
        'error',
        { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: NO_CLOCK },
        { selector: "CallExpression[callee.name='Date']", message: NO_CLOCK },
      ],
    },
  },
);
