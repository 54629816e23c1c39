/** How a panel of the room reads its state and changes it. */

import { useTools } from '../../state/use-app.ts';
import { type BagDesk, bagDeskOf } from './bag-desk.ts';
import type { BagState } from './bag-state.ts';
import { useStore } from '../../state/use-store.ts';

export function useDesk(): BagDesk {
  return bagDeskOf(useTools());
}

/** See `useStore`. */
export function useBag<T>(select: (state: BagState) => T): T {
  return useStore(useDesk().store, select);
}
