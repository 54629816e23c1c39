/** Brings files in: what was open last or the demo at the start, then whatever the person asks for. */

import { parseCourseText } from '../../../core/course/parse.ts';
import { parsePlayerText } from '../../../core/player/parse.ts';
import type { Fault, Result } from '../../../core/result.ts';
import type { FileEntry, FileKind, Host, HostAnswer, OpenedFile } from '../../../electron/contract/host.ts';
import type { Duties } from '../duties.ts';
import { changeOfSettings } from '../settings-change.ts';
import { wordsOf } from '../use-words.ts';
import type { Store } from '../store.ts';
import { giveUpLeftBehind, keepLeftBehind, offerLeftBehind } from './left-behind.ts';
import { nextFrame } from './next-frame.ts';
import { TOUR_STEPS } from '../../tour/steps.ts';

type Known = 'course' | 'player';

/**
 * Learns what the host is and how the person left things. What was chosen on screen meanwhile stays, and is kept. Never
 * rejects: what fails becomes a notice.
 */
export async function readSettings(store: Store, host: Host): Promise<void> {
  const { dispatch } = store;
  const before = store.state().settings;
  const [info, settings] = await Promise.all([host.info(), host.readSettings()]);
  if (info.ok) dispatch({ type: 'host-connected', info: info.value });
  else tellTrouble(store, wordsOf(store.state()).bar.noAnswer, info.message);
  if (!settings.ok) return;
  const { language, units, theme } = store.state().settings;
  dispatch({ type: 'settings-read', settings: settings.value });
  const read = store.state().settings;
  if (language !== undefined && language !== before.language) dispatch({ type: 'language-set', language });
  if (units !== before.units) dispatch({ type: 'units-set', units });
  if (theme !== before.theme) dispatch({ type: 'theme-set', theme });
  const wanted = store.state().settings;
  const change = changeOfSettings(read, wanted);
  if (change !== null) {
    const kept = await host.writeSettings(change.settings, change.was);
    if (!kept.ok) tellTrouble(store, wordsOf(store.state()).bar.settingsNotKept, kept.message);
  }
  if (settings.value.tourSeen !== true) dispatch({ type: 'tour-shown', step: TOUR_STEPS[0].name });
}

/** Opens a course and a player; `listed` is the host's list of files. Never rejects: what fails becomes a notice. */
export async function startFiles(store: Store, host: Host, listed = host.list()): Promise<void> {
  const files = takeList(store, await listed);
  const { lastCourse, lastPlayer } = store.state().settings;
  const courses = inOrder(files, 'course', lastCourse);
  const players = inOrder(files, 'player', lastPlayer);
  // both are on their way before either is read
  const [course, player] = [courses, players].map(([first]) => first && host.open(first.token));
  await openFirst(store, host, 'course', courses, course);
  // the map is drawn before the player is read
  await nextFrame();
  await openFirst(store, host, 'player', players, player);
  followDisk(store, host);
  await offerLeftBehind(store, host);
}

/** The last file, then those that are shipped, then the others of its kind. */
function inOrder(files: readonly FileEntry[], kind: Known, last: string | null): readonly FileEntry[] {
  const ofKind = files.filter((file) => file.kind === kind);
  return [
    ...ofKind.filter((file) => file.token === last),
    ...ofKind.filter((file) => file.token !== last && file.readOnly),
    ...ofKind.filter((file) => file.token !== last && !file.readOnly),
  ];
}

/** The first in order that opens; `first` is what the host answers for the very first. */
async function openFirst(
  store: Store,
  host: Host,
  kind: Known,
  order: readonly FileEntry[],
  first: ReturnType<Host['open']> | undefined,
): Promise<void> {
  for (const [i, file] of order.entries()) {
    if (await openEntry(store, host, kind, file, i === 0 ? first : undefined)) return;
  }
}

async function openEntry(
  store: Store,
  host: Host,
  kind: Known,
  entry: FileEntry,
  opened = host.open(entry.token),
): Promise<boolean> {
  const answer = await opened;
  if (answer.ok) return take(store, kind, answer.value);
  tellTrouble(store, wordsOf(store.state()).bar.couldNotBeOpened({ name: entry.name }), answer.message);
  return false;
}

