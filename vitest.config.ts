import { defineConfig } from 'vitest/config';

const never = ['tests/browser/**', 'tests/bench/**', 'node_modules/**'];

export default defineConfig({
  test: {
    // By default one processor would be left idle.
    maxWorkers: '100%',
    testTimeout: 120_000,
    globalSetup: ['tests/build-commands.ts'],
    setupFiles: ['tests/property-seed.ts'],
    projects: [
      {
        extends: true,
        test: {
          // Files that stand in for no module share what they load: loading took as long as a third of the tests.
          name: 'shared',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: [...never, 'tests/electron/**'],
          isolate: false,
        },
      },
      {
        extends: true,
        test: { name: 'apart', include: ['tests/electron/**/*.test.ts'], exclude: never },
      },
    ],
  },
});
