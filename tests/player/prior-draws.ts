/** Players drawn from the estimator's own prior, and shots drawn from their laws. */

import type { MeasuredShot } from '../../core/player/measured-shot.ts';
import type { ShotSpread } from '../../core/player/model.ts';
import { BAG_PRIOR } from '../../core/player/posterior.ts';
import { gammaHalfStep } from '../../core/player/posterior/gamma-ratio.ts';
import type { DeviationPrior } from '../../core/player/posterior/prior.ts';
import {
  drawBeta,
  drawChiSquare,
  drawGamma,
  drawInverseWishart,
  drawNormal,
} from '../../core/player/posterior/random-laws.ts';
import type { RandomStream } from '../../core/random/streams.ts';

/** Mean of sqrt(n / chi-square(n)). */
function rootMean(degrees: number): number {
  return Math.sqrt(degrees / 2) / gammaHalfStep((degrees - 1) / 2);
}

/** Deviation of a single club's full swing at 32 degrees of loft, where the tilt is nought. */
function deviationSd(prior: DeviationPrior): number {
  return Math.hypot(prior.bag, prior.bend, prior.club);
}

/** A law from the prior about what is expected of a club of 32 degrees. */
export function lawFromPrior(stream: RandomStream, expected: ShotSpread): ShotSpread {
  const prior = BAG_PRIOR;
  const rate = gammaHalfStep(prior.bagSpreadShape) ** 2;
  const carryFactor = drawGamma(stream, prior.bagSpreadShape) / rate;
  const directionFactor = drawGamma(stream, prior.bagSpreadShape) / rate;
  const unit = prior.spreadShots / rootMean(prior.spreadShots) ** 2;
  const spread = drawInverseWishart(stream, prior.spreadShots + 1, {
    cc: unit * carryFactor * expected.carrySd ** 2,
    cd: 0,
    dd: unit * directionFactor * expected.directionSd ** 2,
  });
  const directionSd = Math.sqrt(spread.dd);
  const level = Math.exp(prior.poorLevelSd * drawNormal(stream) - prior.poorLevelSd ** 2 / 2);
  const share = Math.min(0.6, Math.max(0.002, expected.poorShare * level));
  const poorUnit = prior.poorLawStrikes / rootMean(prior.poorLawStrikes) ** 2;
  const times = expected.poor.directionSd / expected.directionSd;
  return {
    ...expected,
    carryMean: expected.carryMean * (1 + deviationSd(prior.carry) * drawNormal(stream)),
    carrySd: Math.sqrt(spread.cc),
    directionMean: expected.directionSd * deviationSd(prior.direction) * drawNormal(stream),
    directionSd,
    correlation: spread.cd / Math.sqrt(spread.cc * spread.dd),
    poorShare: drawBeta(stream, prior.poorShareShots * share, prior.poorShareShots * (1 - share)),
    poor: {
      carryShareMean: expected.poor.carryShareMean + prior.poorCarrySd * drawNormal(stream),
      carryShareSd: Math.sqrt(
        (poorUnit * expected.poor.carryShareSd ** 2) / drawChiSquare(stream, prior.poorLawStrikes),
      ),
      directionSd:
        directionSd * Math.sqrt((poorUnit * times ** 2) / drawChiSquare(stream, prior.poorLawStrikes)),
    },
  };
}

/** Shots of a law; a carry is at least a metre. */
export function shotsOf(stream: RandomStream, law: ShotSpread, count: number): MeasuredShot[] {
  return Array.from({ length: count }, () => {
    const [u, v] = [drawNormal(stream), drawNormal(stream)];
    const { poor, correlation } = law;
    if (stream.nextUniform() < law.poorShare) {
      const share = poor.carryShareMean + poor.carryShareSd * u;
      return {
        carryM: Math.max(1, law.carryMean * share),
        direction: law.directionMean + poor.directionSd * v,
      };
    }
    const w = correlation * u + Math.sqrt(1 - correlation ** 2) * v;
    return {
      carryM: Math.max(1, law.carryMean + law.carrySd * u),
      direction: law.directionMean + law.directionSd * w,
    };
  });
}
