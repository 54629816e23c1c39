/**
 * Looks at the directory of a TIFF file before any library does: every value must lie inside the file, so that no
 * number in it can ask for more memory than the file has. TIFF 6.0 (1992), section 2; BigTIFF as in libtiff's design.
 */

import { told, type Told } from '../../words/told.ts';

/** Bytes of a value, by TIFF type code. */
const TYPE_BYTES: Readonly<Record<number, number>> = {
  1: 1,
  2: 1,
  3: 2,
  4: 4,
  5: 8,
  6: 1,
  7: 1,
  8: 2,
  9: 4,
  10: 8,
  11: 4,
  12: 8,
  13: 4,
  16: 8,
  17: 8,
  18: 8,
};

const MOST_ENTRIES = 500;

/** Whether the bytes begin as a TIFF file does. */
export function isTiff(bytes: Uint8Array): boolean {
  const [a, b, c, d] = bytes;
  if (a === 0x49 && b === 0x49) return (c === 42 || c === 43) && d === 0;
  return a === 0x4d && b === 0x4d && c === 0 && (d === 42 || d === 43);
}

/** Why the first image's directory cannot be trusted; undefined where it can. */
export function directoryFault(buffer: ArrayBuffer): Told | undefined {
  const view = new DataView(buffer);
  const size = buffer.byteLength;
  if (size < 16 || !isTiff(new Uint8Array(buffer, 0, 4)))
    return told(({ courseImport }) => courseImport.faults.tiff.beginning);
  const little = view.getUint8(0) === 0x49;
  const isBig = view.getUint16(2, little) === 43;
  const wide = (at: number) => Number(view.getBigUint64(at, little));
  const start = isBig ? wide(8) : view.getUint32(4, little);
  const countBytes = isBig ? 8 : 2;
  if (start + countBytes > size) return told(({ courseImport }) => courseImport.faults.tiff.cutOff);
  const entries = isBig ? wide(start) : view.getUint16(start, little);
  const entryBytes = isBig ? 20 : 12;
  if (entries < 1 || entries > MOST_ENTRIES)
    return told(({ courseImport }) => courseImport.faults.tiff.entries, { count: entries });
  if (start + countBytes + entries * entryBytes > size)
    return told(({ courseImport }) => courseImport.faults.tiff.cutOff);
  for (let i = 0; i < entries; i++) {
    const at = start + countBytes + i * entryBytes;
    const tag = view.getUint16(at, little);
    const bytesEach = TYPE_BYTES[view.getUint16(at + 2, little)];
    // types that nobody knows are passed over by readers
    if (bytesEach === undefined) continue;
    const count = isBig ? wide(at + 4) : view.getUint32(at + 4, little);
    const bytes = count * bytesEach;
    const inline = isBig ? 8 : 4;
    if (bytes <= inline) continue;
    const offset = isBig ? wide(at + 12) : view.getUint32(at + 8, little);
    if (!(offset + bytes <= size)) return told(({ courseImport }) => courseImport.faults.tiff.tag, { tag });
  }
  return undefined;
}
