/** How the controls of the day read it and change it: each change is one step that undo takes back. */

import type { Conditions } from '../../core/conditions/conditions.ts';
import { currentDay } from '../state/selectors.ts';
import { useApp, useTools } from '../state/use-app.ts';

export interface DayTools {
  readonly day: Conditions;
  /** `label`: the step in words; equal marks in a row make one step. */
  readonly take: (change: Partial<Conditions>, label: string, mark?: string) => void;
  /** Shows and plans it roughly until it is taken or dropped. */
  readonly tryOut: (change: Partial<Conditions>) => void;
  readonly drop: () => void;
}

export function useDay(): DayTools {
  const { store } = useTools();
  const day = useApp(currentDay);
  const changed = (change: Partial<Conditions>) => {
    const { present } = store.state().history;
    return { ...present, conditions: { ...present.conditions, ...change } };
  };
  return {
    day,
    take: (change, label, mark) =>
      store.dispatch({
        ...{ type: 'situation-taken', situation: changed(change), label },
        ...(mark === undefined ? {} : { mark }),
      }),
    tryOut: (change) => store.dispatch({ type: 'situation-previewed', situation: changed(change) }),
    drop: () => store.dispatch({ type: 'preview-dropped' }),
  };
}
