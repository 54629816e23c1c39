/** Which game is played: a score, points, or a match. */

import { Choice } from '../../panels/choice.tsx';
import { useApp } from '../../state/use-app.ts';
import { NumberField } from '../number-field.tsx';
import type { Game } from '../state/round-state.ts';
import { useOutlook, useRound, useRoundDispatch } from '../state/use-round.ts';

const GAMES: readonly (readonly [Game, string])[] = [
  ['score', 'The target'],
  ['stableford', 'Stableford points'],
  ['match', 'A match'],
];

export function GameForm() {
  const wishes = useRound((state) => state.wishes);
  const holes = useApp((state) => state.course?.value.holes.length ?? 18);
  const handicap = useApp((state) => state.player?.value.handicap);
  const outlook = useOutlook();
  const dispatch = useRoundDispatch();
  return (
    <section class="round-form" aria-label="Game">
      <Choice
        label="Game"
        name="game"
        value={wishes.game}
        entries={GAMES}
        choose={(game) => dispatch({ type: 'wished', change: { game } })}
      />
      {wishes.game === 'score' && outlook !== null && (
        <p class="faint">
          To {outlook.words}: {outlook.target} or fewer. The target is set on the page before this one.
        </p>
      )}
      {wishes.game === 'stableford' && (
        <div class="form-line">
          <NumberField
            name="Points to reach"
            value={wishes.points}
            usual={String(2 * holes)}
            least={1}
            most={6 * holes}
            change={(points) => dispatch({ type: 'wished', change: { points } })}
          />
          <span class="faint">with the strokes of the playing handicap (95 %)</span>
        </div>
      )}
      {wishes.game === 'match' && (
        <div class="form-line">
          <NumberField
            name="Opponent’s handicap"
            value={wishes.peerHandicap}
            usual={String(handicap ?? '')}
            least={-10}
            most={54}
            step={0.1}
            change={(peerHandicap) => dispatch({ type: 'wished', change: { peerHandicap } })}
          />
          <span class="faint">a preset player of that handicap; strokes by the full difference</span>
        </div>
      )}
    </section>
  );
}
