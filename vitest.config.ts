import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    globalSetup: ['./test/support/database-templates.ts'],
    reporters: ['default', './test/support/closing-line-reporter.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
