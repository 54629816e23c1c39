import { readdirSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { mountSmallDisk } from './small-disk.ts';
import { courseText, failureOf, sha256, sha256OfFile, storeIn, valueOf } from './workspace.ts';

const small = mountSmallDisk(256);
if ('reason' in small) console.warn(`full disk: skipped, ${small.reason}`);

afterAll(() => {
  if ('folder' in small) small.unmount();
});

describe.skipIf('reason' in small)('a full disk', () => {
  it('keeps the old file whole, says so at once and leaves nothing half-written', async () => {
    const folder = 'folder' in small ? small.folder : '';
    const old = courseText(1000);
    expect(old.length).toBeGreaterThan(80_000);
    await writeFile(join(folder, 'a.geojson'), old);
    const store = await storeIn(folder);
    const { token } = valueOf(await store.list())[0]!;

    const saved = await store.save({ token, text: courseText(4000), baseRevision: sha256(old) });
    expect(failureOf(saved)).toBe('disk-full');
    expect(await sha256OfFile(join(folder, 'a.geojson'))).toBe(sha256(old));
    expect(readdirSync(folder)).toEqual(['a.geojson']);

    expect(failureOf(await store.create('course', 'b', courseText(4000)))).toBe('disk-full');
    expect(readdirSync(folder)).toEqual(['a.geojson']);

    valueOf(await store.save({ token, text: courseText(1), baseRevision: sha256(old) }));
    expect(await sha256OfFile(join(folder, 'a.geojson'))).toBe(sha256(courseText(1)));
  });
});
