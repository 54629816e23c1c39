/** Builds the page and its workers to dist/renderer; paths are relative so that any host may serve them. */

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { defineConfig } from 'vite';

/** What a plan's numbers come from. The lock file stands for all packages, the compiler among them. */
const ENGINE = ['core', 'renderer/workers', 'renderer/kept-plans', 'renderer/state', 'package-lock.json'];

/** Names these sources by their contents (SHA-256, hex), so that a plan of another engine is never shown. */
export function engineSources(root: string): string {
  const hash = createHash('sha256');
  for (const source of ENGINE) {
    for (const path of filesBelow(root, source)) {
      const content = createHash('sha256')
        .update(readFileSync(join(root, path)))
        .digest();
      hash.update(`${path}\0`).update(content);
    }
  }
  return hash.digest('hex');
}

/** With `/`, in one order everywhere. */
function filesBelow(root: string, path: string): readonly string[] {
  if (path.endsWith('.json')) return [path];
  return readdirSync(join(root, path), { withFileTypes: true })
    .flatMap((entry) =>
      entry.isDirectory() ? filesBelow(root, `${path}/${entry.name}`) : [`${path}/${entry.name}`],
    )
    .sort();
}

export default defineConfig({
  root: import.meta.dirname,
  base: './',
  define: { ENGINE_SOURCES: JSON.stringify(engineSources(join(import.meta.dirname, '..'))) },
  build: {
    outDir: '../dist/renderer',
    emptyOutDir: true,
    target: 'es2023',
    // The content policy forbids inline scripts and data addresses: everything is a file of its own.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    reportCompressedSize: false,
  },
  worker: { format: 'es' },
});
