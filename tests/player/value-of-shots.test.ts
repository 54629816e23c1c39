/** The worth of more shots: against the closed form, and against brute force with every posterior estimated anew. */

import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { Lie } from '../../core/ground/lies.ts';
import type { ShotSpread } from '../../core/player/model.ts';
import { drawSpreads, estimateBag, type SpreadEvidence } from '../../core/player/posterior.ts';
import { drawNormal } from '../../core/player/posterior/random-laws.ts';
import { drawShot, logShotDensity } from '../../core/player/shot-density.ts';
import { LawBook } from '../../core/plan/choices.ts';
import { ChoiceEvaluator } from '../../core/plan/evaluate.ts';
import type { Choice } from '../../core/plan/model.ts';
import {
  addShotValues,
  expectedGain,
  type SpotValue,
  valueForChoices,
  valueOfShots,
} from '../../core/plan/value-of-shots.ts';
import { solveNow } from '../../core/plan/solve.ts';
import { ShotDrawer } from '../../core/random/shot-draws.ts';
import { makeStreamKey, RandomStream } from '../../core/random/streams.ts';
import { box, COARSE, mustPrepare, stated, statedPlayer } from '../plan/synthetic.ts';

describe('expected value of sample information', () => {
  /**
   * Two choices, one of known cost 0, the other of mean cost m with a normal prior of variance t²; n observations of
   * variance s². The gain is u L(|m| / u), u = t² / sqrt(t² + s² / n), L(z) = phi(z) - z (1 - Phi(z)): the unit normal
   * loss integral (Raiffa & Schlaifer 1961, section 5.5).
   */
  function closedForm(m: number, t: number, s: number, n: number): number {
    const u = (t * t) / Math.sqrt(t * t + (s * s) / n);
    const z = Math.abs(m) / u;
    return u * (jStat.normal.pdf(z, 0, 1) - z * (1 - jStat.normal.cdf(z, 0, 1)));
  }

  it.each([
    [0, 0.2, 1, 10],
    [0.1, 0.2, 1, 10],
    [-0.1, 0.2, 0.5, 30],
    [0.02, 0.1, 2, 4],
  ])('is the unit normal loss for mean %d, prior %d, noise %d, %d observations', (m, t, s, n) => {
    const stream = new RandomStream();
    stream.restart(makeStreamKey('loss'), 1);
    const rows = 1500;
    const truths = Float64Array.from({ length: rows }, () => m + t * drawNormal(stream));
    const costs = new Float64Array(2 * rows);
    truths.forEach((truth, row) => (costs[2 * row + 1] = truth));
    const gain = expectedGain(costs, 2, (row) => {
      const average = truths[row]! + (s / Math.sqrt(n)) * drawNormal(stream);
      return truths.map((truth) => (-n * (average - truth) ** 2) / (2 * s * s));
    });
    expect(gain.standardError).toBeLessThan(0.006);
    expect(Math.abs(gain.mean - closedForm(m, t, s, n))).toBeLessThan(3.5 * gain.standardError);
  });

  it('is nothing where a sample tells nothing, and grows with the sample', () => {
    const stream = new RandomStream();
    stream.restart(makeStreamKey('grows'), 1);
    const rows = 400;
    const truths = Float64Array.from({ length: rows }, () => 0.2 * drawNormal(stream));
    const costs = new Float64Array(2 * rows);
    truths.forEach((truth, row) => (costs[2 * row + 1] = truth));
    expect(expectedGain(costs, 2, () => new Float64Array(rows)).mean).toBe(0);
    const gains = [1, 10, 1000].map((n) => {
      stream.restart(makeStreamKey('grows'), 2);
      return expectedGain(costs, 2, (row) => {
        const average = truths[row]! + drawNormal(stream) / Math.sqrt(n);
        return truths.map((truth) => (-n * (average - truth) ** 2) / 2);
      }).mean;
    });
    expect(gains[0]!).toBeLessThan(gains[1]!);
    expect(gains[1]!).toBeLessThan(gains[2]!);
  });
});