/** Parses and shows a file, or lists its faults and leaves what is open alone. */
function take(store: Store, kind: Known, file: OpenedFile): boolean {
  return kind === 'course'
    ? show(store, kind, file, parseCourseText(file.text), (document) =>
        store.dispatch({ type: 'course-opened', document }),
      )
    : show(store, kind, file, parsePlayerText(file.text), (document) =>
        store.dispatch({ type: 'player-opened', document }),
      );
}

function show<T>(
  store: Store,
  fileKind: Known,
  { entry, text, revision }: OpenedFile,
  parsed: Result<T, readonly Fault[]>,
  open: (document: { entry: FileEntry; text: string; revision: string; value: T }) => void,
): boolean {
  if (!parsed.ok) {
    store.dispatch({ type: 'file-refused', fileKind, fileName: entry.name, faults: parsed.error });
    return false;
  }
  open({ entry, text, revision, value: parsed.value });
  return true;
}

async function listFiles(store: Store, host: Host): Promise<readonly FileEntry[]> {
  return takeList(store, await host.list());
}

function takeList(store: Store, files: HostAnswer<readonly FileEntry[]>): readonly FileEntry[] {
  if (files.ok) {
    store.dispatch({ type: 'files-listed', files: files.value });
    return files.value;
  }
  store.dispatch({ type: 'files-listed', files: [] });
  tellTrouble(store, wordsOf(store.state()).bar.noFileList, files.message);
  return [];
}

/** Tells of changes that somebody else made to what is open; keeps the list of files fresh. */
function followDisk(store: Store, host: Host): void {
  host.watch((change) => {
    const { course, player } = store.state();
    const open = [course?.entry, player?.entry].find((entry) => entry?.token === change.token);
    if (open !== undefined && change.change === 'changed') void tellIfOther(store, host, open);
    if (open !== undefined && change.change === 'removed') store.dispatch({ type: 'file-gone', entry: open });
    if (change.change !== 'changed') void listFiles(store, host);
  });
}

/** News of an own save may come after the next one: only a file that is not what the window has was written by others. */
async function tellIfOther(store: Store, host: Host, entry: FileEntry): Promise<void> {
  const answer = await host.open(entry.token);
  const { course, player } = store.state();
  const open = [course, player].find((document) => document?.entry.token === entry.token);
  const isKnown =
    open === undefined || open === null || (answer.ok && answer.value.revision === open.revision);
  if (!isKnown) store.dispatch({ type: 'file-changed-on-disk', entry });
}

function tellTrouble(store: Store, title: string, message: string): void {
  store.dispatch({ type: 'trouble-met', title, message });
}

export function fileDuties(store: Store, host: Host): Duties {
  const known = (kind: FileKind): kind is Known => kind !== 'round';
  return {
    openFile: async (kind, token) => {
      const entry = store.state().files?.find((file) => file.token === token);
      if (entry !== undefined && known(kind)) await openEntry(store, host, kind, entry);
    },
    importFile: async (kind) => {
      const answer = await host.importFile(kind);
      if (!known(kind)) return;
      if (!answer.ok) {
        if (answer.failure !== 'cancelled')
          tellTrouble(store, wordsOf(store.state()).bar.notBroughtIn, answer.message);
        return;
      }
      await listFiles(store, host);
      take(store, kind, answer.value);
    },
    printHole: async () => report(store, await host.print()),
    keepLeftBehind: async (notice) => {
      const made = await keepLeftBehind(store, host, notice);
      if (typeof made === 'string') {
        tellTrouble(store, wordsOf(store.state()).bar.notKeptAsFile({ name: notice.name }), made);
        return;
      }
      await listFiles(store, host);
      if (known(notice.fileKind)) take(store, notice.fileKind, made);
    },
    giveUpLeftBehind: async (notice) => {
      const why = await giveUpLeftBehind(store, host, notice);
      if (why !== null) tellTrouble(store, wordsOf(store.state()).bar.notGivenUp({ name: notice.name }), why);
    },
  };
}

function report(store: Store, answer: HostAnswer<unknown>): void {
  if (!answer.ok && answer.failure !== 'cancelled')
    tellTrouble(store, wordsOf(store.state()).bar.printingFailed, answer.message);
}
