/**
 * Unpacks the blocks of an elevation model without ever growing past the size that its header promises: a few
 * kilobytes made to unpack to gigabytes are refused.
 */

import type * as Geotiff from 'geotiff';
import { Inflate } from 'pako';

/** Compression codes of TIFF 6.0 and its supplements that are read. */
export const Compression = { none: 1, lzw: 5, deflate: 8, packBits: 32773, oldDeflate: 32946 } as const;

export const READABLE_COMPRESSIONS: readonly number[] = Object.values(Compression);

export class TooLarge extends Error {}

/** What geotiff asks of a pool of workers, served here on the spot. */
export interface DecoderPool {
  bindParameters(compression: number, parameters: unknown): Pick<Geotiff.BaseDecoder, 'decode'>;
}

type DecoderModule = Pick<typeof Geotiff, 'BaseDecoder' | 'getDecoder'>;

export function boundedPool(
  { BaseDecoder: Base, getDecoder }: DecoderModule,
  mostBytes: number,
): DecoderPool {
  class BoundedInflate extends Base {
    override decodeBlock(buffer: ArrayBuffer): ArrayBuffer {
      return inflateBounded(new Uint8Array(buffer), mostBytes);
    }
  }
  class BoundedLzw extends Base {
    override decodeBlock(buffer: ArrayBuffer): ArrayBuffer {
      return unpackLzw(new Uint8Array(buffer), mostBytes);
    }
  }
  return {
    bindParameters: (compression, parameters) => {
      const given = parameters as ConstructorParameters<typeof Base>[0];
      if (compression === Compression.lzw) return new BoundedLzw(given);
      if (compression === Compression.deflate || compression === Compression.oldDeflate)
        return new BoundedInflate(given);
      return {
        decode: async (buffer: ArrayBuffer) => {
          const bytes = new Uint8Array(buffer);
          if (packedLength(compression, bytes) > mostBytes) throw new TooLarge();
          const decoder = await getDecoder(compression, given);
          return decoder.decode(buffer);
        },
      };
    },
  };
}

function inflateBounded(bytes: Uint8Array, mostBytes: number): ArrayBuffer {
  const inflate = new Inflate();
  const chunks: Uint8Array[] = [];
  let length = 0;
  inflate.onData = (chunk) => {
    const part = chunk as Uint8Array;
    length += part.length;
    if (length > mostBytes) throw new TooLarge();
    chunks.push(part);
  };
  inflate.push(bytes, true);
  const status: number = inflate.err;
  if (status !== 0) throw new Error(`its compressed data is damaged (${inflate.msg})`);
  const out = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    out.set(chunk, at);
    at += chunk.length;
  }
  return out.buffer;
}

/** PackBits unpacks each pair of bytes to 128 at the most. */
function packedLength(compression: number, bytes: Uint8Array): number {
  if (compression !== Compression.packBits) return bytes.length;
  let length = 0;
  for (let at = 0; at < bytes.length; ) {
    const header = (bytes[at]! << 24) >> 24;
    length += Math.abs(header) + 1;
    at += header < 0 ? 2 : header + 2;
  }
  return length;
}

const CLEAR = 256;
const END = 257;
const MOST_CODES = 4096;

/**
 * LZW data (TIFF 6.0, section 13) unpacked; throws for more than `mostBytes`, and for codes that name no entry yet, which
 * otherwise could make an entry that goes round in a circle.
 */
export function unpackLzw(bytes: Uint8Array, mostBytes: number): ArrayBuffer {
  // An entry is an earlier entry and one byte more.
  const prefixes = new Uint16Array(MOST_CODES);
  const lengths = new Uint32Array(MOST_CODES).fill(1);
  const lastBytes = Uint8Array.from({ length: MOST_CODES }, (_, code) => code & 255);
  const firstBytes = Uint8Array.from(lastBytes);
  let out = new Uint8Array(Math.min(mostBytes, 4 * bytes.length + 1024));
  let total = 0;
  let entries = 258;
  let width = 9;
  let before = -1;
  const bits = bytes.length * 8;
  for (let position = 0; position + width <= bits; ) {
    const code = codeAt(bytes, position, width);
    position += width;
    if (code === END) break;
    if (code === CLEAR) {
      [entries, width, before] = [258, 9, -1];
      continue;
    }
    if (code > entries || (code === entries && before < 0)) throw new Error('its LZW data is damaged');
    if (before >= 0 && entries < MOST_CODES) {
      prefixes[entries] = before;
      lengths[entries] = lengths[before]! + 1;
      firstBytes[entries] = firstBytes[before]!;
      lastBytes[entries] = firstBytes[code === entries ? before : code]!;
      entries++;
    } else if (code >= entries) throw new Error('its LZW data is damaged');
    const length = lengths[code]!;
    if (total + length > mostBytes) throw new TooLarge();
    if (total + length > out.length) out = grown(out, Math.min(mostBytes, 2 * (total + length)));
    let entry = code;
    for (let at = total + length - 1; at >= total; at--) {
      out[at] = lastBytes[entry]!;
      entry = prefixes[entry]!;
    }
    total += length;
    before = code;
    if (entries + 1 >= 2 ** width) {
      if (width < 12) width++;
      else before = -1;
    }
  }
  return out.slice(0, total).buffer;
}

function grown(bytes: Uint8Array<ArrayBuffer>, size: number): Uint8Array<ArrayBuffer> {
  const larger = new Uint8Array(size);
  larger.set(bytes);
  return larger;
}

function codeAt(bytes: Uint8Array, position: number, width: number): number {
  const at = position >> 3;
  const three = (bytes[at]! << 16) | ((bytes[at + 1] ?? 0) << 8) | (bytes[at + 2] ?? 0);
  return (three >> (24 - (position & 7) - width)) & ((1 << width) - 1);
}
