import { mkdir, readdir, readFile, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { givenPaths, opening, takeGiven } from '../../../electron/main/given-file.ts';
import type { FileStore } from '../../../electron/files/store.ts';
import { firstSettings } from '../../../electron/files/settings.ts';
import { courseText, failureOf, storeIn, temporaryFolder, valueOf } from '../files/workspace.ts';

const PLAYER = JSON.stringify({ holewright: { format: 'player', version: 1 } });
let workspace: string;
let outside: string;
let store: FileStore;

beforeEach(async () => {
  [workspace, outside] = [await temporaryFolder(), await temporaryFolder()];
  store = await storeIn(workspace);
});

describe('a file that the system hands over', () => {
  it('is opened where it lies in the workspace already', async () => {
    await writeFile(join(workspace, 'a.geojson'), courseText(1));
    const entry = valueOf(await takeGiven(store, join(workspace, 'a.geojson')));
    expect([entry.name, entry.kind]).toEqual(['a.geojson', 'course']);
    expect(opening(firstSettings, entry).lastCourse).toBe(entry.token);
    expect(await readdir(workspace)).toContain('a.geojson');
  });

  it('from elsewhere is copied in once, whatever is done with it later', async () => {
    const path = join(outside, 'a.geojson');
    await writeFile(path, courseText(2));
    const entry = valueOf(await takeGiven(store, path));
    expect(valueOf(await takeGiven(store, path)).token).toBe(entry.token);
    await writeFile(path, courseText(3));
    const other = valueOf(await takeGiven(store, path));
    expect(other.name).not.toBe(entry.name);
    expect(await readFile(join(workspace, 'a.geojson'), 'utf8')).toBe(courseText(2));
  });

  it('is told apart by what it says where its name does not', async () => {
    const path = join(outside, 'me.json');
    await writeFile(path, PLAYER);
    const entry = valueOf(await takeGiven(store, path));
    expect([entry.kind, opening(firstSettings, entry).lastPlayer]).toEqual(['player', entry.token]);
    await writeFile(path, '{"a":1}');
    expect(failureOf(await takeGiven(store, path))).toBe('unfit');
  });

  it('that is a folder, gone or no text is refused with words', async () => {
    await mkdir(join(outside, 'folder.geojson'));
    await writeFile(join(outside, 'bytes.geojson'), Buffer.from([0xff, 0xfe, 0]));
    for (const name of ['folder.geojson', 'gone.geojson', 'bytes.geojson']) {
      const taken = await takeGiven(store, join(outside, name));
      expect([name, taken.ok]).toEqual([name, false]);
    }
    expect((await readdir(workspace)).filter((name) => !name.startsWith('.'))).toEqual([]);
  });

  it('may be a link of the person’s own, but its copy is a plain file', async () => {
    await writeFile(join(outside, 'real.geojson'), courseText(4));
    await symlink(join(outside, 'real.geojson'), join(outside, 'link.geojson'));
    const entry = valueOf(await takeGiven(store, join(outside, 'link.geojson')));
    expect(await readFile(join(workspace, entry.name), 'utf8')).toBe(courseText(4));
  });
});

describe('the words of a command line', () => {
  it('are files where their ending says so, from the folder that the person was in', () => {
    expect(
      givenPaths(['--demo', 'a.geojson', '/b/me.player.json', 'picture.png', '.', '--x=a.geojson'], '/home'),
    ).toEqual(['/home/a.geojson', '/b/me.player.json']);
  });
});
