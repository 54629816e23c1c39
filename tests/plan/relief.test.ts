/** Drops under penalty: where the Rules of Golf 2023 (17.1d, 18.2, 19.2, 19.3) let a ball be dropped, and for how much. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { bagFlights } from '../../core/flight/bag-flights.ts';
import { isPenaltyArea, lieAt, type HoleGround } from '../../core/ground/hole-ground.ts';
import { Lie } from '../../core/ground/lies.ts';
import { LawBook } from '../../core/plan/choices.ts';
import { ChoiceEvaluator } from '../../core/plan/evaluate.ts';
import type { Spot } from '../../core/plan/model.ts';
import {
  PenaltyRelief,
  unplayablePenalty,
  unplayableRelief,
  type ReliefSpot,
} from '../../core/plan/relief.ts';
import { reliefOptions } from '../../core/plan/swingless-options.ts';
import type { StrokesField } from '../../core/plan/strokes-field.ts';
import {
  box,
  disc,
  flatGround,
  givenField,
  handDraws,
  mustPrepare,
  stated,
  statedPlayer,
  type Outline,
  ordinaryBook,
} from './synthetic.ts';

/** Two lengths of the longest club but the putter: a driver of 45 in. */
const TWO_CLUB_LENGTHS_M = 2 * 1.143;
/** The reference point is known to its cell of 1 m, found in steps of half a metre. */
const REFERENCE_M = Math.SQRT1_2 + 0.5;

function toPin(at: { readonly x: number; readonly y: number }): number {
  return Math.hypot(at.x, at.y);
}

/** Distance of `spot` from the line through pin and reference, and how far behind the reference it lies. */
function alongLine(spot: Spot, reference: Spot): { readonly aside: number; readonly behind: number } {
  const length = toPin(reference);
  return {
    aside: Math.abs(spot.x * reference.y - spot.y * reference.x) / length,
    behind: (spot.x * reference.x + spot.y * reference.y) / length - length,
  };
}

function isAllowed(ground: HoleGround, drop: ReliefSpot): boolean {
  const lie = lieAt(ground, drop.x, drop.y);
  return lie === drop.lie && !isPenaltyArea(lie) && lie !== Lie.outOfBounds;
}

/** Strokes that grow with the distance left, whatever the lie. */
function byDistance(spot: Spot): number {
  return 2.5 + toPin(spot) / 100;
}

function field(ground: HoleGround, valueOf: Parameters<typeof givenField>[1] = byDistance): StrokesField {
  return givenField(ground, valueOf);
}

/** A ditch across the hole of 200 m: from 90 to 110 m short of the pin. */
const ditch = { south: -110, north: -90 };
const grounds = {
  yellow: flatGround({ lengthM: 200, patches: [box('penalty-yellow', -60, ditch.south, 60, ditch.north)] }),
  red: flatGround({ lengthM: 200, patches: [box('penalty-red', -60, ditch.south, 60, ditch.north)] }),
};

