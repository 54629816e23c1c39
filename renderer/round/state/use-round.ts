/** How a panel of the room reads the room's own state. The state outlives the room's being shown. */

import { makeStore, type StoreOf } from '../../state/store.ts';
import { useStore } from '../../state/use-store.ts';
import { type AppTools, useApp, useTools } from '../../state/use-app.ts';
import { followCards } from '../effects/follow-cards.ts';
import { followLedgers } from '../effects/follow-ledgers.ts';
import { followPlaying } from '../effects/follow-playing.ts';
import { keepWishes } from '../effects/keep-wishes.ts';
import { outlookOf, type Outlook, roundHoles, type RoundHoles } from './planned-holes.ts';
import { roomStepsOf, type StepName, type StepSource } from './room-steps.ts';
import { FIRST_ROUND, reduceRound, type RoundAction, type RoundState, type WishStep } from './round-state.ts';
import { useWords, wordsOf } from '../../state/use-words.ts';
import type { Words } from '../../../core/words/words.ts';

export type RoundStore = StoreOf<RoundState, RoundAction>;

const stores = new WeakMap<AppTools['store'], RoundStore>();

/** The room's store, made and set to work when it is first asked for. */
export function roundStoreOf(tools: AppTools): RoundStore {
  const known = stores.get(tools.store);
  if (known !== undefined) return known;
  const steps = roomStepsOf(tools);
  const inner = makeStore(FIRST_ROUND, reduceRound);
  const made: RoundStore = {
    ...inner,
    dispatch: (action) => inner.dispatch(isWish(action) ? { ...action, at: steps.stamp() } : action),
  };
  steps.join(stepsOfWishes(made, () => wordsOf(tools.store.state())));
  stores.set(tools.store, made);
  keepWishes(tools, made);
  followLedgers(tools, made);
  followPlaying(tools, made);
  followCards(tools, made);
  return made;
}

function isWish(action: RoundAction): action is Extract<RoundAction, { readonly at?: number }> {
  return action.type === 'wished' || action.type === 'paper-wished' || action.type === 'day-wished';
}

function stepsOfWishes(store: RoundStore, words: () => Words): StepSource {
  const named = (step: WishStep | undefined): StepName | null =>
    step === undefined ? null : { at: step.at, label: words().round.wishSteps[step.what] };
  return {
    past: () => named(store.state().wishesPast.at(-1)),
    future: () => named(store.state().wishesFuture.at(-1)),
    undo: () => store.dispatch({ type: 'wish-undone' }),
    redo: () => store.dispatch({ type: 'wish-redone' }),
    forget: () => store.dispatch({ type: 'wish-future-forgotten' }),
    subscribe: store.subscribe,
  };
}

export function useRound<T>(select: (state: RoundState) => T): T {
  return useStore(roundStoreOf(useTools()), select);
}

export function useRoundDispatch(): (action: RoundAction) => void {
  return roundStoreOf(useTools()).dispatch;
}

export function useRoundHoles(): RoundHoles {
  return useApp(roundHoles);
}

/** Null until the first hole is worked out. */
export function useOutlook(): Outlook | null {
  const holes = useRoundHoles();
  const wishes = useRound((state) => state.wishes);
  const course = useApp((state) => state.course?.value ?? null);
  const player = useApp((state) => state.player?.value ?? null);
  return outlookOf(holes, wishes, course, player, useWords());
}
