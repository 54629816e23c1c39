import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Aim, stablefordPoints, startOf, stepsOf, worthOf } from '../../core/round/aim.ts';
import { departuresOf, departureWords } from '../../core/round/departures.ts';
import {
  certainScore,
  chanceOf,
  chanceOfAtMost,
  makeDistribution,
  meanOf,
  type ScoreDistribution,
} from '../../core/round/distribution.ts';
import { type HoleChoices, playToTarget } from '../../core/round/play-to-target.ts';
import { FORM_SD_STROKES, holeScores, roundDistribution } from '../../core/round/score-distribution.ts';
import { drawScore, randomNumbers } from './scores.ts';
import { english } from '../../core/words/english/english.ts';

/** Safe: almost always par or bogey. Bold: a lower mean and a tail. */
function safeAndBold(hole: number, par: number): HoleChoices {
  return {
    hole,
    par,
    options: [
      { id: 'safe', scores: makeDistribution(par, [0.34, 0.62, 0.04]) },
      { id: 'bold', scores: makeDistribution(par - 1, [0.08, 0.46, 0.26, 0.13, 0.07]) },
    ],
  };
}

const THREE = [safeAndBold(1, 4), safeAndBold(2, 3), safeAndBold(3, 5)];

/** Every sequence of scores on three holes under a policy that looks at the count: its worth, by enumeration. */
function worthByEnumeration(
  holes: readonly HoleChoices[],
  aim: Aim,
  policy: (hole: number, count: number) => number,
): number {
  const walk = (hole: number, count: number): number => {
    if (hole === holes.length) return worthOf(aim, count);
    const { par, options } = holes[hole]!;
    const { lowest, chances } = stepsOf(aim, hole, par, options[policy(hole, count)]!.scores);
    return chances.reduce((sum, chance, i) => sum + chance * walk(hole + 1, count + lowest + i), 0);
  };
  return walk(0, startOf(aim));
}

/** Counts that can occur before each hole. */
function countsBefore(holes: readonly HoleChoices[], aim: Aim): number[][] {
  let counts = new Set([startOf(aim)]);
  return holes.map(({ par, options }, hole) => {
    const here = [...counts].sort((a, b) => a - b);
    counts = new Set(
      here.flatMap((count) =>
        options.flatMap(({ scores }) => {
          const { lowest, chances } = stepsOf(aim, hole, par, scores);
          return chances.map((_, i) => count + lowest + i);
        }),
      ),
    );
    return here;
  });
}

/** The best of all policies, each tried: 2 to the number of (hole, count) pairs. */
function bestByExhaustion(holes: readonly HoleChoices[], aim: Aim): { best: number; tried: number } {
  const pairs = countsBefore(holes, aim).flatMap((counts, hole) => counts.map((count) => `${hole}:${count}`));
  let best = 0;
  const tried = 2 ** pairs.length;
  for (let policy = 0; policy < tried; policy++) {
    const chosen = new Map(pairs.map((pair, i) => [pair, (policy >> i) & 1]));
    best = Math.max(
      best,
      worthByEnumeration(holes, aim, (hole, count) => chosen.get(`${hole}:${count}`)!),
    );
  }
  return { best, tried };
}