describe('a ball in a penalty area', () => {
  /** From the tee to a point in the ditch; it last crossed the southern edge on the straight way there. */
  const anyBall = fc
    .record({
      x: fc.double({ min: -50, max: 50, noNaN: true }),
      y: fc.double({ min: ditch.south + 1, max: ditch.north - 1, noNaN: true }),
    })
    .map((end) => {
      const t = (200 + ditch.south) / (200 + end.y);
      return { end, crossing: { x: t * end.x, y: ditch.south } };
    });

  it('in a yellow one is dropped back on the line for one stroke', () => {
    const relief = new PenaltyRelief(field(grounds.yellow));
    fc.assert(
      fc.property(anyBall, ({ end, crossing }) => {
        const drop = relief.forBall(0, -200, end.x, end.y, Lie.penaltyYellow);
        expect(drop.penalty).toBe(1);
        expect(isAllowed(grounds.yellow, drop)).toBe(true);
        const { aside, behind } = alongLine(drop, crossing);
        expect(aside).toBeLessThan(REFERENCE_M);
        expect(behind).toBeGreaterThan(-REFERENCE_M);
        expect(toPin(drop)).toBeGreaterThan(toPin(crossing) - REFERENCE_M);
        expect(drop.total).toBeCloseTo(1 + byDistance(drop), 1);
      }),
      { numRuns: 60, seed: 71 },
    );
  });

  it('in a red one may be dropped aside, within two club-lengths and not nearer the hole', () => {
    const relief = new PenaltyRelief(field(grounds.red));
    let lateral = 0;
    fc.assert(
      fc.property(anyBall, ({ end, crossing }) => {
        const drop = relief.forBall(0, -200, end.x, end.y, Lie.penaltyRed);
        expect(drop.penalty).toBe(1);
        expect(isAllowed(grounds.red, drop)).toBe(true);
        expect(toPin(drop)).toBeGreaterThan(toPin(crossing) - REFERENCE_M);
        const { aside, behind } = alongLine(drop, crossing);
        const isNear =
          Math.hypot(drop.x - crossing.x, drop.y - crossing.y) < TWO_CLUB_LENGTHS_M + REFERENCE_M;
        expect(isNear || (aside < REFERENCE_M && behind > -REFERENCE_M)).toBe(true);
        if (aside > REFERENCE_M) lateral++;
      }),
      { numRuns: 60, seed: 72 },
    );
    expect(lateral).toBeGreaterThan(0);
  });

  it('in a yellow one stays on the line even where aside would be cheaper; in a red one it goes aside', () => {
    // Sand right behind the crossing on the line, open ground a step to the side.
    const patches = [box('bunker', -1.4, -200, 1.4, ditch.south)];
    const costly = (spot: Spot, lie: number): number => byDistance(spot) + (lie === Lie.bunker ? 2 : 0);
    const drops = (['yellow', 'red'] as const).map((colour) => {
      const ground = flatGround({
        lengthM: 200,
        patches: [...patches, box(`penalty-${colour}`, -60, ditch.south, 60, ditch.north)],
      });
      const relief = new PenaltyRelief(field(ground, costly));
      return relief.forBall(0, -200, 0, -100, colour === 'yellow' ? Lie.penaltyYellow : Lie.penaltyRed);
    });
    const [yellow, red] = drops as [ReliefSpot, ReliefSpot];
    // Behind the tee the sand ends, 90 m farther back: still cheaper than two strokes' worth of sand.
    expect(Math.abs(yellow.x)).toBeLessThan(2);
    expect(red.lie).toBe(Lie.rough);
    expect(Math.abs(red.x)).toBeGreaterThan(1.4);
    expect(Math.hypot(red.x, red.y - ditch.south)).toBeLessThan(TWO_CLUB_LENGTHS_M + REFERENCE_M);
    expect(red.total).toBeLessThan(yellow.total - 0.5);
  });

  it('is never dropped nearer the hole, though the ground in front is far cheaper', () => {
    // Values fall steeply towards the pin: every metre counts.
    const steep = (spot: Spot): number => 2.5 + toPin(spot) / 10;
    const relief = new PenaltyRelief(field(grounds.red, steep));
    fc.assert(
      fc.property(anyBall, ({ end, crossing }) => {
        const drop = relief.forBall(0, -200, end.x, end.y, Lie.penaltyRed);
        expect(toPin(drop)).toBeGreaterThan(toPin(crossing) - REFERENCE_M);
      }),
      { numRuns: 40, seed: 73 },
    );
  });

  it('is not dropped into another penalty area or out of bounds', () => {
    // Behind the ditch: a second pond, then out of bounds, then a strip of rough.
    const ground = flatGround({
      lengthM: 200,
      patches: [
        box('penalty-red', -60, ditch.south, 60, ditch.north),
        box('penalty-yellow', -60, -130, 60, ditch.south - 1),
        box('out-of-bounds', -60, -160, 60, -130),
      ],
    });
    const drop = new PenaltyRelief(field(ground)).forBall(0, -200, 0, -100, Lie.penaltyRed);
    expect(isAllowed(ground, drop)).toBe(true);
  });

  it('has no drop where nothing behind is dry, and says so by an endless cost', () => {
    // Water all over but for the green and a tee that is an island; the ball leaves the tee northwards.
    const ground = flatGround({ lengthM: 200, patches: [box('penalty-yellow', -200, -190, 200, 200)] });
    const wet = flatGround({ lengthM: 200, patches: [box('penalty-yellow', -200, -400, 200, 200)] });
    expect(new PenaltyRelief(field(wet)).forBall(0, -200, 0, -100, Lie.penaltyYellow).total).toBe(Infinity);
    expect(new PenaltyRelief(field(ground)).forBall(0, -200, 0, -100, Lie.penaltyYellow).total).toBeLessThan(
      Infinity,
    );
  });

  it('is dropped by values as they are now, once told that they changed', () => {
    const changing = field(grounds.yellow);
    const relief = new PenaltyRelief(changing);
    const before = relief.forBall(0, -200, 3, -100, Lie.penaltyYellow).total;
    for (const layer of changing.layers)
      layer.value.forEach((value, node) => (layer.value[node] = value + 1));
    relief.forget();
    expect(relief.forBall(0, -200, 3, -100, Lie.penaltyYellow).total).toBeCloseTo(before + 1, 5);
  });
});

