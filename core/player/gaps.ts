/**
 * The bag's distance ladder as data: for neighbouring clubs how far their carries lie apart, how sure that is, and how
 * often the longer club comes down shorter. A gap is wide where a length between the two is out of reach of both.
 */

import { normalCdf } from '../random/normal.ts';
import type { ShotSpread } from './model.ts';
import { SPREAD_WIDTH, type SpreadPosterior } from './posterior.ts';
import { type Estimate, tailInterval } from './posterior/intervals.ts';

/** One rung: a club and swing with the carry that is to be expected of a solid strike. Metres. */
export interface Rung {
  readonly club: string;
  readonly swing: ShotSpread['swing'];
  readonly carryM: number;
  readonly carrySdM: number;
  /** Half of the solid strikes carry between these. */
  readonly middleHalf: { readonly low: number; readonly high: number };
  /** 90 % interval of the mean; absent where the doubt is not known. */
  readonly doubt?: Estimate;
}

export type GapKind = 'even' | 'wide' | 'narrow' | 'turned';

export interface Gap {
  readonly longer: Rung;
  readonly shorter: Rung;
  /** Mean carry of the longer less that of the shorter. */
  readonly gapM: number;
  /** 90 % interval of `gapM`; absent where the doubt is not known. */
  readonly doubt?: Estimate;
  /** Chance that a solid strike with the longer club carries less than one with the shorter. */
  readonly overlap: number;
  /** `turned`: the club with less loft carries no farther, as far as the shots tell. */
  readonly kind: GapKind;
}

/** A gap of more than this share of the longer carry is wide, of less than that narrow. Common practice, no source. */
const WIDE_SHARE = 0.13;
const NARROW_SHARE = 0.035;
/** Wedges stand closer in metres: no gap below this is wide. */
const LEAST_WIDE_M = 14;
/** Half of a normal law lies within so many standard deviations. */
const HALF_SDS = 0.67449;

/** Full swings, longest first; `posteriors` in the order of `spreads`, as a player model hands them over. */
export function distanceLadder(
  spreads: readonly ShotSpread[],
  posteriors?: readonly SpreadPosterior[],
): readonly Rung[] {
  return fullSwings(spreads, posteriors).map(({ rung }) => rung);
}

/** The gaps between neighbouring full swings, in order of loft: a turned pair shows as such. */
export function distanceGaps(
  spreads: readonly ShotSpread[],
  posteriors?: readonly SpreadPosterior[],
): readonly Gap[] {
  const byLoft = fullSwings(spreads, posteriors).sort(
    (a, b) => a.spread.club.loftDeg - b.spread.club.loftDeg,
  );
  const gaps: Gap[] = [];
  for (let i = 0; i + 1 < byLoft.length; i++) {
    const [longer, shorter] = [byLoft[i]!, byLoft[i + 1]!];
    const gapM = longer.spread.carryMean - shorter.spread.carryMean;
    const doubt = gapDoubt(longer.posterior, shorter.posterior);
    const both = Math.hypot(longer.spread.carrySd, shorter.spread.carrySd);
    gaps.push({
      longer: longer.rung,
      shorter: shorter.rung,
      gapM,
      ...(doubt === undefined ? {} : { doubt }),
      overlap: normalCdf(-gapM / both),
      kind: kindOf(gapM, longer.spread.carryMean, doubt),
    });
  }
  return gaps;
}

interface FullSwing {
  readonly spread: ShotSpread;
  readonly posterior: SpreadPosterior | undefined;
  readonly rung: Rung;
}

function fullSwings(
  spreads: readonly ShotSpread[],
  posteriors: readonly SpreadPosterior[] | undefined,
): FullSwing[] {
  return spreads
    .map((spread, i) => ({ spread, posterior: posteriors?.[i] }))
    .filter(({ spread }) => spread.swing === 'full')
    .map(({ spread, posterior }) => ({ spread, posterior, rung: rungOf(spread, posterior) }))
    .sort((a, b) => b.rung.carryM - a.rung.carryM);
}

function rungOf(spread: ShotSpread, posterior: SpreadPosterior | undefined): Rung {
  const { carryMean, carrySd } = spread;
  return {
    club: spread.club.name,
    swing: spread.swing,
    carryM: carryMean,
    carrySdM: carrySd,
    middleHalf: { low: carryMean - HALF_SDS * carrySd, high: carryMean + HALF_SDS * carrySd },
    ...(posterior === undefined ? {} : { doubt: tailInterval(posterior.draws, 0, SPREAD_WIDTH, 0.9) }),
  };
}

function gapDoubt(
  longer: SpreadPosterior | undefined,
  shorter: SpreadPosterior | undefined,
): Estimate | undefined {
  if (longer === undefined || shorter?.draws.length !== longer.draws.length) return undefined;
  const rows = longer.draws.length / SPREAD_WIDTH;
  const differences = Float64Array.from(
    { length: rows },
    (_, row) => longer.draws[row * SPREAD_WIDTH]! - shorter.draws[row * SPREAD_WIDTH]!,
  );
  return tailInterval(differences, 0, 1, 0.9);
}

function kindOf(gapM: number, longerM: number, doubt: Estimate | undefined): GapKind {
  if ((doubt?.high ?? gapM) <= 0) return 'turned';
  if (gapM < NARROW_SHARE * longerM) return 'narrow';
  return gapM > Math.max(LEAST_WIDE_M, WIDE_SHARE * longerM) ? 'wide' : 'even';
}