describe('shot density', () => {
  it('integrates to one and draws follow it', () => {
    const law = stated({
      club: 'Iron',
      carryM: 140,
      carrySd: 9,
      directionSd: 0.06,
      correlation: 0.4,
      poorShare: 0.1,
    });
    let total = 0;
    for (let carryM = 0.5; carryM < 260; carryM += 1) {
      for (let direction = -1.2; direction <= 1.2; direction += 0.005)
        total += Math.exp(logShotDensity(law, { carryM, direction })) * 0.005;
    }
    expect(total).toBeCloseTo(1, 2);
    const stream = new RandomStream();
    stream.restart(makeStreamKey('density'), 0);
    const count = 4000;
    const shots = Array.from({ length: count }, () => drawShot(law, stream));
    const mean = shots.reduce((sum, shot) => sum + shot.carryM / count, 0);
    const truth = 140 * (0.9 + 0.1 * law.poor.carryShareMean);
    expect(Math.abs(mean - truth)).toBeLessThan((4 * 22) / Math.sqrt(count));
  });
});

describe('more shots for a hole', () => {
  // A pond short left of a narrow green: two clubs that both reach, one of them hardly measured.
  const hole = {
    lengthM: 150,
    par: 3,
    greenRadiusM: 13,
    patches: [box('penalty-red', -60, -30, -14, 30)],
  };
  const truth = stated({
    club: 'Iron',
    loftDeg: 30,
    carryM: 146,
    carrySd: 7,
    directionSd: 0.05,
    poorShare: 0.04,
  });
  const other = stated({
    club: 'Old iron',

    loftDeg: 29,
    carryM: 148,
    carrySd: 7.5,
    directionSd: 0.052,
    poorShare: 0.05,
  });
  const stream = new RandomStream();
  stream.restart(makeStreamKey('hole'), 0);
  const evidence: SpreadEvidence[] = [
    {
      club: other.club,
      swing: 'full',
      expected: other,
      shots: Array.from({ length: 40 }, () => drawShot(other, stream)),
    },
    {
      club: truth.club,
      swing: 'full',
      expected: truth,
      shots: Array.from({ length: 3 }, () => drawShot(truth, stream)),
    },
  ];
  const posterior = estimateBag(evidence, { draws: 400 });
  const player = statedPlayer({ spreads: [other, truth] });
  const prepared = mustPrepare(hole, player);
  const field = solveNow(prepared, COARSE);

  function value(shots: number, draws = 120): SpotValue {
    const steps = valueOfShots(prepared, field, prepared.tee, posterior, { shots, draws, samples: 128 });
    for (;;) {
      const step = steps.next();
      if (step.done === true) return step.value;
    }
  }

  it('are worth more of the club that is hardly measured, and never more than certainty', () => {
    const found = value(10);
    const of = (club: string): SpotValue['clubs'][number] => found.clubs.find((one) => one.club === club)!;
    expect(of('Iron').gainStrokes).toBeGreaterThan(of('Old iron').gainStrokes - 2 * of('Iron').standardError);
    for (const { gainStrokes, standardError } of found.clubs) {
      expect(gainStrokes).toBeGreaterThan(-3 * standardError - 1e-9);
      expect(gainStrokes).toBeLessThan(found.perfectStrokes + 3 * standardError + 1e-9);
    }
    expect(value(10)).toEqual(found);
  });

  it('agree with brute force, the posterior estimated anew from every imagined sample', () => {
    const steps = valueForChoices(prepared, field, prepared.tee, choices, posterior, {
      draws: 400,
      samples: 64,
    });
    let step = steps.next();
    while (step.done !== true) step = steps.next();
    const found = step.value.clubs.find(({ club }) => club === 'Iron')!;
    const brute = bruteForce(10);
    const error = Math.hypot(found.standardError, brute.standardError);
    expect(Math.abs(found.gainStrokes - brute.mean)).toBeLessThan(3 * error);
  });

  /** A fan of aims with either club. */
  const toPin = Math.atan2(prepared.pin.x - prepared.tee.x, prepared.pin.y - prepared.tee.y);
  const choices: Choice[] = [0, 1].flatMap((spreadIndex) =>
    Array.from({ length: 7 }, (_, k) => ({
      spreadIndex,
      bearing: toPin + ((2 * k - 4) * Math.PI) / 180,
      carryM: 150,
    })),
  );

  /**
   * Brute force: a truth from the posterior, ten shots from it added to the record, the whole bag estimated again, the
   * best choice under the new posterior, both choices paid for under the truth.
   */
  function bruteForce(shots: number): { readonly mean: number; readonly standardError: number } {
    const truths = 60;
    const perPosterior = 24;
    const costOf = costTable();
    const key = makeStreamKey('brute');
    const rows = [0, 1].map((k) => drawSpreads(posterior.entries[k]!, key, truths));
    const today = costOf.best(
      [0, 1].map((k) => drawSpreads(posterior.entries[k]!, makeStreamKey('today'), 400)),
    );
    const random = new RandomStream();
    const gains = Array.from({ length: truths }, (_, t) => {
      random.restart(key, t);
      const more = Array.from({ length: shots }, () => drawShot(rows[1]![t]!, random));
      const again = estimateBag(
        [evidence[0]!, { ...evidence[1]!, shots: [...evidence[1]!.shots, ...more] }],
        { draws: 160, seed: `again ${t}` },
      );
      const informed = costOf.best(
        again.entries.map((entry) => drawSpreads(entry, makeStreamKey('new'), perPosterior)),
      );
      const law = [rows[0]![t]!, rows[1]![t]!];
      return costOf.cost(law, today) - costOf.cost(law, informed);
    });
    const mean = gains.reduce((sum, gain) => sum + gain, 0) / truths;
    const squares = gains.reduce((sum, gain) => sum + (gain - mean) ** 2, 0);
    return { mean, standardError: Math.sqrt(squares / (truths - 1) / truths) };
  }

  /** Costs by the planner's own evaluator. */
  function costTable(): {
    best(laws: readonly (readonly ShotSpread[])[]): number;
    cost(laws: readonly ShotSpread[], choice: number): number;
  } {
    const draws = new ShotDrawer(64).redraw(prepared.key, 77);
    const ownValue = field.valueAt(prepared.tee.x, prepared.tee.y, Lie.tee);
    const cost = (laws: readonly ShotSpread[], choice: number): number =>
      new ChoiceEvaluator(field, new LawBook({ ...player, spreads: laws }, prepared.book.flights)).valueOf(
        prepared.tee,
        Lie.tee,
        choices[choice]!,
        draws,
        ownValue,
      );
    const best = (laws: readonly (readonly ShotSpread[])[]): number => {
      const sums = choices.map((_, choice) =>
        laws[0]!.reduce((sum, __, row) => sum + cost([laws[0]![row]!, laws[1]![row]!], choice), 0),
      );
      return sums.indexOf(Math.min(...sums));
    };
    return { best, cost };
  }
});

describe('values of several spots', () => {
  it('add up club by club, as often as a spot is played', () => {
    const spot = (gain: number): SpotValue => ({
      clubs: [
        { club: 'Iron', swing: 'full', gainStrokes: gain, standardError: 0.003 },
        { club: 'Wood', swing: 'full', gainStrokes: 0.01, standardError: 0.004 },
      ],
      perfectStrokes: 0.1,
      choices: 10,
    });
    const sum = addShotValues([{ value: spot(0.02) }, { value: spot(0.005), times: 2 }]);
    expect(sum.map(({ club }) => club)).toEqual(['Iron', 'Wood']);
    expect(sum[0]!.gainStrokes).toBeCloseTo(0.03, 12);
    expect(sum[0]!.standardError).toBeCloseTo(Math.hypot(0.003, 0.006), 12);
    expect(addShotValues([])).toEqual([]);
  });
});
