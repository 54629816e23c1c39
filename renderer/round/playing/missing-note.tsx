/** Why there is nothing to play by yet, and the control that changes it. */

import type { Missing } from '../effects/follow-playing.ts';
import { opponentOf } from '../effects/follow-playing.ts';
import { useApp, useDispatch } from '../../state/use-app.ts';
import { useWords } from '../../state/use-words.ts';
import { useRound, useRoundDispatch, useRoundHoles } from '../state/use-round.ts';

export function MissingNote({ missing }: { readonly missing: Missing }) {
  const words = useWords();
  const holes = useRoundHoles();
  const state = useRound((round) => round);
  const counted = useApp((app) => opponentOf(app, state).length);
  const dispatch = useDispatch();
  const dispatchRound = useRoundDispatch();
  const told = words.round.playing;
  switch (missing) {
    case 'holes':
      return (
        <p class="faint" role="status">
          {told.needsAll({ ready: holes.ready.length, total: holes.all.length })}
        </p>
      );
    case 'handicap':
      return (
        <p role="status">
          {told.needsHandicap}{' '}
          <button
            type="button"
            class="small-button"
            onClick={() => dispatch({ type: 'room-shown', room: 'player' })}
          >
            {told.toPlayer}
          </button>
        </p>
      );
    case 'opponent':
      return (
        <p role="status">
          {(state.ledgersStopped ? told.opponentStopped : told.opponentComes)({
            ...{ counted, total: holes.all.length },
          })}{' '}
          {state.ledgersStopped && (
            <button
              type="button"
              class="small-button"
              onClick={() => dispatchRound({ type: 'ledgers-stopped', stopped: false })}
            >
              {words.plan.goOn}
            </button>
          )}
        </p>
      );
  }
}
