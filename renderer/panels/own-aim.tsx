/** Trying a shot of one's own: any club of the bag, aimed on the map. */

import type { LieName } from '../../core/ground/lies.ts';
import { OWN_AIM } from '../state/app-state.ts';
import { shown, situationOfHole, withHole } from '../state/history.ts';
import { lengthText } from '../state/measures.ts';
import { currentPlan } from '../state/selectors.ts';
import { useApp, useTools } from '../state/use-app.ts';
import { Field } from './field.tsx';
import { aimWithClub } from '../map/moves.ts';
import { SWING_WORDS } from './shot-words.ts';

/** Lies from which no full shot model applies: a putt or a drop comes first. */
const NO_SWING: readonly LieName[] = ['green', 'penaltyYellow', 'penaltyRed', 'outOfBounds'];

export function OwnAimLine() {
  const { store } = useTools();
  const hole = useApp((state) => state.view.hole);
  const spreads = useApp((state) => state.player?.value.spreads ?? null);
  const units = useApp((state) => state.settings.units);
  const aim = useApp((state) => (hole === null ? null : situationOfHole(shown(state.history), hole).aim));
  const unplayable = useApp(
    (state) => aim !== null && state.answers.own === null && state.answers.plan?.rough === false,
  );
  const lie = useApp((state) => currentPlan(state)?.lie);
  if (hole === null || spreads === null || lie === undefined || NO_SWING.includes(lie)) return null;
  const take = (change: Parameters<typeof withHole>[2], label: string): void => {
    const situation = withHole(store.state().history.present, hole, change);
    store.dispatch({ type: 'situation-taken', situation, label: `${label} on hole ${hole}` });
  };
  return (
    <div class="own-aim">
      <Field
        name="Try a shot of your own"
        control={(id) => (
          <select
            id={id}
            value={aim === null ? '' : String(aim.spreadIndex)}
            onChange={(event) => {
              const typed = event.currentTarget.value;
              const own = typed === '' ? null : aimWithClub(store.state(), Number(typed));
              if (own === null) return;
              take({ aim: own }, 'try a shot of your own');
              store.dispatch({ type: 'shot-chosen', shot: OWN_AIM });
            }}
          >
            <option value="">Choose a club, or drag the aim on the map</option>
            {spreads.map((spread, i) => (
              <option key={`${spread.club.name} ${spread.swing}`} value={String(i)}>
                {spread.club.name}, {SWING_WORDS[spread.swing]}, {spread.swing === 'part' ? 'up to ' : ''}
                {lengthText(spread.carryMean, units)}
              </option>
            ))}
          </select>
        )}
      />
      {aim !== null && (
        <button
          type="button"
          class="small-button"
          onClick={() => {
            take({ aim: null }, 'drop your own aim');
            store.dispatch({ type: 'shot-chosen', shot: null });
          }}
        >
          Drop it
        </button>
      )}
      {unplayable && <p class="faint">This club is not played from where the ball lies. Choose another.</p>}
    </div>
  );
}
