import { mkdir, readdir, rm, rmdir, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { buildWhereStale, isStale } from '../../../electron/launcher/build.ts';
import { temporaryFolder } from '../files/workspace.ts';

/** A root whose sources were changed at second 1000 and whose page was built at second 2000. */
async function builtRoot(): Promise<string> {
  const root = await temporaryFolder();
  for (const folder of ['renderer/map', 'core', 'dist/renderer'])
    await mkdir(join(root, folder), { recursive: true });
  for (const file of ['renderer/map/a.ts', 'core/b.ts']) await writeFile(join(root, file), '');
  await writeFile(join(root, 'dist/renderer/index.html'), '');
  for (const path of ['renderer/map/a.ts', 'renderer/map', 'renderer', 'core/b.ts', 'core'])
    await utimes(join(root, path), 1000, 1000);
  await utimes(join(root, 'dist/renderer/index.html'), 2000, 2000);
  return root;
}

describe('the built page', () => {
  it('is fresh as long as no source is newer', async () => {
    const root = await builtRoot();
    expect(await isStale(root, 'page')).toBe(false);
    expect(await buildWhereStale(root, 'page', () => expect.unreachable())).toBeNull();
  });

  it.each(['renderer/map/a.ts', 'core/b.ts', 'renderer/map'])('is stale when %s is newer', async (path) => {
    const root = await builtRoot();
    await utimes(join(root, path), 3000, 3000);
    expect(await isStale(root, 'page')).toBe(true);
  });

  it('is stale when it is not there', async () => {
    const root = await builtRoot();
    await rm(join(root, 'dist'), { recursive: true });
    expect(await isStale(root, 'page')).toBe(true);
  });

  it('is waited for while another program builds it', async () => {
    const root = await builtRoot();
    const lock = join(root, 'dist/.building-page');
    await mkdir(lock);
    let isDone = false;
    const waiting = buildWhereStale(root, 'page', () => expect.unreachable()).then((fault) => {
      isDone = true;
      return fault;
    });
    await setTimeout(250);
    expect(isDone).toBe(false);
    await rmdir(lock);
    expect(await waiting).toBeNull();
    expect(await readdir(join(root, 'dist'))).toEqual(['renderer']);
  });

  it('is not waited for where the program that built it was ended in the middle', async () => {
    const root = await builtRoot();
    await mkdir(join(root, 'dist/.building-page'));
    await utimes(join(root, 'dist/.building-page'), 2000, 2000);
    expect(await buildWhereStale(root, 'page', () => expect.unreachable())).toBeNull();
  });

  it('that cannot be built says what to do', async () => {
    const root = await builtRoot();
    await rm(join(root, 'dist'), { recursive: true });
    expect(await buildWhereStale(root, 'page', () => undefined)).toContain('npm ci');
  });
});
