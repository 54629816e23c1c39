/**
 * How many more or fewer poor strikes this player makes than is expected, with every club alike: a factor on a grid,
 * log-normal beforehand with mean 1, drawn given the poor shares of the clubs (griddy Gibbs, Ritter & Tanner 1992).
 */

import type { RandomStream } from '../../random/streams.ts';
import { expectedPoorShare } from './entry-state.ts';
import { logBeta } from './gamma-ratio.ts';
import type { BagEntry, BagPrior } from './prior.ts';

/** So many points over so many standard deviations to either side. */
const POINTS = 25;
const REACH = 2.5;

export class PoorLevels {
  private readonly levels = new Float64Array(POINTS);
  private readonly logPrior = new Float64Array(POINTS);
  private readonly weights = new Float64Array(POINTS);
  /** Per point and club: expected poor share, and the logarithm of its beta law's constant. */
  private readonly shares: Float64Array;
  private readonly logConstants: Float64Array;
  private readonly logits: Float64Array;
  private readonly shots: number;

  constructor(entries: readonly BagEntry[], prior: BagPrior) {
    const size = entries.length;
    const sd = prior.poorLevelSd;
    this.shots = prior.poorShareShots;
    this.shares = new Float64Array(POINTS * size);
    this.logConstants = new Float64Array(POINTS * size);
    this.logits = new Float64Array(size);
    for (let g = 0; g < POINTS; g++) {
      const z = REACH * ((2 * g) / (POINTS - 1) - 1);
      // Mean 1: the logarithm's mean is -sd² / 2.
      this.levels[g] = Math.exp(sd * z - (sd * sd) / 2);
      this.logPrior[g] = (-z * z) / 2;
      entries.forEach((entry, j) => {
        const share = expectedPoorShare(entry, this.levels[g]!);
        this.shares[g * size + j] = share;
        this.logConstants[g * size + j] = logBeta(this.shots * share, this.shots * (1 - share));
      });
    }
  }

  draw(stream: RandomStream, clubs: readonly { readonly poorShare: number }[]): number {
    const { levels, logPrior, weights, shares, logConstants, logits, shots } = this;
    const size = clubs.length;
    for (let j = 0; j < size; j++) {
      const { poorShare } = clubs[j]!;
      logits[j] = Math.log(poorShare / (1 - poorShare));
    }
    let highest = -Infinity;
    for (let g = 0; g < POINTS; g++) {
      let log = logPrior[g]!;
      for (let j = 0, at = g * size; j < size; j++, at++) {
        log += shots * shares[at]! * logits[j]! - logConstants[at]!;
      }
      weights[g] = log;
      highest = Math.max(highest, log);
    }
    let total = 0;
    for (let g = 0; g < POINTS; g++) {
      weights[g] = Math.exp(weights[g]! - highest);
      total += weights[g]!;
    }
    let left = stream.nextUniform() * total;
    let g = 0;
    while (g < POINTS - 1 && left > weights[g]!) {
      left -= weights[g]!;
      g++;
    }
    return levels[g]!;
  }
}
