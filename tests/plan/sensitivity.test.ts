/** How far a day may change: a carry over water whose wind is known, clubs that the numbers cannot tell apart, aims in wind. */

import { describe, expect, it } from 'vitest';
import { type Conditions, DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import {
  conditionOf,
  rangeOfCondition,
  VARIED_CONDITIONS,
  type VariedCondition,
  withCondition,
} from '../../core/conditions/vary.ts';
import { aimedShot } from '../../core/flight/aimed-shot.ts';
import { bagFlights } from '../../core/flight/bag-flights.ts';
import { shotLaw } from '../../core/flight/shot-law.ts';
import { Lie } from '../../core/ground/lies.ts';
import { planFromSpot } from '../../core/plan/options.ts';
import { prepareHole, type PreparedHole } from '../../core/plan/prepare.ts';
import { type ConditionSpan, conditionSpans, SPAN_TOLERANCE } from '../../core/plan/sensitivity.ts';
import type { StrokesField } from '../../core/plan/strokes-field.ts';
import type { PlayerModel } from '../../core/player/model.ts';
import { box, type FlatHole, flatCourse, fourClubs, givenField, stated, statedPlayer } from './synthetic.ts';

const NORTH = 0;

/** Tee 200 m south of the pin; water whose far edge is `farM` from the tee; sand where the wood comes down in still air. */
function waterHole(farM: number): FlatHole {
  return {
    lengthM: 200,
    greenRadiusM: 2,
    patches: [box('bunker', -30, -25, 30, -4), box('penalty-yellow', -260, farM - 225, 260, farM - 200)],
  };
}

const SURE = { carrySd: 0, directionSd: 0 };
const TWO_CLUBS = statedPlayer({
  spreads: [
    stated({ club: 'Wood', kind: 'wood', loftDeg: 15, carryM: 190, ...SURE }),
    stated({ club: 'Iron', loftDeg: 30, carryM: 160, ...SURE }),
  ],
});

function prepared(hole: FlatHole, player: PlayerModel, conditions = DEFAULT_CONDITIONS): PreparedHole {
  const made = prepareHole({ course: flatCourse(hole), holeNumber: 1, player, seed: 'test', conditions });
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

/** 2.5 strokes, 2.7 from sand, and a hundredth more for every metre aside of the line: the best aim is straight ahead. */
function plainField({ ground }: PreparedHole): StrokesField {
  return givenField(ground, ({ x }, lie) => (lie === Lie.bunker ? 2.7 : 2.5) + 0.01 * Math.abs(x));
}

function spansFor(
  hole: FlatHole,
  player: PlayerModel,
  conditions: readonly VariedCondition[] = ['wind-along'],
  day = DEFAULT_CONDITIONS,
) {
  const samples = 256;
  const ready = prepared(hole, player, day);
  const field = plainField(ready);
  const plan = planFromSpot(ready, field, ready.tee, { samples });
  const steps = conditionSpans(flatCourse(hole), ready, field, plan, { samples, conditions });
  const shares: number[] = [];
  for (;;) {
    const step = steps.next();
    if (step.done === true) return { spans: step.value, shares, plan, field };
    shares.push(step.value);
  }
}

function spanOf(spans: readonly ConditionSpan[], condition: ConditionSpan['condition']): ConditionSpan {
  const found = spans.find((span) => span.condition === condition);
  if (found === undefined) throw new Error(`no ${condition}`);
  return found;
}

function headwind(speedMps: number): Conditions {
  return { ...DEFAULT_CONDITIONS, wind: { speedMps, fromDeg: 0, gustSdMps: 0 } };
}

/** Carry of the iron against a wind, from its flight alone. */
function ironCarry(speedMps: number): number {
  const day = headwind(speedMps);
  const law = shotLaw(TWO_CLUBS, 1, Lie.tee, 160, bagFlights(TWO_CLUBS.spreads, day));
  return 160 * aimedShot(law!, NORTH).carryFactor;
}

/** The wind against at which the iron carries no more than that. */
function windFor(carryM: number): number {
  let [low, high] = [0, 20];
  while (high - low > 0.01) {
    const middle = (low + high) / 2;
    if (ironCarry(middle) > carryM) low = middle;
    else high = middle;
  }
  return low;
}

describe('how far the wind may rise before a carry fails', () => {
  const far = 145;
  const { spans, shares, plan, field } = spansFor(waterHole(far), TWO_CLUBS, VARIED_CONDITIONS);
  const along = spanOf(spans, 'wind-along');

  it('is found where the flight falls short of the far edge', () => {
    expect(plan.recommendation.optionId).toMatch(/^Iron/);
    expect(along.changesBelow?.club).toBe('Wood');
    const wanted = windFor(far);
    // The edge lies somewhere in a cell of a metre.
    const cell = windFor(far - 1) - wanted;
    expect(Math.abs(-along.changesBelow!.at - wanted)).toBeLessThan(SPAN_TOLERANCE['m/s'] + cell);
  });

  it('agrees with plans made for days on either side of it', () => {
    const at = -along.changesBelow!.at;
    const recommendedIn = (speedMps: number): string =>
      planFromSpot(
        prepared(waterHole(far), TWO_CLUBS, headwind(speedMps)),
        field,
        { x: 0, y: -200 },
        { samples: 256 },
      ).recommendation.optionId;
    expect(recommendedIn(at + 0.02)).toMatch(/^Wood/);
    expect(recommendedIn(at - SPAN_TOLERANCE['m/s'] - 0.02)).toMatch(/^Iron/);
  });

  it('is less the further the water reaches', () => {
    const further = spanOf(spansFor(waterHole(152), TWO_CLUBS).spans, 'wind-along');
    const nearer = spanOf(spansFor(waterHole(138), TWO_CLUBS).spans, 'wind-along');
    expect(further.changesBelow!.at).toBeGreaterThan(along.changesBelow!.at);
    expect(nearer.changesBelow!.at).toBeLessThan(along.changesBelow!.at);
  });

  it('starts from the wind of the day', () => {
    const windy = spanOf(
      spansFor(waterHole(far), TWO_CLUBS, ['wind-along'], headwind(3)).spans,
      'wind-along',
    );
    expect(windy.now).toBeCloseTo(-3, 2);
    expect(Math.abs(windy.changesBelow!.at - along.changesBelow!.at)).toBeLessThan(2 * SPAN_TOLERANCE['m/s']);
  });

  it('tells of every condition once, leaves trees out where there are none, and tells how far it is', () => {
    expect(spans.map(({ condition }) => condition)).toEqual(
      VARIED_CONDITIONS.filter((name) => name !== 'season'),
    );
    for (const { from, now, to } of spans) expect(from <= now && now <= to).toBe(true);
    expect(spanOf(spans, 'firmness')).toMatchObject({ unit: 'step', from: 0, now: 1, to: 2 });
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)!).toBeLessThan(1);
  });

  it('comes out the same again', () => {
    expect(spansFor(waterHole(far), TWO_CLUBS).spans).toEqual([along]);
  });
});