describe('a shot into trouble', () => {
  const player = statedPlayer({
    spreads: [stated({ club: 'Club', carryM: 100, carrySd: 0, directionSd: 0 })],
  });
  const book = ordinaryBook(player);
  const law = book.lawOf(0, Lie.tee, 100)!;
  const tee = { x: 0, y: -200 };

  it('in water plays on from the drop with one penalty stroke', () => {
    const evaluator = new ChoiceEvaluator(field(grounds.yellow), book);
    const next = evaluator.play(tee, law, 0, handDraws({}), 0, NaN);
    expect(next).toMatchObject({ replay: false, penalty: 1, lie: Lie.rough });
    expect(next.y).toBeLessThan(ditch.south);
    expect(next.value).toBeCloseTo(1 + byDistance(next), 1);
  });

  it('in water is played again where that is cheaper than the drop', () => {
    const dear = (spot: Spot): number => (spot.y < -100 ? 8 : 3);
    const evaluator = new ChoiceEvaluator(field(grounds.yellow, dear), book);
    expect(evaluator.play(tee, law, 0, handDraws({}), 0, 4).replay).toBe(true);
    expect(evaluator.play(tee, law, 0, handDraws({}), 0, 8.5).replay).toBe(false);
    // Not known yet what a replay costs: the drop stands.
    expect(evaluator.play(tee, law, 0, handDraws({}), 0, NaN).replay).toBe(false);
  });

  it('in water is played again where there is nowhere to drop', () => {
    const ground = flatGround({
      lengthM: 200,
      patches: [box('penalty-red', -200, -400, 200, 200)],
    });
    const next = new ChoiceEvaluator(field(ground), book).play(tee, law, 0, handDraws({}), 0, NaN);
    expect(next).toMatchObject({ replay: true, penalty: 1 });
  });

  it('out of bounds is played again for one penalty stroke', () => {
    const ground = flatGround({ lengthM: 200, patches: [box('out-of-bounds', -60, -120, 60, -80)] });
    const next = new ChoiceEvaluator(field(ground), book).play(tee, law, 0, handDraws({}), 0, 2);
    expect(next).toMatchObject({ replay: true, penalty: 1 });
  });

  it('costs what stroke and distance costs: V = (1 + p + rest) / (1 - p)', () => {
    // Half of the draws go left of the line x = 0 and out of bounds; the others cost 3 more.
    const ground = flatGround({ lengthM: 200, patches: [box('out-of-bounds', -80, -280, -0.5, -20)] });
    const evaluator = new ChoiceEvaluator(
      field(ground, () => 3),
      book,
    );
    const wide = ordinaryBook(
      statedPlayer({ spreads: [stated({ club: 'Club', carryM: 100, carrySd: 0, directionSd: 0.2 })] }),
    );
    const draws = handDraws({ directionZ: -1 }, { directionZ: 1 }, { directionZ: 2 }, { directionZ: -2 });
    const mixed = new ChoiceEvaluator(evaluator.field, wide);
    // By hand: V = 1 + (3 + 1 + V) / 2 makes V = 6.
    expect(mixed.valueOf(tee, Lie.tee, { spreadIndex: 0, bearing: 0, carryM: 100 }, draws, NaN)).toBeCloseTo(
      6,
      6,
    );
    // Always out of bounds: no finite value.
    expect(
      evaluator.valueOf(tee, Lie.tee, { spreadIndex: 0, bearing: -0.5, carryM: 100 }, handDraws({}), NaN),
    ).toBe(Infinity);
  });
});

