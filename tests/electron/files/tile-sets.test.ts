import { chmod, mkdir, readdir, readlink, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { openAttachments } from '../../../electron/files/attachments.ts';
import { LARGEST_VALUE_BYTES } from '../../../electron/files/sqlite-file.ts';
import { openTileSets, type TileSets } from '../../../electron/files/tile-sets.ts';
import { insertTile, sqliteFile, TILE_TABLES, tileBytes } from './mbtiles.ts';
import { courseText, failureOf, storeIn, temporaryFolder, valueOf } from './workspace.ts';

const opened: TileSets[] = [];
afterEach(async () => {
  for (const sets of opened.splice(0)) await sets.close();
});

/** A course with one attached file of these bytes, and the way to its tiles. */
async function withFile(
  bytes: Uint8Array,
  name = 'map.mbtiles',
): Promise<{ sets: TileSets; token: string; files: string; path: string }> {
  const folder = await temporaryFolder();
  await writeFile(join(folder, 'a.geojson'), courseText(1));
  const files = join(folder, 'a.files');
  await mkdir(files);
  const path = join(files, name);
  await writeFile(path, bytes);
  const store = await storeIn(folder);
  const attachments = openAttachments(store);
  const sets = openTileSets(attachments);
  opened.push(sets);
  const [course] = valueOf(await store.list());
  const [attached] = valueOf(await attachments.list(course!.token));
  return { sets, token: attached!.token, files, path };
}

const withTables = async (statements: string) => withFile(await sqliteFile(TILE_TABLES + statements));

describe('a tile of an MBTiles file', () => {
  it('is counted from the north here and from the south there', async () => {
    // MBTiles 1.3, section "Tiles": 11/327/791 is stored with tile_row 1256 (example from memory; 2^11 - 1 - 791).
    const { sets, token } = await withTables(
      insertTile(11, 327, 1256, 7) + insertTile(0, 0, 0, 1) + insertTile(1, 0, 1, 2) + insertTile(1, 0, 0, 3),
    );
    const mark = async (zoom: number, x: number, y: number): Promise<number | undefined> => {
      const tile = valueOf(await sets.tile(token, zoom, x, y));
      return tile === null ? undefined : new Uint8Array(tile.bytes).at(-1);
    };
    expect(await mark(11, 327, 791)).toBe(7);
    expect(await mark(0, 0, 0)).toBe(1);
    expect([await mark(1, 0, 0), await mark(1, 0, 1)]).toEqual([2, 3]);
    // Not in the file, and not in the world.
    for (const [zoom, x, y] of [
      [1, 1, 1],
      [0, 1, 0],
      [0, 0, 1],
      [30, 5, 5],
    ] as const)
      expect(await mark(zoom, x, y)).toBeUndefined();
  });

  it('comes with its kind, in memory of its own', async () => {
    const { sets, token } = await withTables(insertTile(0, 0, 0, 1));
    const one = valueOf(await sets.tile(token, 0, 0, 0))!;
    expect(one.mediaType).toBe('image/png');
    expect(Buffer.from(one.bytes)).toEqual(tileBytes(1));
    expect(one.bytes.byteLength).toBe(17);
    new Uint8Array(one.bytes).fill(0);
    expect(Buffer.from(valueOf(await sets.tile(token, 0, 0, 0))!.bytes)).toEqual(tileBytes(1));
  });

  it('may come out of a view, as the format allows', async () => {
    const { sets, token } = await withFile(
      await sqliteFile(`
        CREATE TABLE map (z integer, x integer, y integer, image integer);
        CREATE TABLE images (image integer primary key, data blob);
        INSERT INTO images VALUES (1, x'${tileBytes(9).toString('hex')}');
        INSERT INTO map VALUES (0, 0, 0, 1);
        CREATE VIEW tiles AS SELECT z AS zoom_level, x AS tile_column, y AS tile_row, data AS tile_data
          FROM map JOIN images USING (image);
        CREATE TABLE metadata (name text, value text);`),
    );
    expect(Buffer.from(valueOf(await sets.tile(token, 0, 0, 0))!.bytes)).toEqual(tileBytes(9));
  });

  it('is read from a file that was left in write-ahead mode, whose log is not there', async () => {
    const bytes = await sqliteFile(TILE_TABLES + insertTile(0, 0, 0, 5));
    // SQLite file format, 1.3: bytes 18 and 19 are 2 for write-ahead logging.
    bytes[18] = bytes[19] = 2;
    const { sets, token } = await withFile(bytes);
    expect(valueOf(await sets.tile(token, 0, 0, 0))?.bytes.byteLength).toBe(17);
  });

  it('is read without a trace beside the file, also from a folder that cannot be written', async () => {
    const { sets, token, files, path } = await withTables(insertTile(0, 0, 0, 5));
    // Other readers lock by making this; a crash of theirs must not keep us out.
    await mkdir(`${path}.lock`);
    await chmod(files, 0o555);
    try {
      valueOf(await sets.tile(token, 0, 0, 0));
      expect((await readdir(files)).sort()).toEqual(['map.mbtiles', 'map.mbtiles.lock']);
    } finally {
      await chmod(files, 0o755);
    }
  });

  it('follows the file when it is exchanged', async () => {
    const { sets, token, path } = await withTables(insertTile(0, 0, 0, 1));
    valueOf(await sets.tile(token, 0, 0, 0));
    await writeFile(path, await sqliteFile(TILE_TABLES + insertTile(0, 0, 0, 2) + insertTile(1, 0, 0, 2)));
    expect(new Uint8Array(valueOf(await sets.tile(token, 0, 0, 0))!.bytes).at(-1)).toBe(2);
    await rm(path);
    expect(failureOf(await sets.tile(token, 0, 0, 0))).toBe('not-found');
  });
});

describe('what an MBTiles file says of itself', () => {
  it('is passed on where it is sensible', async () => {
    const { sets, token } = await withTables(`
      INSERT INTO metadata VALUES ('name', 'Elm Row'), ('format', 'jpg'), ('minzoom', '3'), ('maxzoom', 17),
        ('bounds', '-1.5,50,-1.4,50.1'), ('attribution', 'made up');`);
    expect(valueOf(await sets.info(token))).toEqual({
      name: 'Elm Row',
      mediaType: 'image/jpeg',
      attribution: 'made up',
      leastZoom: 3,
      mostZoom: 17,
      bounds: [-1.5, 50, -1.4, 50.1],
    });
  });

  it.each(["'1,2,3'", "'a,b,c,d'", "'0,10,1,5'", "'-999,0,0,1'", "'1,2,3,4,5'", "''", 'NULL', "x'00'"])(
    'is nothing for the bounds %s',
    async (bounds) => {
      const { sets, token } = await withTables(
        `INSERT INTO metadata VALUES ('bounds', ${bounds}), ('minzoom', 'x'), ('maxzoom', 99);`,
      );
      expect(valueOf(await sets.info(token))).toMatchObject({
        name: null,
        bounds: null,
        leastZoom: null,
        mostZoom: null,
        mediaType: 'application/octet-stream',
      });
    },
  );
});

describe('a file that is no good as MBTiles', () => {
  it.each([
    ['no database', () => Promise.resolve(Buffer.from('SQLite format 3\0'.padEnd(2000, 'x')))],
    ['an empty file', () => Promise.resolve(Buffer.alloc(0))],
    ['a database without tiles', () => sqliteFile('CREATE TABLE other (a);')],
    [
      'a database cut in two',
      async () => (await sqliteFile(TILE_TABLES + insertTile(0, 0, 0, 1))).slice(0, 5000),
    ],
  ])('as %s is refused with words that name no path', async (_, make) => {
    const { sets, token, files } = await withFile(await make());
    for (const answer of [await sets.tile(token, 0, 0, 0), await sets.info(token)]) {
      if (answer.ok) continue;
      expect(answer.failure).toBe('unfit');
      expect(answer.message).not.toContain(files);
    }
    expect(failureOf(await sets.tile(token, 0, 0, 0))).toBe('unfit');
  });

  it('of another kind has no tiles', async () => {
    const { sets, token } = await withFile(tileBytes(1), 'picture.png');
    expect(failureOf(await sets.tile(token, 0, 0, 0))).toBe('unfit');
  });

  it('whose view would run for ever is given up, and others go on', async () => {
    const { sets, token } = await withFile(
      await sqliteFile(`
        CREATE TABLE metadata (name text, value text);
        CREATE VIEW tiles AS WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n)
          SELECT 0 AS zoom_level, 0 AS tile_column, 0 AS tile_row, max(i) AS tile_data FROM n;`),
    );
    const answer = await sets.tile(token, 0, 0, 0);
    expect(answer).toMatchObject({
      failure: 'unfit',
      message: expect.stringContaining('too long') as string,
    });
    expect(valueOf(await sets.info(token)).name).toBeNull();
  });

  it('whose tile would fill the memory is refused', async () => {
    const { sets, token } = await withFile(
      await sqliteFile(`
        CREATE TABLE metadata (name text, value text);
        CREATE VIEW tiles AS SELECT 0 AS zoom_level, 0 AS tile_column, 0 AS tile_row,
          zeroblob(${LARGEST_VALUE_BYTES + 1}) AS tile_data;`),
    );
    expect(failureOf(await sets.tile(token, 0, 0, 0))).toBe('unfit');
  });
});

describe('many files', () => {
  it('are read by turns, with a few kept open', async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, 'a.geojson'), courseText(1));
    await mkdir(join(folder, 'a.files'));
    for (let mark = 0; mark < 7; mark++)
      await writeFile(
        join(folder, 'a.files', `${mark}.mbtiles`),
        await sqliteFile(TILE_TABLES + insertTile(0, 0, 0, mark)),
      );
    const store = await storeIn(folder);
    const attachments = openAttachments(store);
    const sets = openTileSets(attachments);
    opened.push(sets);
    const all = valueOf(await attachments.list(valueOf(await store.list())[0]!.token));
    const openFiles = async (): Promise<number> => {
      const links = await Promise.all(
        (await readdir('/proc/self/fd')).map((fd) => readlink(`/proc/self/fd/${fd}`).catch(() => '')),
      );
      return links.filter((path) => path.startsWith(folder)).length;
    };
    for (let round = 0; round < 2; round++) {
      const tiles = await Promise.all(all.map(({ token }) => sets.tile(token, 0, 0, 0)));
      expect(tiles.map((tile) => new Uint8Array(valueOf(tile)!.bytes).at(-1))).toEqual([0, 1, 2, 3, 4, 5, 6]);
      if (process.platform === 'linux') expect(await openFiles()).toBe(4);
    }
    await sets.close();
    if (process.platform === 'linux') expect(await openFiles()).toBe(0);
  });
});
