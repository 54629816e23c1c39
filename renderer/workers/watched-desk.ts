/**
 * Calls to a worker that end when it breaks: an error that nobody caught, a script that could not be loaded, or silence (a worker
 * that has run out of memory is ended without a word). Without this a call under way would wait for ever.
 */

import { type Remote, wrap } from 'comlink';

/** The worker has gone while it was asked; the message says how, as far as it is known. */
export class WorkerBroke extends Error {}

export interface WatchedDesk<T> {
  readonly desk: Remote<T>;
  /** Ends the worker and every call under way. */
  readonly end: (reason: Error) => void;
}

/** Looks at a worker that has been asked something this often; so many looks without an answer are silence. */
const LOOK_EVERY_MS = 15_000;
const MOST_SILENT_LOOKS = 8;

/** Calls back again and again until the returned function is called; replaced in tests. */
export type Looking = (look: () => void) => () => void;

const byTimer: Looking = (look) => {
  const timer = setInterval(look, LOOK_EVERY_MS);
  return () => clearInterval(timer);
};

/** `broke` is called once, after the calls under way have been refused. Looks are counted, not seconds: a computer may sleep. */
export function watchedDesk<T>(
  worker: Worker,
  broke: (reason: WorkerBroke) => void,
  looking: Looking = byTimer,
): WatchedDesk<T> {
  const remote = wrap<T>(worker) as unknown as Readonly<Record<string, unknown>>;
  const underWay = new Set<(reason: Error) => void>();
  let over: Error | null = null;
  let stopLooking: (() => void) | null = null;

  const rest = (): void => {
    stopLooking?.();
    stopLooking = null;
  };
  const end = (reason: Error): void => {
    if (over !== null) return;
    over = reason;
    rest();
    worker.terminate();
    for (const refuse of underWay) refuse(reason);
    underWay.clear();
  };
  const breaks = (said: string): void => {
    if (over !== null) return;
    const reason = new WorkerBroke(said);
    end(reason);
    broke(reason);
  };
  worker.addEventListener('error', (event) => breaks(event.message));
  worker.addEventListener('messageerror', () => breaks(''));

  const watch = (): void => {
    let silent = 0;
    stopLooking = looking(() => {
      silent += 1;
      if (silent > MOST_SILENT_LOOKS) {
        breaks('');
        return;
      }
      // Any property will do: only a worker that lives answers that it has none of this name.
      void Promise.resolve(remote['isThere']).then(
        () => (silent = 0),
        () => undefined,
      );
    });
  };

  const call = (name: string, args: readonly unknown[]): Promise<unknown> =>
    new Promise((resolve, reject) => {
      if (over !== null) {
        reject(over);
        return;
      }
      underWay.add(reject);
      if (stopLooking === null) watch();
      const done = (): void => {
        underWay.delete(reject);
        if (underWay.size === 0) rest();
      };
      const asked = (remote[name] as (...args: readonly unknown[]) => Promise<unknown>)(...args);
      asked.then(resolve, reject).finally(done);
    });

  const desk = new Proxy(
    {},
    {
      // What is awaited is asked for `then`; a desk is no promise.
      get: (_, name) =>
        typeof name === 'symbol' || name === 'then'
          ? undefined
          : (...args: readonly unknown[]) => call(name, args),
    },
  ) as Remote<T>;
  return { desk, end };
}
