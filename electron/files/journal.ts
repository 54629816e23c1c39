/**
 * Journals of one file of the workspace, in `.holewright-journal` beside it. Each sitting writes a file of its
 * own, so what an earlier one left behind is never written over; it stays until it is cleared.
 */

import { createHash, randomBytes } from 'node:crypto';
import { join } from 'node:path';
import type { Journal } from '../contract/host.ts';
import { errorCode } from './answer.ts';
import type { Disk, End, PlainFile } from './disk.ts';
import {
  entryLine,
  headLine,
  type JournalLine,
  markLine,
  type ReadLines,
  readLines,
  unsavedEntries,
} from './journal-lines.ts';
import { replaceFile } from './replace.ts';

export const JOURNAL_FOLDER = '.holewright-journal';
/** Largest journal file. Snapshots of a large course come to this; saving and clearing makes room. */
export const LARGEST_JOURNAL_BYTES = 256 * 1024 * 1024;

export interface Sitting {
  /** Names this sitting's journal. */
  readonly session: string;
  /** Adds an entry; its number, once it is on the disk. Throws the disk's errors, `ETOOLARGE` where there is no more room. */
  readonly append: (baseRevision: string, text: string) => Promise<number>;
  /** Notes that a save of `revision` is about to include the entries up to `upTo`. */
  readonly mark: (revision: string, upTo: number) => Promise<void>;
  /** What the sittings of this file have not saved, oldest first. Journals all of whose entries are saved are removed. */
  readonly read: (revisionOnDisk: string | null) => Promise<readonly Journal[]>;
  /** Drops entries of any sitting. */
  readonly clear: (session: string, upTo: number) => Promise<void>;
  /** Ends the sitting: its journal goes where everything in it is saved, and stays otherwise. */
  readonly end: (revisionOnDisk: string | null) => Promise<void>;
}

interface JournalFile {
  readonly path: string;
  readonly order: number;
  readonly session: string;
  readonly read: ReadLines;
}