describe('an unplayable ball', () => {
  it('is dropped within two club-lengths or back on the line, for one stroke, not nearer and not in trouble', () => {
    const star = (reaches: readonly number[]): Outline =>
      reaches.map((reach, k) => ({
        x: 10 + reach * Math.cos((2 * Math.PI * k) / reaches.length),
        y: -100 + reach * Math.sin((2 * Math.PI * k) / reaches.length),
      }));
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 3, max: 25, noNaN: true }), { minLength: 4, maxLength: 9 }),
        fc.constantFrom('penalty-yellow' as const, 'penalty-red' as const, 'out-of-bounds' as const),
        fc.double({ min: -30, max: 40, noNaN: true }),
        fc.double({ min: -130, max: -70, noNaN: true }),
        fc.constantFrom(Lie.woods, Lie.longRough),
        (reaches, kind, x, y, lie) => {
          const ground = flatGround({
            lengthM: 200,
            patches: [box('woods', -60, -140, 60, -60), { kind, outline: star(reaches) }],
          });
          const spot = { x, y };
          const drop = unplayableRelief(field(ground), spot, lie);
          if (drop.total === Infinity) return;
          expect(drop.penalty).toBe(1);
          expect(isAllowed(ground, drop)).toBe(true);
          expect(toPin(drop)).toBeGreaterThanOrEqual(toPin(spot) - 1e-9);
          const { aside, behind } = alongLine(drop, spot);
          const isNear = Math.hypot(drop.x - x, drop.y - y) <= TWO_CLUB_LENGTHS_M;
          expect(isNear || (aside < 1e-6 && behind > 0)).toBe(true);
        },
      ),
      { numRuns: 40, seed: 74 },
    );
  });

  it('can be asked for one kind of relief alone', () => {
    const ground = flatGround({ lengthM: 200, patches: [box('woods', -60, -140, 60, -60)] });
    const spot = { x: 20, y: -100 };
    const lateral = unplayableRelief(field(ground), spot, Lie.woods, 'lateral');
    const line = unplayableRelief(field(ground), spot, Lie.woods, 'line');
    expect(alongLine(line, spot).aside).toBeLessThan(1e-9);
    expect(Math.hypot(lateral.x - spot.x, lateral.y - spot.y)).toBeLessThanOrEqual(TWO_CLUB_LENGTHS_M);
    const both = unplayableRelief(field(ground), spot, Lie.woods);
    expect(both.total).toBe(Math.min(lateral.total, line.total));
  });

  describe('in a bunker', () => {
    const bunker = flatGround({ lengthM: 200, patches: [disc('bunker', 0, -100, 10)] });
    const spot = { x: 0, y: -97 };
    const sand = (cost: number) => (at: Spot, lie: number) =>
      byDistance(at) + (lie === Lie.bunker ? cost : 0);

    it('stays in it for one stroke, aside or on the line', () => {
      for (const kind of ['lateral', 'line', 'all'] as const) {
        const drop = unplayableRelief(field(bunker, sand(0.3)), spot, Lie.bunker, kind);
        expect(drop.lie).toBe(Lie.bunker);
        expect(drop.penalty).toBe(1);
      }
    });

    it('leaves it for two strokes, back on the line only, where the sand costs more than the second stroke', () => {
      const drop = unplayableRelief(field(bunker, sand(1.5)), spot, Lie.bunker);
      expect(drop).toMatchObject({ lie: Lie.rough, penalty: 2 });
      expect(alongLine(drop, spot).aside).toBeLessThan(1e-9);
      expect(alongLine(drop, spot).behind).toBeGreaterThan(13 - 1);
      expect(drop.total).toBeCloseTo(2 + byDistance(drop), 1);
      // Aside, there is no leaving it at all.
      expect(unplayableRelief(field(bunker, sand(1.5)), spot, Lie.bunker, 'lateral').lie).toBe(Lie.bunker);
    });

    it('has no relief aside where the bunker is too small to drop in', () => {
      const pot = flatGround({ lengthM: 200, patches: [disc('bunker', 0, -100, 1.6)] });
      const middle = { x: 0, y: -100 };
      expect(unplayableRelief(field(pot), middle, Lie.bunker, 'lateral').total).toBe(Infinity);
      expect(unplayableRelief(field(pot), middle, Lie.bunker, 'line').total).toBeLessThan(Infinity);
    });

    it('costs one stroke inside, two outside; elsewhere always one', () => {
      expect(unplayablePenalty(Lie.bunker, Lie.bunker)).toBe(1);
      expect(unplayablePenalty(Lie.bunker, Lie.rough)).toBe(2);
      expect(unplayablePenalty(Lie.woods, Lie.fairway)).toBe(1);
      expect(unplayablePenalty(Lie.woods, Lie.bunker)).toBe(1);
    });
  });
});