describe('what the numbers cannot tell apart', () => {
  it('does not count as a change, even for a player without a margin', () => {
    const alike = { loftDeg: 30, carrySd: 9, directionSd: 0.05 };
    const player = statedPlayer({
      spreads: [
        stated({ club: 'One', carryM: 160.4, ...alike }),
        stated({ club: 'Other', carryM: 160, ...alike }),
      ],
      marginStrokes: 0,
    });
    const { spans } = spansFor(waterHole(120), player, ['wind-along', 'temperature', 'firmness']);
    for (const { changesBelow, changesAbove } of spans)
      expect([changesBelow, changesAbove]).toEqual([undefined, undefined]);
  });
});

describe('the aim in a wind', () => {
  it('turns into it where balls drift towards water', () => {
    const hole: FlatHole = { lengthM: 300, patches: [box('penalty-red', 40, -320, 60, 40)] };
    const across = spanOf(
      spansFor(hole, statedPlayer({ spreads: fourClubs() }), ['wind-across']).spans,
      'wind-across',
    );
    const turn = across.turnsAbove ?? across.changesAbove;
    expect(turn!.at).toBeGreaterThan(0);
    expect(turn!.turnRad).toBeLessThan(0);
    expect(turn!.gainAtEnd!).toBeGreaterThan(2 * turn!.standardError!);
  });
});

describe('a day with one condition moved', () => {
  const day: Conditions = { ...DEFAULT_CONDITIONS, wind: { speedMps: 5, fromDeg: 237, gustSdMps: 1 } };

  it('has that one as asked and every other as it was', () => {
    for (const bearing of [0, 1.1, 4]) {
      for (const name of VARIED_CONDITIONS) {
        const { least, most } = rangeOfCondition(day, name, bearing);
        for (const value of [least, most]) {
          const moved = withCondition(day, name, bearing, value);
          for (const other of VARIED_CONDITIONS) {
            const wanted = other === name ? value : conditionOf(day, other, bearing);
            expect(conditionOf(moved, other, bearing)).toBeCloseTo(wanted, 9);
          }
          expect(moved.wind.gustSdMps).toBe(1);
        }
      }
    }
  });

  it('is looked at as far as its own value where that is beyond the range', () => {
    expect(rangeOfCondition({ ...day, temperatureC: -20 }, 'temperature', 0)).toEqual({
      least: -20,
      most: 40,
    });
  });
});
