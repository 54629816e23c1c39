/** One order of steps over all that the room's undo takes back: the round's file, what is wished for, shots given away. */

import type { UndoSource } from '../../state/undo-desk.ts';
import type { AppTools } from '../../state/use-app.ts';

export interface StepName {
  readonly label: string;
  /** Steps are taken back from the highest. */
  readonly at: number;
}

/** One part of the room that keeps steps of its own. */
export interface StepSource {
  readonly past: () => StepName | null;
  readonly future: () => StepName | null;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Nothing of it can be done again any more: a new step was made, here or in another part. */
  readonly forget: () => void;
  readonly subscribe: (listener: () => void) => () => void;
}

export interface RoomSteps extends UndoSource {
  /** The place in the order of a new step; what was undone in any part can no longer be done again. */
  readonly stamp: () => number;
  readonly join: (source: StepSource) => void;
}

export function makeRoomSteps(): RoomSteps {
  const sources: StepSource[] = [];
  const listeners = new Set<() => void>();
  let last = 0;
  const tell = (): void => {
    for (const listener of [...listeners]) listener();
  };
  const pick = (of: 'past' | 'future'): StepSource | null => {
    let found: StepSource | null = null;
    let at = of === 'past' ? -Infinity : Infinity;
    for (const source of sources) {
      const step = source[of]();
      if (step === null || (of === 'past' ? step.at <= at : step.at >= at)) continue;
      [found, at] = [source, step.at];
    }
    return found;
  };
  return {
    stamp: () => {
      for (const source of sources) source.forget();
      last += 1;
      return last;
    },
    join: (source) => {
      sources.push(source);
      source.subscribe(tell);
      tell();
    },
    undoLabel: () => pick('past')?.past()?.label ?? null,
    redoLabel: () => pick('future')?.future()?.label ?? null,
    undo: () => pick('past')?.undo(),
    redo: () => pick('future')?.redo(),
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

const rooms = new WeakMap<AppTools['store'], RoomSteps>();

/** The room's order of steps, one for the window; it is the undo of the room. */
export function roomStepsOf({ store, undo }: Pick<AppTools, 'store' | 'undo'>): RoomSteps {
  const known = rooms.get(store);
  if (known !== undefined) return known;
  const made = makeRoomSteps();
  rooms.set(store, made);
  undo.bring('round', made);
  return made;
}

/** Work whose undoing takes time and may fail: then it stays a step. */
export interface Deed {
  readonly label: string;
  readonly undo: () => Promise<boolean>;
  readonly redo: () => Promise<boolean>;
}

export interface Deeds extends StepSource {
  readonly did: (deed: Deed, at: number) => void;
}

export function makeDeeds(): Deeds {
  type Kept = Deed & { readonly at: number };
  let past: readonly Kept[] = [];
  let future: readonly Kept[] = [];
  let isBusy = false;
  const listeners = new Set<() => void>();
  const tell = (): void => {
    for (const listener of [...listeners]) listener();
  };
  const run = async (work: () => Promise<boolean>, done: () => void): Promise<void> => {
    if (isBusy) return;
    isBusy = true;
    try {
      if (await work()) done();
    } finally {
      isBusy = false;
      tell();
    }
  };
  return {
    did: (deed, at) => {
      past = [...past, { ...deed, at }];
      tell();
    },
    past: () => past.at(-1) ?? null,
    future: () => future.at(-1) ?? null,
    undo: () => {
      const deed = past.at(-1);
      if (deed !== undefined)
        void run(deed.undo, () => {
          past = past.filter((one) => one !== deed);
          future = [...future, deed];
        });
    },
    redo: () => {
      const deed = future.at(-1);
      if (deed !== undefined)
        void run(deed.redo, () => {
          future = future.filter((one) => one !== deed);
          past = [...past, deed];
        });
    },
    forget: () => {
      future = [];
      tell();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

const givings = new WeakMap<RoomSteps, Deeds>();

/** Shots given to the player, and taken out again. */
export function givingsOf(steps: RoomSteps): Deeds {
  const known = givings.get(steps);
  if (known !== undefined) return known;
  const made = makeDeeds();
  givings.set(steps, made);
  steps.join(made);
  return made;
}
