/**
 * Handicap arithmetic of the World Handicap System (Rules of Handicapping, The R&A and USGA 2020, revised 2024):
 * course and playing handicap (Rule 6), where strokes are received (Appendix E), net double bogey (Rule 3.1),
 * score differential (Rule 5.1). Plus handicaps are negative, as in player files.
 */

/** Rating of one set of tees. For nine holes: the nine holes' own rating, slope and par. */
export interface TeeRating {
  readonly courseRating: number;
  /** 55 to 155; 113 is the standard. */
  readonly slopeRating: number;
  readonly par: number;
  readonly holes: 18 | 9;
}

export const STANDARD_SLOPE = 113;
export const LEAST_SLOPE = 55;
export const MOST_SLOPE = 155;

/** Shares of the course handicap that are recommended by format (Appendix C; from memory). */
export const ALLOWANCE = { strokePlay: 0.95, stableford: 0.95, matchPlay: 1 } as const;

/** Highest score on a hole, over par, for a player without a handicap index (Rule 3.1a) or with very many strokes (from memory). */
const MOST_OVER_PAR = 5;
const MANY_STROKES = 4;

/** To the nearest whole number, halves upwards: 14.5 gives 15, -1.5 gives -1 (Rules 6.1 and 6.2). */
export function roundHalfUp(value: number): number {
  // Sums of decimals such as 0.95 * 30 are off by parts in 10^16: mend that before a half is judged.
  const rounded = Math.floor(Math.round(value * 1e9) / 1e9 + 0.5);
  return rounded === 0 ? 0 : rounded;
}

/**
 * Course handicap before rounding: index x slope / 113 + (rating - par) (Rule 6.1a). Over nine holes half the index
 * counts, to one decimal (Rule 6.1b).
 */
export function exactCourseHandicap(index: number, tees: TeeRating): number {
  checkTees(tees);
  const counted = tees.holes === 9 ? roundHalfUp(index * 5) / 10 : index;
  return (counted * tees.slopeRating) / STANDARD_SLOPE + (tees.courseRating - tees.par);
}

/** Rounded: for the highest score that counts on a hole, and for play without an allowance. */
export function courseHandicap(index: number, tees: TeeRating): number {
  return roundHalfUp(exactCourseHandicap(index, tees));
}

/** Strokes for the game: the unrounded course handicap times the allowance, rounded once (Rule 6.2). */
export function playingHandicap(index: number, tees: TeeRating, allowance: number): number {
  if (!(allowance > 0 && allowance <= 1.5)) throw new RangeError(`Unexpected allowance: ${allowance}`);
  return roundHalfUp(exactCourseHandicap(index, tees) * allowance);
}

/**
 * Rank of each hole, 1 the first to receive a stroke. Holes without a stroke index come last, in order of play; nine
 * holes are ranked among themselves.
 */
export function holeRanks(strokeIndexes: readonly (number | undefined)[]): readonly number[] {
  const order = strokeIndexes
    .map((index, hole) => ({ index: index ?? Infinity, hole }))
    .sort((a, b) => (a.index === b.index ? a.hole - b.hole : a.index - b.index));
  const ranks = new Array<number>(strokeIndexes.length);
  order.forEach(({ hole }, position) => (ranks[hole] = position + 1));
  return ranks;
}

/**
 * Strokes received on each hole, negative where strokes are given back. A handicap of the number of holes gives one
 * each, what is over goes to the lowest stroke indexes again; a plus handicap gives back from the highest
 * (Appendix E).
 */
export function strokesReceived(
  handicap: number,
  strokeIndexes: readonly (number | undefined)[],
): readonly number[] {
  if (!Number.isInteger(handicap)) throw new RangeError(`Unexpected handicap: ${handicap}; round it first.`);
  const holes = strokeIndexes.length;
  const size = Math.abs(handicap);
  const everywhere = Math.floor(size / holes);
  const over = size - everywhere * holes;
  return holeRanks(strokeIndexes).map((rank) => {
    if (handicap >= 0) return everywhere + (rank <= over ? 1 : 0);
    const given = everywhere + (rank > holes - over ? 1 : 0);
    return given === 0 ? 0 : -given;
  });
}

/**
 * Strokes on each hole of a match: the player of the higher course handicap receives the difference, first on the lowest
 * stroke indexes (Rule 6.2b, Appendix E). Seen from the first player: negative where the opponent receives.
 */
export function matchStrokes(
  own: number,
  opponents: number,
  strokeIndexes: readonly (number | undefined)[],
): readonly number[] {
  const received = strokesReceived(Math.abs(own - opponents), strokeIndexes);
  return own >= opponents ? received : received.map((strokes) => (strokes === 0 ? 0 : -strokes));
}

/** The highest score on a hole that counts for a handicap: par + 2 + strokes received (Rule 3.1b). */
export function netDoubleBogey(par: number, received: number): number {
  const highest = par + 2 + received;
  return received >= MANY_STROKES ? Math.min(highest, par + MOST_OVER_PAR) : highest;
}

/** The same for a player who has no handicap index yet: par + 5 (Rule 3.1a). */
export function highestWithoutIndex(par: number): number {
  return par + MOST_OVER_PAR;
}

/** Sum of the hole scores with each held at the highest that counts. */
export function adjustedGrossScore(scores: readonly number[], highest: readonly number[]): number {
  if (scores.length !== highest.length)
    throw new RangeError(`Unexpected scores: ${scores.length} for ${highest.length} holes.`);
  return scores.reduce((sum, score, hole) => sum + Math.min(score, highest[hole]!), 0);
}

/** Score differential over 18 holes, one decimal: (113 / slope) x (adjusted score - rating - adjustment for conditions). */
export function scoreDifferential(adjustedScore: number, tees: TeeRating, conditions = 0): number {
  checkTees(tees);
  const exact = (STANDARD_SLOPE / tees.slopeRating) * (adjustedScore - tees.courseRating - conditions);
  return roundHalfUp(exact * 10) / 10;
}

/** The highest score whose differential is at most `differential`: what playing to that handicap asks for. */
export function scoreForDifferential(differential: number, tees: TeeRating): number {
  checkTees(tees);
  const exact = tees.courseRating + (differential * tees.slopeRating) / STANDARD_SLOPE;
  let score = Math.ceil(exact) + 1;
  while (scoreDifferential(score, tees) > differential) score--;
  return score;
}

function checkTees({ courseRating, slopeRating, par, holes }: TeeRating): void {
  if (!(slopeRating >= LEAST_SLOPE && slopeRating <= MOST_SLOPE))
    throw new RangeError(
      `Unexpected slope rating: ${slopeRating}; it lies from ${LEAST_SLOPE} to ${MOST_SLOPE}.`,
    );
  if (!(courseRating > 0) || !(par > 0))
    throw new RangeError(`Unexpected rating ${courseRating} or par ${par} of ${holes} holes.`);
}
