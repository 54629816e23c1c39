/** Picks the safest of the options that the numbers cannot tell from the best, and says why in one sentence. */

import type { Option, Recommendation } from './model.ts';

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
    return (
      `Lowest on average and no riskier than ${nameOf(equals[1]!)}, which is too close to call ` +
      `(double bogey or worse ${percent(best.parOdds.doubleOrWorse)} against ${percent(equals[1]!.parOdds.doubleOrWorse)}).`
    );
  }
  return `Saves ${strokes(next.lossToBest)} (± ${next.lossStandardError.toFixed(2)}) on the next best, ${nameOf(next)}.`;
}

export function nameOf(option: Option): string {
  if (option.kind === 'relief')
    return option.relief?.endsWith('lateral') === true ? 'a lateral drop' : 'a drop back on the line';
  const length = option.swing === 'full' ? '' : ` ${option.swing}`;
  return `the ${option.club}${length}`;
}

function strokes(value: number): string {
  return `${value.toFixed(2)} strokes`;
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
