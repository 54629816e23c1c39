/** Builds the page and its workers to dist/renderer; paths are relative so that any host may serve them. */

import { defineConfig } from 'vite';

export default defineConfig({
  root: import.meta.dirname,
  base: './',
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
