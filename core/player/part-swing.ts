/**
 * Swings below a full one, from the full swing's law: part swings of a chosen carry, and punch, three-quarter and
 * half swings where the player has not measured any. Derived figures say so in their source.
 */

import type { PoorStrike, ShotSpread, Swing } from './model.ts';
import { type PartLaw, partCarrySd } from './part-law.ts';

/** Longest part swing as a share of the full carry. Common practice, no source. */
const PART_LONGEST = 0.95;
/**
 * The spread of carry as a share of carry grows towards short chips: share(c) = share(full) (1 + 0.8 (1 - c / full)).
 * Chosen so that a tour player's chips from the fairway leave about 8 % of their length (Cochran & Stobbs 1968:
 * 7.8 %).
 */
const SHORT_SHARE_GAIN = 0.8;
/** No part swing is surer than this, metres: the bounce of the shortest chip. Common practice, no source. */
const CARRY_SD_FLOOR_M = 0.25;
/** A chip is mis-hit less often than a full swing: down to this share of it. Common practice, no source. */
const SHORT_POOR_SHARE = 0.5;
/** A poor part swing is stubbed short or bladed long, so it is wide in carry. Common practice, no source. */
const POOR_PART: Pick<PoorStrike, 'carryShareMean' | 'carryShareSd'> = {
  carryShareMean: 0.85,
  carryShareSd: 0.4,
};

/**
 * The law of a part swing that is to carry `carry` metres. `spread` is the `part` entry of a club, its `carryMean`
 * the longest carry of that swing; a longer wish is cut to it, a shorter one than a metre is raised to a metre.
 */
export function partSpread(spread: ShotSpread, carry: number): ShotSpread {
  const carryMean = Math.min(spread.carryMean, Math.max(Math.min(1, spread.carryMean), carry));
  if (spread.part !== undefined) {
    return {
      ...spread,
      carryMean: carryMean * (1 + spread.part.carryBiasShare),
      carrySd: Math.max(CARRY_SD_FLOOR_M, partCarrySd(spread.part, carryMean)),
    };
  }
  const short = 1 - carryMean / spread.carryMean;
  const share = (spread.carrySd / spread.carryMean) * (1 + SHORT_SHARE_GAIN * short);
  return {
    ...spread,
    carryMean,
    carrySd: Math.max(CARRY_SD_FLOOR_M, share * carryMean),
    poorShare: spread.poorShare * (1 - (1 - SHORT_POOR_SHARE) * short),
  };
}

/** The `part` entry of a club, from its full swing. */
export function derivePart(full: ShotSpread): ShotSpread {
  return {
    ...deriveScaled(full, 'part', { carry: PART_LONGEST, carrySd: PART_LONGEST, direction: 1, poor: 1 }),
    poor: { ...full.poor, ...POOR_PART },
  };
}

/** The growth of scatter with length that `partSpread` gives a derived part swing, as a power law. */
export function derivedPartLaw(part: ShotSpread): PartLaw {
  const [near, far] = [Math.min(10, 0.2 * part.carryMean), 0.8 * part.carryMean];
  const [nearSd, farSd] = [partSpread(part, near).carrySd, partSpread(part, far).carrySd];
  const growth = Math.log(farSd / nearSd) / Math.log(far / near);
  return { carrySdAt10M: farSd * (10 / far) ** growth, growth, carryBiasShare: 0 };
}

/** Factors on the full swing's law. */
interface SwingFactors {
  readonly carry: number;
  readonly carrySd: number;
  readonly direction: number;
  readonly poor: number;
}

/**
 * A punch carries about 60 % of the full swing; shorter swings keep the same share of error in carry, and stray a
 * little less. A shot bent on purpose carries a little less and scatters more. Common practice, no source.
 */
const DERIVED: Readonly<Record<Exclude<Swing, 'full' | 'part'>, SwingFactors>> = {
  punch: { carry: 0.6, carrySd: 0.7, direction: 0.9, poor: 0.9 },
  'three-quarter': { carry: 0.87, carrySd: 0.9, direction: 0.95, poor: 0.9 },
  half: { carry: 0.62, carrySd: 0.72, direction: 0.95, poor: 0.8 },
  'curved-left': { carry: 0.96, carrySd: 1.15, direction: 1.3, poor: 1.15 },
  'curved-right': { carry: 0.96, carrySd: 1.15, direction: 1.3, poor: 1.15 },
};

/** The law of any swing below the full one, from the full swing. */
export function deriveSwing(full: ShotSpread, swing: Exclude<Swing, 'full'>): ShotSpread {
  return swing === 'part' ? derivePart(full) : deriveScaled(full, swing, DERIVED[swing]);
}

function deriveScaled(full: ShotSpread, swing: Swing, factors: SwingFactors): ShotSpread {
  return {
    ...full,
    swing,
    carryMean: full.carryMean * factors.carry,
    carrySd: full.carrySd * factors.carrySd,
    directionSd: full.directionSd * factors.direction,
    poorShare: full.poorShare * factors.poor,
    source: { from: 'derived', fromSwing: full.swing, fromClub: full.club.name },
  };
}
