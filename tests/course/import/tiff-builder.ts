/** Writes small GeoTIFF files for tests, whole or deliberately wrong (TIFF 6.0; OGC GeoTIFF 1.1). */

import { deflateSync } from 'node:zlib';

export interface TiffDesign {
  readonly width: number;
  readonly height: number;
  readonly cell: (column: number, row: number) => number;
  readonly compression?: 'none' | 'deflate' | 'lzw' | 'packbits' | number;
  /** Square tiles of this side; strips of `rowsPerStrip` rows without. */
  readonly tile?: number;
  readonly rowsPerStrip?: number;
  /** Pairs of GeoKey and value; texts go to the ASCII parameters. */
  readonly keys: readonly (readonly [number, number | string])[];
  readonly tiepoint?: readonly number[];
  readonly pixelScale?: readonly number[];
  readonly matrix?: readonly number[];
  readonly noData?: string;
  /** Takes the place of the packed blocks. */
  readonly blocks?: readonly Uint8Array[];
  /** Further entries, or ones that take the place of those written. */
  readonly entries?: readonly Entry[];
  readonly bigEndian?: boolean;
}

interface Entry {
  readonly tag: number;
  readonly type: 2 | 3 | 4 | 12;
  readonly values: readonly number[] | string;
  /** A count that the file does not keep. */
  readonly claimedCount?: number;
}

const BYTES = { 2: 1, 3: 2, 4: 4, 12: 8 } as const;
const CODES = { none: 1, lzw: 5, deflate: 8, packbits: 32773 } as const;

/** Cells are 32-bit floats in one band. */
export function writeTiff(design: TiffDesign): ArrayBuffer {
  const { width, height, tile, compression = 'none' } = design;
  const little = design.bigEndian !== true;
  const rowsPerStrip = design.rowsPerStrip ?? height;
  const blocks = design.blocks ?? cellBlocks(design, little).map((block) => pack(block, compression));
  const code = typeof compression === 'number' ? compression : CODES[compression];
  const ascii = design.keys.filter(([, value]) => typeof value === 'string').map(([, value]) => `${value}|`);
  let asciiAt = 0;
  const directory = [1, 1, 0, design.keys.length];
  for (const [key, value] of design.keys) {
    if (typeof value === 'number') directory.push(key, 0, 1, value);
    else {
      directory.push(key, 34737, value.length + 1, asciiAt);
      asciiAt += value.length + 1;
    }
  }
  const own: Entry[] = [
    { tag: 256, type: 4, values: [width] },
    { tag: 257, type: 4, values: [height] },
    { tag: 258, type: 3, values: [32] },
    { tag: 259, type: 3, values: [code] },
    { tag: 262, type: 3, values: [1] },
    { tag: 277, type: 3, values: [1] },
    ...(tile === undefined
      ? ([{ tag: 278, type: 4, values: [rowsPerStrip] }] as const)
      : ([
          { tag: 322, type: 4, values: [tile] },
          { tag: 323, type: 4, values: [tile] },
        ] as const)),
    { tag: tile === undefined ? 273 : 324, type: 4, values: blocks.map(() => 0) },
    { tag: tile === undefined ? 279 : 325, type: 4, values: blocks.map((block) => block.length) },
    { tag: 339, type: 3, values: [3] },
    ...(design.pixelScale === undefined
      ? []
      : [{ tag: 33550, type: 12 as const, values: design.pixelScale }]),
    ...(design.tiepoint === undefined ? [] : [{ tag: 33922, type: 12 as const, values: design.tiepoint }]),
    ...(design.matrix === undefined ? [] : [{ tag: 34264, type: 12 as const, values: design.matrix }]),
    { tag: 34735, type: 3, values: directory },
    ...(ascii.length === 0 ? [] : [{ tag: 34737, type: 2 as const, values: `${ascii.join('')}\0` }]),
    ...(design.noData === undefined ? [] : [{ tag: 42113, type: 2 as const, values: `${design.noData}\0` }]),
  ];
  const replaced = new Set(design.entries?.map(({ tag }) => tag));
  const entries = [...own.filter(({ tag }) => !replaced.has(tag)), ...(design.entries ?? [])].sort(
    (a, b) => a.tag - b.tag,
  );
  return layOut(entries, blocks, little);
}

function cellBlocks(design: TiffDesign, little: boolean): Uint8Array[] {
  const { width, height, tile } = design;
  const raw: Uint8Array[] = [];
  const blockWidth = tile ?? width;
  const blockHeight = tile ?? design.rowsPerStrip ?? height;
  for (let top = 0; top < height; top += blockHeight) {
    for (let left = 0; left < width; left += blockWidth) {
      const rows = tile === undefined ? Math.min(blockHeight, height - top) : tile;
      const view = new DataView(new ArrayBuffer(blockWidth * rows * 4));
      for (let row = 0; row < rows; row++) {
        for (let column = 0; column < blockWidth; column++) {
          const inside = left + column < width && top + row < height;
          view.setFloat32(
            4 * (row * blockWidth + column),
            inside ? design.cell(left + column, top + row) : 0,
            little,
          );
        }
      }
      raw.push(new Uint8Array(view.buffer));
    }
  }
  return raw;
}

