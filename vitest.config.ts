import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    globalSetup: ['./test/support/database-templates.ts'],
    reporters: ['default', './test/support/closing-line-reporter.ts'],
    // Two files at a time, and modules are loaded once for all of them: loading was more than half of the work.
    // A file leaves nothing behind in what others share, such as a logger that is silent.
    maxWorkers: 2,
    isolate: false,
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
