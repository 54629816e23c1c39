/** Elevation models: sampled where they should be, in every grid that is read, and refused where they mean harm. */

import { deflateSync } from 'node:zlib';
import fc from 'fast-check';
import { writeArrayBuffer } from 'geotiff';
import { describe, expect, it } from 'vitest';
import { courseOf, propertiesOf } from '../../../core/course/document.ts';
import { TooLarge, unpackLzw } from '../../../core/course/import/bounded-decoders.ts';
import { WEB_MERCATOR } from '../../../core/course/import/grids.ts';
import { readHeights } from '../../../core/course/import/heights.ts';
import { contextOf, EMPTY_CONTEXT, type ImportProposal } from '../../../core/course/import/proposal.ts';
import { directoryFault } from '../../../core/course/import/tiff-directory.ts';
import { utm } from '../../../core/course/import/transverse-mercator.ts';
import { distanceM } from '../../../core/course/ellipsoid.ts';
import type { LonLat } from '../../../core/course/model.ts';
import { area, at, PLACE, plainHole, point, square } from '../builders.ts';
import { open } from '../edits/edit-builders.ts';
import { mustApply, mustFault, mustPropose } from './import-builders.ts';
import { GEOGRAPHIC_KEYS, packLzw, projectedKeys, type TiffDesign, writeTiff } from './tiff-builder.ts';

const course = open(...plainHole(1, 0));
const context = contextOf(course);

/** A slope: 3 m higher for each thousandth of a degree east, 5 m for each north. */
const slope = ([lon, lat]: LonLat) => 100 + 3000 * (lon - PLACE[0]) + 5000 * (lat - PLACE[1]);

const STEP = 1e-4;
const geographic: TiffDesign = {
  width: 80,
  height: 80,
  keys: GEOGRAPHIC_KEYS,
  tiepoint: [0, 0, 0, PLACE[0] - 0.004, PLACE[1] + 0.006, 0],
  pixelScale: [STEP, STEP, 0],
  cell: (column, row) =>
    slope([PLACE[0] - 0.004 + (column + 0.5) * STEP, PLACE[1] + 0.006 - (row + 0.5) * STEP]),
};

const { width, height, keys, cell } = geographic;
const unplaced: TiffDesign = { width, height, keys, cell };

async function read(design: TiffDesign, spacingM = 20): Promise<ImportProposal> {
  return mustPropose(await readHeights(writeTiff(design), context, spacingM));
}

/** Largest difference of the levels to a height that is known everywhere, metres. */
function worst(proposal: ImportProposal, truth: (place: LonLat) => number = slope): number {
  expect(proposal.features.length).toBeGreaterThan(50);
  return Math.max(
    ...proposal.features.map(({ geometry, properties }) =>
      Math.abs((properties['ele'] as number) - truth(geometry.coordinates as unknown as LonLat)),
    ),
  );
}

/** Heights are written to the centimetre; 32-bit floats hold 100 m to 0.004 mm. */
const ROUNDING_M = 0.0051;

