/** Keeps the workers at the ledgers of the holes once no hole waits for its plan any more. */

import { faultText, told } from '../../../core/words/told.ts';
import { proxy } from 'comlink';
import { afterChanges, toldReason } from '../../state/effects/follow.ts';
import { tallyWork } from '../../state/selectors.ts';
import type { AppTools } from '../../state/use-app.ts';
import { type PlannedHole, roundHoles } from '../state/planned-holes.ts';
import { peerLevel, type RoundState } from '../state/round-state.ts';
import type { RoundStore } from '../state/use-round.ts';
import { wordsOf } from '../../state/use-words.ts';

/** Plays of each hole: means of a round are good to about 0.1 strokes. */
const PLAYS = 1500;
/** After work was dropped because files were opened anew, milliseconds. */
const RETRY_MS = 1000;

export function ledgerKey(hole: PlannedHole, state: RoundState, handicap: number | undefined): string {
  const peer = peerLevel(state.wishes, handicap);
  return `${hole.result.key} ${peer === null ? 'no peer' : `${peer.handicap} ${peer.group}`}`;
}

export function followLedgers({ store, pool }: Pick<AppTools, 'store' | 'pool'>, round: RoundStore): void {
  const given = new Map<number, string>();
  /** Ledgers that cannot be made; asked for again only when something about them changes. */
  const refused = new Set<string>();

  const start = async (hole: PlannedHole, key: string): Promise<void> => {
    given.set(hole.hole, key);
    const peer = peerLevel(round.state().wishes, store.state().player?.value.handicap);
    try {
      const answer = await pool.deskOf(hole.hole).ledger(
        { resultKey: hole.result.key, plays: PLAYS, peer },
        proxy((share) => round.dispatch({ type: 'ledger-progressed', hole: hole.hole, key, share })),
      );
      if (answer.ok) {
        if (given.get(hole.hole) === key)
          round.dispatch({ type: 'ledger-finished', hole: hole.hole, key, answer: answer.value });
      } else {
        if (answer.error.why === 'fault') {
          refused.add(key);
          const { where, message } = faultText(answer.error.fault, wordsOf(store.state()));
          const title = told(({ round }) => round.holeNotCounted, { hole: hole.hole });
          store.dispatch({ type: 'trouble-met', title, message: `${where}: ${message}` });
        } else await new Promise((resolve) => setTimeout(resolve, RETRY_MS));
        round.dispatch({ type: 'ledger-dropped', hole: hole.hole });
      }
    } catch (reason) {
      round.dispatch({ type: 'ledgers-stopped', stopped: true });
      store.dispatch({
        type: 'trouble-met',
        title: told(({ round }) => round.ledgerFailed),
        message: toldReason(reason),
      });
    }
    if (given.get(hole.hole) === key) given.delete(hole.hole);
    look();
  };

  const look = (): void => {
    const app = store.state();
    const state = round.state();
    if (app.view.room !== 'round' || state.ledgersStopped) return;
    // Plans first: a ledger beside them would only make both slower.
    if (tallyWork(app.course?.value ?? null, app.work).unfinished > 0) return;
    const handicap = app.player?.value.handicap;
    for (const hole of roundHoles(app).ready) {
      const key = ledgerKey(hole, state, handicap);
      if (state.ledgers[hole.hole]?.key === key || given.get(hole.hole) === key || refused.has(key)) continue;
      void start(hole, key);
    }
  };
  afterChanges(store, look);
  round.subscribe(() => queueMicrotask(look));
}

/** Stops ledgers under way; those that are done stay. */
export function stopLedgers({ pool }: Pick<AppTools, 'pool'>, round: RoundStore): void {
  round.dispatch({ type: 'ledgers-stopped', stopped: true });
  for (let worker = 0; worker < pool.workers; worker++) void pool.deskOf(worker).cancelLedgers();
}
