/**
 * Where the balls of one club and swing come down, seen from above, as data for a drawing and as sentences for those
 * who do not see it. The player stands at (0, 0) and aims along +along; `across` is positive to the right. Metres.
 */

import type { MeasuredShot } from './measured-shot.ts';
import type { ShotSpread } from './model.ts';
import { clubInSentence } from './gap-words.ts';
import type { Words } from '../words/words.ts';

export interface PatternDot {
  readonly along: number;
  readonly across: number;
  /** More likely a poor strike than a solid one. */
  readonly isPoor: boolean;
}

/** The ellipse that holds a share of the solid strikes. */
export interface PatternEllipse {
  readonly share: number;
  readonly along: number;
  readonly across: number;
  readonly semiMajorM: number;
  readonly semiMinorM: number;
  /** Of the major axis, radians from the line of aim, positive to the right. */
  readonly tilt: number;
}

export interface LandingPattern {
  readonly dots: readonly PatternDot[];
  readonly ellipses: readonly PatternEllipse[];
  /** Half of the poor strikes come down nearer than this, metres. */
  readonly poorMedianM: number;
}

/** Shares of the ellipses that are drawn. */
export const PATTERN_SHARES = [0.5, 0.9] as const;

/** `shots` may be empty: then the law alone is shown. */
export function landingPattern(
  spread: ShotSpread,
  shots: readonly MeasuredShot[],
  shares: readonly number[] = PATTERN_SHARES,
): LandingPattern {
  return {
    dots: shots.map((shot) => ({
      along: shot.carryM * Math.cos(shot.direction),
      across: shot.carryM * Math.sin(shot.direction),
      isPoor: poorOdds(spread, shot) > 1,
    })),
    ellipses: shares.map((share) => ellipseOf(spread, share)),
    poorMedianM: Math.max(0, spread.carryMean * spread.poor.carryShareMean),
  };
}

/**
 * Odds that a shot is a poor strike: the two laws' densities, weighed by their shares. Directions farther out than ten
 * solid standard deviations count as ten.
 */
export function poorOdds(spread: ShotSpread, shot: MeasuredShot): number {
  const u = (shot.carryM - spread.carryMean) / spread.carrySd;
  const v = (shot.direction - spread.directionMean) / spread.directionSd;
  const own = 1 - spread.correlation ** 2;
  const solid = (u * u - 2 * spread.correlation * u * v + v * v) / own;
  const poorSd = spread.poor.carryShareSd * spread.carryMean;
  const wide = spread.poor.directionSd / spread.directionSd;
  const short = (shot.carryM - spread.poor.carryShareMean * spread.carryMean) / poorSd;
  const aside = Math.min(10, Math.abs(v)) / wide;
  const ratio = (spread.carrySd * Math.sqrt(own)) / (poorSd * wide);
  const prior = spread.poorShare / (1 - spread.poorShare);
  return prior * ratio * Math.exp(Math.min(700, 0.5 * (solid - short * short - aside * aside)));
}

/** A bivariate normal law's squared radius that holds a share is -2 ln(1 - share), chi-square with two degrees. */
function ellipseOf(spread: ShotSpread, share: number): PatternEllipse {
  const { carryMean, carrySd, directionMean, directionSd, correlation } = spread;
  const radius = Math.sqrt(-2 * Math.log(1 - share));
  const acrossSd = carryMean * directionSd;
  const covariance = correlation * carrySd * acrossSd;
  const half = Math.hypot((carrySd ** 2 - acrossSd ** 2) / 2, covariance);
  const mean = (carrySd ** 2 + acrossSd ** 2) / 2;
  return {
    share,
    along: carryMean * Math.cos(directionMean),
    across: carryMean * Math.sin(directionMean),
    semiMajorM: radius * Math.sqrt(mean + half),
    semiMinorM: radius * Math.sqrt(Math.max(0, mean - half)),
    tilt: directionMean + 0.5 * Math.atan2(2 * covariance, carrySd ** 2 - acrossSd ** 2),
  };
}

const YARD_M = 0.9144;

/** The pattern in sentences, lengths in whole yards or metres. */
export function patternWords(
  law: ShotSpread,
  shots: number,
  units: 'yards' | 'metres',
  words: Words,
): string {
  const { pattern, lengthUnit } = words.spread;
  const length = (metres: number): string => {
    const count = Math.round(metres / (units === 'yards' ? YARD_M : 1));
    return `${words.figures.whole(count)} ${lengthUnit[units]({ count })}`;
  };
  const [half, most] = PATTERN_SHARES.map((share) => Math.sqrt(-2 * Math.log(1 - share)));
  const acrossSd = law.carryMean * law.directionSd;
  const bias = law.carryMean * Math.sin(law.directionMean);
  const isOnLine = Math.round(Math.abs(bias) / (units === 'yards' ? YARD_M : 1)) === 0;
  const aside = { length: length(Math.abs(bias)) };
  const percent = Math.round(100 * law.poorShare);
  return pattern.all({
    club: clubInSentence(law, words),
    carry: length(law.carryMean),
    side: isOnLine ? pattern.onLine : bias > 0 ? pattern.right(aside) : pattern.left(aside),
    halfAlong: length(half! * law.carrySd),
    halfAcross: length(half! * acrossSd),
    mostAlong: length(most! * law.carrySd),
    mostAcross: length(most! * acrossSd),
    lean: Math.abs(law.correlation) < 0.2 ? '' : law.correlation > 0 ? pattern.longRight : pattern.longLeft,
    poor: percent === 0 ? pattern.hardlyPoor : pattern.poor({ percent }),
    poorCarry: length(law.poor.carryShareMean * law.carryMean),
    basis: shots === 0 ? pattern.noShots : pattern.shots({ count: shots }),
  });
}
