/**
 * The built page's files by address path. Read once into a table: an address is looked up in it and never
 * becomes a path, so no spelling of dots, slashes or encodings leads anywhere else.
 */

import { readdir, readFile } from 'node:fs/promises';
import { extname, join } from 'node:path';

export interface Asset {
  readonly body: Uint8Array;
  readonly type: string;
}

/** By path below the page's folder, `/`-separated, without a leading slash. */
export type Assets = ReadonlyMap<string, Asset>;

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.geojson': 'application/geo+json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.md': 'text/markdown; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
};

/** Reads all plain files below `folder`; kinds of file that the page does not use are left out. */
export async function readAssets(folder: string): Promise<Assets> {
  const assets = new Map<string, Asset>();
  // Folder by folder, since inside a packed archive not every way of reading them all at once is to be had.
  const readFolder = async (path: string, address: string): Promise<void> => {
    for (const entry of await readdir(path, { withFileTypes: true })) {
      const type = types[extname(entry.name).toLowerCase()];
      const inside = join(path, entry.name);
      if (entry.isDirectory()) await readFolder(inside, `${address}${entry.name}/`);
      else if (entry.isFile() && type !== undefined)
        assets.set(address + entry.name, { body: await readFile(inside), type });
    }
  };
  await readFolder(folder, '');
  return assets;
}

/** The asset of an address path below the page's folder (`''` is the page itself), null where there is none. */
export function assetAt(assets: Assets, path: string): Asset | null {
  return assets.get(path === '' ? 'index.html' : path) ?? null;
}
