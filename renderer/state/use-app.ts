/** How a panel reads the state and changes it. */

import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Host } from '../../electron/contract/host.ts';
import type { PlannerPool } from '../workers/planner-pool.ts';
import type { Action } from './actions.ts';
import type { AppState } from './app-state.ts';
import type { Duties } from './duties.ts';
import type { Store } from './store.ts';
import type { UndoDesk } from './undo-desk.ts';
import { useStore } from './use-store.ts';

/** The store, and the things that only the outside world can do. */
export interface AppTools {
  readonly store: Store;
  readonly duties: Duties;
  readonly host: Host;
  readonly pool: PlannerPool;
  readonly undo: UndoDesk;
}

export const AppContext = createContext<AppTools | null>(null);

export function useTools(): AppTools {
  const tools = useContext(AppContext);
  if (tools === null) throw new Error('A panel was drawn outside the application.');
  return tools;
}

/** See `useStore`. */
export function useApp<T>(select: (state: AppState) => T): T {
  return useStore(useTools().store, select);
}

export function useDispatch(): (action: Action) => void {
  return useTools().store.dispatch;
}
