/** How likely a shot is under a law, and shots drawn from it: solid or poor, as `ShotSpread` says. */

import type { RandomStream } from '../random/streams.ts';
import type { MeasuredShot } from './measured-shot.ts';
import type { ShotSpread } from './model.ts';
import { drawNormal } from './posterior/random-laws.ts';

/** No shot carries less, metres. */
const LEAST_CARRY_M = 1;

/** Logarithm of the density at (carry in metres, direction in radians). */
export function logShotDensity(spread: ShotSpread, shot: MeasuredShot): number {
  const { carryMean, carrySd, directionMean, directionSd, correlation, poorShare, poor } = spread;
  const u = (shot.carryM - carryMean) / carrySd;
  const v = (shot.direction - directionMean) / directionSd;
  const own = 1 - correlation * correlation;
  const solid =
    -0.5 * ((u * u - 2 * correlation * u * v + v * v) / own) -
    Math.log(carrySd * directionSd * Math.sqrt(own));
  const poorSd = poor.carryShareSd * carryMean;
  const short = (shot.carryM - poor.carryShareMean * carryMean) / poorSd;
  const aside = (shot.direction - directionMean) / poor.directionSd;
  const bad = -0.5 * (short * short + aside * aside) - Math.log(poorSd * poor.directionSd);
  const a = Math.log1p(-poorShare) + solid;
  const b = Math.log(poorShare) + bad;
  const top = Math.max(a, b);
  return top + Math.log(Math.exp(a - top) + Math.exp(b - top)) - Math.log(2 * Math.PI);
}

export function drawShot(spread: ShotSpread, stream: RandomStream): MeasuredShot {
  const { carryMean, carrySd, directionMean, directionSd, correlation, poor } = spread;
  const [u, v] = [drawNormal(stream), drawNormal(stream)];
  if (stream.nextUniform() < spread.poorShare) {
    const carryM = carryMean * (poor.carryShareMean + poor.carryShareSd * u);
    return { carryM: Math.max(LEAST_CARRY_M, carryM), direction: directionMean + poor.directionSd * v };
  }
  const w = correlation * u + Math.sqrt(1 - correlation * correlation) * v;
  return {
    carryM: Math.max(LEAST_CARRY_M, carryMean + carrySd * u),
    direction: directionMean + directionSd * w,
  };
}
