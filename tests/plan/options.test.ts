/** Options from a spot: what each holds, how they rank, and whether their stated errors are honest. */

import { beforeAll, describe, expect, it } from 'vitest';
import { Lie } from '../../core/ground/lies.ts';
import type { Choice, Option } from '../../core/plan/model.ts';
import { compareChoices, evaluateChoice, planFromSpot } from '../../core/plan/options.ts';
import { choiceOf } from '../../core/plan/choices.ts';
import type { PreparedHole } from '../../core/plan/prepare.ts';
import { nameOf } from '../../core/plan/recommend.ts';
import { simulateStrokes } from '../../core/plan/simulate.ts';
import { solveNow } from '../../core/plan/solve.ts';
import type { StrokesField } from '../../core/plan/strokes-field.ts';
import { makeStreamKey } from '../../core/random/streams.ts';
import { chiSquareQuantile } from '../published/chi-square.ts';
import { rollOut } from './rollout.ts';
import {
  box,
  COARSE,
  disc,
  fourClubs,
  mustPrepare,
  ROUGH_LIES,
  stated,
  statedPlayer,
  wood,
} from './synthetic.ts';
import { english } from '../../core/words/english/english.ts';

const player = statedPlayer({
  spreads: [
    ...fourClubs(),
    // Nearly the iron, a little surer: something to be equal to.
    stated({
      club: 'Hybrid',
      kind: 'hybrid',
      loftDeg: 24,
      carryM: 165,
      carrySd: 8,
      directionSd: 0.055,
      poorShare: 0.05,
    }),
  ],
  lies: {
    ...ROUGH_LIES,
    bunker: {
      playable: true,
      carryFactor: 0.85,
      carrySdFactor: 1.8,
      directionSdFactor: 1.4,
      poorShareAdded: 0.1,
    },
  },
});

let prepared: PreparedHole;
let field: StrokesField;

beforeAll(() => {
  prepared = mustPrepare(
    {
      lengthM: 280,
      patches: [
        box('fairway', -15, -275, 15, 20),
        box('boundary', -70, -350, 22, 70),
        box('penalty-red', -70, -150, -20, -90),
        disc('bunker', 13, -8, 7),
        wood(-65, -60, -25, 0, { topM: 15, baseM: 2, densityPerM: 0.1 }),
      ],
    },
    player,
  );
  field = solveNow(prepared, COARSE);
}, 120_000);

/** The same hole and field with other draws. */
function withSeed(seed: string): PreparedHole {
  return { ...prepared, seed, key: makeStreamKey(seed, 'hole', prepared.hole.number) };
}

