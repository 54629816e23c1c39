/**
 * Addresses of the loopback server at which bytes travel as they are: an attachment's parts and an MBTiles
 * file's tiles by GET (with `Range`), a new attachment and an export by PUT. Paths are relative to the page's folder.
 */

/** Header of a PUT: the file's name, percent-encoded UTF-8. */
export const NAME_HEADER = 'holewright-name';

export type ByteAddress =
  | { readonly kind: 'export' }
  | { readonly kind: 'attach'; readonly course: string }
  | { readonly kind: 'attachment'; readonly attachment: string }
  | {
      readonly kind: 'tile';
      readonly attachment: string;
      readonly zoom: number;
      readonly x: number;
      readonly y: number;
    };

export function byteAddress(address: ByteAddress): string {
  switch (address.kind) {
    case 'export':
      return 'api/export';
    case 'attach':
      return `api/attach/${address.course}`;
    case 'attachment':
      return `api/attachment/${address.attachment}`;
    case 'tile':
      return `api/tile/${address.attachment}/${address.zoom}/${address.x}/${address.y}`;
  }
}

/** Reads such a path; null for any other. */
export function readByteAddress(path: string): ByteAddress | null {
  if (path === 'api/export') return { kind: 'export' };
  const parts = /^api\/(attach|attachment|tile)\/([A-Za-z0-9_-]{8,64})((?:\/\d{1,10}){3})?$/u.exec(path);
  const [, kind, token, numbers] = parts ?? [];
  if (token === undefined || (kind === 'tile') !== (numbers !== undefined)) return null;
  if (kind === 'attach') return { kind, course: token };
  if (kind === 'attachment') return { kind, attachment: token };
  const [zoom, x, y] = (numbers ?? '').slice(1).split('/').map(Number);
  return { kind: 'tile', attachment: token, zoom: zoom!, x: x!, y: y! };
}
