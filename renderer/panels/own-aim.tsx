/** Trying a shot of one's own: any club of the bag, aimed on the map. */

import type { LieName } from '../../core/ground/lies.ts';
import { OWN_AIM } from '../state/app-state.ts';
import { shown, situationOfHole, withHole } from '../state/history.ts';
import { lengthText } from '../state/measures.ts';
import { currentPlan, heldResult } from '../state/selectors.ts';
import { useApp, useTools } from '../state/use-app.ts';
import { Field } from './field.tsx';
import { aimWithClub } from '../map/moves.ts';
import { useWords } from '../state/use-words.ts';

/** Lies from which no full shot model applies: a putt or a drop comes first. */
const NO_SWING: readonly LieName[] = ['green', 'penaltyYellow', 'penaltyRed', 'outOfBounds'];

export function OwnAimLine() {
  const words = useWords();
  const { store } = useTools();
  const hole = useApp((state) => state.view.hole);
  const spreads = useApp((state) => state.player?.value.spreads ?? null);
  const units = useApp((state) => state.settings.units);
  const aim = useApp((state) => (hole === null ? null : situationOfHole(shown(state.history), hole).aim));
  const unplayable = useApp(
    (state) =>
      aim !== null &&
      state.answers.own === null &&
      state.answers.plan?.rough === false &&
      heldResult(state)?.rough === false,
  );
  const lie = useApp((state) => currentPlan(state)?.lie);
  if (hole === null || spreads === null || lie === undefined || NO_SWING.includes(lie)) return null;
  const take = (change: Parameters<typeof withHole>[2], label: string): void => {
    const situation = withHole(store.state().history.present, hole, change);
    store.dispatch({ type: 'situation-taken', situation, label });
  };
  return (
    <div class="own-aim">
      <Field
        name={words.plan.ownShot}
        control={(id) => (
          <select
            id={id}
            value={aim === null ? '' : String(aim.spreadIndex)}
            onChange={(event) => {
              const typed = event.currentTarget.value;
              const own = typed === '' ? null : aimWithClub(store.state(), Number(typed));
              if (own === null) return;
              take({ aim: own }, words.plan.steps.tryOwn({ hole }));
              store.dispatch({ type: 'shot-chosen', shot: OWN_AIM });
            }}
          >
            <option value="">{words.plan.chooseClub}</option>
            {spreads.map((spread, i) => (
              <option key={`${spread.club.name} ${spread.swing}`} value={String(i)}>
                {words.plan[spread.swing === 'part' ? 'swingUpTo' : 'swingChoice']({
                  club: spread.club.name,
                  swing: words.golf.swings[spread.swing],
                  length: lengthText(spread.carryMean, units),
                })}
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
            take({ aim: null }, words.plan.steps.dropOwn({ hole }));
            store.dispatch({ type: 'shot-chosen', shot: null });
          }}
        >
          {words.plan.dropIt}
        </button>
      )}
      {unplayable && <p class="faint">{words.plan.clubNotPlayed}</p>}
    </div>
  );
}
