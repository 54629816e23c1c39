/** Good files of every kind, small enough that thousands of spoilt ones are read within minutes. */

import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { newRound, withHole } from '../../core/round/record.ts';
import { roundText } from '../../core/round/format.ts';
import { shareText } from '../../core/round/share.ts';
import { at } from '../course/builders.ts';
import { writeTiff } from '../course/import/tiff-builder.ts';
import { insertTile, sqliteFile, TILE_TABLES, tileBytes } from '../electron/files/mbtiles.ts';
import { keptText } from '../../renderer/kept-plans/kept-plan.ts';
import { oneTask, resultOfTask } from '../renderer/kept-plans/worked-out.ts';
import { eighteenHolesText } from '../renderer/round/eighteen.ts';
import { smallCourseText, smallPlayerText } from '../renderer/small-course.ts';

function fixture(path: string): string {
  return readFileSync(new URL(`../${path}`, import.meta.url), 'utf8');
}

export const COURSES: readonly string[] = [
  smallCourseText(),
  fixture('course/fixtures/version-1.geojson'),
  eighteenHolesText(),
];

export const PLAYERS: readonly string[] = [
  smallPlayerText(),
  withShots(smallPlayerText()),
  readFileSync(new URL('../../maps/scratch-player.json', import.meta.url), 'utf8'),
];

function withShots(text: string): string {
  const player = JSON.parse(text) as { bag: readonly { name: string }[] };
  const shots = player.bag.slice(0, 2).flatMap(({ name }) =>
    Array.from({ length: 4 }, (_, i) => ({
      club: name,
      carryM: 120 + i,
      directionDeg: i - 2,
      lie: 'fairway',
      at: '2026-05-02T10:00:00Z',
    })),
  );
  return JSON.stringify({ ...player, shots });
}

export const ROUNDS: readonly string[] = [fixture('round/fixtures/version-1.round.json'), playedRound()];

function playedRound(): string {
  const round = newRound({
    name: 'Evening round',
    course: { name: 'Test course' },
    player: { name: 'Invented player' },
  });
  const shots = [
    { club: '7-iron', from: [0, 0], fromLie: 'tee', aim: [0, 0.001], to: [0, 0.0012], toLie: 'green' },
  ];
  const played = {
    hole: 1,
    par: 3,
    score: 4,
    putts: 2,
    penalties: 0,
    teeClub: '7-iron',
    notes: 'into the sun',
    shots,
  };
  return roundText(withHole(round, played as Parameters<typeof withHole>[1]));
}

export const SHARED: readonly string[] = [sharedPlan()];

function sharedPlan(): string {
  const round = JSON.parse(playedRound()) as Parameters<typeof shareText>[0];
  const shared = shareText(round, smallCourseText(), smallPlayerText());
  if (!shared.ok) throw new Error(shared.error.message);
  return shared.value;
}

const workedOut = resultOfTask(oneTask);

/** Plans of the last start; `oneTask` asks for them. */
export const KEPT_PLANS: readonly string[] = [workedOut, { ...workedOut, teePicture: null }].map((result) => {
  const text = keptText(result);
  if (text === null) throw new Error('the plan is not kept');
  return text;
});

export const SHOT_TABLES: readonly string[] = [
  ...[
    'quill-and-stave.csv',
    'old-harbour-studio.csv',
    'fennimore-field-box.txt',
    'ostertal-messkasten.csv',
  ].map((name) => fixture(`player/csv/fixtures/${name}`)),
  'Club,Carry (yd),Off line (yd)\n7-iron,150,3 R\n"8-iron",140,2 L\n',
];

const OSM_XML = fixture('course/import/fixtures/invented-links.osm');
/** Where the invented links lie: heights are read round it. */
export const OSM_XML_SAMPLES: readonly string[] = [OSM_XML];
export const OSM_JSON_SAMPLES: readonly string[] = [
  JSON.stringify({
    version: 0.6,
    elements: [
      { type: 'node', id: 1, lat: 0, lon: 0 },
      { type: 'node', id: 2, lat: 0.001, lon: 0 },
      { type: 'node', id: 3, lat: 0.001, lon: 0.0005, tags: { natural: 'tree' } },
      { type: 'node', id: 4, lat: 0, lon: 0.0005 },
      { type: 'way', id: 10, nodes: [1, 2], tags: { golf: 'hole', ref: '1', par: '3', handicap: '7' } },
      { type: 'way', id: 11, nodes: [1, 2, 3, 4, 1], tags: { golf: 'green', ref: '1', name: 'First' } },
      { type: 'way', id: 12, nodes: [1, 2, 3, 4, 1], tags: { leisure: 'golf_course', name: 'Links' } },
      {
        type: 'relation',
        id: 20,
        members: [{ type: 'way', ref: 11, role: 'outer' }],
        tags: { type: 'multipolygon', golf: 'fairway' },
      },
    ],
  }),
];
export const GPX_SAMPLES: readonly string[] = [fixture('course/import/fixtures/invented-walk.gpx')];
export const GEOJSON_SAMPLES: readonly string[] = [
  smallCourseText(),
  JSON.stringify({
    type: 'FeatureCollection',
    features: [
      {
        type: 'Feature',
        properties: { sort: 'Green', number: 4 },
        geometry: {
          type: 'MultiPolygon',
          coordinates: [
            [
              [
                [0, 0],
                [0.001, 0],
                [0.001, 0.001],
                [0, 0],
              ],
            ],
          ],
        },
      },
      {
        type: 'Feature',
        properties: { sort: 'centre line', number: 4 },
        geometry: {
          type: 'GeometryCollection',
          geometries: [
            {
              type: 'LineString',
              coordinates: [
                [0, 0],
                [0, 0.003],
              ],
            },
          ],
        },
      },
    ],
  }),
];