describe('playing to a target on three holes', () => {
  // Fewer outcomes, so that every policy can be tried.
  const small = THREE.map(
    ({ hole, par }): HoleChoices => ({
      hole,
      par,
      options: [
        { id: 'safe', scores: makeDistribution(par, [0.3, 0.7]) },
        { id: 'bold', scores: makeDistribution(par, [0.62, 0.12, 0.26]) },
      ],
    }),
  );
  const opponent = small.map(({ par }) => makeDistribution(par, [0.4, 0.6]));
  const aims: Aim[] = [
    ...[12, 13, 14, 15, 16].map((target): Aim => ({ kind: 'score', target })),
    { kind: 'stableford', target: 5, received: [0, 1, 0] },
    { kind: 'match', opponent, received: [0, 0, 1] },
  ];

  it.each(aims.map((aim) => [JSON.stringify(aim).slice(0, 40), aim] as const))(
    'is as good as the best of all policies, tried one by one: %s',
    (_, aim) => {
      const plan = playToTarget(small, aim, 0);
      const { best, tried } = bestByExhaustion(small, aim);
      expect(tried).toBeGreaterThan(60);
      expect(plan.chance).toBeCloseTo(best, 12);
      const own = worthByEnumeration(small, aim, (hole, count) => {
        const { standings } = plan.holes[hole]!;
        return standings.find((standing) => standing.count === count)!.option;
      });
      expect(own).toBeCloseTo(plan.chance, 12);
      expect(plan.withForm.chance).toBeCloseTo(plan.chance, 12);
    },
  );

  it('lays up with strokes in hand and is bold when behind', () => {
    const plan = playToTarget(THREE, { kind: 'score', target: 14 }, 0);
    const last = plan.holes[2]!;
    expect(THREE[2]!.options[last.lowestMean]!.id).toBe('bold');
    const at = (count: number) =>
      THREE[2]!.options[last.standings.find((s) => s.count === count)!.option]!.id;
    // Par 5: a bogey is enough with 6 left, par needed with 5.
    expect(at(6)).toBe('safe');
    expect(at(5)).toBe('bold');
    const departures = departuresOf(THREE, plan);
    const six = departures.find(({ hole, count }) => hole === 3 && count === 6)!;
    expect(six.gain).toBeCloseTo(0.96 - 0.8, 12);
    expect(six.cost).toBeGreaterThan(0);
    expect(departureWords(six, plan.aim, english, (id) => id)).toBe(
      'Level with the target on 3 (6 left to spend): safe instead of bold, 96.0 % instead of 80.0 %.',
    );
  });
});

