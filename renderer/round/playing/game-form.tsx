/** Which game is played: a score, points, or a match. */

import { Choice } from '../../panels/choice.tsx';
import { useApp } from '../../state/use-app.ts';
import { NumberField } from '../number-field.tsx';
import { RatingFields } from '../target/rating-fields.tsx';
import { StrokesNote } from './strokes-note.tsx';
import type { Game } from '../state/round-state.ts';
import { useOutlook, useRound, useRoundDispatch } from '../state/use-round.ts';
import { useWords } from '../../state/use-words.ts';

const GAMES: readonly Game[] = ['score', 'stableford', 'match'];

export function GameForm() {
  const words = useWords();
  const wishes = useRound((state) => state.wishes);
  const holes = useApp((state) => state.course?.value.holes.length ?? 18);
  const handicap = useApp((state) => state.player?.value.handicap);
  const outlook = useOutlook();
  const dispatch = useRoundDispatch();
  return (
    <section class="round-form" aria-label={words.round.playing.game}>
      <Choice
        label={words.round.playing.game}
        name="game"
        value={wishes.game}
        entries={GAMES.map((game) => [game, words.round.playing.games[game]])}
        choose={(game) => dispatch({ type: 'wished', change: { game } })}
      />
      {wishes.game === 'score' && outlook !== null && (
        <p class="faint">{words.round.playing.toTarget({ words: outlook.words, target: outlook.target })}</p>
      )}
      {wishes.game === 'stableford' && (
        <div class="form-line">
          <NumberField
            name={words.round.playing.points}
            value={wishes.points}
            usual={String(2 * holes)}
            least={1}
            most={6 * holes}
            change={(points) => dispatch({ type: 'wished', change: { points } })}
          />
          <RatingFields />
          <span class="faint">{words.round.playing.pointsNote}</span>
        </div>
      )}
      {wishes.game === 'match' && (
        <div class="form-line">
          <NumberField
            name={words.round.playing.opponent}
            value={wishes.peerHandicap}
            usual={String(handicap ?? '')}
            least={-10}
            most={54}
            step={0.1}
            change={(peerHandicap) => dispatch({ type: 'wished', change: { peerHandicap } })}
          />
          <RatingFields />
          <span class="faint">{words.round.playing.opponentNote}</span>
        </div>
      )}
      {wishes.game !== 'score' && <StrokesNote />}
    </section>
  );
}