describe('heights', () => {
  it('lie on a grid of the spacing asked for, over what is drawn', async () => {
    const proposal = await read(geographic, 25);
    expect(worst(proposal)).toBeLessThan(ROUNDING_M);
    const places = proposal.features.map(({ geometry }) => geometry.coordinates as unknown as LonLat);
    const nearest = places.slice(1).map((place) => distanceM(places[0]!, place));
    expect(Math.min(...nearest)).toBeCloseTo(25, 2);
    // the hole is 334 m long, and 30 m are added all round
    const lats = places.map(([, lat]) => lat);
    const spanM = distanceM([PLACE[0], Math.min(...lats)], [PLACE[0], Math.max(...lats)]);
    expect(spanM).toBeGreaterThan(334 + 60);
    expect(spanM).toBeLessThan(334 + 60 + 75);
  });

  it.each(['deflate', 'lzw', 'packbits'] as const)(
    'are the same from %s data, in strips and in tiles',
    async (compression) => {
      const plain = await read(geographic);
      for (const layout of [{ rowsPerStrip: 7 }, { tile: 16 }]) {
        expect((await read({ ...geographic, compression, ...layout })).features).toEqual(plain.features);
      }
    },
  );

  it('are the same in either byte order, from points instead of cells, and from a matrix', async () => {
    const plain = await read(geographic);
    expect((await read({ ...geographic, bigEndian: true })).features).toEqual(plain.features);
    const asPoints = await read({
      ...geographic,
      keys: [
        [1024, 2],
        [1025, 2],
        [2048, 4326],
      ],
      tiepoint: [2, 3, 0, PLACE[0] - 0.004 + 2.5 * STEP, PLACE[1] + 0.006 - 3.5 * STEP, 0],
    });
    expect(asPoints.features).toEqual(plain.features);
    const matrix = [STEP, 0, 0, PLACE[0] - 0.004, 0, -STEP, 0, PLACE[1] + 0.006, 0, 0, 0, 0, 0, 0, 0, 1];
    expect((await read({ ...unplaced, matrix })).features).toEqual(plain.features);
  });

  it('are read from Web Mercator and UTM grids', async () => {
    const mercator = WEB_MERCATOR.toGrid([PLACE[0] - 0.004, PLACE[1] + 0.006]);
    const zone31 = utm(31, false);
    const corner = zone31.toGrid([PLACE[0] - 0.004, PLACE[1] + 0.006]);
    for (const [keys, [x, y], toLonLat] of [
      [projectedKeys(3857), mercator, WEB_MERCATOR.toLonLat],
      [projectedKeys(32631), corner, zone31.toLonLat],
    ] as const) {
      const proposal = await read({
        ...geographic,
        width: 140,
        height: 260,
        keys,
        tiepoint: [0, 0, 0, x, y, 0],
        pixelScale: [5, 5, 0],
        cell: (column, row) => slope(toLonLat([x + (column + 0.5) * 5, y - (row + 0.5) * 5])),
      });
      // between cells the slope, straight in degrees, is bent by less than a millimetre in the grid
      expect(worst(proposal)).toBeLessThan(ROUNDING_M + 0.001);
    }
  });

  it('are read from a file that the library itself wrote', async () => {
    const values = Array.from({ length: 80 * 80 }, (_, i) => geographic.cell(i % 80, Math.floor(i / 80)));
    const buffer = writeArrayBuffer(Float32Array.from(values), {
      width: 80,
      height: 80,
      BitsPerSample: [32],
      SampleFormat: [3],
      ModelTiepoint: [...geographic.tiepoint!],
      ModelPixelScale: [...geographic.pixelScale!],
      GTModelTypeGeoKey: 2,
      GTRasterTypeGeoKey: 1,
      GeographicTypeGeoKey: 4326,
    });
    expect(worst(mustPropose(await readHeights(buffer, context)))).toBeLessThan(ROUNDING_M);
  });

  it('in feet become metres, and a missing unit is told', async () => {
    const feet = await read({ ...geographic, keys: [...GEOGRAPHIC_KEYS, [4099, 9002]], cell: () => 100 });
    expect(feet.features[0]!.properties['ele']).toBe(30.48);
    expect(feet.notes.join()).toContain('feet');
    const none = await read(geographic);
    expect(none.notes.join()).toContain('names no unit');
    const metres = await read({ ...geographic, keys: [...GEOGRAPHIC_KEYS, [4099, 9001]] });
    expect(metres.notes.join()).not.toContain('unit');
  });

  it('are not made up next to cells without data', async () => {
    const holed = await read({
      ...geographic,
      noData: '-9999',
      cell: (column, row) => (row < 40 ? -9999 : geographic.cell(column, row)),
    });
    expect(worst(holed)).toBeLessThan(ROUNDING_M);
    expect(holed.leftOut).toMatchObject([
      expect.objectContaining({ what: 'ground level', why: 'the model has no height there' }),
    ]);
    const gaps = await readHeights(writeTiff({ ...geographic, cell: () => NaN }), context);
    expect(mustFault(gaps).code).toBe('no-heights-here');
  });

  it('stay inside a drawn boundary', async () => {
    const fenced = contextOf(
      open(...plainHole(1, 0), area({ holewright_kind: 'boundary' }, square(0, 150, 50))),
    );
    const proposal = mustPropose(await readHeights(writeTiff(geographic), fenced, 10));
    for (const { geometry } of proposal.features) {
      const [lon, lat] = geometry.coordinates as unknown as LonLat;
      expect(Math.abs(lon - PLACE[0])).toBeLessThanOrEqual(50e-5 + 1e-8);
      expect(Math.abs(lat - at(0, 150)[1])).toBeLessThanOrEqual(50e-5 + 1e-8);
    }
  });

  it('taken again replace those of an earlier model, not those drawn by hand', async () => {
    const byHand = point({ holewright_kind: 'ground_level', ele: 5 }, at(0, 0));
    const start = open(...plainHole(1, 0), byHand);
    const first = mustApply(
      mustPropose(await readHeights(writeTiff(geographic), contextOf(start), 40)),
      start,
    ).document;
    const again = mustPropose(await readHeights(writeTiff(geographic), contextOf(first), 25));
    expect(again.notes.join()).toContain('earlier elevation model');
    const second = mustApply(again, first).document;
    const levels = second.features.filter(
      (feature) => propertiesOf(feature)['holewright_kind'] === 'ground_level',
    );
    expect(levels).toHaveLength(again.features.length + 1);
    const parsed = courseOf(second);
    expect(parsed.ok && parsed.value.levels).toHaveLength(levels.length);
  });
});