function layOut(entries: readonly Entry[], blocks: readonly Uint8Array[], little: boolean): ArrayBuffer {
  const start = 8;
  let end = start + 2 + entries.length * 12 + 4;
  const places = entries.map(({ type, values }) => {
    const bytes = values.length * BYTES[type];
    if (bytes <= 4) return undefined;
    const at = end;
    end += bytes + (bytes % 2);
    return at;
  });
  const blockPlaces = blocks.map((block) => {
    const at = end;
    end += block.length;
    return at;
  });
  const view = new DataView(new ArrayBuffer(end));
  const out = new Uint8Array(view.buffer);
  view.setUint16(0, little ? 0x4949 : 0x4d4d);
  view.setUint16(2, 42, little);
  view.setUint32(4, start, little);
  view.setUint16(start, entries.length, little);
  entries.forEach(({ tag, type, values, claimedCount }, index) => {
    const at = start + 2 + index * 12;
    const numbers =
      tag === 273 || tag === 324
        ? blockPlaces
        : typeof values === 'string'
          ? [...Buffer.from(values, 'latin1')]
          : values;
    view.setUint16(at, tag, little);
    view.setUint16(at + 2, type, little);
    view.setUint32(at + 4, claimedCount ?? numbers.length, little);
    const place = places[index];
    if (place !== undefined) view.setUint32(at + 8, place, little);
    numbers.forEach((number, i) => {
      const to = (place ?? at + 8) + i * BYTES[type];
      if (type === 2) view.setUint8(to, number);
      else if (type === 3) view.setUint16(to, number, little);
      else if (type === 4) view.setUint32(to, number, little);
      else view.setFloat64(to, number, little);
    });
  });
  blocks.forEach((block, index) => out.set(block, blockPlaces[index]));
  return view.buffer;
}

function pack(block: Uint8Array, compression: TiffDesign['compression']): Uint8Array {
  switch (compression) {
    case 'deflate':
      return new Uint8Array(deflateSync(block));
    case 'lzw':
      return packLzw(block);
    case 'packbits':
      return packBits(block);
    default:
      return block;
  }
}

/** Literal runs of up to 128 bytes, and runs of one byte as such. */
export function packBits(bytes: Uint8Array): Uint8Array {
  const out: number[] = [];
  for (let at = 0; at < bytes.length; ) {
    let run = 1;
    while (run < 128 && at + run < bytes.length && bytes[at + run] === bytes[at]) run++;
    if (run > 2) {
      out.push(257 - run, bytes[at]!);
      at += run;
    } else {
      const literal = bytes.subarray(at, Math.min(bytes.length, at + 128));
      out.push(literal.length - 1, ...literal);
      at += literal.length;
    }
  }
  return Uint8Array.from(out);
}

/** TIFF 6.0, section 13: codes of 9 to 12 bits, widened one code early. */
export function packLzw(bytes: Uint8Array): Uint8Array {
  const out: number[] = [];
  let held = 0;
  let bits = 0;
  const put = (code: number, width: number) => {
    held = (held << width) | code;
    bits += width;
    while (bits >= 8) {
      bits -= 8;
      out.push((held >> bits) & 255);
      held &= (1 << bits) - 1;
    }
  };
  let table = new Map<string, number>();
  let next = 258;
  let width = 9;
  const reset = () => {
    put(256, width);
    table = new Map();
    next = 258;
    width = 9;
  };
  const codeOf = (text: string) => (text.length === 1 ? text.charCodeAt(0) : table.get(text));
  reset();
  let run = '';
  for (const byte of bytes) {
    const longer = run + String.fromCharCode(byte);
    if (codeOf(longer) !== undefined) {
      run = longer;
      continue;
    }
    put(codeOf(run)!, width);
    table.set(longer, next++);
    if (next === 4094) reset();
    else if (next + 1 > 2 ** width) width++;
    run = String.fromCharCode(byte);
  }
  if (run !== '') put(codeOf(run)!, width);
  // the reader has made one entry more than the writer by now
  if (next + 1 >= 2 ** width && width < 12) width++;
  put(257, width);
  if (bits > 0) out.push((held << (8 - bits)) & 255);
  return Uint8Array.from(out);
}

/** GeoKeys of the grids that are read. */
export const GEOGRAPHIC_KEYS = [
  [1024, 2],
  [1025, 1],
  [2048, 4326],
] as const;

export function projectedKeys(epsg: number): readonly (readonly [number, number | string])[] {
  return [
    [1024, 1],
    [1025, 1],
    [3072, epsg],
  ];
}
