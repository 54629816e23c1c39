/**
 * The files that a page may work with: those of one workspace folder, and the demo files shipped with the
 * program, read-only. The page names files by tokens which only the store turns into paths, so no request
 * can reach outside the two folders.
 */

import { createHash } from 'node:crypto';
import { basename, join } from 'node:path';
import { told, type Told } from '../../core/words/told.ts';
import type { FileEntry, FileKind, HostAnswer, KeptCopy, OpenedFile, SaveRequest } from '../contract/host.ts';
import { LARGEST_TEXT_BYTES } from '../contract/wire.ts';
import { errorCode, good, reasonOf, type Refusal, refused, refusedByDisk } from './answer.ts';
import { keepCopy, keptCopies, readCopy } from './backups.ts';
import { bytesOf, type ContentCheck, readsAsItsKind, revisionOf, textOf } from './content.ts';
import { type Disk, nodeDisk } from './disk.ts';
import { refusedIn } from './folder-gone.ts';
import { kindFinder } from './kinds.ts';
import { freeName, safeName } from './names.ts';
import { makeFile, replaceFile, sweepUnfinished } from './replace.ts';
import { oneAtATime } from './turns.ts';

export interface FileStoreParts {
  /** Made where it is missing. */
  readonly workspace: string;
  /** Folder of the demo files, null where there are none. */
  readonly demoFolder: string | null;
  readonly disk?: Disk;
  /** Milliseconds since 1970. */
  readonly now?: () => number;
  /** What a file must be to be written or kept as a good copy. */
  readonly check?: ContentCheck;
  /** Told of what went wrong without harm to the person's request, e.g. a copy that could not be kept. */
  readonly notice?: (message: string) => void;
}

/** A file that the store knows, with what only the store may see. */
export interface KnownFile {
  readonly entry: FileEntry;
  readonly path: string;
  readonly stamp: string;
}

export interface FileStore {
  readonly workspaceName: string;
  /** Real path of the workspace. */
  readonly workspace: string;
  readonly disk: Disk;
  readonly known: () => Promise<HostAnswer<readonly KnownFile[]>>;
  readonly find: (token: string) => Promise<HostAnswer<KnownFile>>;
  /** A disk error in the workspace in words. */
  readonly refuse: (error: unknown, doing: Told) => Promise<Refusal>;
  readonly list: () => Promise<HostAnswer<readonly FileEntry[]>>;
  readonly open: (token: string) => Promise<HostAnswer<OpenedFile>>;
  /** `mayWrite` is asked last before the switch to the new content. */
  readonly save: (
    request: SaveRequest,
    mayWrite?: () => Promise<boolean>,
  ) => Promise<HostAnswer<{ readonly revision: string }>>;
  readonly create: (kind: FileKind, suggestedName: string, text: string) => Promise<HostAnswer<OpenedFile>>;
  readonly copies: (token: string) => Promise<HostAnswer<readonly KeptCopy[]>>;
  readonly openCopy: (token: string, keptAt: number) => Promise<HostAnswer<{ readonly text: string }>>;
  /** SHA-256 of a known file's bytes, null where it cannot be read. */
  readonly revision: (file: Pick<KnownFile, 'path'>) => Promise<string | null>;
}

/** The answer to a window that would write what it does not hold. */
export function notHeld(name: string): Refusal {
  return refused(
    'not-claimed',
    told(({ refusals }) => refusals.notHeld, { name }),
  );
}

/** Same file, same token, also after a restart; says nothing about where the folder is. */
export function tokenOf(place: 'workspace' | 'demo', name: string): string {
  return createHash('sha256').update(`${place}\u0000${name}`).digest('base64url').slice(0, 32);
}

