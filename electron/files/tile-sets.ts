/**
 * Single tiles out of MBTiles files (MBTiles 1.3): an SQLite file with the tables or views `metadata` and
 * `tiles`. Rows of tiles are counted from the south there (as in TMS), from the north here.
 */

import { constants } from 'node:fs';
import { type FileHandle, open } from 'node:fs/promises';
import { told } from '../../core/words/told.ts';
import type { HostAnswer, Tile, TileSetInfo } from '../contract/host.ts';
import { errorCode, good, type Refusal, refused } from './answer.ts';
import { attachmentKind } from './attachment-kinds.ts';
import type { Attachments, KnownAttachment } from './attachments.ts';
import { isGivenUp, openSqliteFile, type SqliteFile } from './sqlite-file.ts';
import { oneAtATime } from './turns.ts';

/** Files kept open, and for how long after the last tile. */
const MOST_OPEN = 4;
const KEPT_OPEN_MS = 20_000;

export interface TileSets {
  readonly info: (attachment: string) => Promise<HostAnswer<TileSetInfo>>;
  readonly tile: (attachment: string, zoom: number, x: number, y: number) => Promise<HostAnswer<Tile | null>>;
  /** Closes all files. */
  readonly close: () => Promise<void>;
}

interface OpenSet {
  readonly sqlite: SqliteFile;
  readonly file: FileHandle;
  readonly stamp: string;
}

// Absent on Windows.
const noFollow = (constants.O_NOFOLLOW as number | undefined) ?? 0;

export function openTileSets(attachments: Attachments): TileSets {
  /** By attachment, the one used last at the end. */
  const sets = new Map<string, OpenSet>();
  const inTurn = oneAtATime();
  let closing: NodeJS.Timeout | null = null;

  const shut = async (token: string): Promise<void> => {
    const set = sets.get(token);
    sets.delete(token);
    if (set === undefined) return;
    set.sqlite.close();
    await set.file.close();
  };

  const shutAll = async (): Promise<void> => {
    for (const token of [...sets.keys()]) await shut(token);
  };

  const openSet = async ({ attachment, path, stamp }: KnownAttachment): Promise<OpenSet> => {
    const { token } = attachment;
    const before = sets.get(token);
    if (before?.stamp === stamp) {
      sets.delete(token);
      sets.set(token, before);
      return before;
    }
    await shut(token);
    const [oldest] = sets.keys();
    if (sets.size >= MOST_OPEN && oldest !== undefined) await shut(oldest);
    const file = await open(path, constants.O_RDONLY | noFollow);
    try {
      const set = { file, stamp, sqlite: await openSqliteFile(file.fd) };
      sets.set(token, set);
      return set;
    } catch (error) {
      await file.close();
      throw error;
    }
  };

  const inSet = (
    token: string,
  ): (<T>(work: (sqlite: SqliteFile) => HostAnswer<T>) => Promise<HostAnswer<T>>) => {
    return (work) =>
      inTurn(async () => {
        const found = await attachments.find(token);
        if (!found.ok) return found;
        const { kind, name } = found.value.attachment;
        if (kind !== 'mbtiles')
          return refused(
            'unfit',
            told(({ refusals }) => refusals.attachments.noTiles, { name }),
          );
        if (closing !== null) clearTimeout(closing);
        closing = setTimeout(() => void inTurn(shutAll), KEPT_OPEN_MS);
        closing.unref();
        try {
          return work((await openSet(found.value)).sqlite);
        } catch (error) {
          return refusedTile(error, name);
        }
      });
  };

  return {
    info: (token) => inSet(token)((sqlite) => good(infoOf(sqlite))),
    tile: (token, zoom, x, y) =>
      inSet(token)((sqlite) => {
        const across = 2 ** zoom;
        if (x >= across || y >= across) return good(null);
        const [row] = sqlite.rows(
          'SELECT tile_data FROM tiles WHERE zoom_level = ?1 AND tile_column = ?2 AND tile_row = ?3 LIMIT 1',
          [zoom, x, across - 1 - y],
        );
        const data = row?.[0];
        if (!(data instanceof Uint8Array) || data.byteLength === 0) return good(null);
        // A copy of its own: what SQLite gave is a piece of its memory.
        return good({ mediaType: mediaTypeOf(data), bytes: Uint8Array.from(data).buffer });
      }),
    close: () => {
      if (closing !== null) clearTimeout(closing);
      return inTurn(shutAll);
    },
  };
}

function mediaTypeOf(tile: Uint8Array): string {
  const kind = attachmentKind(tile);
  return kind?.kind === 'picture' ? kind.mediaType : 'application/octet-stream';
}

const formats: Readonly<Record<string, string>> = {
  png: 'image/png',
  jpg: 'image/jpeg',
  jpeg: 'image/jpeg',
  webp: 'image/webp',
};

function infoOf(sqlite: SqliteFile): TileSetInfo {
  const metadata = new Map<string, string>();
  for (const [name, value] of sqlite.rows('SELECT name, value FROM metadata LIMIT 1000')) {
    if (typeof name === 'string' && (typeof value === 'string' || typeof value === 'number'))
      metadata.set(name, String(value).slice(0, 2000));
  }
  const zoom = (name: string): number | null => {
    const text = metadata.get(name) ?? '';
    const value = Number(text);
    return text !== '' && Number.isInteger(value) && value >= 0 && value <= 30 ? value : null;
  };
  return {
    name: metadata.get('name') ?? null,
    mediaType: formats[metadata.get('format') ?? ''] ?? 'application/octet-stream',
    attribution: metadata.get('attribution') ?? null,
    leastZoom: zoom('minzoom'),
    mostZoom: zoom('maxzoom'),
    bounds: boundsIn(metadata.get('bounds')),
  };
}

function boundsIn(text: string | undefined): TileSetInfo['bounds'] {
  const [west, south, east, north, ...more] = (text ?? '').split(',').map(Number);
  if (west === undefined || south === undefined || east === undefined || north === undefined) return null;
  const isSane =
    more.length === 0 &&
    [west, east].every((degrees) => Math.abs(degrees) <= 180) &&
    [south, north].every((degrees) => Math.abs(degrees) <= 90) &&
    south < north;
  return isSane ? [west, south, east, north] : null;
}

function refusedTile(error: unknown, name: string): Refusal {
  if (isGivenUp(error)) {
    return refused(
      'unfit',
      told(({ refusals }) => refusals.attachments.noIndex, { name }),
    );
  }
  // The system's own words would name the path.
  const reason = errorCode(error) || (error instanceof Error ? error.message.slice(0, 200) : 'damaged');
  return refused(
    'unfit',
    told(({ refusals }) => refusals.attachments.damagedTiles, { name, reason }),
  );
}