/** A sitting at the file `name` of `workspace`. `now` is milliseconds since 1970. */
export function sittingAt(disk: Disk, workspace: string, name: string, now: () => number): Sitting {
  const folder = join(workspace, JOURNAL_FOLDER);
  const session = randomBytes(18).toString('base64url');
  let latest = 0;
  let own: { readonly path: string; readonly end: End } | null = null;

  const pathOf = (order: number): string =>
    join(folder, order === 1 ? `${name}.log` : `${name}.${order}.log`);

  /** Place of a file among this file's journals, null for other names. */
  const orderOf = (file: PlainFile): number | null => {
    if (file.name === `${name}.log`) return 1;
    const number = file.name.startsWith(`${name}.`)
      ? /^(\d{1,6})\.log$/u.exec(file.name.slice(name.length + 1))?.[1]
      : undefined;
    return number === undefined ? null : Number(number);
  };

  const realFolder = async (): Promise<void> => {
    if ((await disk.realPath(folder)) !== folder) {
      throw Object.assign(new Error('the journal folder is a link'), { code: 'ELOOP' });
    }
  };

  /** Starts a file that nobody has; what is in it is on the disk when this resolves. */
  const begin = async (first: Uint8Array): Promise<void> => {
    await disk.makeInside(folder);
    await realFolder();
    await disk.syncFolder(workspace);
    const bytes = Buffer.concat([headLine({ session, startedAt: now() }), first]);
    for (let order = 1; ; order++) {
      const path = pathOf(order);
      try {
        await disk.writeNew(path, bytes);
      } catch (error) {
        if (errorCode(error) === 'EEXIST') continue;
        await disk.remove(path).catch(() => undefined);
        throw error;
      }
      try {
        await disk.syncFolder(folder);
        own = { path, end: await disk.look(path) };
        return;
      } catch (error) {
        await disk.remove(path).catch(() => undefined);
        throw error;
      }
    }
  };

  const add = async (line: Uint8Array): Promise<void> => {
    if (own !== null) {
      const { path, end } = own;
      if (end.bytes + line.byteLength > LARGEST_JOURNAL_BYTES) {
        throw Object.assign(new Error('the journal is full'), { code: 'ETOOLARGE' });
      }
      try {
        await disk.append(path, end, line);
        own = { path, end: { identity: end.identity, bytes: end.bytes + line.byteLength } };
        return;
      } catch (error) {
        // Deleted or exchanged by somebody: a new file takes over.
        if (!['ENOENT', 'ECHANGED', 'ELOOP', 'ENOTPLAIN'].includes(errorCode(error))) throw error;
        own = null;
      }
    }
    await begin(line);
  };

  const files = async (): Promise<readonly JournalFile[]> => {
    let found: readonly PlainFile[];
    try {
      await realFolder();
      found = await disk.plainFiles(folder);
    } catch (error) {
      if (errorCode(error) === 'ENOENT') {
        // Nothing was ever written down, unless it is the workspace that is missing.
        await disk.realPath(workspace);
        return [];
      }
      throw error;
    }
    const journals: JournalFile[] = [];
    for (const file of found) {
      const order = orderOf(file);
      if (order === null) continue;
      const path = join(folder, file.name);
      const read = readLines(await disk.read(path, 2 * LARGEST_JOURNAL_BYTES));
      journals.push({ path, order, read, session: read.head?.session ?? nameless(file.name) });
    }
    return journals.sort((a, b) => a.order - b.order);
  };

  const bySession = async (): Promise<ReadonlyMap<string, readonly JournalFile[]>> => {
    const sessions = new Map<string, JournalFile[]>();
    for (const file of await files()) {
      sessions.set(file.session, [...(sessions.get(file.session) ?? []), file]);
    }
    return sessions;
  };

  const dropFrom = async (file: JournalFile, upTo: number): Promise<void> => {
    const isOwn = own?.path === file.path;
    const kept = file.read.lines.filter((line) => numberOf(line) > upTo);
    if (!kept.some(({ kind }) => kind === 'entry')) {
      await disk.remove(file.path);
      if (isOwn) own = null;
      await disk.syncFolder(folder);
      return;
    }
    const head = { session: file.session, startedAt: file.read.head?.startedAt ?? 0 };
    const bytes = Buffer.concat([headLine(head), ...kept.map(lineOf)]);
    let fault: unknown = null;
    await replaceFile(disk, file.path, bytes, undefined, (error) => (fault = error));
    if (isOwn) own = { path: file.path, end: await disk.look(file.path) };
    if (fault !== null) throw fault as Error;
  };

  const clear = async (wanted: string, upTo: number): Promise<void> => {
    for (const file of (await bySession()).get(wanted) ?? []) {
      if (!file.read.isNewer) await dropFrom(file, upTo);
    }
  };

  return {
    session,
    append: async (baseRevision, text) => {
      const number = latest + 1;
      const line = entryLine({ number, writtenAt: now(), baseRevision, text });
      if (line.byteLength > LARGEST_JOURNAL_BYTES) {
        throw Object.assign(new Error('the entry is too large'), { code: 'ETOOLARGE' });
      }
      await add(line);
      latest = number;
      return number;
    },
    mark: async (revision, upTo) => {
      if (own !== null) await add(markLine({ saves: revision, upTo }));
    },
    read: async (revisionOnDisk) => {
      const journals: Journal[] = [];
      for (const [name, parts] of await bySession()) {
        const entries = unsavedEntries(
          parts.flatMap(({ read }) => read.lines),
          revisionOnDisk,
        );
        const lostBytes = parts.reduce((sum, { read }) => sum + read.lostBytes, 0);
        const isNewer = parts.some(({ read }) => read.isNewer);
        if (entries.length === 0 && lostBytes === 0 && !isNewer) {
          if (name !== session) for (const { path } of parts) await disk.remove(path).catch(() => undefined);
          continue;
        }
        const startedAt = parts[0]?.read.head?.startedAt ?? 0;
        journals.push({ journal: name, isOwn: name === session, startedAt, entries, lostBytes, isNewer });
      }
      return journals.sort((a, b) => a.startedAt - b.startedAt);
    },
    clear,
    end: async (revisionOnDisk) => {
      if (own === null) return;
      const mine = (await bySession()).get(session) ?? [];
      const left = unsavedEntries(
        mine.flatMap(({ read }) => read.lines),
        revisionOnDisk,
      );
      if (left.length === 0) await clear(session, Infinity);
    },
  };
}

/** A name for a journal whose head is lost. */
function nameless(fileName: string): string {
  return createHash('sha256').update(fileName).digest('base64url').slice(0, 32);
}

function numberOf(line: JournalLine): number {
  return line.kind === 'entry' ? line.entry.number : line.mark.upTo;
}

function lineOf(line: JournalLine): Uint8Array {
  return line.kind === 'entry' ? entryLine(line.entry) : markLine(line.mark);
}