function spread(club: string, swing = 'full'): number {
  return player.spreads.findIndex((entry) => entry.club.name === club && entry.swing === swing);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** What must hold for any option. */
function validate(option: Option, strokesTaken: number, par: number): void {
  expect(sum(option.scoreOdds)).toBeCloseTo(1, 5);
  expect(option.scoreOdds[0]).toBe(0);
  expect(option.scoreOdds).toHaveLength(11);
  // Ten or more count as ten, four putts or more as four.
  const mean = sum(option.scoreOdds.map((share, k) => share * k));
  expect(Math.abs(mean - option.meanStrokes)).toBeLessThan(0.1);
  const { parOrBetter, bogey, doubleOrWorse } = option.parOdds;
  const upTo = (score: number): number => sum(option.scoreOdds.filter((_, k) => k + strokesTaken <= score));
  expect(parOrBetter).toBeCloseTo(upTo(par), 9);
  expect(parOrBetter + bogey).toBeCloseTo(upTo(par + 1), 9);
  expect(parOrBetter + bogey + doubleOrWorse).toBeCloseTo(1, 5);
  expect(sum(Object.values(option.endShare))).toBeCloseTo(1, 9);
  expect(option.leave.p10M).toBeLessThanOrEqual(option.leave.medianM);
  expect(option.leave.medianM).toBeLessThanOrEqual(option.leave.p90M);
  if (option.kind === 'shot' && option.club !== 'Putter') {
    expect(option.trouble.outOfBounds).toBe(option.endShare.outOfBounds);
    expect(option.trouble.penaltyRed).toBe(option.endShare.penaltyRed);
    expect(option.trouble.bunker).toBe(option.endShare.bunker);
    expect(option.trouble.trees).toBeGreaterThanOrEqual(option.endShare.woods);
    expect(option.standardError).toBeGreaterThan(0);
    expect(option.spreadSource).toEqual(player.spreads[spread(option.club, option.swing)]!.source);
  }
}

const SPOTS = [
  { name: 'tee', x: 0, y: -280, taken: 0 },
  { name: 'fairway', x: 5, y: -130, taken: 1 },
  { name: 'rough', x: 18, y: -160, taken: 2 },
  { name: 'bunker', x: 13, y: -8, taken: 2 },
  { name: 'woods', x: -40, y: -30, taken: 1 },
  { name: 'chip', x: 0, y: -25, taken: 1 },
] as const;

describe('a plan', () => {
  it.each(SPOTS)('from the $name holds together', ({ x, y, taken }) => {
    const plan = planFromSpot(prepared, field, { x, y }, { strokesTaken: taken, samples: 512 });
    const { options } = plan;
    expect(options.length).toBeGreaterThan(0);
    for (const option of options) validate(option, taken, 4);
    expect(new Set(options.map((option) => option.id)).size).toBe(options.length);
    // Best first, losses against the best, equal where the error or the player's margin says so.
    const best = options[0]!;
    expect(plan.expectedStrokes).toBe(best.meanStrokes);
    expect([best.lossToBest, best.lossStandardError, best.tooCloseToCall]).toEqual([0, 0, false]);
    options.slice(1).forEach((option, i) => {
      expect(option.meanStrokes).toBeGreaterThanOrEqual(options[i]!.meanStrokes);
      expect(option.lossToBest).toBeCloseTo(option.meanStrokes - best.meanStrokes, 9);
      const bound = Math.max(2 * option.lossStandardError, player.marginStrokes);
      expect(option.tooCloseToCall).toBe(option.lossToBest <= bound);
    });
    // The recommended one is the best or equal to it, and none of the equals is safer by a hundredth.
    const recommended = options.find((option) => option.id === plan.recommendation.optionId)!;
    expect(recommended === best || recommended.tooCloseToCall).toBe(true);
    const equals = options.filter((option) => option === best || option.tooCloseToCall);
    const safest = Math.min(...equals.map((option) => option.parOdds.doubleOrWorse));
    expect(recommended.parOdds.doubleOrWorse).toBeLessThanOrEqual(safest + 0.01 + 1e-12);
    // The reason names what it is compared with: the best, the next equal, or the next best.
    const other = recommended === best ? options[1] : best;
    if (other !== undefined) expect(plan.recommendation.reason).toContain(nameOf(other, english));
  });

  it('takes the safer of two that are equal, and says so', () => {
    // A wide margin makes every option of the tee equal to the best.
    const careful = { ...prepared, player: { ...player, marginStrokes: 3 } };
    const plan = planFromSpot(careful, field, prepared.tee, { samples: 1024 });
    const chances = plan.options.map((option) => option.parOdds.doubleOrWorse);
    const recommended = plan.options.find((option) => option.id === plan.recommendation.optionId)!;
    expect(recommended.parOdds.doubleOrWorse).toBeLessThanOrEqual(Math.min(...chances) + 0.01);
  });

  it('is the same for the same seed, and within its errors for another', () => {
    const spot = { x: 5, y: -130 };
    const first = planFromSpot(prepared, field, spot, { samples: 1024 });
    expect(planFromSpot(prepared, field, spot, { samples: 1024 })).toEqual(first);
    const other = planFromSpot(withSeed('other'), field, spot, { samples: 1024 });
    expect(other.options[0]!.id).toBe(first.options[0]!.id);
    const difference = other.options[0]!.meanStrokes - first.options[0]!.meanStrokes;
    expect(difference).not.toBe(0);
    // Aims may differ by their half degree, worth a hundredth of a stroke near the best aim.
    const error = Math.hypot(first.options[0]!.standardError, other.options[0]!.standardError);
    expect(Math.abs(difference)).toBeLessThan(4 * error + 0.01);
  });

  it('can be posted between threads', () => {
    const plan = planFromSpot(prepared, field, prepared.tee, { samples: 64 });
    expect(structuredClone(plan)).toEqual(plan);
  });

  it('promises what playing its best option costs', () => {
    for (const { x, y } of [SPOTS[0], SPOTS[1], SPOTS[2]]) {
      const plan = planFromSpot(prepared, field, { x, y });
      const best = plan.options[0]!;
      const lie = y === -280 ? Lie.tee : x === 5 ? Lie.fairway : Lie.rough;
      const played = rollOut(prepared, field, { x, y }, lie, 4000, `plan ${y}`, choiceOf(prepared, best));
      const error = Math.hypot(played.standardError, best.standardError);
      // Four errors of both, and 0.05 for the field's nodes 10 m apart.
      expect(Math.abs(played.mean - best.meanStrokes)).toBeLessThan(4 * error + 0.05);
    }
  });

  it('on the green is the putt', () => {
    const plan = planFromSpot(prepared, field, { x: -3, y: -4 });
    expect(plan.options.map((option) => option.id)).toEqual(['putt']);
    validate(plan.options[0]!, 1, 4);
    expect(plan.expectedStrokes).toBe(prepared.putts.expectedAt(-3, -4));
    expect(plan.recommendation.optionId).toBe('putt');
  });

  it('in a penalty area is relief only; out of bounds it is to play again', () => {
    const water = planFromSpot(prepared, field, { x: -21, y: -120 });
    expect(water.options.every((option) => option.kind === 'relief')).toBe(true);
    expect(water.options.map((option) => option.relief).sort()).toEqual([
      'penalty-back-on-line',
      'penalty-lateral',
      'penalty-replay',
    ]);
    for (const option of water.options) validate(option, 1, 4);
    const out = planFromSpot(prepared, field, { x: 30, y: -120 });
    expect(out.options.map((option) => option.relief)).toEqual(['out-replay']);
    expect(out.options[0]!.penaltyStrokes).toBe(1);
    expect(out.options[0]!.aim.spot).toEqual({ x: prepared.tee.x, y: prepared.tee.y });
    validate(out.options[0]!, 1, 4);
  });

  it('counts no strokes on the tee and one elsewhere, unless told', () => {
    expect(planFromSpot(prepared, field, prepared.tee, { samples: 64 }).strokesTaken).toBe(0);
    expect(planFromSpot(prepared, field, { x: 5, y: -130 }, { samples: 64 }).strokesTaken).toBe(1);
    const later = planFromSpot(prepared, field, { x: 5, y: -130 }, { samples: 64, strokesTaken: 3 });
    expect(later.options[0]!.parOdds.parOrBetter).toBeLessThan(0.01);
  });
});

describe('a choice of one’s own', () => {
  it('is measured like the option that it is', () => {
    const option = planFromSpot(prepared, field, prepared.tee).options[0]!;
    const own = evaluateChoice(prepared, field, prepared.tee, choiceOf(prepared, option))!;
    expect(own.meanStrokes).toBe(option.meanStrokes);
    expect(own.standardError).toBe(option.standardError);
    expect(own.scoreOdds).toEqual(option.scoreOdds);
    const simulated = simulateStrokes(prepared, field, prepared.tee, choiceOf(prepared, option), 2048)!;
    expect(simulated).toEqual({ mean: option.meanStrokes, standardError: option.standardError });
  });

  it('is refused where it cannot be played or would never end', () => {
    const noWood = statedPlayer({
      spreads: fourClubs(),
      lies: {
        bunker: {
          playable: false,
          carryFactor: 1,
          carrySdFactor: 1,
          directionSdFactor: 1,
          poorShareAdded: 0,
        },
      },
    });
    const sandy = mustPrepare({ lengthM: 280, patches: [disc('bunker', 0, -100, 9)] }, noWood);
    const choice: Choice = { spreadIndex: 0, bearing: 0, carryM: 190 };
    expect(evaluateChoice(sandy, field, { x: 0, y: -100 }, choice)).toBeNull();
    // Straight out of bounds.
    const out = { spreadIndex: spread('Wood'), bearing: Math.PI / 2, carryM: 190 };
    expect(evaluateChoice(prepared, field, prepared.tee, out)).toBeNull();
    expect(compareChoices(prepared, field, prepared.tee, out, choice)).toBeNull();
  });

  it('is known by its club and swing', () => {
    const [first] = planFromSpot(prepared, field, prepared.tee, { samples: 64 }).options;
    expect(() => choiceOf(prepared, { ...first!, club: 'Broomstick' })).toThrow(/Broomstick/);
  });
});

describe('two choices side by side', () => {
  const wide = (): Choice => ({ spreadIndex: spread('Wood'), bearing: -0.03, carryM: 190 });
  const near = (): Choice => ({ spreadIndex: spread('Wood'), bearing: -0.05, carryM: 190 });
  const short = (): Choice => ({ spreadIndex: spread('Iron'), bearing: 0, carryM: 140 });

  it('differ by the same whichever comes first', () => {
    for (const [a, b] of [
      [wide(), short()],
      [wide(), near()],
    ] as const) {
      const there = compareChoices(prepared, field, prepared.tee, a, b, { samples: 1024 })!;
      const back = compareChoices(prepared, field, prepared.tee, b, a, { samples: 1024 })!;
      expect(back.difference).toBe(-there.difference);
      expect(back.standardError).toBeCloseTo(there.standardError, 14);
      expect(back.tooCloseToCall).toBe(there.tooCloseToCall);
      expect(back.first.meanStrokes).toBe(there.second.meanStrokes);
      expect(there.difference).toBeCloseTo(there.first.meanStrokes - there.second.meanStrokes, 12);
    }
  });

  it('do not differ from themselves', () => {
    const same = compareChoices(prepared, field, prepared.tee, wide(), wide(), { samples: 256 })!;
    expect([same.difference, same.standardError, same.tooCloseToCall]).toEqual([0, 0, true]);
  });

  it('share their draws: near choices are told apart sooner than by two errors of their own', () => {
    const pair = compareChoices(prepared, field, { x: 0, y: -130 }, { ...short(), bearing: 0.01 }, short(), {
      samples: 1024,
    })!;
    expect(pair.standardError).toBeLessThan(
      0.6 * Math.hypot(pair.first.standardError, pair.second.standardError),
    );
  });

  it('are equal within two errors or the margin, and only then', () => {
    const clear = compareChoices(prepared, field, prepared.tee, wide(), { ...short(), bearing: -0.6 })!;
    expect(clear.difference).toBeLessThan(-0.2);
    expect(clear.tooCloseToCall).toBe(false);
    const strict = { ...prepared, player: { ...player, marginStrokes: 0 } };
    for (const [a, b] of [
      [wide(), near()],
      [wide(), short()],
    ] as const) {
      const pair = compareChoices(strict, field, prepared.tee, a, b, { samples: 512 })!;
      expect(pair.tooCloseToCall).toBe(Math.abs(pair.difference) <= 2 * pair.standardError);
    }
  });
});

describe('the stated standard error', () => {
  const seeds = 60;
  // (seeds - 1) s²/σ² is chi-square with seeds - 1 degrees of freedom: beyond these bounds once in 5,000. The stated
  // errors have their own scatter, averaged away over the seeds.
  const least = Math.sqrt(chiSquareQuantile(1e-4, seeds - 1) / (seeds - 1));
  const most = Math.sqrt(chiSquareQuantile(1 - 1e-4, seeds - 1) / (seeds - 1));

  /** Spread of the means over the seeds by the root mean square of the stated errors. */
  function ratio(measure: (hole: PreparedHole) => { readonly mean: number; readonly error: number }): number {
    const runs = Array.from({ length: seeds }, (_, i) => measure(withSeed(`seed ${i}`)));
    const mean = sum(runs.map((run) => run.mean)) / seeds;
    const variance = sum(runs.map((run) => (run.mean - mean) ** 2)) / (seeds - 1);
    return Math.sqrt(variance / (sum(runs.map((run) => run.error ** 2)) / seeds));
  }

  const measured =
    (spot: { x: number; y: number }, choice: Choice, samples: number) => (hole: PreparedHole) => {
      const option = evaluateChoice(hole, field, spot, choice, { samples })!;
      return { mean: option.meanStrokes, error: option.standardError };
    };

  const compared = (spot: { x: number; y: number }, a: Choice, b: Choice) => (hole: PreparedHole) => {
    const pair = compareChoices(hole, field, spot, a, b, { samples: 1024 })!;
    return { mean: pair.difference, error: pair.standardError };
  };

  it('has bounds that a wrong error would miss', () => {
    expect(least).toBeGreaterThan(0.65);
    expect(most).toBeLessThan(1.4);
  });

  it.each([
    { name: 'from the tee', x: 0, y: -280, club: 'Wood', bearing: -0.05, carryM: 190 },
    { name: 'with a third out of bounds', x: 0, y: -280, club: 'Wood', bearing: 0.08, carryM: 190 },
    { name: 'from the fairway', x: 5, y: -130, club: 'Iron', bearing: 0, carryM: 140 },
  ])('is the spread of the mean over seeds, $name', ({ x, y, club, bearing, carryM }) => {
    const choice = { spreadIndex: spread(club), bearing, carryM };
    for (const samples of [256, 2048]) {
      const found = ratio(measured({ x, y }, choice, samples));
      expect(found).toBeGreaterThan(least);
      expect(found).toBeLessThan(most);
    }
  });

  it('of a difference is the spread of the difference over seeds', () => {
    const spot = { x: 5, y: -130 };
    const iron = { spreadIndex: spread('Iron'), bearing: 0, carryM: 140 };
    const wedge = { spreadIndex: spread('Wedge'), bearing: 0, carryM: 90 };
    for (const other of [wedge, { ...iron, bearing: 0.06 }]) {
      const found = ratio(compared(spot, iron, other));
      // The stated error counts that of the field's valuation too, which does not vary with the seeds here.
      expect(found).toBeGreaterThan(0.5);
      expect(found).toBeLessThan(most);
    }
  });

  // The batch means that are subtracted hold V where a shot is played again, so their scatter is short of a factor
  // 1 / (1 - share of replays): with half the shots out of bounds the stated error is half of the true one.
  it('of a difference is honest where many shots are played again', () => {
    const wild = { spreadIndex: spread('Wood'), bearing: 0.12, carryM: 190 };
    const safe = { spreadIndex: spread('Iron'), bearing: -0.02, carryM: 140 };
    expect(evaluateChoice(prepared, field, prepared.tee, wild)!.trouble.outOfBounds).toBeGreaterThan(0.4);
    expect(ratio(compared(prepared.tee, wild, safe))).toBeLessThan(most);
  });

  it('falls with the number of shots', () => {
    const choice = { spreadIndex: spread('Wood'), bearing: -0.05, carryM: 190 };
    const errors = [256, 1024, 4096].map(
      (samples) => evaluateChoice(prepared, field, prepared.tee, choice, { samples })!.standardError,
    );
    // Half as large with four times the shots, to the scatter of an estimate from four batches and more.
    expect(errors[2]!).toBeLessThan(0.5 * errors[0]!);
    expect(errors[1]!).toBeLessThan(errors[0]!);
  });
});
