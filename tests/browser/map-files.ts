/** Small picture and map files for the browser to open, each of one colour: PNG, PMTiles, MBTiles. */

import { crc32, deflateSync } from 'node:zlib';
import { sqliteFile, TILE_TABLES } from '../electron/files/mbtiles.ts';

export type Colour = readonly [number, number, number];

/** A PNG of 8 bits a channel without filter (W3C PNG, third edition, 5 and 11). */
export function solidPng(side: number, colour: Colour): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(side, 0);
  header.writeUInt32BE(side, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const row = Buffer.from([0, ...Array.from({ length: side }, () => colour).flat()]);
  const rows = Buffer.concat(Array.from({ length: side }, () => row));
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Buffer): Buffer {
  const typed = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.byteLength);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc32(typed));
  return Buffer.concat([length, typed, sum]);
}

const HEADER_BYTES = 127;
const MOST_ZOOM = 18;

/** An archive in which every tile of the world up to zoom 18 is the same picture (PMTiles specification, version 3). */
export function pmtilesOf(tile: Buffer, attribution: string): Buffer {
  const tiles = (4 ** (MOST_ZOOM + 1) - 1) / 3;
  // one entry: tile 0, so many times over, its length, its offset plus one
  const directory = Buffer.from([1, 0, tiles, tile.byteLength, 1].flatMap(varint));
  const meta = Buffer.from(JSON.stringify({ attribution }));
  const header = Buffer.alloc(HEADER_BYTES);
  header.write('PMTiles', 'latin1');
  header[7] = 3;
  const metaAt = HEADER_BYTES + directory.byteLength;
  const dataAt = metaAt + meta.byteLength;
  [
    HEADER_BYTES,
    directory.byteLength,
    metaAt,
    meta.byteLength,
    dataAt,
    0,
    dataAt,
    tile.byteLength,
    tiles,
    1,
    1,
  ].forEach((value, i) => header.writeBigUInt64LE(BigInt(value), 8 + 8 * i));
  // clustered, nothing compressed, PNG, zooms 0 to 18
  header.set([1, 1, 1, 2, 0, MOST_ZOOM], 96);
  [-1_800_000_000, -850_000_000, 1_800_000_000, 850_000_000].forEach((degrees, i) =>
    header.writeInt32LE(degrees, 102 + 4 * i),
  );
  return Buffer.concat([header, directory, meta, tile]);
}

function varint(value: number): number[] {
  const bytes: number[] = [];
  let left = value;
  for (; left >= 128; left = Math.floor(left / 128)) bytes.push((left % 128) | 128);
  return [...bytes, left];
}

/** Nine tiles of one zoom around a column and row from the north, rows kept from the south (MBTiles 1.3). */
export async function mbtilesAround(
  tile: Buffer,
  { zoom, x, y }: { readonly zoom: number; readonly x: number; readonly y: number },
): Promise<Buffer> {
  const places = [-1, 0, 1].flatMap((dx) => [-1, 0, 1].map((dy) => [x + dx, 2 ** zoom - 1 - y - dy]));
  const about = [
    ['name', 'Invented'],
    ['format', 'png'],
    ['minzoom', zoom],
    ['maxzoom', zoom],
    ['attribution', 'Invented survey'],
  ];
  return Buffer.from(
    await sqliteFile(
      [
        TILE_TABLES,
        ...about.map(([name, value]) => `INSERT INTO metadata VALUES ('${name}', '${value}');`),
        ...places.map(
          ([column, row]) =>
            `INSERT INTO tiles VALUES (${zoom}, ${column}, ${row}, x'${tile.toString('hex')}');`,
        ),
      ].join('\n'),
    ),
  );
}
