/** How programs for plain Node are built: all files side by side in one folder, so that threads find theirs by name. */

import { builtinModules } from 'node:module';
import { join } from 'node:path';
import type { UserConfig } from 'vite';

/** These read files of their own that lie beside their code. */
const UNBUNDLED = ['pdfkit', /^@sqlite\.org\//u];

const THREADS = ['plan-worker', 'plan-many-worker', 'round-worker'].map((name) =>
  join(import.meta.dirname, `${name}.ts`),
);

/** Builds the program whose source is `entry`, with the threads of the commands, to the folder `outDir`. */
export function nodeBuild(entry: string, outDir: string): UserConfig {
  return {
    root: import.meta.dirname,
    publicDir: false,
    logLevel: 'warn',
    ssr: { noExternal: true },
    build: {
      outDir,
      emptyOutDir: true,
      target: 'node20',
      minify: false,
      sourcemap: true,
      ssr: true,
      rolldownOptions: {
        input: [entry, ...THREADS],
        external: [...UNBUNDLED, ...builtinModules, /^node:/u],
        output: { format: 'es', entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' },
      },
    },
  };
}
