/**
 * Editing a file of the workspace: one window at a time has it, of this program or any other, and what that
 * window writes down between saves is kept in a journal. A window that loses its claim (its computer slept and
 * another took over) may still write its journal, which is its own file, but not save.
 */

import { randomBytes } from 'node:crypto';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { told, type Told } from '../../core/words/told.ts';
import type {
  Claim,
  ClaimHolder,
  ClearRequest,
  HostAnswer,
  HostInfo,
  Journal,
  JournalRequest,
  LeftBehind,
  SaveRequest,
} from '../contract/host.ts';
import { errorCode, good, type Refusal, refused } from './answer.ts';
import { bytesOf, revisionOf } from './content.ts';
import { type Sitting, sittingAt } from './journal.ts';
import { leftBehindIn } from './left-behind.ts';
import {
  type Clock,
  type FileLock,
  fileLock,
  type LockNote,
  type LockTimes,
  type OtherLock,
  systemClock,
  usualLockTimes,
} from './lock.ts';
import { type FileStore, notHeld } from './store.ts';
import { type InTurn, oneAtATime } from './turns.ts';

export interface EditingParts {
  readonly store: FileStore;
  readonly shell: HostInfo['shell'];
  readonly computer?: string;
  readonly clock?: Clock;
  readonly times?: LockTimes;
}

/** `window` is the number that a window made for itself when it was loaded. */
export interface Editing {
  readonly claim: (window: string, token: string) => Promise<HostAnswer<Claim>>;
  readonly release: (window: string, token: string) => Promise<HostAnswer<null>>;
  readonly save: (window: string, request: SaveRequest) => Promise<HostAnswer<{ readonly revision: string }>>;
  readonly journal: (
    window: string,
    request: JournalRequest,
  ) => Promise<HostAnswer<{ readonly journal: string; readonly number: number }>>;
  readonly readJournal: (window: string, token: string) => Promise<HostAnswer<readonly Journal[]>>;
  readonly clearJournal: (window: string, request: ClearRequest) => Promise<HostAnswer<null>>;
  /** Files that are gone while their journals are there, and that no window of this program has. */
  readonly leftBehind: () => Promise<HostAnswer<readonly LeftBehind[]>>;
  /** Releases all that a window holds: it is closed, was loaded anew, or has crashed. */
  readonly leave: (window: string) => Promise<void>;
  /** Renews all locks now; a timer does so too. */
  readonly beat: () => Promise<void>;
  /** Releases everything. */
  readonly close: () => Promise<void>;
}

/** One window at one file. */
interface Held {
  readonly window: string;
  readonly file: { readonly entry: LeftBehind; readonly path: string };
  readonly since: number;
  readonly lock: FileLock;
  readonly sitting: Sitting;
  isLost: boolean;
}

