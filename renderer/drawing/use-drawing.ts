/** How a panel of the course room reads the room's state and reaches its desk. */

import { useLayoutEffect, useMemo, useState } from 'preact/hooks';
import { useTools } from '../state/use-app.ts';
import { type DrawingDesk, deskOf } from './desk.ts';
import type { DrawingState } from './drawing-state.ts';

export function useDesk(): DrawingDesk {
  const tools = useTools();
  return useMemo(() => deskOf(tools), [tools]);
}

/** Draws the panel again whenever `select` gives another value; `select` must give identical values for equal states. */
export function useDrawing<T>(select: (state: DrawingState) => T): T {
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
