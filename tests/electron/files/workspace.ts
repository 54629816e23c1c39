/** Temporary workspaces and small files for the store's tests. */

import { createHash } from 'node:crypto';
import { mkdtemp, readFile, realpath, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach } from 'vitest';
import { type FileStore, type FileStoreParts, openFileStore } from '../../../electron/files/store.ts';
import { failureOf, valueOf } from './answers.ts';

export { failureOf, valueOf };

const folders: string[] = [];

afterEach(async () => {
  for (const folder of folders.splice(0)) await rm(folder, { recursive: true, force: true });
});

/** A fresh folder, removed after the test. */
export async function temporaryFolder(): Promise<string> {
  const folder = await realpath(await mkdtemp(join(tmpdir(), 'holewright-test-')));
  folders.push(folder);
  return folder;
}

export async function storeIn(workspace: string, parts: Partial<FileStoreParts> = {}): Promise<FileStore> {
  return valueOf(await openFileStore({ workspace, demoFolder: null, ...parts }));
}

/** A course file with `count` invented points, so that size and content can be told apart. */
export function courseText(count: number): string {
  const features = Array.from({ length: count }, (_, index) => ({
    type: 'Feature',
    properties: { natural: 'tree' },
    geometry: { type: 'Point', coordinates: [index / 1000, 45] },
  }));
  return JSON.stringify({ type: 'FeatureCollection', features });
}

export function sha256(text: string | Uint8Array): string {
  return createHash('sha256').update(text).digest('hex');
}

export async function sha256OfFile(path: string): Promise<string> {
  return sha256(await readFile(path));
}
