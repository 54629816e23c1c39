/** Picks the safest of the options that the numbers cannot tell from the best, and says why in one sentence. */

import type { Option, Recommendation, ReliefKind } from './model.ts';

/** Differences in the chance of a double bogey below this are not worth a stroke's fraction. */
const WORTHWHILE_SHARE = 0.01;

/** `options` ranked best first, with `tooCloseToCall` set. */
export function recommend(options: readonly Option[]): Recommendation {
  const best = options[0];
  if (best === undefined) {
    return {
      optionId: '',
      reason: 'Out of bounds: play again from where the last stroke was made, under one penalty stroke.',
    };
  }
  const equals = options.filter((option) => option === best || option.tooCloseToCall);
  let safest = best;
  for (const option of equals) {
    if (option.parOdds.doubleOrWorse < safest.parOdds.doubleOrWorse - WORTHWHILE_SHARE) safest = option;
  }
  return { optionId: safest.id, reason: reasonFor(safest, best, options, equals) };
}

function reasonFor(
  safest: Option,
  best: Option,
  options: readonly Option[],
  equals: readonly Option[],
): string {
  if (safest !== best) {
    return (
      `Costs ${strokes(safest.lossToBest)} more than ${nameOf(best)}, too close to call, ` +
      `and cuts the chance of double bogey or worse from ${percent(best.parOdds.doubleOrWorse)} to ${percent(safest.parOdds.doubleOrWorse)}.`
    );
  }
  const next = options[1];
  if (next === undefined) return 'The only option from here.';
  if (equals.length > 1) {
    const others = equals.filter((option) => option !== best);
    const other = others.reduce((a, b) => (b.parOdds.doubleOrWorse < a.parOdds.doubleOrWorse ? b : a));
    const mine = percent(best.parOdds.doubleOrWorse);
    const theirs = percent(other.parOdds.doubleOrWorse);
    const verdict =
      mine === theirs
        ? 'no safer'
        : best.parOdds.doubleOrWorse < other.parOdds.doubleOrWorse
          ? 'riskier'
          : 'hardly safer';
    return `Lowest on average; ${nameOf(other)} is too close to call but ${verdict} (double bogey or worse ${theirs} against ${mine}).`;
  }
  return `Saves ${strokes(next.lossToBest)} (± ${errorText(next.lossStandardError)}) on the next best, ${nameOf(next)}.`;
}

const RELIEF_NAMES: Readonly<Record<ReliefKind, string>> = {
  'unplayable-lateral': 'a lateral drop',
  'unplayable-back-on-line': 'a drop back on the line',
  'unplayable-outside-bunker': 'a drop outside the bunker',
  'penalty-lateral': 'a lateral drop',
  'penalty-back-on-line': 'a drop back on the line',
  'penalty-replay': 'playing from the tee again',
};

/** A standard error with the one figure that it is good for; never a plain zero where there is one. */
export function errorText(error: number): string {
  return error > 0 && error < 0.005 ? Math.max(0.001, error).toFixed(3) : error.toFixed(2);
}

export function nameOf(option: Option): string {
  if (option.kind === 'relief') return RELIEF_NAMES[option.relief ?? 'unplayable-back-on-line'];
  const length = option.swing === 'full' ? '' : ` ${option.swing}`;
  return `the ${option.club}${length}`;
}

function strokes(value: number): string {
  return `${value.toFixed(2)} strokes`;
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
