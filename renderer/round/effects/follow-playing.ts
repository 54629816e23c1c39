/** Asks a worker, whenever target or plans change, what to play from each tee to reach the target. */

import { told } from '../../../core/words/told.ts';
import type { Course } from '../../../core/course/model.ts';
import type { PlayerModel } from '../../../core/player/model.ts';
import type { Aim } from '../../../core/round/aim.ts';
import { ALLOWANCE, matchStrokes, playingHandicap, strokesReceived } from '../../../core/round/handicap.ts';
import type { ScoreDistribution } from '../../../core/round/distribution.ts';
import { scoreToMeet } from '../../../core/round/target.ts';
import type { PlayingAnswer } from '../../workers/round-api.ts';
import { latestWins } from '../../workers/latest-wins.ts';
import { afterChanges, toldReason } from '../../state/effects/follow.ts';
import type { AppState } from '../../state/app-state.ts';
import type { AppTools } from '../../state/use-app.ts';
import { handicapOf, parOf, ratingOf, roundHoles, targetOf, tryableChoices } from '../state/planned-holes.ts';
import { peerLevel, type RoundState, type Wishes } from '../state/round-state.ts';
import { ledgerKey } from './follow-ledgers.ts';
import type { RoundStore } from '../state/use-round.ts';

/** What is played for, or why it cannot be told yet. */
export type AimNow =
  | { readonly aim: Aim; readonly key: string }
  | { readonly aim: null; readonly missing: Missing };

/** `handicap`: nobody to play against, for neither the opponent's handicap nor the player's own is known. */
export type Missing = 'holes' | 'opponent' | 'handicap';

/** Over all holes of the course. */
export function aimNow(app: AppState, state: RoundState): AimNow {
  const course = app.course?.value;
  const { ready, all } = roundHoles(app);
  if (course === undefined || ready.length === 0 || ready.length < all.length)
    return { aim: null, missing: 'holes' };
  const { wishes } = state;
  const player = app.player?.value ?? null;
  const base = `${ready.map(({ result }) => result.key).join('|')}/${wishes.formSd}/${wishes.game}`;
  switch (wishes.game) {
    case 'score': {
      const target = scoreToMeet(targetOf(wishes, course, player), parOf(course.holes));
      return { aim: { kind: 'score', target }, key: `${base}/${target}` };
    }
    case 'stableford': {
      const handicap = playingHandicap(handicapOf(player), ratingOf(wishes, course), ALLOWANCE.stableford);
      const received = strokesReceived(
        handicap,
        all.map(({ strokeIndex }) => strokeIndex),
      );
      const target = wishes.points ?? 2 * all.length;
      return { aim: { kind: 'stableford', target, received }, key: `${base}/${target}/${handicap}` };
    }
    case 'match': {
      if (peerLevel(wishes, player?.handicap) === null) return { aim: null, missing: 'handicap' };
      const opponent = opponentOf(app, state);
      if (opponent.length < ready.length) return { aim: null, missing: 'opponent' };
      const { own, theirs } = matchHandicaps(wishes, course, player);
      const received = matchStrokes(
        own,
        theirs,
        all.map(({ strokeIndex }) => strokeIndex),
      );
      const ledgers = ready.map(({ hole }) => state.ledgers[hole]?.key ?? '').join('|');
      return { aim: { kind: 'match', opponent, received }, key: `${base}/${own}/${theirs}/${ledgers}` };
    }
  }
}

/** The opponent's scores on the holes that are counted for the opponent of now; those of an earlier one are not theirs. */
export function opponentOf(app: AppState, state: RoundState): readonly ScoreDistribution[] {
  const handicap = app.player?.value.handicap;
  return roundHoles(app).ready.flatMap((hole): ScoreDistribution[] => {
    const known = state.ledgers[hole.hole];
    const scores = known?.key === ledgerKey(hole, state, handicap) ? known.answer.peerScores : null;
    return scores === null ? [] : [scores];
  });
}

/** Playing handicaps of both in a match. */
export function matchHandicaps(
  wishes: Wishes,
  course: Course,
  player: PlayerModel | null,
): { readonly own: number; readonly theirs: number } {
  const rating = ratingOf(wishes, course);
  return {
    own: playingHandicap(handicapOf(player), rating, ALLOWANCE.matchPlay),
    theirs: playingHandicap(wishes.peerHandicap ?? handicapOf(player), rating, ALLOWANCE.matchPlay),
  };
}

/** The worker's answer for what is played for now; null while it is not there. Identical for equal states. */
export function playingNow(app: AppState, state: RoundState): PlayingAnswer | null {
  const now = aimNow(app, state);
  return now.aim !== null && state.playing?.key === now.key ? state.playing.answer : null;
}

/** Why there can be no answer yet; null where there can. */
export function missingFor(app: AppState, state: RoundState): Missing | null {
  const now = aimNow(app, state);
  return now.aim === null ? now.missing : null;
}

export function followPlaying({ store, pool }: Pick<AppTools, 'store' | 'pool'>, round: RoundStore): void {
  let asked: string | null = null;
  const asking = latestWins<{ readonly key: string; readonly aim: Aim }>(
    async ({ key, aim }) => {
      const choices = tryableChoices(roundHoles(store.state()));
      const { formSd } = round.state().wishes;
      const answer = await pool.deskOf(0).playTo({ choices, aim, formSd });
      round.dispatch({ type: 'playing-answered', key, answer });
    },
    (reason) => {
      asked = null;
      store.dispatch({
        type: 'trouble-met',
        title: told(({ bar }) => bar.calculationStopped),
        message: toldReason(reason),
      });
    },
  );
  const look = (): void => {
    const app = store.state();
    if (app.view.room !== 'round') return;
    const now = aimNow(app, round.state());
    if (now.aim === null || now.key === asked) return;
    asked = now.key;
    asking.ask(now);
  };
  afterChanges(store, look);
  round.subscribe(() => queueMicrotask(look));
}