describe('what is refused', () => {
  const codeOf = async (design: Partial<TiffDesign>) =>
    mustFault(await readHeights(writeTiff({ ...geographic, ...design }), context)).code;

  it('names the grid that it does not know', async () => {
    const fault = mustFault(
      await readHeights(
        writeTiff({ ...geographic, keys: [...projectedKeys(25832), [3073, 'ETRS89 / UTM zone 32N']] }),
        context,
      ),
    );
    expect(fault.code).toBe('unknown-grid');
    expect(fault.message).toContain('EPSG:25832 ("ETRS89 / UTM zone 32N")');
  });

  it('says where the file lies when it lies elsewhere', async () => {
    const fault = mustFault(
      await readHeights(writeTiff({ ...geographic, tiepoint: [0, 0, 0, 10, 50, 0] }), context),
    );
    expect(fault.code).toBe('elsewhere');
    expect(fault.message).toMatch(/longitude 10\.000\d to 10\.007\d and latitude 49\.992\d to 49\.999\d/);
  });

  it('files that are not placed, slanted, in unknown units or packed in unknown ways', async () => {
    expect(await codeOf({ keys: [] })).toBe('unknown-grid');
    expect(await codeOf({ tiepoint: [] })).toBe('not-placed');
    expect(await codeOf({ pixelScale: [0, 0, 0] })).toBe('not-placed');
    const slant = { ...unplaced, matrix: [STEP, STEP, 0, 4, STEP, -STEP, 0, 52, 0, 0, 0, 0, 0, 0, 0, 1] };
    expect(mustFault(await readHeights(writeTiff(slant), context)).code).toBe('not-placed');
    expect(await codeOf({ keys: [...GEOGRAPHIC_KEYS, [4099, 9005]] })).toBe('unknown-unit');
    expect(await codeOf({ compression: 50001 })).toBe('unknown-compression');
  });

  it('spacings that are none or too narrow, and a course without a place', async () => {
    const buffer = writeTiff(geographic);
    for (const spacing of [0, -5, NaN, 5000])
      expect(mustFault(await readHeights(buffer, context, spacing)).code).toBe('bad-spacing');
    const narrow = mustFault(await readHeights(buffer, context, 1));
    expect(narrow.code).toBe('too-many-levels');
    const wider = Number(/spacing of (\d+) m/.exec(narrow.message)![1]);
    expect((await readHeights(buffer, context, wider)).ok).toBe(true);
    expect(mustFault(await readHeights(buffer, EMPTY_CONTEXT)).code).toBe('no-course-yet');
  });

  it('blocks that unpack to more than the header promises', async () => {
    const zeros = new Uint8Array(8 * 1024 * 1024);
    const packed = [
      [8, new Uint8Array(deflateSync(zeros, { level: 9 }))],
      [5, packLzw(zeros.subarray(0, 200_000))],
      [32773, Uint8Array.from({ length: 40_000 }, (_, i) => (i % 2 === 0 ? 129 : 0))],
    ] as const;
    for (const [compression, block] of packed) {
      expect(block.length).toBeLessThan(100_000);
      expect(await codeOf({ compression, blocks: [block] })).toBe('unpacks-too-large');
    }
  });

  it('headers that ask for more memory than the file has', async () => {
    expect(await codeOf({ entries: [{ tag: 273, type: 4, values: [0, 0], claimedCount: 2 ** 31 }] })).toBe(
      'not-a-tiff',
    );
    expect(await codeOf({ entries: [{ tag: 256, type: 4, values: [2 ** 31] }] })).toBe('tiff-unreadable');
    expect(await codeOf({ entries: [{ tag: 256, type: 4, values: [0] }] })).toBe('tiff-unreadable');
    expect(await codeOf({ tile: 16, entries: [{ tag: 322, type: 4, values: [0] }] })).toBe('tiff-unreadable');
    // a cell of a nanodegree: billions of them lie over the course
    expect(
      await codeOf({
        width: 199_999,
        height: 199_999,
        cell: () => 0,
        blocks: [new Uint8Array(4)],
        rowsPerStrip: 1,
        pixelScale: [4e-8, 4e-8, 0],
      }),
    ).toBe('model-too-fine');
  });

  it('anything cut off or scrambled: an answer, never a throw', async () => {
    const good = new Uint8Array(
      writeTiff({ ...geographic, width: 8, height: 8, compression: 'deflate', pixelScale: [1e-3, 1e-3, 0] }),
    );
    expect(directoryFault(good.buffer)).toBeUndefined();
    await fc.assert(
      fc.asyncProperty(
        fc.nat(good.length),
        fc.array(fc.tuple(fc.nat(good.length - 1), fc.nat(255)), { maxLength: 6 }),
        async (length, changes) => {
          const bytes = good.slice(0, Math.max(length, changes.length > 2 ? good.length : 0));
          for (const [at, value] of changes) if (at < bytes.length) bytes[at] = value;
          const result = await readHeights(bytes.buffer, context, 40);
          if (!result.ok) expect(result.error[0]!.message).not.toBe('');
        },
      ),
      { numRuns: 200 },
    );
  });
});

it('LZW data is unpacked as it was, and refused where it unpacks to more than is allowed', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.nat(255), fc.integer({ min: 1, max: 400 })), { maxLength: 60 }),
      (runs) => {
        const bytes = Uint8Array.from(runs.flatMap(([byte, length]) => Array.from({ length }, () => byte)));
        expect(new Uint8Array(unpackLzw(packLzw(bytes), bytes.length))).toEqual(bytes);
        if (bytes.length > 0) expect(() => unpackLzw(packLzw(bytes), bytes.length - 1)).toThrow(TooLarge);
      },
    ),
  );
});

it('LZW data with a code that names no entry yet is refused, and does not go round in circles', () => {
  // 9 bits each: clear, 65, 300; such data once unpacked without end.
  const bits = [256, 65, 300].map((code) => code.toString(2).padStart(9, '0')).join('');
  const bytes = Uint8Array.from(bits.padEnd(32, '0').match(/.{8}/gu)!, (byte) => Number.parseInt(byte, 2));
  expect(() => unpackLzw(bytes, 1e6)).toThrow('LZW data is damaged');
});
