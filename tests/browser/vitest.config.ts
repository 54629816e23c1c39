import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: ['tests/browser/**/*.test.ts'],
    globalSetup: ['tests/browser/build-window.ts'],
    // One browser at a time: two would only share the same processor.
    fileParallelism: false,
    // The files stand in for no module and share what they load.
    isolate: false,
    testTimeout: 240_000,
    hookTimeout: 240_000,
  },
});
