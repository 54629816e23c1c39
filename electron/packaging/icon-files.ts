/** Containers of icons: several PNG pictures of one drawing in a file. */

/** Windows' ICO (an ICONDIR and one ICONDIRENTRY each; PNG content as Windows Vista and later read it). */
export function icoOf(pictures: ReadonlyMap<number, Uint8Array>): Uint8Array {
  const chosen = [...pictures].filter(([size]) => size <= 256).sort(([a], [b]) => a - b);
  const head = Buffer.alloc(6 + 16 * chosen.length);
  head.writeUInt16LE(1, 2);
  head.writeUInt16LE(chosen.length, 4);
  let offset = head.byteLength;
  chosen.forEach(([size, png], i) => {
    const at = 6 + 16 * i;
    // One byte each: 0 stands for 256.
    head.writeUInt8(size % 256, at);
    head.writeUInt8(size % 256, at + 1);
    head.writeUInt16LE(1, at + 4);
    head.writeUInt16LE(32, at + 6);
    head.writeUInt32LE(png.byteLength, at + 8);
    head.writeUInt32LE(offset, at + 12);
    offset += png.byteLength;
  });
  return Buffer.concat([head, ...chosen.map(([, png]) => png)]);
}

/** macOS' ICNS: four letters and a length before each picture; which letters stand for which size is fixed. */
const ICNS_TYPES: readonly (readonly [string, number])[] = [
  ['icp4', 16],
  ['icp5', 32],
  ['ic07', 128],
  ['ic08', 256],
  ['ic09', 512],
  ['ic10', 1024],
  ['ic11', 32],
  ['ic12', 64],
  ['ic13', 256],
  ['ic14', 512],
];

export function icnsOf(pictures: ReadonlyMap<number, Uint8Array>): Uint8Array {
  const parts = ICNS_TYPES.map(([type, size]) => {
    const png = pictures.get(size);
    if (png === undefined) throw new Error(`There is no picture of ${size} pixels.`);
    return block(type, png);
  });
  return block('icns', Buffer.concat(parts));
}

function block(type: string, content: Uint8Array): Uint8Array {
  const head = Buffer.alloc(8);
  head.write(type, 'latin1');
  head.writeUInt32BE(8 + content.byteLength, 4);
  return Buffer.concat([head, content]);
}