describe('playing to a target', () => {
  const options = fc.record({
    safe: fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 })),
    bold: fc.tuple(
      fc.integer({ min: 1, max: 9 }),
      fc.integer({ min: 0, max: 9 }),
      fc.integer({ min: 0, max: 9 }),
      fc.integer({ min: 1, max: 9 }),
    ),
  });

  it('is never worse than the lowest mean, nor than any other fixed choice', () => {
    fc.assert(
      fc.property(
        fc.array(options, { minLength: 1, maxLength: 8 }),
        fc.integer({ min: -2, max: 8 }),
        (drawn, over) => {
          const holes = drawn.map(
            ({ safe, bold }, i): HoleChoices => ({
              hole: i + 1,
              par: 4,
              options: [
                { id: 'safe', scores: makeDistribution(4, safe) },
                { id: 'bold', scores: makeDistribution(3, bold) },
              ],
            }),
          );
          const target = 4 * holes.length + over;
          const plan = playToTarget(holes, { kind: 'score', target }, 0);
          expect(plan.chance).toBeGreaterThanOrEqual(plan.chanceByLowestMean - 1e-12);
          for (const option of [0, 1]) {
            const fixed = roundDistribution(
              holes.map((hole) => hole.options[option]!.scores),
              0,
            );
            expect(plan.chance).toBeGreaterThanOrEqual(chanceOfAtMost(fixed, target) - 1e-12);
          }
          for (const { standings } of plan.holes) {
            expect(standings.reduce((sum, { reach }) => sum + reach, 0)).toBeCloseTo(1, 9);
            // More strokes to spend are never worse.
            standings.forEach((standing, i) =>
              expect(standing.chance).toBeGreaterThanOrEqual((standings[i - 1]?.chance ?? 0) - 1e-12),
            );
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('with one option a hole is the convolution, form included', () => {
    const holes = THREE.map((hole): HoleChoices => ({ ...hole, options: hole.options.slice(1) }));
    const plan = playToTarget(holes, { kind: 'score', target: 14 });
    const scores = holes.map((hole) => hole.options[0]!.scores);
    expect(plan.chance).toBeCloseTo(chanceOfAtMost(roundDistribution(scores, 0), 14), 12);
    expect(plan.withForm.chance).toBeCloseTo(chanceOfAtMost(roundDistribution(scores), 14), 12);
    expect(departuresOf(holes, plan)).toEqual([]);
  });

  it('agrees with a match played many times', () => {
    const aim: Aim = {
      kind: 'match',
      opponent: THREE.map(({ options: [safe] }) => safe!.scores),
      received: [1, 0, 0],
      up: -1,
    };
    const plan = playToTarget(THREE, aim, 0);
    const next = randomNumbers('match');
    let points = 0;
    const matches = 20_000;
    for (let match = 0; match < matches; match++) {
      let up = -1;
      THREE.forEach(({ options: choices }, hole) => {
        const { option } = plan.holes[hole]!.standings.find(({ count }) => count === up)!;
        const own = drawScore(choices[option]!.scores, next()) - aim.received[hole]!;
        up += Math.sign(drawScore(aim.opponent[hole]!, next()) - own);
      });
      points += worthOf(aim, up);
    }
    const standardError = Math.sqrt((plan.chance * (1 - plan.chance)) / matches);
    expect(Math.abs(points / matches - plan.chance)).toBeLessThan(3.5 * standardError);
  });

  it('counts Stableford points as the Rules do (Rules of Golf 21.1b, from memory)', () => {
    expect([2, 3, 4, 5, 6, 7].map((score) => stablefordPoints(score, 4, 0))).toEqual([4, 3, 2, 1, 0, 0]);
    expect(stablefordPoints(5, 4, 1)).toBe(2);
    const steps: ScoreDistribution = stepsOf(
      { kind: 'stableford', target: 1, received: [1] },
      0,
      4,
      makeDistribution(4, [1, 1, 1, 1, 1]),
    );
    expect([0, 1, 2, 3].map((points) => chanceOf(steps, points))).toEqual([0.4, 0.2, 0.2, 0.2]);
  });

  it('on the demo course departs from the lowest mean where a bold choice has a long tail', () => {
    const odds = JSON.parse(
      readFileSync(new URL('./fixtures/demo-hole-odds.json', import.meta.url), 'utf8'),
    ) as {
      holes: {
        hole: number;
        par: number;
        options: { id: string; scoreOdds: number[]; meanStrokes: number }[];
      }[];
    };
    const holes = odds.holes.map(
      ({ hole, par, options: choices }): HoleChoices => ({
        hole,
        par,
        options: choices.map((option) => ({ id: option.id, scores: holeScores(option) })),
      }),
    );
    const plan = playToTarget(holes, { kind: 'score', target: 85 });
    expect(plan.chance).toBeGreaterThan(plan.chanceByLowestMean);
    expect(plan.withForm.chance).toBeGreaterThan(plan.withForm.chanceByLowestMean - 1e-3);
    const lowest = roundDistribution(
      holes.map(({ options: choices }) => choices[0]!.scores),
      FORM_SD_STROKES,
    );
    expect(plan.withForm.chanceByLowestMean).toBeCloseTo(chanceOfAtMost(lowest, 85), 9);
    for (const departure of departuresOf(holes, plan)) expect(departure.gain).toBeGreaterThan(0);
  });

  it('a hole without options, or a match without an opponent, is a broken promise', () => {
    expect(() => playToTarget([{ hole: 4, par: 4, options: [] }], { kind: 'score', target: 4 })).toThrow(
      /hole 4/,
    );
    const aim: Aim = { kind: 'match', opponent: [certainScore(4)], received: [] };
    expect(() => playToTarget(THREE, aim)).toThrow(/hole 2 of it/);
    expect(meanOf(THREE[0]!.options[1]!.scores)).toBeLessThan(meanOf(THREE[0]!.options[0]!.scores));
  });
});