export function openEditing(parts: EditingParts): Editing {
  const { store, shell } = parts;
  const computer = parts.computer ?? hostname();
  const clock = parts.clock ?? systemClock;
  const times = parts.times ?? usualLockTimes;
  const all = new Set<Held>();
  const turns = new Map<string, InTurn>();
  let beating: NodeJS.Timeout | null = null;

  /** Work on one file goes one after the other. */
  const inTurn = <T>(token: string, work: () => Promise<T>): Promise<T> => {
    const turn = turns.get(token) ?? oneAtATime();
    turns.set(token, turn);
    return turn(work);
  };

  const heldBy = (window: string, token: string): Held | undefined =>
    [...all].find((held) => held.window === window && held.file.entry.token === token);

  const beat = async (): Promise<void> => {
    await Promise.all(
      [...all].map(async (held) => {
        if (!held.isLost && !(await held.lock.beat())) held.isLost = true;
      }),
    );
  };

  const keepBeating = (): void => {
    if (all.size === 0 && beating !== null) {
      clearInterval(beating);
      beating = null;
    } else if (all.size > 0 && beating === null) {
      beating = setInterval(() => void beat(), times.beatMs);
      beating.unref();
    }
  };

  const letGo = async (held: Held): Promise<void> => {
    all.delete(held);
    keepBeating();
    const revision = await store.revision(held.file);
    // What cannot be tidied now is looked at again by the next one who claims the file.
    await held.sitting.end(revision).catch(() => undefined);
    if (!held.isLost) await held.lock.drop();
  };

  /** In turn at every file, so that a claim still under way is let go of as well. */
  const letGoWhere = async (isMeant: (held: Held) => boolean): Promise<void> => {
    await Promise.all(
      [...turns].map(([token, turn]) =>
        turn(async () => {
          for (const held of [...all].filter(({ file }) => file.entry.token === token)) {
            if (isMeant(held)) await letGo(held);
          }
        }),
      ),
    );
  };

  const placeOf = (note: LockNote | null): ClaimHolder['place'] =>
    note === null || note.computer === computer ? 'other-program' : 'other-computer';

  const heldElsewhere = ({ note, since }: OtherLock): Claim => ({
    isHeld: false,
    holder: { place: placeOf(note), shell: note?.shell ?? null, computer: note?.computer ?? '', since },
  });

  const claim = async (window: string, token: string): Promise<HostAnswer<Claim>> => {
    const mine = heldBy(window, token);
    if (mine !== undefined && !mine.isLost) return good({ isHeld: true });
    const others = [...all].find((held) => held.file.entry.token === token && !held.isLost);
    if (others !== undefined) {
      const { since } = others;
      return good({ isHeld: false, holder: { place: 'other-window', shell, computer, since } });
    }
    const found = await fileToHold(store, token);
    if (!found.ok) return found;
    const { name } = found.value.entry;
    if (found.value.isDemo) {
      return refused(
        'read-only',
        told(({ refusals }) => refusals.isDemo, { name }),
      );
    }
    const since = clock.now();
    const owner = randomBytes(18).toString('base64url');
    const note: LockNote = { owner, shell, computer, process: process.pid, since };
    const lock = fileLock(store.disk, store.workspace, name, note, clock, times);
    try {
      const other = await lock.take();
      if (other !== null) return good(heldElsewhere(other));
    } catch (error) {
      return store.refuse(
        error,
        told(({ refusals }) => refusals.doing.openingToEdit, { name }),
      );
    }
    // A sitting that lost its claim goes on with its journal under the new one.
    const sitting = mine?.sitting ?? sittingAt(store.disk, store.workspace, name, clock.now);
    if (mine !== undefined) all.delete(mine);
    all.add({ window, file: found.value, since, lock, sitting, isLost: false });
    keepBeating();
    return good({ isHeld: true });
  };

  /** Whether the window may write the file at this moment: its lock is looked at, not remembered. */
  const stillHolds = async (held: Held): Promise<boolean> => {
    if (!held.isLost && !(await held.lock.isOurs())) held.isLost = true;
    return !held.isLost;
  };

  const save = async (
    window: string,
    request: SaveRequest,
  ): Promise<HostAnswer<{ readonly revision: string }>> => {
    const held = heldBy(window, request.token);
    if (held === undefined) return notClaimed(store, request.token);
    const { name } = held.file.entry;
    try {
      if (!(await stillHolds(held))) return notHeld(name);
      const bytes = bytesOf(request.text, name);
      if (!bytes.ok) return bytes;
      if (request.journalUpTo !== undefined)
        await held.sitting.mark(revisionOf(bytes.value), request.journalUpTo);
    } catch (error) {
      return store.refuse(
        error,
        told(({ refusals }) => refusals.doing.saving, { name }),
      );
    }
    return store.save(request, () => stillHolds(held));
  };

  const withHeld = async <T>(
    window: string,
    token: string,
    doing: (name: string) => Told,
    work: (held: Held) => Promise<HostAnswer<T>>,
    mayBeLost = false,
  ): Promise<HostAnswer<T>> => {
    const held = heldBy(window, token);
    if (held === undefined) return notClaimed(store, token);
    const { name } = held.file.entry;
    try {
      if (!mayBeLost && !(await stillHolds(held))) return notHeld(name);
      return await work(held);
    } catch (error) {
      if (errorCode(error) === 'ETOOLARGE') {
        return refused(
          'too-large',
          told(({ refusals }) => refusals.journalFull, { name }),
        );
      }
      return store.refuse(error, doing(name));
    }
  };

  return {
    claim: (window, token) => inTurn(token, () => claim(window, token)),
    release: (window, token) =>
      inTurn(token, async () => {
        const held = heldBy(window, token);
        if (held !== undefined) await letGo(held);
        return good(null);
      }),
    save: (window, request) => inTurn(request.token, () => save(window, request)),
    journal: (window, { token, baseRevision, text }) =>
      inTurn(token, () =>
        withHeld(
          window,
          token,
          (name) => told(({ refusals }) => refusals.doing.writingJournal, { name }),
          async ({ sitting }) =>
            good({ journal: sitting.session, number: await sitting.append(baseRevision, text) }),
          true,
        ),
      ),
    readJournal: (window, token) =>
      inTurn(token, () =>
        withHeld(
          window,
          token,
          (name) => told(({ refusals }) => refusals.doing.readingJournal, { name }),
          async ({ sitting, file }) => good(await sitting.read(await store.revision(file))),
        ),
      ),
    clearJournal: (window, { token, journal, upTo }) =>
      inTurn(token, () =>
        withHeld(
          window,
          token,
          (name) => told(({ refusals }) => refusals.doing.clearingJournal, { name }),
          async ({ sitting }) => {
            // What is dropped must be in the file for good first, whatever the save could make sure of.
            await store.disk.syncFolder(store.workspace);
            await sitting.clear(journal, upTo);
            return good(null);
          },
        ),
      ),
    leftBehind: async () => {
      try {
        const left = await leftBehindIn(store.disk, store.workspace);
        return good(left.filter(({ token }) => ![...all].some(({ file }) => file.entry.token === token)));
      } catch (error) {
        const doing = told(({ refusals }) => refusals.doing.readingJournal, { name: store.workspaceName });
        return store.refuse(error, doing);
      }
    },
    leave: (window) => letGoWhere((held) => held.window === window),
    beat,
    close: () => letGoWhere(() => true),
  };
}

/** A file of the workspace, or one that is gone and has left a journal: what is in it may then be read and cleared. */
async function fileToHold(
  store: FileStore,
  token: string,
): Promise<HostAnswer<Held['file'] & { readonly isDemo: boolean }>> {
  const found = await store.find(token);
  if (found.ok) return good({ ...found.value, isDemo: found.value.entry.readOnly });
  if (found.failure !== 'not-found') return found;
  // Where the folder cannot be read the file is not found either.
  const left = await leftBehindIn(store.disk, store.workspace).catch(() => []);
  const entry = left.find((one) => one.token === token);
  return entry === undefined
    ? found
    : good({ entry, path: join(store.workspace, entry.name), isDemo: false });
}

async function notClaimed(store: FileStore, token: string): Promise<Refusal> {
  const found = await store.find(token);
  return found.ok ? notHeld(found.value.entry.name) : found;
}
