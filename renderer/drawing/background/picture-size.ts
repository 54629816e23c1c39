/**
 * The size that a picture says it has, from its head alone, before anything is unpacked: a small file can unpack to more
 * than the memory holds. PNG (W3C PNG, 11.2.2), JPEG (ISO/IEC 10918-1, B.2.2), WebP (RFC 9649, 2.4 to 2.7).
 */

export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** Pixels of the largest picture that is shown, 400 MB of memory, and of the largest tile. */
export const MOST_PICTURE_PIXELS = 100_000_000;
export const MOST_TILE_PIXELS = 4096 * 4096;

/** Null where the kind is not known or the head is cut off. */
export function pictureSize(bytes: Uint8Array): PictureSize | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    if (view.getUint32(0) === 0x89504e47) return { width: view.getUint32(16), height: view.getUint32(20) };
    if (view.getUint16(0) === 0xffd8) return jpegSize(view);
    if (view.getUint32(0) === 0x52494646 && view.getUint32(8) === 0x57454250) return webpSize(view);
  } catch (error) {
    // Past the end of the view.
    if (!(error instanceof RangeError)) throw error;
  }
  return null;
}

function jpegSize(view: DataView): PictureSize | null {
  for (let at = 2; ; ) {
    if (view.getUint8(at) !== 0xff) return null;
    const marker = view.getUint8(at + 1);
    // Fill bytes and markers that stand alone.
    if (marker === 0xff) at += 1;
    else if (marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7)) at += 2;
    else if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker))
      return { width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
    else if (marker === 0xd9 || marker === 0xda) return null;
    else at += 2 + Math.max(2, view.getUint16(at + 2));
  }
}

function webpSize(view: DataView): PictureSize | null {
  switch (view.getUint32(12)) {
    case 0x56503820:
      return { width: view.getUint16(26, true) & 0x3fff, height: view.getUint16(28, true) & 0x3fff };
    case 0x5650384c: {
      const bits = view.getUint32(21, true);
      return { width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 };
    }
    case 0x56503858: {
      const three = (at: number): number => view.getUint16(at, true) + (view.getUint8(at + 2) << 16);
      return { width: three(24) + 1, height: three(27) + 1 };
    }
    default:
      return null;
  }
}
