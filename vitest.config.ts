import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/browser/**', 'tests/bench/**', 'node_modules/**'],
    testTimeout: 60_000,
  },
});
