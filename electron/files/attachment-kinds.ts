/**
 * Which files may be attached to a course, told by their first bytes, not by their names: PNG (W3C PNG,
 * section 5.2), JPEG (ISO/IEC 10918-1, start of image), WebP (RFC 9649), TIFF 6.0 and BigTIFF, PMTiles
 * (version 3, magic and version), MBTiles 1.3 (an SQLite 3 file).
 */

import type { AttachmentKind } from '../contract/host.ts';
import { LARGEST_MAP_BYTES, LARGEST_PICTURE_BYTES } from '../contract/wire.ts';

export interface KindOfAttachment {
  readonly kind: AttachmentKind;
  readonly mediaType: string;
  /** The ending that a copy gets. */
  readonly ending: string;
  readonly mostBytes: number;
}

/** As many first bytes as `attachmentKind` looks at. */
export const TELLING_BYTES = 16;

const picture = (mediaType: string, ending: string): KindOfAttachment => ({
  kind: 'picture',
  mediaType,
  ending,
  mostBytes: LARGEST_PICTURE_BYTES,
});
const map = (kind: AttachmentKind, mediaType: string, ending: string): KindOfAttachment => ({
  kind,
  mediaType,
  ending,
  mostBytes: LARGEST_MAP_BYTES,
});

const png = picture('image/png', '.png');
const jpeg = picture('image/jpeg', '.jpg');
const webp = picture('image/webp', '.webp');
const geotiff = map('geotiff', 'image/tiff', '.tif');
const pmtiles = map('pmtiles', 'application/octet-stream', '.pmtiles');
const mbtiles = map('mbtiles', 'application/vnd.sqlite3', '.mbtiles');

const byEnding: ReadonlyMap<string, KindOfAttachment> = new Map([
  ['.png', png],
  ['.jpg', jpeg],
  ['.jpeg', jpeg],
  ['.webp', webp],
  ['.tif', geotiff],
  ['.tiff', geotiff],
  ['.pmtiles', pmtiles],
  ['.mbtiles', mbtiles],
]);

/** Kind of a file by its first bytes, null where it is none of ours. */
export function attachmentKind(first: Uint8Array): KindOfAttachment | null {
  const text = Buffer.from(first.subarray(0, TELLING_BYTES)).toString('latin1');
  if (text.startsWith('\u0089PNG\r\n\u001a\n')) return png;
  if (text.startsWith('\u00ff\u00d8\u00ff')) return jpeg;
  if (text.startsWith('RIFF') && text.slice(8, 12) === 'WEBP') return webp;
  if (['II*\0', 'MM\0*', 'II+\0', 'MM\0+'].includes(text.slice(0, 4))) return geotiff;
  if (text.startsWith('PMTiles\u0003')) return pmtiles;
  if (text.startsWith('SQLite format 3\0')) return mbtiles;
  return null;
}

/** Kind by the ending of a name: for files that lie there already. */
export function attachmentKindByName(name: string): KindOfAttachment | null {
  const dot = name.lastIndexOf('.');
  return byEnding.get(name.slice(Math.max(0, dot)).toLowerCase()) ?? null;
}

/** A name without an ending that tells a kind of attachment. */
export function withoutAttachmentEnding(name: string): string {
  return attachmentKindByName(name) === null ? name : name.slice(0, name.lastIndexOf('.'));
}
