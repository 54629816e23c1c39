/** Draws a panel anew when what it reads of a store changes. */

import { useLayoutEffect, useState } from 'preact/hooks';
import type { StoreOf } from './store.ts';

/** Draws the panel again whenever `select` gives another value; `select` must give identical values for equal states. */
export function useStore<S, T>(
  store: Pick<StoreOf<S, never>, 'state' | 'subscribe'>,
  select: (state: S) => T,
): T {
  const [, redraw] = useState(0);
  const value = select(store.state());
  useLayoutEffect(() => {
    let seen = value;
    const look = (): void => {
      const now = select(store.state());
      if (Object.is(now, seen)) return;
      seen = now;
      redraw((count) => count + 1);
    };
    look();
    return store.subscribe(look);
  });
  return value;
}
