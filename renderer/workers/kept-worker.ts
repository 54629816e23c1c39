/** A worker that is started anew when it breaks, a few times; after that its calls are refused. */

import type { Remote } from 'comlink';
import { type Looking, type WatchedDesk, watchedDesk } from './watched-desk.ts';

/** Something breaks it each time by then: another start would not help. */
const MOST_RESTARTS = 3;

export interface KeepingParts {
  readonly start: () => Worker;
  /** Told when a new worker stands in the place of a broken one, with what was said. */
  readonly restarted?: (said: string) => void;
  /** Told once, when no other is started. */
  readonly gaveUp?: (said: string) => void;
  readonly looking?: Looking;
}

export interface KeptWorker<T> {
  /** Asks the worker of the moment. */
  readonly desk: () => Remote<T>;
}

export function keepWorker<T>({ start, restarted, gaveUp, looking }: KeepingParts): KeptWorker<T> {
  let restarts = 0;
  let watched: WatchedDesk<T>;
  const begin = (): void => {
    watched = watchedDesk<T>(
      start(),
      (reason) => {
        if (restarts === MOST_RESTARTS) return gaveUp?.(reason.message);
        restarts += 1;
        begin();
        restarted?.(reason.message);
      },
      looking,
    );
  };
  begin();
  return { desk: () => watched.desk };
}