const [WEST, SOUTH] = at(-200, -200);

/** Four small elevation models over the small course. */
export const GEOTIFFS: readonly Uint8Array[] = (['none', 'deflate', 'lzw', 'packbits'] as const).map(
  (compression, i) =>
    new Uint8Array(
      writeTiff({
        ...{ width: 24, height: 24, compression },
        cell: (column, row) => 3 + column * 0.5 - row * 0.25,
        keys: [
          [1024, 2],
          [2048, 4326],
        ],
        tiepoint: [0, 0, 0, WEST, SOUTH + 24 * 0.0005, 0],
        pixelScale: [0.0005, 0.0005, 0],
        noData: '-9999',
        ...(i % 2 === 0 ? {} : { tile: 16 }),
        bigEndian: i === 2,
      }),
    ),
);

export async function mbtilesSamples(): Promise<readonly Uint8Array[]> {
  return [
    await sqliteFile(
      `${TILE_TABLES}${insertTile(0, 0, 0, 1)}${insertTile(1, 0, 1, 2)}${insertTile(2, 3, 1, 3)}
       INSERT INTO metadata VALUES ('name', 'Aerial'), ('format', 'png'), ('minzoom', '0'), ('maxzoom', '2'),
       ('bounds', '-1,-1,1,1'), ('attribution', 'invented');`,
    ),
  ];
}

/** PMTiles version 3 (specification 3.4): header, directory, metadata, two tiles. */
export const PMTILES: readonly Uint8Array[] = [pmtiles(1), pmtiles(2)];

function pmtiles(compression: 1 | 2): Uint8Array {
  const pack = (bytes: Uint8Array): Uint8Array => (compression === 2 ? gzipSync(bytes) : bytes);
  const tiles = [tileBytes(1), tileBytes(2)];
  // Count, steps of tile numbers, runs, lengths, offsets (0: right behind the one before).
  const directory = pack(Uint8Array.from([2, 0, 1, 1, 1, tiles[0]!.length, tiles[1]!.length, 1, 0]));
  const metadata = pack(new TextEncoder().encode('{"attribution":"invented","name":"Aerial"}'));
  const header = new DataView(new ArrayBuffer(127));
  Buffer.from('PMTiles').forEach((byte, i) => header.setUint8(i, byte));
  header.setUint8(7, 3);
  const data = Buffer.concat(tiles);
  const at = [127, 127 + directory.length, 127 + directory.length + metadata.length];
  [
    [at[0]!, directory.length],
    [at[1]!, metadata.length],
    [at[2]!, 0],
    [at[2]!, data.length],
  ].forEach(([offset, length], i) => {
    header.setBigUint64(8 + 16 * i, BigInt(offset!), true);
    header.setBigUint64(16 + 16 * i, BigInt(length!), true);
  });
  for (const [place, value] of [
    [96, 1],
    [97, compression],
    [98, 1],
    [99, 2],
    [100, 0],
    [101, 1],
  ] as const)
    header.setUint8(place, value);
  return Buffer.concat([new Uint8Array(header.buffer), directory, metadata, data]);
}

/** Heads of pictures: as much of PNG, JPEG and WebP as tells kind and size. */
export const PICTURES: readonly Uint8Array[] = [
  Buffer.from(
    '89504e470d0a1a0a0000000d49484452000000100000000808020000007f14e8c00000000049454e44ae426082',
    'hex',
  ),
  Buffer.from('ffd8ffe000104a46494600010100000100010000ffc00011080008001003012200021101031101ffd9', 'hex'),
  Buffer.from('524946461a000000574542505650384c0d0000002f0fc0010007105011d10000', 'hex'),
  Buffer.from(
    '524946461e0000005745425056503858' + '0a000000' + '00000000' + '0f0000' + '070000' + '0000',
    'hex',
  ),
];
