/** Which kind a file is: by its name, and for a plain `.json` by what it says it is (`holewright.format`). */

import type { FileKind } from '../contract/host.ts';
import type { Disk, PlainFile } from './disk.ts';
import { isSafeName, kindByName } from './names.ts';

/** A plain `.json` larger than this is not looked into and not listed; its owner can give it a telling name. */
const MOST_BYTES_LOOKED_INTO = 8 * 1024 * 1024;

export type KindOf = (path: string, file: PlainFile) => Promise<FileKind | null>;

/** Remembers what it found by path and stamp, so that listing reads a file once only. */
export function kindFinder(disk: Disk): KindOf {
  const seen = new Map<string, { readonly stamp: string; readonly kind: FileKind | null }>();
  return async (path, file) => {
    if (!isSafeName(file.name)) return null;
    const byName = kindByName(file.name);
    if (byName !== 'ask') return byName;
    if (file.bytes > MOST_BYTES_LOOKED_INTO) return null;
    const before = seen.get(path);
    if (before?.stamp === file.stamp) return before.kind;
    const kind = await disk.read(path, MOST_BYTES_LOOKED_INTO).then(
      (bytes) => kindByContent(new TextDecoder().decode(bytes)),
      () => null,
    );
    seen.set(path, { stamp: file.stamp, kind });
    return kind;
  };
}

/** The kind that a JSON text says it is, null where it says none. */
export function kindByContent(text: string): FileKind | null {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return null;
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return null;
  if ('type' in value && value.type === 'FeatureCollection') return 'course';
  const header = 'holewright' in value ? value.holewright : null;
  if (typeof header !== 'object' || header === null || !('format' in header)) return null;
  return header.format === 'player' || header.format === 'round' ? header.format : null;
}