/** Makes the workspace where it is missing; refuses with words for the person where that cannot be done. */
export async function openFileStore(parts: FileStoreParts): Promise<HostAnswer<FileStore>> {
  const disk = parts.disk ?? nodeDisk;
  const now = parts.now ?? Date.now;
  const check = parts.check ?? readsAsItsKind;
  const notice = parts.notice ?? (() => undefined);
  let workspace: string;
  let demoFolder: string | null;
  try {
    // A link to a folder is the person's own choice here; what lies inside must be real.
    await disk.makeFolder(parts.workspace).catch(async (error: unknown) => {
      if (errorCode(error) !== 'ENOTDIR') throw error;
      await disk.plainFiles(parts.workspace);
    });
    workspace = await disk.realPath(parts.workspace);
    demoFolder = parts.demoFolder === null ? null : await disk.realPath(parts.demoFolder).catch(() => null);
    await sweepUnfinished(disk, workspace, now());
  } catch (error) {
    return refusedByDisk(
      error,
      told(({ refusals }) => refusals.doing.openingWorkspace, { folder: parts.workspace }),
    );
  }
  const workspaceName = basename(workspace);
  const refuse = (error: unknown, doing: Told): Promise<Refusal> =>
    refusedIn(disk, workspace, workspaceName, error, doing);
  const inTurn = oneAtATime();
  const kindOf = kindFinder(disk);

  const knownIn = async (folder: string, place: 'workspace' | 'demo'): Promise<readonly KnownFile[]> => {
    const files = await disk.plainFiles(folder);
    const known = await Promise.all(
      files.map(async (file): Promise<KnownFile | null> => {
        const path = join(folder, file.name);
        const kind = await kindOf(path, file);
        if (kind === null) return null;
        const token = tokenOf(place, file.name);
        const { name, bytes, modifiedAt } = file;
        return {
          entry: { token, name, kind, readOnly: place === 'demo', modifiedAt, bytes },
          path,
          stamp: file.stamp,
        };
      }),
    );
    return known
      .filter((file) => file !== null)
      .sort((a, b) => (a.entry.name < b.entry.name ? -1 : a.entry.name > b.entry.name ? 1 : 0));
  };

  const unsynced = (name: string) => (error: unknown) => {
    notice(`${name} is written, but a power cut in the next seconds might undo that (${reasonOf(error)}).`);
  };

  const known = async (): Promise<HostAnswer<readonly KnownFile[]>> => {
    try {
      if ((await disk.realPath(workspace)) !== workspace) {
        return refused(
          'not-allowed',
          told(({ refusals }) => refusals.workspaceIsLink, { folder: workspaceName }),
        );
      }
      const demo = demoFolder === null ? [] : await knownIn(demoFolder, 'demo');
      return good([...(await knownIn(workspace, 'workspace')), ...demo]);
    } catch (error) {
      return await refuse(
        error,
        told(({ refusals }) => refusals.doing.readingFolder, { folder: workspaceName }),
      );
    }
  };

  const find = async (token: string): Promise<HostAnswer<KnownFile>> => {
    const all = await known();
    if (!all.ok) return all;
    const file = all.value.find(({ entry }) => entry.token === token);
    return file === undefined
      ? refused(
          'not-found',
          told(({ refusals }) => refusals.noSuchFile),
        )
      : good(file);
  };

  const read = async (file: KnownFile): Promise<HostAnswer<OpenedFile>> => {
    const { name } = file.entry;
    try {
      const bytes = await disk.read(file.path, LARGEST_TEXT_BYTES);
      const text = textOf(bytes, name);
      if (!text.ok) return text;
      const entry = { ...file.entry, bytes: bytes.byteLength };
      return good({ entry, text: text.value, revision: revisionOf(bytes) });
    } catch (error) {
      return refuse(
        error,
        told(({ refusals }) => refusals.doing.opening, { name }),
      );
    }
  };

  const checked = (kind: FileKind, name: string, text: string): HostAnswer<Uint8Array> => {
    const bytes = bytesOf(text, name);
    if (!bytes.ok) return bytes;
    const fault = check(kind, text);
    return fault === null
      ? bytes
      : refused(
          'bad-request',
          told(({ refusals }) => refusals.content.notWritten, { name, fault }),
        );
  };

  const save = async (
    request: SaveRequest,
    mayWrite: () => Promise<boolean>,
  ): Promise<HostAnswer<{ readonly revision: string }>> => {
    const found = await find(request.token);
    if (!found.ok) return found;
    const { path } = found.value;
    const { name, kind, readOnly } = found.value.entry;
    if (readOnly) {
      return refused(
        'read-only',
        told(({ refusals }) => refusals.isDemo, { name }),
      );
    }
    const bytes = checked(kind, name, request.text);
    if (!bytes.ok) return bytes;
    const revision = revisionOf(bytes.value);
    const hasChanged = (revisionOnDisk: string): Refusal => ({
      ...refused(
        'changed-on-disk',
        told(({ refusals }) => refusals.changedOnDisk, { name }),
      ),
      revisionOnDisk,
    });
    const late: Refusal[] = [];
    try {
      const found = revisionOf(await disk.read(path, LARGEST_TEXT_BYTES));
      // Also where somebody else wrote the very same: there is nothing to disagree about.
      if (found === revision) return good({ revision });
      if (request.baseRevision !== null && found !== request.baseRevision) return hasChanged(found);
      const replaced = await replaceFile(
        disk,
        path,
        bytes.value,
        async () => {
          // Looked at again as late as can be: checking and syncing took their time.
          const latest = await disk.read(path, LARGEST_TEXT_BYTES);
          const latestRevision = revisionOf(latest);
          if (request.baseRevision !== null && latestRevision !== request.baseRevision) {
            late.push(hasChanged(latestRevision));
            return false;
          }
          const text = textOf(latest, name);
          const condition = text.ok && check(kind, text.value) === null ? 'good' : 'damaged';
          await keepCopy(disk, workspace, name, latest, condition, now()).catch((error: unknown) => {
            notice(`No copy of the earlier ${name} was kept (${reasonOf(error)}). The save itself goes on.`);
          });
          return mayWrite();
        },
        unsynced(name),
      );
      return replaced ? good({ revision }) : (late[0] ?? notHeld(name));
    } catch (error) {
      return refuse(
        error,
        told(({ refusals }) => refusals.doing.saving, { name }),
      );
    }
  };

  const create = async (
    kind: FileKind,
    suggestedName: string,
    text: string,
  ): Promise<HostAnswer<OpenedFile>> => {
    const wanted = safeName(kind, suggestedName);
    const bytes = checked(kind, wanted, text);
    if (!bytes.ok) return bytes;
    try {
      const taken = (await disk.plainFiles(workspace)).map((file) => file.name);
      let name = freeName(wanted, taken);
      for (;;) {
        try {
          await makeFile(disk, join(workspace, name), bytes.value, unsynced(name));
          break;
        } catch (error) {
          // Something that is no plain file, or that came up a moment ago, has the name.
          if (errorCode(error) !== 'EEXIST' || taken.length > 10_000) throw error;
          taken.push(name);
          name = freeName(wanted, taken);
        }
      }
      const found = await find(tokenOf('workspace', name));
      return found.ok ? await read(found.value) : found;
    } catch (error) {
      return refuse(
        error,
        told(({ refusals }) => refusals.doing.writing, { name: wanted }),
      );
    }
  };

  const fromCopies = async <T>(
    token: string,
    use: (name: string) => Promise<HostAnswer<T>>,
  ): Promise<HostAnswer<T>> => {
    const found = await find(token);
    if (!found.ok) return found;
    const { name } = found.value.entry;
    try {
      return await use(name);
    } catch (error) {
      return refuse(
        error,
        told(({ refusals }) => refusals.doing.readingCopies, { name }),
      );
    }
  };

  return good({
    workspaceName,
    workspace,
    disk,
    known,
    find,
    refuse,
    list: async () => {
      const all = await known();
      return all.ok ? good(all.value.map(({ entry }) => entry)) : all;
    },
    open: async (token) => {
      const found = await find(token);
      return found.ok ? await read(found.value) : found;
    },
    save: (request, mayWrite = () => Promise.resolve(true)) => inTurn(() => save(request, mayWrite)),
    create: (kind, suggestedName, text) => inTurn(() => create(kind, suggestedName, text)),
    copies: (token) => fromCopies(token, async (name) => good(await keptCopies(disk, workspace, name))),
    openCopy: (token, keptAt) =>
      fromCopies(token, async (name) => {
        const text = textOf(await readCopy(disk, workspace, name, keptAt, LARGEST_TEXT_BYTES), name);
        return text.ok ? good({ text: text.value }) : text;
      }),
    revision: async (file) => {
      try {
        return revisionOf(await disk.read(file.path, LARGEST_TEXT_BYTES));
      } catch {
        return null;
      }
    },
  });
}
