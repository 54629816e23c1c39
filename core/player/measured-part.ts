/** A club's part swings as measured: their law over what is expected, and the doubt of it. */

import { makeStreamKey, RandomStream } from '../random/streams.ts';
import type { ShotSpread } from './model.ts';
import { partCarrySd } from './part-law.ts';
import { derivedPartLaw } from './part-swing.ts';
import { SPREAD_NUMBERS, SPREAD_WIDTH, type SpreadPosterior } from './posterior.ts';
import type { Estimate } from './posterior/intervals.ts';
import { drawNormal } from './posterior/random-laws.ts';
import { fitPartSwings, LEAST_PART_SHOTS, type PartFit, type PartShot } from './short-game.ts';

export interface MeasuredPart {
  readonly spread: ShotSpread;
  readonly fit: PartFit;
}

/**
 * The law of a club's part swings from its own shots where there are enough, else from those of all clubs together,
 * since the feel for a length is much the same with every wedge. Null where there are too few even so.
 */
export function measuredPart(
  derived: ShotSpread,
  partShots: ReadonlyMap<string, readonly PartShot[]>,
): MeasuredPart | null {
  const own = partShots.get(derived.club.name) ?? [];
  const shots = own.length >= LEAST_PART_SHOTS ? own : [...partShots.values()].flat();
  const fit = fitPartSwings(shots, {
    law: derivedPartLaw(derived),
    directionSd: derived.directionSd,
    poorShare: derived.poorShare,
    poor: derived.poor,
  });
  if (!fit.ok) return null;
  const { law, directionMean, directionSd, poorShare } = fit.value;
  const spread: ShotSpread = {
    ...derived,
    carrySd: partCarrySd(law, derived.carryMean),
    directionMean,
    directionSd,
    poorShare,
    poor: { ...derived.poor, directionSd: (derived.poor.directionSd / derived.directionSd) * directionSd },
    part: law,
    source: {
      from: 'measured',
      shots: fit.value.shots,
      poorShots: Math.round(poorShare * fit.value.shots),
    },
  };
  return { spread, fit: fit.value };
}

/** The derived part swing's doubt with the measured numbers in it, each drawn from its own interval. */
export function partPosterior(derived: SpreadPosterior, { spread, fit }: MeasuredPart): SpreadPosterior {
  const draws = derived.draws.slice();
  const stream = new RandomStream();
  stream.restart(makeStreamKey('part', spread.club.name), 0);
  const column = (name: (typeof SPREAD_NUMBERS)[number]): number => SPREAD_NUMBERS.indexOf(name);
  const { estimates } = fit;
  for (let at = 0; at < draws.length; at += SPREAD_WIDTH) {
    const scale = logDraw(estimates.carrySdAt10M, drawNormal(stream)) / fit.law.carrySdAt10M;
    const directionSd = logDraw(estimates.directionSd, drawNormal(stream));
    draws[at + column('carrySd')] = partCarrySd(fit.law, draws[at]!) * scale;
    draws[at + column('directionMean')] =
      fit.directionMean + halfWidth(estimates.directionMean) * drawNormal(stream);
    const widened = directionSd / draws[at + column('directionSd')]!;
    draws[at + column('directionSd')] = directionSd;
    draws[at + column('poorDirectionSd')] = draws[at + column('poorDirectionSd')]! * widened;
    draws[at + column('poorShare')] = Math.min(0.9, logDraw(estimates.poorShare, drawNormal(stream)));
  }
  const poorShots = Math.round(fit.poorShare * fit.shots);
  return { ...derived, shots: fit.shots, effectiveShots: fit.shots, poorShots, part: fit.law, draws };
}

/** A 90 % interval's half width in standard deviations of a normal law. */
const HALF_WIDTH_SDS = 1.6449;

function halfWidth({ low, high }: Estimate): number {
  return (high - low) / 2 / HALF_WIDTH_SDS;
}

/** A positive number whose logarithm is normal within its interval. */
function logDraw({ mean, low, high }: Estimate, z: number): number {
  return mean * Math.exp((z * Math.log(high / low)) / 2 / HALF_WIDTH_SDS);
}
