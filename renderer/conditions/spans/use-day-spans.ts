/** Asks the worker that holds the hole how far the day may change, while somebody looks; keeps the last answers. */

import { told } from '../../../core/words/told.ts';
import { proxy, type Remote } from 'comlink';
import { useEffect, useState } from 'preact/hooks';
import type { ConditionSpan } from '../../../core/plan/sensitivity.ts';
import type { AppState } from '../../state/app-state.ts';
import { type Asked, keyOf, spotQuestion } from '../../state/effects/answer-questions.ts';
import { toldReason } from '../../state/effects/follow.ts';
import { currentPlan, isPlanRough } from '../../state/selectors.ts';
import { type AppTools, useApp, useTools } from '../../state/use-app.ts';
import type { SpansApi } from './spans-api.ts';

export type DaySpans =
  /** The hole is not worked out in full, or something is being dragged. */
  | { readonly status: 'waiting' }
  | { readonly status: 'working'; readonly share: number }
  | { readonly status: 'stopped' }
  | { readonly status: 'ready'; readonly spans: readonly ConditionSpan[] };

export interface DaySpansTools {
  readonly answer: DaySpans;
  readonly stop: () => void;
  readonly again: () => void;
}

const MOST_KEPT = 40;
const keptBy = new WeakMap<AppTools['store'], Map<string, readonly ConditionSpan[]>>();

/** The question about the ball on screen; null until its hole is worked out in full and things are at rest. */
function settledQuestion(state: AppState): Asked | null {
  const asked = spotQuestion(state);
  return asked === null || asked.question.rough || isPlanRough(state) || currentPlan(state) === null
    ? null
    : asked;
}

function settledKey(state: AppState): string | null {
  const asked = settledQuestion(state);
  return asked === null ? null : keyOf(asked);
}

export function useDaySpans(isShown: boolean): DaySpansTools {
  const { store, pool } = useTools();
  const key = useApp(settledKey);
  const [turn, setTurn] = useState(0);
  const [stoppedKey, setStopped] = useState<string | null>(null);
  const [found, setFound] = useState<{ readonly key: string; readonly share: number } | null>(null);
  const kept = keptBy.get(store) ?? new Map<string, readonly ConditionSpan[]>();
  keptBy.set(store, kept);

  useEffect(() => {
    if (!isShown || key === null || key === stoppedKey || kept.has(key)) return undefined;
    const asked = settledQuestion(store.state());
    if (asked === null) return undefined;
    // The pool's workers are desks of this kind; the pool itself need not know.
    const desk = pool.deskOf(asked.hole) as unknown as Remote<SpansApi>;
    let isStale = false;
    const heard = (share: number): void => {
      if (!isStale) setFound({ key, share });
    };
    const ask = async (): Promise<void> => {
      try {
        const spans = await desk.daySpans(asked.question, proxy(heard));
        if (spans === null) return;
        kept.set(key, spans);
        const [oldest] = kept.keys();
        if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
        heard(1);
      } catch (reason) {
        const title = told(({ bar }) => bar.calculationStopped);
        store.dispatch({ type: 'trouble-met', title, message: toldReason(reason) });
      }
    };
    void ask();
    return () => {
      isStale = true;
      void desk.stopDaySpans();
    };
  }, [isShown, key, stoppedKey, turn]);

  const spans = key === null ? undefined : kept.get(key);
  return {
    answer:
      key === null
        ? { status: 'waiting' }
        : spans !== undefined
          ? { status: 'ready', spans }
          : key === stoppedKey
            ? { status: 'stopped' }
            : { status: 'working', share: found?.key === key ? found.share : 0 },
    stop: () => setStopped(key),
    again: () => {
      setStopped(null);
      setTurn(turn + 1);
    },
  };
}
