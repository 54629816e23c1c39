/** Writes shots of a round into the player's file (or a copy of a demo player) and opens it, keeping the plan before for comparison. */

import type { RecordedShot } from '../../../core/player/format.ts';
import { playerText } from '../../../core/player/format.ts';
import { parsePlayerDocumentText } from '../../../core/player/parse.ts';
import { recommendedOf } from '../../../core/round/round-hole.ts';
import type { AppTools } from '../../state/use-app.ts';
import type { Outlook, RoundHoles } from '../state/planned-holes.ts';
import { keepFor } from './keep-wishes.ts';
import type { RoundStore } from '../state/use-round.ts';
import { wordsOf } from '../../state/use-words.ts';

/** True when the file has them. What fails becomes a notice. */
export async function feedShots(
  { store, host, duties }: AppTools,
  round: RoundStore,
  shots: readonly RecordedShot[],
  holes: RoundHoles,
  outlook: Outlook | null,
): Promise<boolean> {
  const { player } = store.state();
  if (player === null) return false;
  const fail = (message: string): false => {
    store.dispatch({ type: 'trouble-met', title: wordsOf(store.state()).round.feed.notAdded, message });
    return false;
  };
  const parsed = parsePlayerDocumentText(player.text);
  if (!parsed.ok) return fail(parsed.error[0]?.message ?? wordsOf(store.state()).round.feed.unreadable);
  const { document } = parsed.value;
  const text = playerText({ ...document, shots: [...(document.shots ?? []), ...shots] });
  const { entry, revision } = player;
  let { token } = entry;
  if (entry.readOnly) {
    const made = await host.create(
      'player',
      wordsOf(store.state()).round.feed.withRounds({ name: player.value.name }),
      text,
    );
    if (!made.ok) return fail(made.message);
    token = made.value.entry.token;
    const files = await host.list();
    if (files.ok) store.dispatch({ type: 'files-listed', files: files.value });
    const { course } = store.state();
    if (course !== null) keepFor(store, { course: course.entry.token, player: token }, round.state().wishes);
  } else {
    const claim = await host.claim(token);
    if (!claim.ok) return fail(claim.message);
    if (!claim.value.isHeld) return fail(wordsOf(store.state()).round.feed.openElsewhere);
    const saved = await host.save({ token, text, baseRevision: revision });
    if (!saved.ok) return fail(saved.message);
  }
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
  await duties.openFile('player', token);
  return true;
}
