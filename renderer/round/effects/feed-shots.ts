/**
 * Writes shots of a round into the player's file (or a copy of a demo player) and opens it, keeping the plan before for
 * comparison; takes them out again. Each is there once at most, and both are steps of the room's undo.
 */

import { firstFault } from '../../../core/words/told.ts';
import type { RecordedShot } from '../../../core/player/format.ts';
import { playerText } from '../../../core/player/format.ts';
import { parsePlayerDocumentText } from '../../../core/player/parse.ts';
import { shotsAsBefore, withoutShotsOfRound, withShotsOfRound } from '../../../core/round/fed-shots.ts';
import { recommendedOf } from '../../../core/round/round-hole.ts';
import type { AppTools } from '../../state/use-app.ts';
import type { Outlook, RoundHoles } from '../state/planned-holes.ts';
import { givingsOf, roomStepsOf } from '../state/room-steps.ts';
import { keepFor } from './keep-wishes.ts';
import type { RoundStore } from '../state/use-round.ts';
import { wordsOf } from '../../state/use-words.ts';

type Shots = readonly RecordedShot[];

/** True when the file has them. What fails becomes a notice. */
export async function feedShots(
  tools: AppTools,
  round: RoundStore,
  shots: Shots,
  holes: RoundHoles,
  outlook: Outlook | null,
): Promise<boolean> {
  const { store } = tools;
  const { player } = store.state();
  if (player === null) return false;
  const remember = (): void =>
    round.dispatch({
      type: 'plan-remembered',
      before: {
        player: player.value,
        expected: outlook?.odds.expected ?? null,
        chance: outlook?.odds.target?.chance ?? null,
        holes: holes.ready.map((hole) => ({
          hole: hole.hole,
          option: recommendedOf(hole.plan),
          expected: recommendedOf(hole.plan).meanStrokes,
        })),
      },
    });
  const edit = (kept: Shots): Shots => withShotsOfRound(kept, shots);
  const written = player.entry.readOnly
    ? await writeCopy(tools, round, edit, remember)
    : await rewrite(tools, player.entry.token, edit, remember);
  if (written === null) return false;
  const { token, before } = written;
  didShots(tools, wordsOf(store.state()).round.feed.useStep, {
    undo: () => rewrite(tools, token, (now) => shotsAsBefore(now, before, shots)),
    redo: () => rewrite(tools, token, edit, remember),
  });
  return true;
}

/** The round's shots out of the open player's file; true when they are. */
export async function takeShotsOut(tools: AppTools, shots: Shots): Promise<boolean> {
  const { player } = tools.store.state();
  if (player === null) return false;
  const { token } = player.entry;
  const edit = (kept: Shots): Shots => withoutShotsOfRound(kept, shots);
  const written = await rewrite(tools, token, edit);
  if (written === null) return false;
  didShots(tools, wordsOf(tools.store.state()).round.feed.takeOutStep, {
    undo: () => rewrite(tools, token, (now) => shotsAsBefore(now, written.before, shots)),
    redo: () => rewrite(tools, token, edit),
  });
  return true;
}

interface Written {
  readonly token: string;
  /** The shots that the file had. */
  readonly before: Shots;
}

function didShots(
  tools: AppTools,
  label: string,
  {
    undo,
    redo,
  }: { readonly undo: () => Promise<Written | null>; readonly redo: () => Promise<Written | null> },
): void {
  const steps = roomStepsOf(tools);
  givingsOf(steps).did(
    { label, undo: async () => (await undo()) !== null, redo: async () => (await redo()) !== null },
    steps.stamp(),
  );
}

function fail({ store }: AppTools, message: string): null {
  store.dispatch({ type: 'trouble-met', title: wordsOf(store.state()).round.feed.notWritten, message });
  return null;
}

/** The file of this token as it is on the disk now, with other shots; opened anew where it is the open one. */
async function rewrite(
  tools: AppTools,
  token: string,
  edit: (shots: Shots) => Shots,
  beforeOpening?: () => void,
): Promise<Written | null> {
  const { host, store, duties } = tools;
  const isOpen = (): boolean => store.state().player?.entry.token === token;
  const claim = await host.claim(token);
  if (!claim.ok) return fail(tools, claim.message);
  if (!claim.value.isHeld) return fail(tools, wordsOf(store.state()).round.feed.openElsewhere);
  const written = await rewriteClaimed(tools, token, edit);
  if (!isOpen()) await host.release(token);
  if (written === null) return null;
  beforeOpening?.();
  if (isOpen()) await duties.openFile('player', token);
  return written;
}

async function rewriteClaimed(
  tools: AppTools,
  token: string,
  edit: (shots: Shots) => Shots,
): Promise<Written | null> {
  const { host, store } = tools;
  const opened = await host.open(token);
  if (!opened.ok) return fail(tools, opened.message);
  const parsed = parsePlayerDocumentText(opened.value.text);
  if (!parsed.ok) {
    const words = wordsOf(store.state());
    return fail(tools, firstFault(parsed.error, words) ?? words.round.feed.unreadable);
  }
  const { document } = parsed.value;
  const before = document.shots ?? [];
  const saved = await host.save({
    token,
    text: playerText({ ...document, shots: [...edit(before)] }),
    baseRevision: opened.value.revision,
  });
  return saved.ok ? { token, before } : fail(tools, saved.message);
}

/** Files of the program stay as they are: the open one goes into a file of its own. */
async function writeCopy(
  tools: AppTools,
  round: RoundStore,
  edit: (shots: Shots) => Shots,
  beforeOpening: () => void,
): Promise<Written | null> {
  const { host, store, duties } = tools;
  const { player, course } = store.state();
  if (player === null) return null;
  const language = wordsOf(store.state());
  const words = language.round.feed;
  const parsed = parsePlayerDocumentText(player.text);
  if (!parsed.ok) return fail(tools, firstFault(parsed.error, language) ?? words.unreadable);
  const { document } = parsed.value;
  const before = document.shots ?? [];
  const text = playerText({ ...document, shots: [...edit(before)] });
  const made = await host.create('player', words.withRounds({ name: player.value.name }), text);
  if (!made.ok) return fail(tools, made.message);
  const { token } = made.value.entry;
  const files = await host.list();
  if (files.ok) store.dispatch({ type: 'files-listed', files: files.value });
  if (course !== null) keepFor(store, { course: course.entry.token, player: token }, round.state().wishes);
  beforeOpening();
  await duties.openFile('player', token);
  return { token, before };
}
