/**
 * Builds the main process and the preload to dist/electron. Two builds, since a sandboxed preload must be one
 * CommonJS file that shares nothing with the main process.
 */

import { builtinModules } from 'node:module';
import { join } from 'node:path';
import { defineConfig, type EnvironmentOptions } from 'vite';

const external = ['electron', ...builtinModules, /^node:/u];

function commonJs(name: 'main' | 'preload'): EnvironmentOptions {
  return {
    consumer: 'server',
    resolve: { noExternal: true, conditions: ['node', 'import', 'module', 'default'] },
    build: {
      outDir: join(import.meta.dirname, '..', 'dist', 'electron'),
      emptyOutDir: false,
      target: 'node22',
      minify: false,
      ssr: true,
      rolldownOptions: {
        input: join(import.meta.dirname, name, `${name}.ts`),
        external,
        output: { format: 'cjs', entryFileNames: `${name}.cjs`, codeSplitting: false },
      },
    },
  };
}

export default defineConfig({
  root: import.meta.dirname,
  publicDir: false,
  logLevel: 'warn',
  environments: { main: commonJs('main'), preload: commonJs('preload') },
  builder: {
    buildApp: async (builder) => {
      await builder.build(builder.environments.main!);
      await builder.build(builder.environments.preload!);
    },
  },
});
