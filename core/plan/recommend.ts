/** Picks the safest of the options that the numbers cannot tell from the best, and says why in one sentence. */

import type { Conditions } from '../conditions/conditions.ts';
import type { Fault } from '../result.ts';
import { english } from '../words/english/english.ts';
import { told, toldFault } from '../words/told.ts';
import type { Words } from '../words/words.ts';
import type { Option, Recommendation, SpotPlan } from './model.ts';

/** Differences in the chance of a double bogey below this are not worth a stroke's fraction. */
const WORTHWHILE_SHARE = 0.01;

/** Of a plan: its options ranked best first, with `tooCloseToCall` set, and how the ball lies. */
export type Ranked = Pick<SpotPlan, 'options' | 'lie'>;

/** The reason is in English: another language has `reasonWords`. */
export function recommend(ranked: Ranked): Recommendation {
  return { optionId: safestOf(ranked.options)?.id ?? '', reason: reasonWords(ranked, english) };
}

/** Where a double bogey is as good as sure, the best of a bad place is the cheapest: hoping for the other score is a gamble. */
const AS_GOOD_AS_LOST = 0.9;

/** Of those that the numbers cannot tell from the best; undefined where there is no option at all. */
function safestOf(options: readonly Option[]): Option | undefined {
  let safest = options[0];
  if (safest === undefined || safest.parOdds.doubleOrWorse > AS_GOOD_AS_LOST) return safest;
  for (const option of equalsOf(options))
    if (option.parOdds.doubleOrWorse < safest.parOdds.doubleOrWorse - WORTHWHILE_SHARE) safest = option;
  return safest;
}

function equalsOf(options: readonly Option[]): readonly Option[] {
  return options.filter((option, rank) => rank === 0 || option.tooCloseToCall);
}

/** Why the option that `recommend` picks of these is picked, in one sentence. */
export function reasonWords({ options, lie }: Ranked, words: Words): string {
  const { reason } = words.plan;
  const best = options[0];
  const safest = safestOf(options);
  if (best === undefined || safest === undefined) return lie === 'outOfBounds' ? reason.out : reason.none;
  if (safest !== best) {
    return reason.safer({
      strokes: words.figures.fixed(safest.lossToBest, 2),
      best: nameOf(best, words),
      from: percent(best.parOdds.doubleOrWorse),
      to: percent(safest.parOdds.doubleOrWorse),
    });
  }
  const next = options[1];
  if (next === undefined) return reason.only;
  const others = equalsOf(options).filter((option) => option !== best);
  if (others.length > 0) {
    const other = others.reduce((a, b) => (b.parOdds.doubleOrWorse < a.parOdds.doubleOrWorse ? b : a));
    const mine = percent(best.parOdds.doubleOrWorse);
    const theirs = percent(other.parOdds.doubleOrWorse);
    const told = { other: nameOf(other, words), theirs, mine };
    if (mine === theirs) return reason.noSafer(told);
    return best.parOdds.doubleOrWorse < other.parOdds.doubleOrWorse
      ? reason.riskier(told)
      : reason.hardlySafer(told);
  }
  return reason.saves({
    strokes: words.figures.fixed(next.lossToBest, 2),
    error: errorText(next.lossStandardError, words),
    next: nameOf(next, words),
  });
}

/** Where nothing of the bag has a finite cost from a place that is in play; null elsewhere. */
export function noShotFault({ options, lie, hole }: Ranked & Pick<SpotPlan, 'hole'>): Fault | null {
  if (options.length > 0 || lie === 'outOfBounds') return null;
  return toldFault({
    severity: 'error',
    code: 'no-shot',
    where: told(({ features }) => features.whereOnlyHole, { hole }),
    message: told(({ plan }) => plan.reason.none),
  });
}

/** So many out of bounds are worth a second ball in the pocket. Common practice, no source. */
const PROVISIONAL_SHARE = 0.03;

/**
 * Advice on a provisional (Rules of Golf 2023, 18.3) where the shot may end out of bounds; null elsewhere. Who plays one gives up the
 * drop of Model Local Rule E-5, with which the plan reckons where it is in force.
 */
export function provisionalWords(
  option: Option,
  rules: Pick<Conditions['rules'], 'strokeAndDistanceAlternative'>,
  words: Words,
): string | null {
  const { outOfBounds } = option.trouble;
  if (option.kind !== 'shot' || outOfBounds < PROVISIONAL_SHARE) return null;
  const { provisional, noProvisional } = words.plan;
  return (rules.strokeAndDistanceAlternative ? noProvisional : provisional)({ chance: percent(outOfBounds) });
}

/** A standard error with the one figure that it is good for; never a plain zero where there is one. */
export function errorText(error: number, { figures }: Words): string {
  return error > 0 && error < 0.005 ? figures.fixed(Math.max(0.001, error), 3) : figures.fixed(error, 2);
}

export function nameOf(option: Option, words: Words): string {
  const { golf, plan } = words;
  if (option.kind === 'relief') return golf.relief[option.relief ?? 'unplayable-back-on-line'].named;
  return option.swing === 'full'
    ? plan.reason.theClub({ club: option.club })
    : plan.reason.theShortClub({ club: option.club, swing: golf.shortSwings[option.swing] });
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
