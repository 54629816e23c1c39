/**
 * The spread of a club player's rounds: Knuth 2008 (Golf Digest, on the handicap system of the USGA): scores fall on a
 * bell curve, the average lies three strokes above the handicap, which is met or beaten in one round of five and beaten
 * by three in one of twenty; more than half of the scores lie within three of the average. A normal law gives 3 / 0.84,
 * 6 / 1.64 and 3 / 0.67: standard deviations of 3.6, 3.6 and 4.4 at most.
 */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { chanceOfAtMost, meanOf, varianceOf } from '../../core/round/distribution.ts';
import { holeScores, roundDistribution } from '../../core/round/score-distribution.ts';

interface Odds {
  readonly holes: readonly {
    readonly par: number;
    readonly options: readonly { readonly scoreOdds: number[]; readonly meanStrokes: number }[];
  }[];
}

// Handicap 17 on the demo course: what the plan command gives.
const odds = JSON.parse(
  readFileSync(new URL('../round/fixtures/demo-hole-odds.json', import.meta.url), 'utf8'),
) as Odds;
const round = roundDistribution(odds.holes.map((hole) => holeScores(hole.options[0]!)));
const mean = meanOf(round);

describe('rounds of the sample player', () => {
  it('spread as club players’ rounds do', () => {
    const sd = Math.sqrt(varianceOf(round));
    expect(sd).toBeGreaterThan(3.5);
    expect(sd).toBeLessThan(4.5);
  });

  it('lie three below the average or better about once in five, six below about once in twenty', () => {
    // A mean between two whole scores: the chance at exactly that score is read off a line between its neighbours.
    const at = (score: number): number => {
      const low = Math.floor(score);
      return (
        chanceOfAtMost(round, low) * (1 - (score - low)) + chanceOfAtMost(round, low + 1) * (score - low)
      );
    };
    expect(at(mean - 3)).toBeGreaterThan(0.17);
    expect(at(mean - 3)).toBeLessThan(0.3);
    expect(at(mean - 6)).toBeGreaterThan(0.03);
    expect(at(mean - 6)).toBeLessThan(0.1);
    expect(at(mean + 3) - at(mean - 4)).toBeGreaterThan(0.5);
  });

  it('18 bogeys on par 70 are 88, so 89 is the last score that beats 90 (common practice, no source)', () => {
    const par = odds.holes.reduce((sum, hole) => sum + hole.par, 0);
    expect(par + odds.holes.length).toBe(88);
  });
});
