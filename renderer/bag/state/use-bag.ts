/** How a panel of the room reads its state and changes it. */

import { useLayoutEffect, useState } from 'preact/hooks';
import { useTools } from '../../state/use-app.ts';
import { type BagDesk, bagDeskOf } from './bag-desk.ts';
import type { BagState } from './bag-state.ts';

export function useDesk(): BagDesk {
  return bagDeskOf(useTools());
}

/** Draws the panel again whenever `select` gives another value; `select` must give identical values for equal states. */
export function useBag<T>(select: (state: BagState) => T): T {
  const { store } = useDesk();
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
