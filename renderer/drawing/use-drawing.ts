/** How a panel of the course room reads the room's state and reaches its desk. */

import { useMemo } from 'preact/hooks';
import { useTools } from '../state/use-app.ts';
import { type DrawingDesk, deskOf } from './desk.ts';
import type { DrawingState } from './drawing-state.ts';
import { useStore } from '../state/use-store.ts';

export function useDesk(): DrawingDesk {
  const tools = useTools();
  return useMemo(() => deskOf(tools), [tools]);
}

/** See `useStore`. */
export function useDrawing<T>(select: (state: DrawingState) => T): T {
  return useStore(useDesk().store, select);
}
