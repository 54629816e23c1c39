/** Plays a hole stroke by stroke on the worker that holds it. */

import { told } from '../../../core/words/told.ts';
import { useEffect, useState } from 'preact/hooks';
import type { Decision } from '../../../core/round/own-policy.ts';
import { MOST_STROKES } from '../../../core/round/play-hole.ts';
import { toldReason } from '../../state/effects/follow.ts';
import { useTools } from '../../state/use-app.ts';
import type { PlannedHole } from '../state/planned-holes.ts';
import { type Attempt, emptyAttempt, type TryHole, withStroke } from './try-state.ts';
import { useWords } from '../../state/use-words.ts';
import type { Words } from '../../../core/words/words.ts';

export interface Trying {
  readonly state: TryHole | null;
  readonly isBusy: boolean;
  readonly play: (decision: Decision) => Promise<void>;
  /** The plan's choices to the end of the hole. */
  readonly playOut: () => Promise<void>;
  /** From the tee again, with the same luck or another. */
  readonly again: (sameLuck: boolean) => Promise<void>;
  /** Back to before this stroke, with the same luck. */
  readonly backTo: (stroke: number) => Promise<void>;
}

const SEED = 'desk';

export function useTrying(hole: PlannedHole | null): Trying {
  const words = useWords();
  const { pool, store } = useTools();
  const [state, setState] = useState<TryHole | null>(null);
  const [isBusy, setBusy] = useState(false);
  const key = hole?.result.key ?? null;

  const guarded = async (work: () => Promise<void>): Promise<void> => {
    setBusy(true);
    try {
      await work();
    } catch (reason) {
      store.dispatch({
        type: 'trouble-met',
        title: told(({ round }) => round.try.notPlayed),
        message: toldReason(reason),
      });
    }
    setBusy(false);
  };

  /** The state with what may be done next. */
  const settle = async (next: TryHole): Promise<void> => {
    const { ball } = next.attempt;
    const choices = ball === null ? null : await pool.deskOf(next.hole).tryChoices(next.resultKey, ball);
    setState({ ...next, plan: choices?.plan ?? null, own: choices?.own ?? null });
  };

  const start = async (luck: number, others: TryHole['others']): Promise<void> => {
    if (hole === null || key === null) return;
    const ball = await pool.deskOf(hole.hole).startBall(key);
    if (ball === null) return;
    await settle({
      ...{ hole: hole.hole, resultKey: key, luck, others, plan: null, own: null },
      attempt: emptyAttempt(ball),
    });
  };

  useEffect(() => {
    setState(null);
    if (key !== null) void guarded(() => start(1, []));
    // Begun anew only for another hole or another solution of it.
  }, [key]);

  const stroke = async (from: TryHole, attempt: Attempt, decision: Decision): Promise<Attempt> => {
    if (attempt.ball === null) return attempt;
    const luck = { seed: SEED, round: from.luck };
    const tried = await pool.deskOf(from.hole).tryShot(from.resultKey, attempt.ball, decision, luck);
    return tried === null ? attempt : withStroke(attempt, tried);
  };

  return {
    state,
    isBusy,
    play: (decision) =>
      guarded(async () => {
        if (state !== null) await settle({ ...state, attempt: await stroke(state, state.attempt, decision) });
      }),
    playOut: () =>
      guarded(async () => {
        if (state === null) return;
        let { attempt } = state;
        while (attempt.ball !== null && attempt.ball.taken < MOST_STROKES) {
          const choices = await pool.deskOf(state.hole).tryChoices(state.resultKey, attempt.ball);
          if (choices === null) return;
          attempt = await stroke(state, attempt, choices.own);
        }
        await settle({ ...state, attempt });
      }),
    again: (sameLuck) =>
      guarded(async () => {
        if (state === null) return;
        const finished = { words: attemptWords(state.attempt, words), attempt: state.attempt };
        const others = state.attempt.strokes.length === 0 ? state.others : [...state.others, finished];
        await start(sameLuck ? state.luck : state.luck + 1, sameLuck ? others : []);
      }),
    backTo: (index) =>
      guarded(async () => {
        if (state === null) return;
        const first = state.attempt.strokes[0];
        const ball = await pool.deskOf(state.hole).startBall(state.resultKey);
        if (ball === null || first === undefined) return;
        const attempt = state.attempt.strokes.slice(0, index).reduce(withStroke, emptyAttempt(ball));
        const others = [
          ...state.others,
          { words: attemptWords(state.attempt, words), attempt: state.attempt },
        ];
        await settle({ ...state, attempt, others });
      }),
  };
}

/** `6 with Driver, 5-iron, putts 2`. */
export function attemptWords({ strokes, score, ball }: Attempt, words: Words): string {
  const clubs = strokes.flatMap(({ shot }) => (shot.kind === 'putt' ? [] : [shot.club]));
  const putts = strokes.filter(({ shot }) => shot.kind === 'putt').length;
  const head = ball === null ? `${score}` : words.round.try.soFar({ score });
  return `${head}: ${clubs.join(', ')}${putts === 0 ? '' : `, ${words.round.try.putts({ count: putts })}`}`;
}
