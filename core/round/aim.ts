/** What is played for, as steps of a count that each hole's score moves, and what the final count is worth. */

import { makeDistribution, type ScoreDistribution } from './distribution.ts';

export type Aim =
  /** This score or fewer over the holes given. */
  | { readonly kind: 'score'; readonly target: number }
  /** At least so many points; strokes received per hole. */
  | { readonly kind: 'stableford'; readonly target: number; readonly received: readonly number[] }
  /** A match: the opponent's scores per hole, and the strokes that the player receives (negative: gives) per hole. */
  | {
      readonly kind: 'match';
      readonly opponent: readonly ScoreDistribution[];
      readonly received: readonly number[];
      /** Holes up when the first of the holes begins; 0 by default. */
      readonly up?: number;
    };

/** The count before the first hole: strokes left to spend, points scored, holes up. */
export function startOf(aim: Aim): number {
  switch (aim.kind) {
    case 'score':
      return aim.target;
    case 'stableford':
      return 0;
    case 'match':
      return aim.up ?? 0;
  }
}

/** What a final count is worth: 1 reached, 0 not; half for a match that is halved. */
export function worthOf(aim: Aim, count: number): number {
  switch (aim.kind) {
    case 'score':
      return count >= 0 ? 1 : 0;
    case 'stableford':
      return count >= aim.target ? 1 : 0;
    case 'match':
      return count > 0 ? 1 : count === 0 ? 0.5 : 0;
  }
}

/** Stableford points: 2 for net par, 1 more per stroke fewer, never below 0 (Rules of Golf 21.1b; from memory). */
export function stablefordPoints(score: number, par: number, received: number): number {
  return Math.max(0, par + 2 + received - score);
}

/** By how much the count moves on hole `index` (from 0), as a distribution. */
export function stepsOf(aim: Aim, index: number, par: number, scores: ScoreDistribution): ScoreDistribution {
  switch (aim.kind) {
    case 'score': {
      const highest = scores.lowest + scores.chances.length - 1;
      return makeDistribution(-highest, [...scores.chances].reverse());
    }
    case 'stableford': {
      const received = aim.received[index] ?? 0;
      return collect(scores, (score) => stablefordPoints(score, par, received));
    }
    case 'match': {
      const other = aim.opponent[index];
      if (other === undefined)
        throw new RangeError(`Unexpected match: the opponent has no scores on hole ${index + 1} of it.`);
      const received = aim.received[index] ?? 0;
      const weights = [0, 0, 0];
      scores.chances.forEach((chance, i) => {
        const net = scores.lowest + i - received;
        other.chances.forEach((otherChance, j) => {
          const step = Math.sign(other.lowest + j - net) + 1;
          weights[step] = weights[step]! + chance * otherChance;
        });
      });
      return makeDistribution(-1, weights);
    }
  }
}

function collect(scores: ScoreDistribution, countOf: (score: number) => number): ScoreDistribution {
  const counts = scores.chances.map((_, i) => countOf(scores.lowest + i));
  const lowest = Math.min(...counts);
  const weights = new Array<number>(Math.max(...counts) - lowest + 1).fill(0);
  counts.forEach((count, i) => (weights[count - lowest] = weights[count - lowest]! + scores.chances[i]!));
  return makeDistribution(lowest, weights);
}