describe('relief on offer from a spot', () => {
  const player = statedPlayer({
    spreads: [stated({ club: 'Club', carryM: 100, carrySd: 5, directionSd: 0.05 })],
  });
  const prepared = mustPrepare(
    {
      lengthM: 200,
      patches: [
        box('penalty-yellow', -60, -60, -40, -40),
        box('penalty-red', 40, -60, 60, -40),
        box('woods', -60, -110, -40, -90),
        box('long-rough', 40, -110, 60, -90),
        disc('bunker', 0, -50, 8),
        box('fairway', -15, -150, 15, -80),
      ],
    },
    player,
  );
  const given = field(prepared.ground);

  function kindsAt(x: number, y: number): (string | undefined)[] {
    const lie = lieAt(prepared.ground, x, y);
    return reliefOptions(prepared, given, { x, y }, lie, 1).map((option) => option.relief);
  }

  it('is what the lie and the colour allow', () => {
    // One metre inside the edge, so that a place aside is within reach.
    expect(kindsAt(-41, -50).sort()).toEqual(['penalty-back-on-line', 'penalty-replay']);
    expect(kindsAt(41, -50).sort()).toEqual(['penalty-back-on-line', 'penalty-lateral', 'penalty-replay']);
    // An unplayable ball may be claimed anywhere else (19.1), in a bunker with a way out for two strokes (19.3).
    for (const [x, y] of [
      [-50, -100],
      [50, -100],
      [0, -100],
      [25, -120],
    ] as const) {
      expect(kindsAt(x, y).sort()).toEqual([
        'unplayable-back-on-line',
        'unplayable-lateral',
        'unplayable-replay',
      ]);
    }
    expect(kindsAt(0, -50).sort()).toEqual([
      'unplayable-back-on-line',
      'unplayable-lateral',
      'unplayable-outside-bunker',
      'unplayable-replay',
    ]);
    // The third stroke is not played again from the tee.
    const rough = { x: 25, y: -120 };
    const later = reliefOptions(prepared, given, rough, lieAt(prepared.ground, 25, -120), 2);
    expect(later.map(({ relief }) => relief).sort()).toEqual([
      'unplayable-back-on-line',
      'unplayable-lateral',
    ]);
  });

  it('says where the drop is, what it costs and what is left', () => {
    const spot = { x: 41, y: -50 };
    for (const option of reliefOptions(prepared, given, spot, Lie.penaltyRed, 2)) {
      const { spot: drop } = option.aim;
      expect(option.kind).toBe('relief');
      expect(option.penaltyStrokes).toBe(1);
      expect(option.meanStrokes).toBeCloseTo(1 + byDistance(drop), 1);
      expect(option.standardError).toBe(0);
      expect(option.leave.medianM).toBeCloseTo(toPin(drop), 9);
      expect(option.scoreOdds[0]).toBe(0);
    }
  });
});

