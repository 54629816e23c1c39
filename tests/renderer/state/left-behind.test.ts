/** Work whose file is gone: offered at the start, made a file again or given up, and never off the disk before that. */

import { describe, expect, it } from 'vitest';
import { openDocumentText, serialise } from '../../../core/course/document.ts';
import { parsePlayerText } from '../../../core/player/parse.ts';
import { roundText } from '../../../core/round/format.ts';
import { newRound, parseRoundText } from '../../../core/round/record.ts';
import type { FileKind, Host, HostAnswer, Journal } from '../../../electron/contract/host.ts';
import { noteText } from '../../../renderer/drawing/files/journal-entry.ts';
import type { LeftBehindNotice } from '../../../renderer/state/app-state.ts';
import {
  giveUpLeftBehind,
  keepLeftBehind,
  offerLeftBehind,
} from '../../../renderer/state/effects/left-behind.ts';
import { workIn } from '../../../renderer/state/effects/left-behind-work.ts';
import { initialState } from '../../../renderer/state/initial.ts';
import { reduce } from '../../../renderer/state/reduce.ts';
import { makeStore } from '../../../renderer/state/store.ts';
import { minimalPlayer } from '../../player/sample-player.ts';
import { smallDocument } from '../drawing/open-course.ts';

const good = <T>(value: T): Promise<HostAnswer<T>> => Promise.resolve({ ok: true, value });

function journalOf(journal: string, texts: readonly string[]): Journal {
  const entries = texts.map((text, i) => ({ number: i + 1, writtenAt: 7, baseRevision: 'r', text }));
  return { journal, isOwn: false, startedAt: 0, entries, lostBytes: 0, isNewer: false };
}

const course = (name: string): string =>
  noteText({ what: 'whole', name, document: JSON.parse(serialise(smallDocument())) as unknown });
const rename = (to: string): string =>
  noteText({
    ...{ what: 'change', name: 'Rename' },
    patches: [{ op: 'replace', path: ['holewright', 'courseName'], value: to }],
  });

/** A host on whose disk one file is gone and has left these journals. */
function hostWith(left: Journal[], newToken = 'gone-token') {
  const disk = { left, made: [] as string[], held: new Set<string>(), full: false, heldElsewhere: false };
  const host = {
    leftBehind: () => good([{ token: 'gone-token', name: 'one.geojson' }]),
    claim: (token: string) => {
      if (disk.heldElsewhere) return good({ isHeld: false, holder: {} });
      disk.held.add(token);
      return good({ isHeld: true });
    },
    release: (token: string) => {
      disk.held.delete(token);
      return good(null);
    },
    readJournal: () => good(disk.left),
    clearJournal: ({ journal }: { journal: string }) => {
      disk.left = disk.left.filter((one) => one.journal !== journal);
      return good(null);
    },
    create: (kind: FileKind, name: string, text: string) => {
      if (disk.full) return Promise.resolve({ ok: false, failure: 'disk-full', message: 'Full.' } as const);
      disk.made.push(text);
      const entry = { token: newToken, name, kind, readOnly: false, modifiedAt: 0, bytes: 1 };
      return good({ entry, text, revision: 'r2' });
    },
  } as unknown as Host;
  const store = makeStore(initialState(['en-GB']), reduce);
  const offered = (): readonly LeftBehindNotice[] =>
    store.state().notices.filter((notice) => notice.kind === 'left-behind');
  return { disk, host, store, offered };
}

describe('what a journal of a gone file holds', () => {
  it('is a course put together from its changes, a player or a round', () => {
    const drawn = workIn(journalOf('a', [course('Begin'), rename('Named again')]));
    const opened = openDocumentText(drawn!.text);
    expect(drawn!.fileKind).toBe('course');
    expect(opened.ok && opened.value.document.holewright['courseName']).toBe('Named again');
    const player = workIn(journalOf('b', [JSON.stringify(minimalPlayer()), '{"name":']));
    expect(player!.fileKind).toBe('player');
    expect(parsePlayerText(player!.text).ok).toBe(true);
    const round = newRound({ name: 'A', course: { name: 'B' }, player: { name: 'C' } });
    const played = workIn(journalOf('c', [roundText(round)]));
    expect(played!.fileKind).toBe('round');
    expect(parseRoundText(played!.text).ok).toBe(true);
    expect(workIn(journalOf('d', ['{}', rename('without a beginning')]))).toBeNull();
  });
});

describe('work whose file is gone', () => {
  it('is offered journal by journal, and leaves the disk only once a file has it', async () => {
    const { disk, host, store, offered } = hostWith(
      [journalOf('first', [course('A')]), journalOf('second', [course('B')])],
      'new-token',
    );
    await offerLeftBehind(store, host);
    expect(offered().map(({ journal, name }) => [journal, name])).toEqual([
      ['first', 'one.geojson'],
      ['second', 'one.geojson'],
    ]);
    disk.full = true;
    expect(await keepLeftBehind(store, host, offered()[0]!)).toBe('Full.');
    expect([disk.left.length, offered().length]).toEqual([2, 2]);
    disk.full = false;
    expect(await keepLeftBehind(store, host, offered()[0]!)).toMatchObject({ revision: 'r2' });
    expect(disk.left.map(({ journal }) => journal)).toEqual(['second']);
    expect(offered().map(({ journal }) => journal)).toEqual(['second']);
    expect(disk.held.size).toBe(1);
    expect(await giveUpLeftBehind(store, host, offered()[0]!)).toBeNull();
    expect([disk.left.length, offered().length, disk.held.size, disk.made.length]).toEqual([0, 0, 0, 1]);
  });

  it('is left to its room once the file is there again under its name', async () => {
    const { disk, host, store, offered } = hostWith([
      journalOf('first', [course('A')]),
      journalOf('second', [course('B')]),
    ]);
    await offerLeftBehind(store, host);
    await keepLeftBehind(store, host, offered()[0]!);
    expect(offered()).toEqual([]);
    expect(disk.left.map(({ journal }) => journal)).toEqual(['second']);
    expect(disk.held.size).toBe(0);
  });

  it('that another window has or that cannot be read is let be', async () => {
    const { disk, host, store, offered } = hostWith([journalOf('strange', ['[]'])]);
    await offerLeftBehind(store, host);
    expect([offered().length, disk.left.length, disk.held.size]).toEqual([0, 1, 0]);
    const other = hostWith([journalOf('a', [course('A')])]);
    other.disk.heldElsewhere = true;
    await offerLeftBehind(other.store, other.host);
    expect(other.offered()).toEqual([]);
  });
});
