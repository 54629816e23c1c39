/** The recommendation in one card: what to hit, where to aim, what it costs, and why. */

import { useEffect, useState } from 'preact/hooks';
import { dayWords, isOrdinaryDay } from '../../core/conditions/day-words.ts';
import type { AppState } from '../state/app-state.ts';
import { provisionalWords, reasonWords } from '../../core/plan/recommend.ts';
import type { Words } from '../../core/words/words.ts';
import type { SpreadDoubt } from '../../core/plan/model.ts';
import { chanceText, errorText, strokesText, toHoleText } from '../state/measures.ts';
import { currentPlan, isPlanRough, optionOf } from '../state/selectors.ts';
import { useApp, useDispatch } from '../state/use-app.ts';
import { OddsBar } from './odds-bar.tsx';
import { aimPhrase } from './plan-frame.ts';
import { shotPhrase, shotWords } from './shot-words.ts';
import { useWords, wordsOf } from '../state/use-words.ts';

export function RecommendationCard() {
  const words = useWords();
  const plan = useApp(currentPlan);
  const option = useApp((state) => optionOf(state, currentPlan(state)?.recommendation.optionId ?? null));
  const aim = useApp((state) => (option === null ? '' : aimPhrase(state, option)));
  const rough = useApp(isPlanRough);
  const day = useApp(plannedDay);
  const units = useApp((state) => state.settings.units);
  const rules = useApp((state) => state.answers.plan?.conditions.rules ?? null);
  const dispatch = useDispatch();
  if (plan === null) return null;
  if (option === null) {
    return (
      <section class="advice-card" aria-label={words.plan.recommendation}>
        {day !== null && <p class="advice-day">{words.plan.forThisDay({ day })}</p>}
        <p class="advice-reason">{reasonWords(plan, words)}</p>
        <Announcement />
      </section>
    );
  }
  const { name, manner } = shotWords(option, words);
  const provisional = rules === null ? null : provisionalWords(option, rules, words);
  return (
    <section class={rough ? 'advice-card rough' : 'advice-card'} aria-label={words.plan.recommendation}>
      <p class="kicker">
        {words.plan.recommendedFrom({
          where: words.golf.whereItLies[plan.lie],
          length: toHoleText(plan.distanceToHoleM, plan.lie === 'green', units, words),
        })}
      </p>
      {day !== null && <p class="advice-day">{words.plan.forThisDay({ day })}</p>}
      <div class="advice-main">
        <h3>
          <button
            type="button"
            class="advice-name"
            onClick={() => dispatch({ type: 'shot-chosen', shot: null })}
            title={words.plan.showOnMap}
          >
            {name}
            {manner !== '' && <small>, {manner}</small>}
          </button>
        </h3>
        <p class="advice-cost">
          <strong>{strokesText(option.meanStrokes, words)}</strong>
          {option.standardError > 0 && <span> ± {errorText(option.standardError, words)}</span>}
          <small>{words.plan.strokesToHoleOut}</small>
        </p>
      </div>
      {aim !== '' && <p class="advice-aim">{aim}</p>}
      <OddsBar odds={option.parOdds} named />
      <p class="advice-reason">{reasonWords(plan, words)}</p>
      {provisional !== null && <p class="advice-reason">{provisional}</p>}
      {option.doubt !== undefined && <p class="faint advice-doubt">{doubtWords(option.doubt, words)}</p>}
      <Announcement />
    </section>
  );
}

/** The day that the plan on screen was made for; null for an ordinary one. A wind that was forgotten should be seen here. */
export function plannedDay(state: AppState): string | null {
  const { plan } = state.answers;
  if (plan === null || isOrdinaryDay(plan.conditions)) return null;
  return dayWords(plan.conditions, state.settings.units, wordsOf(state));
}

/** What the player's few shots leave open, in one sentence. */
function doubtWords({ lowStrokes, highStrokes, cheapestShare }: SpreadDoubt, words: Words): string {
  return words.plan.doubt({
    low: strokesText(lowStrokes, words),
    high: strokesText(highStrokes, words),
    chance: chanceText(cheapestShare),
  });
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
  const words = wordsOf(state);
  const reason = reasonWords(plan, words);
  if (option === null) return reason;
  return words.plan.announcement({
    hole: plan.hole,
    where: words.golf.whereItLies[plan.lie],
    day: plannedDay(state) ?? '',
    shot: shotPhrase(option, words),
    strokes: strokesText(option.meanStrokes, words),
    reason,
  });
}
