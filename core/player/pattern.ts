/**
 * Where the balls of one club and swing come down, seen from above, as data for a drawing and as sentences for those
 * who do not see it. The player stands at (0, 0) and aims along +along; `across` is positive to the right. Metres.
 */

import type { MeasuredShot } from './measured-shot.ts';
import type { ShotSpread } from './model.ts';

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
export function patternWords(spread: ShotSpread, shots: number, units: 'yards' | 'metres'): string {
  const [unit, word] = units === 'yards' ? [YARD_M, 'yards'] : [1, 'metres'];
  const length = (metres: number): number => Math.round(metres / unit);
  const [half, most] = PATTERN_SHARES.map((share) => Math.sqrt(-2 * Math.log(1 - share)));
  const acrossSd = spread.carryMean * spread.directionSd;
  const bias = spread.carryMean * Math.sin(spread.directionMean);
  const name = spread.swing === 'full' ? spread.club.name : `${spread.club.name}, ${spread.swing} swing`;
  const side =
    length(Math.abs(bias)) === 0
      ? 'on the line of aim'
      : `${length(Math.abs(bias))} ${length(Math.abs(bias)) === 1 ? word.slice(0, -1) : word} ${bias > 0 ? 'right' : 'left'} of the aim`;
  const lean =
    Math.abs(spread.correlation) < 0.2
      ? ''
      : ` Longer ones tend to the ${spread.correlation > 0 ? 'right' : 'left'}, shorter ones to the ${spread.correlation > 0 ? 'left' : 'right'}.`;
  const poor = Math.round(100 * spread.poorShare);
  const basis =
    shots === 0
      ? 'No measured shots stand behind this.'
      : `${shots} measured ${shots === 1 ? 'shot stands' : 'shots stand'} behind this.`;
  return (
    `${name}: solid strikes carry ${length(spread.carryMean)} ${word} on average and come down ${side}. ` +
    `Half of them lie within ${length(half! * spread.carrySd)} ${word} short or long and ${length(half! * acrossSd)} ${word} to either side of that, ` +
    `nine in ten within ${length(most! * spread.carrySd)} and ${length(most! * acrossSd)}.${lean} ` +
    `${poor === 0 ? 'Hardly any strike is' : `${poor} in a hundred strikes are`} poor; these carry about ${length(spread.poor.carryShareMean * spread.carryMean)} ${word}. ${basis}`
  );
}
