/** The recommendation in one card: what to hit, where to aim, what it costs, and why. */

import { useEffect, useState } from 'preact/hooks';
import { dayWords, isOrdinaryDay } from '../../core/conditions/day-words.ts';
import type { AppState } from '../state/app-state.ts';
import type { SpreadDoubt } from '../../core/plan/model.ts';
import { chanceText, errorText, strokesText, toHoleText } from '../state/measures.ts';
import { currentPlan, isPlanRough, optionOf } from '../state/selectors.ts';
import { useApp, useDispatch } from '../state/use-app.ts';
import { OddsBar } from './odds-bar.tsx';
import { aimPhrase } from './plan-frame.ts';
import { lieWords, shotPhrase, shotWords } from './shot-words.ts';

export function RecommendationCard() {
  const plan = useApp(currentPlan);
  const option = useApp((state) => optionOf(state, currentPlan(state)?.recommendation.optionId ?? null));
  const aim = useApp((state) => (option === null ? '' : aimPhrase(state, option)));
  const rough = useApp(isPlanRough);
  const day = useApp(plannedDay);
  const units = useApp((state) => state.settings.units);
  const dispatch = useDispatch();
  if (plan === null) return null;
  if (option === null) {
    return (
      <section class="advice-card" aria-label="Recommendation">
        {day !== null && <p class="advice-day">For this day: {day}</p>}
        <p class="advice-reason">{plan.recommendation.reason}</p>
        <Announcement />
      </section>
    );
  }
  const { name, manner } = shotWords(option);
  return (
    <section class={rough ? 'advice-card rough' : 'advice-card'} aria-label="Recommendation">
      <p class="kicker">
        Recommended {lieWords(plan.lie)}, {toHoleText(plan.distanceToHoleM, plan.lie === 'green', units)} from
        the hole
      </p>
      {day !== null && <p class="advice-day">For this day: {day}</p>}
      <div class="advice-main">
        <h3>
          <button
            type="button"
            class="advice-name"
            onClick={() => dispatch({ type: 'shot-chosen', shot: null })}
            title="Show it on the map"
          >
            {name}
            {manner !== '' && <small>, {manner}</small>}
          </button>
        </h3>
        <p class="advice-cost">
          <strong>{strokesText(option.meanStrokes)}</strong>
          {option.standardError > 0 && <span> ± {errorText(option.standardError)}</span>}
          <small>strokes to hole out</small>
        </p>
      </div>
      {aim !== '' && <p class="advice-aim">{aim}</p>}
      <OddsBar odds={option.parOdds} words />
      <p class="advice-reason">{plan.recommendation.reason}</p>
      {option.doubt !== undefined && <p class="faint advice-doubt">{doubtWords(option.doubt)}</p>}
      <Announcement />
    </section>
  );
}

/** The day that the plan on screen was made for; null for an ordinary one. A wind that was forgotten should be seen here. */
export function plannedDay(state: AppState): string | null {
  const { plan } = state.answers;
  if (plan === null || isOrdinaryDay(plan.conditions)) return null;
  return dayWords(plan.conditions, state.settings.units);
}

/** What the player's few shots leave open, in one sentence. */
function doubtWords({ lowStrokes, highStrokes, cheapestShare }: SpreadDoubt): string {
  const range = `${strokesText(lowStrokes)} to ${strokesText(highStrokes)}`;
  return `Your shots leave room for ${range} (nine in ten); it is the lowest of all in ${chanceText(cheapestShare)} of the bags that fit them.`;
}

/** Says the recommendation aloud once things are at rest; a drag would otherwise chatter. */
function Announcement() {
  const settled = useApp(announcement);
  const [said, say] = useState('');
  useEffect(() => {
    if (settled !== null) say(settled);
  }, [settled]);
  return (
    <p class="unseen" aria-live="polite" data-announcement>
      {said}
    </p>
  );
}

function announcement(state: AppState): string | null {
  const plan = currentPlan(state);
  if (plan === null || isPlanRough(state)) return null;
  const option = optionOf(state, plan.recommendation.optionId);
  if (option === null) return plan.recommendation.reason;
  const day = plannedDay(state);
  return `Hole ${plan.hole}, ${lieWords(plan.lie)}${day === null ? '' : `, ${day}`}: ${shotPhrase(option)}, ${strokesText(option.meanStrokes)} strokes. ${plan.recommendation.reason}`;
}