describe('a ball out of bounds where the alternative to stroke and distance is in force (Model Local Rule E-5)', () => {
  // Out of bounds right of x = 20; fairway 10 m to either side of the line.
  const spec = {
    lengthM: 320,
    patches: [box('fairway', -10, -300, 10, 20), box('out-of-bounds', 20, -400, 300, 200)],
  };
  const club = stated({ club: 'Club', carryM: 150, carrySd: 0, directionSd: 0 });
  const player = statedPlayer({ spreads: [club] });
  const from = { x: 0, y: -250 };
  const bearing = Math.atan2(60, 150);

  function playedWith(strokeAndDistanceAlternative: boolean): ChoiceEvaluator['next'] {
    const prepared = mustPrepare(spec, player);
    const rules = { strokeAndDistanceAlternative, preferredLies: false };
    const flights = bagFlights(player.spreads, { ...DEFAULT_CONDITIONS, rules });
    const evaluator = new ChoiceEvaluator(field(prepared.ground), new LawBook(player, flights));
    const law = evaluator.book.lawOf(0, Lie.fairway, 150)!;
    // Where it was played from costs more than level ground would.
    return evaluator.play(from, law, bearing, handDraws({}), 0, 2 + byDistance(from));
  }

  it('is dropped in the fairway level with where it crossed, no nearer the hole, for two strokes', () => {
    const next = playedWith(true);
    expect(next.replay).toBe(false);
    expect(next.penalty).toBe(2);
    expect(next.lie).toBe(Lie.fairway);
    // It crosses x = 20 where the line of flight does.
    const crossing = { x: 20, y: from.y + 20 / Math.tan(bearing) };
    expect(toPin(next)).toBeGreaterThanOrEqual(toPin(crossing) - REFERENCE_M);
    expect(Math.hypot(next.x - crossing.x, next.y - crossing.y)).toBeLessThan(10 + 2 * REFERENCE_M);
    expect(next.value).toBeCloseTo(2 + byDistance(next), 3);
  });

  it('is offered both ways where the ball lies, and only stroke and distance without that rule', () => {
    const spot = { x: 60, y: -100 };
    const kinds = (strokeAndDistanceAlternative: boolean) => {
      const prepared = mustPrepare(spec, player);
      const rules = { ...prepared.conditions.rules, strokeAndDistanceAlternative };
      const today = { ...prepared, conditions: { ...prepared.conditions, rules } };
      return reliefOptions(today, field(prepared.ground), spot, Lie.outOfBounds, 1);
    };
    expect(kinds(false).map(({ relief }) => relief)).toEqual(['out-replay']);
    const [replay, drop] = kinds(true);
    expect(replay).toMatchObject({ relief: 'out-replay', penaltyStrokes: 1 });
    expect(drop).toMatchObject({ relief: 'out-fairway', penaltyStrokes: 2 });
    expect(drop!.meanStrokes).toBeCloseTo(2 + byDistance(drop!.aim.spot), 3);
    expect(Math.abs(drop!.aim.spot.x)).toBeLessThan(10);
  });

  it('is not dropped in the fairway of another hole, however near', () => {
    const ours = { hole: 1, ...box('fairway', -10, -300, 10, 20) };
    const theirs = { hole: 2, ...box('fairway', 12, -300, 20, 20) };
    const prepared = mustPrepare({ ...spec, patches: [ours, theirs, spec.patches[1]!] }, player);
    const relief = new PenaltyRelief(field(prepared.ground));
    expect(lieAt(prepared.ground, 15, -150)).toBe(Lie.fairway);
    const drop = relief.forLostBall(from.x, from.y, 60, -100);
    expect(drop.x).toBeGreaterThan(0);
    expect(drop.x).toBeLessThan(10);
  });

  it('is played again elsewhere, and where that is cheaper', () => {
    expect(playedWith(false)).toMatchObject({ replay: true, penalty: 1 });
    const prepared = mustPrepare(spec, player);
    const rules = { strokeAndDistanceAlternative: true, preferredLies: false };
    const flights = bagFlights(player.spreads, { ...DEFAULT_CONDITIONS, rules });
    const evaluator = new ChoiceEvaluator(field(prepared.ground), new LawBook(player, flights));
    const law = evaluator.book.lawOf(0, Lie.fairway, 150)!;
    expect(evaluator.play(from, law, bearing, handDraws({}), 0, 2.6).replay).toBe(true);
  });
});
