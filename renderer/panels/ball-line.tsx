/** How many strokes it took the ball to get here, and the way back to the tee. */

import { shown, situationOfHole, withHole } from '../state/history.ts';
import { currentPlan, strokesTaken } from '../state/selectors.ts';
import { useApp, useTools } from '../state/use-app.ts';
import { Field } from './field.tsx';
import { useWords } from '../state/use-words.ts';

const MOST_STROKES = 12;

export function BallLine() {
  const words = useWords();
  const { store } = useTools();
  const plan = useApp(currentPlan);
  const hole = useApp((state) => state.view.hole);
  const moved = useApp((state) => hole !== null && situationOfHole(shown(state.history), hole).ball !== null);
  const strokes = useApp((state) => strokesTaken(state).strokes);
  const guessed = useApp((state) => strokesTaken(state).guessed);
  if (plan === null || hole === null) return null;
  const take = (change: Parameters<typeof withHole>[2], label: string): void => {
    const situation = withHole(store.state().history.present, hole, change);
    store.dispatch({ type: 'situation-taken', situation, label });
  };
  return (
    <section class="ball-line" aria-label={words.plan.ball}>
      <Field
        name={words.plan.strokesPlayedBefore}
        control={(id) => (
          <input
            id={id}
            type="number"
            min={0}
            max={MOST_STROKES}
            value={strokes}
            onChange={(event) => {
              const typed = Math.round(event.currentTarget.valueAsNumber);
              if (typed >= 0 && typed <= MOST_STROKES)
                take({ strokesTaken: typed }, words.plan.steps.strokesPlayed({ hole }));
              else event.currentTarget.value = String(strokes);
            }}
          />
        )}
      />
      {guessed && moved && <span class="faint guess">{words.plan.guessed}</span>}
      <span class="spring" />
      <button
        type="button"
        class="small-button"
        disabled={!moved}
        onClick={() => take({ ball: null, strokesTaken: null }, words.plan.steps.ballBack({ hole }))}
      >
        {words.plan.backToTee}
      </button>
    </section>
  );
}
