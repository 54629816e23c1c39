import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/browser/**', 'tests/bench/**', 'node_modules/**'],
    // By default one processor would be left idle.
    maxWorkers: '100%',
    testTimeout: 60_000,
  },
});
