import { mkdir, readdir, rename, rm, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { WireChange } from '../../../electron/contract/wire.ts';
import { type Notices, watchStore } from '../../../electron/files/watch.ts';
import { courseText, sha256, storeIn, temporaryFolder, valueOf } from './workspace.ts';

const noNotices: Notices = () => () => undefined;

async function watched(notices: Notices = noNotices) {
  const folder = await temporaryFolder();
  await writeFile(join(folder, 'a.geojson'), courseText(1));
  const store = await storeIn(folder);
  const { token } = valueOf(await store.list())[0]!;
  const watch = watchStore(store, notices);
  const heard: WireChange[] = [];
  const leave = watch.listen((change) => heard.push(change));
  await watch.look();
  return { folder, store, token, watch, heard, leave };
}

describe('watching the workspace', () => {
  it('tells of changed, new and removed files, with the new revision', async () => {
    const { folder, store, token, watch, heard } = await watched();
    await writeFile(join(folder, 'a.geojson'), courseText(2));
    await watch.look();
    expect(heard.splice(0)).toEqual([{ token, change: 'changed', revision: sha256(courseText(2)) }]);

    await writeFile(join(folder, 'b.geojson'), courseText(3));
    await watch.look();
    const b = valueOf(await store.list())[1]!.token;
    expect(heard.splice(0)).toEqual([{ token: b, change: 'added', revision: sha256(courseText(3)) }]);

    await rm(join(folder, 'a.geojson'));
    await watch.look();
    expect(heard).toEqual([{ token, change: 'removed' }]);
  });

  it('tells of a save of our own too, so that other windows hear of it', async () => {
    const { store, token, watch, heard } = await watched();
    const { revision } = valueOf(await store.save({ token, text: courseText(2), baseRevision: null }));
    await watch.look();
    expect(heard).toEqual([{ token, change: 'changed', revision }]);
  });

  it('says nothing where only the time has changed, or nothing at all', async () => {
    const { folder, watch, heard } = await watched();
    await writeFile(join(folder, 'a.geojson'), courseText(2));
    await watch.look();
    heard.length = 0;
    await utimes(join(folder, 'a.geojson'), 1, 1);
    await watch.look();
    await watch.look();
    expect(heard).toEqual([]);
  });

  it('does not take a folder that is away for a moment for every file removed', async () => {
    const { folder, watch, heard } = await watched();
    await rename(folder, `${folder}-away`);
    await watch.look();
    await rename(`${folder}-away`, folder);
    await watch.look();
    expect(heard).toEqual([]);
  });

  it('says nothing more once the listener has left', async () => {
    const { folder, watch, heard, leave } = await watched();
    leave();
    await writeFile(join(folder, 'a.geojson'), courseText(2));
    await watch.look();
    expect(heard).toEqual([]);
  });

  it('hears of a change from the system', async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, 'a.geojson'), courseText(1));
    const watch = watchStore(await storeIn(folder));
    let leave = (): void => undefined;
    const change = new Promise<WireChange>((resolve) => {
      leave = watch.listen(resolve);
    });
    await watch.look();
    await writeFile(join(folder, 'a.geojson'), courseText(2));
    expect(await change).toMatchObject({ change: 'changed', revision: sha256(courseText(2)) });
    leave();
  });

  it('goes on by looking now and then where the system sends no notices', async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, 'a.geojson'), courseText(1));
    const watch = watchStore(await storeIn(folder), () => {
      throw new Error('ENOSPC: no watches left');
    });
    let leave = (): void => undefined;
    const change = new Promise<WireChange>((resolve) => {
      leave = watch.listen(resolve);
    });
    await watch.look();
    await writeFile(join(folder, 'a.geojson'), courseText(2));
    expect((await change).change).toBe('changed');
    leave();
  });

  it('ignores the store’s own folders and temporary files', async () => {
    const { folder, watch, heard } = await watched();
    await mkdir(join(folder, '.holewright-backups'));
    await writeFile(join(folder, '.holewright-unfinished-aa'), 'part');
    await watch.look();
    expect(heard).toEqual([]);
    expect(await readdir(folder)).toHaveLength(3);
  });
});
