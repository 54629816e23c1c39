import { mkdir, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exportEnding } from '../../../electron/contract/export-name.ts';
import { nodeDisk } from '../../../electron/files/disk.ts';
import { openExports, safeExportName } from '../../../electron/files/exports.ts';
import { diskKilledAt, recordingDisk } from './failing-disk.ts';
import { failureOf, storeIn, temporaryFolder, valueOf } from './workspace.ts';

const csv = Buffer.from('hole;strokes\n1;4\n');

describe('the name of an export', () => {
  it('keeps its ending and nothing of a path', () => {
    expect(safeExportName('../../Larkfield/hole 1.SVG')).toBe('Larkfield-hole 1.svg');
    expect(safeExportName('.png')).toBe('export.png');
    expect(safeExportName('con.csv')).toBe('export-con.csv');
  });

  it('of a kind that a system might run is none', () => {
    for (const name of ['page.html', 'run.sh', 'a.svg.exe', 'svg', ''])
      expect(exportEnding(name), name).toBeNull();
  });
});

describe('an export', () => {
  it('goes into the folder for it, and never over what is there', async () => {
    const workspace = await temporaryFolder();
    const exports = openExports(await storeIn(workspace));
    const first = valueOf(await exports.save('round.csv', csv)).where;
    const second = valueOf(await exports.save('Round.csv', Buffer.from('other'))).where;
    expect(first).toContain('exports/round.csv in the folder');
    expect(second).toContain('exports/Round 2.csv');
    expect(await readFile(join(workspace, 'exports', 'round.csv'))).toEqual(csv);
    expect((await readdir(join(workspace, 'exports'))).sort()).toEqual(['Round 2.csv', 'round.csv']);
  });

  it('asked for twice at once makes two files', async () => {
    const workspace = await temporaryFolder();
    const exports = openExports(await storeIn(workspace));
    await Promise.all([exports.save('a.csv', csv), exports.save('a.csv', csv)]);
    expect((await readdir(join(workspace, 'exports'))).sort()).toEqual(['a 2.csv', 'a.csv']);
  });

  it('is no course of the workspace', async () => {
    const workspace = await temporaryFolder();
    const store = await storeIn(workspace);
    valueOf(await openExports(store).save('a.geojson', Buffer.from('{}')));
    expect(valueOf(await store.list())).toEqual([]);
  });

  it('does not follow a link out of the workspace, and says where a file is in the way', async () => {
    const workspace = await temporaryFolder();
    const outside = await temporaryFolder();
    const exports = openExports(await storeIn(workspace));
    await symlink(outside, join(workspace, 'exports'));
    expect((await exports.save('a.csv', csv)).ok).toBe(false);
    await rm(join(workspace, 'exports'));
    await writeFile(join(workspace, 'exports'), 'a file');
    expect((await exports.save('a.csv', csv)).ok).toBe(false);
    expect(await readdir(outside)).toEqual([]);
  });

  it('on a full disk is refused, and leaves nothing', async () => {
    const workspace = await temporaryFolder();
    const full = Object.assign(new Error('full'), { code: 'ENOSPC' });
    const disk = { ...nodeDisk, writeNew: () => Promise.reject(full) };
    const answer = await openExports(await storeIn(workspace, { disk })).save('a.csv', csv);
    expect(failureOf(answer)).toBe('disk-full');
    expect(await readdir(join(workspace, 'exports'))).toEqual([]);
  });

  it('killed at any step is there whole or not at all', async () => {
    const whole = recordingDisk();
    await openExports(await storeIn(await temporaryFolder(), { disk: whole.disk })).save('a.csv', csv);
    const opening = recordingDisk();
    await storeIn(await temporaryFolder(), { disk: opening.disk });
    for (let step = opening.steps.length; step < whole.steps.length; step++) {
      const workspace = await temporaryFolder();
      await mkdir(join(workspace, 'exports'));
      const { disk } = diskKilledAt(step);
      await openExports(await storeIn(workspace, { disk })).save('a.csv', csv);
      for (const name of await readdir(join(workspace, 'exports'))) {
        if (!name.startsWith('.')) expect(await readFile(join(workspace, 'exports', name))).toEqual(csv);
      }
    }
  });
});
