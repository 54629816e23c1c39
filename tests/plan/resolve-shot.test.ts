/** One drawn shot from strike to rest: where it lands, what stops it in the air, where it rolls to. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shotLaw, type ShotLaw } from '../../core/flight/shot-law.ts';
import { DEFAULT_CONDITIONS, type Conditions } from '../../core/conditions/conditions.ts';
import { BALL_RADIUS_M } from '../../core/flight/ball-flight.ts';
import { bagFlights } from '../../core/flight/bag-flights.ts';
import {
  carryFactorAt,
  carryToRise,
  driftShareAt,
  gustAt,
  windAngle,
} from '../../core/flight/flight-table.ts';
import { apexOf, type BallWindow, heightAlong } from '../../core/flight/flight-window.ts';
import { sideSlopeTurn } from '../../core/ground-run/slope-lie.ts';
import { STEMS_PER_M } from '../../core/ground/tree-kinds.ts';
import type { Canopy } from '../../core/course/model.ts';
import { cellIndexAt, elevationAt, type HoleGround } from '../../core/ground/hole-ground.ts';
import { LEVEL_ROW, RUN_LIES } from '../../core/ground-run/run-table.ts';
import { Lie } from '../../core/ground/lies.ts';
import { ShotResolver } from '../../core/plan/resolve-shot.ts';
import { ShotDrawer } from '../../core/random/shot-draws.ts';
import { makeStreamKey } from '../../core/random/streams.ts';
import {
  box,
  flatGround,
  handDraws,
  stated,
  statedPlayer,
  wood,
  type FlatHole,
  type HandDraw,
  type StatedSpread,
} from './synthetic.ts';

const DEGREE = Math.PI / 180;
const NORTH = 0;
const EAST = 90 * DEGREE;

function lawOf(spread: Partial<StatedSpread>, conditions: Conditions = DEFAULT_CONDITIONS): ShotLaw {
  const full = stated({ club: 'Club', carryM: 100, carrySd: 0, directionSd: 0, ...spread });
  const law = shotLaw(
    statedPlayer({ spreads: [full] }),
    0,
    Lie.fairway,
    full.carryMean,
    bagFlights([full], conditions),
  );
  if (law === null) throw new Error('not playable');
  return law;
}

/** Heights of the law's flight in still air. */
function windowOf(law: ShotLaw): BallWindow {
  return law.flight.windows[0]!;
}

/** The ground of a hole of 300 m, for shots along it. */
function groundOf(spec: Partial<FlatHole> = {}): HoleGround {
  return flatGround({ lengthM: 300, ...spec });
}

const open = groundOf();
const fairway = groundOf({ patches: [box('fairway', -60, -310, 60, -20)] });

describe('a shot without spread', () => {
  it('lands at its carry, in the direction of its aim', () => {
    const resolver = new ShotResolver(open, false);
    const draws = handDraws({}, { distanceZ: 2, directionZ: -2 });
    for (const degrees of [0, 30, 90, 200, 359]) {
      for (const i of [0, 1]) {
        resolver.resolve(0, -150, lawOf({ carryM: 70 }), degrees * DEGREE, draws, i);
        expect(resolver.landX).toBeCloseTo(70 * Math.sin(degrees * DEGREE), 9);
        expect(resolver.landY).toBeCloseTo(-150 + 70 * Math.cos(degrees * DEGREE), 9);
        expect([resolver.endX, resolver.endY]).toEqual([resolver.landX, resolver.landY]);
      }
    }
  });

  it('goes right of its aim by the player’s bias, seen by the player', () => {
    const resolver = new ShotResolver(open, false);
    const law = lawOf({ carryM: 70, directionMean: 0.1 });
    resolver.resolve(0, -150, law, NORTH, handDraws({}), 0);
    expect(resolver.landX).toBeCloseTo(70 * Math.sin(0.1), 9);
    resolver.resolve(0, -150, law, EAST, handDraws({}), 0);
    expect(resolver.landY).toBeCloseTo(-150 - 70 * Math.sin(0.1), 9);
  });
});

describe('a drawn shot', () => {
  const law = lawOf({
    carryM: 100,
    carrySd: 8,
    directionSd: 0.05,
    correlation: 0.6,
    poorShare: 0.1,
    poor: { carryShareMean: 0.5, carryShareSd: 0.2, directionSd: 0.3 },
  });
  const resolver = new ShotResolver(open, false);

  function landing(draw: HandDraw): { carry: number; direction: number } {
    resolver.resolve(0, -200, law, NORTH, handDraws(draw), 0);
    const x = resolver.landX;
    const y = resolver.landY + 200;
    return { carry: Math.hypot(x, y), direction: Math.atan2(x, y) };
  }

  it('adds its draws to the law’s means, direction correlated with carry', () => {
    const shot = landing({ distanceZ: 1.5, directionZ: -0.5 });
    expect(shot.carry).toBeCloseTo(112, 9);
    expect(shot.direction).toBeCloseTo(0.05 * (0.6 * 1.5 - 0.8 * 0.5), 9);
    expect(resolver.wasPoor).toBe(false);
  });

  it('is poor for the stated share of draws, by the poor law', () => {
    const shot = landing({ poorU: 0.0999, distanceZ: 1, directionZ: 1 });
    expect(resolver.wasPoor).toBe(true);
    expect(shot.carry).toBeCloseTo(100 * (0.5 + 0.2), 9);
    expect(shot.direction).toBeCloseTo(0.3, 9);
    landing({ poorU: 0.1001 });
    expect(resolver.wasPoor).toBe(false);
  });

  it('goes forward whatever is drawn', () => {
    expect(landing({ poorU: 0, distanceZ: -6 }).carry).toBeCloseTo(0.5, 9);
  });

  it('ends on the raster’s rim where it flies off the map', () => {
    resolver.resolve(0, -10, law, NORTH, handDraws({}), 0);
    expect(resolver.landY).toBeCloseTo(90, 9);
    expect(resolver.endY).toBeLessThan(open.south + open.rows);
    expect(resolver.endY).toBeGreaterThan(open.south + open.rows - 1);
    expect(resolver.endLie).toBe(Lie.rough);
  });
});

describe('canopies', () => {
  const low = lawOf({ carryM: 150, loftDeg: 12, swing: 'punch' });
  const high = lawOf({ carryM: 150, loftDeg: 50 });
  const shots = 4096;

  /** Share of balls stopped of `count` draws from 250 m south of the pin, north. */
  function stopped(ground: HoleGround, law: ShotLaw, bearing = NORTH, from = { x: 0, y: -250 }): number {
    const resolver = new ShotResolver(ground, false);
    const draws = new ShotDrawer(shots).redraw(makeStreamKey('trees'), 1);
    let count = 0;
    for (let i = 0; i < shots; i++) {
      resolver.resolve(from.x, from.y, law, bearing, draws, i);
      if (resolver.stoppedByTree) count++;
    }
    return count / shots;
  }

  function binomialError(share: number): number {
    return Math.sqrt((share * (1 - share)) / shots);
  }

  it.each([
    { depthM: 10, densityPerM: 0.03 },
    { depthM: 20, densityPerM: 0.05 },
    { depthM: 40, densityPerM: 0.02 },
  ])(
    'stop a ball that crosses $depthM m of $densityPerM/m with chance 1 - exp(-k L)',
    ({ depthM, densityPerM }) => {
      const canopy = { topM: 60, baseM: 0, densityPerM };
      const expected = 1 - Math.exp(-densityPerM * depthM);
      const across = groundOf({ patches: [wood(-50, -200, 50, -200 + depthM, canopy)] });
      expect(Math.abs(stopped(across, low) - expected)).toBeLessThan(4 * binomialError(expected));
      // Crossed aslant at 60° the way through is twice as long; it is counted in steps of 2 m, so it may be 2 m out.
      const aslant = stopped(across, low, 60 * DEGREE, { x: -70, y: -225 });
      const twice = 1 - Math.exp(-densityPerM * 2 * depthM);
      const step = densityPerM * 2 * Math.exp(-densityPerM * 2 * depthM);
      expect(Math.abs(aslant - twice)).toBeLessThan(4 * binomialError(twice) + step);
    },
  );

  it('are passed over and under', () => {
    const { at, height } = apexOf(windowOf(high));
    const under = 0.9 * height * 150;
    const middle = -250 + at * 150;
    const dense = { baseM: 0, densityPerM: 5 };
    const belowTheBall = groundOf({
      patches: [wood(-50, middle - 8, 50, middle + 8, { ...dense, topM: under })],
    });
    expect(stopped(belowTheBall, high)).toBe(0);
    expect(stopped(belowTheBall, low)).toBe(1);
    // Near the tee the low ball is under the branches, the high one soon in them.
    const rise = heightAlong(windowOf(high), 150, 20);
    const overTheBall = groundOf({
      patches: [wood(-50, -240, 50, -220, { topM: 40, baseM: rise / 2, densityPerM: 5 })],
    });
    expect(heightAlong(windowOf(low), 150, 30)).toBeLessThan(rise / 2);
    // Only stems are in its way, over 20 m counted in steps of two.
    const stems = 1 - Math.exp(-STEMS_PER_M * 20);
    expect(Math.abs(stopped(overTheBall, low) - stems)).toBeLessThan(
      4 * binomialError(stems) + 2 * STEMS_PER_M,
    );
    expect(stopped(overTheBall, high)).toBe(1);
  });

  it('catch a ball that comes down into low ones, though the tallest trees stand elsewhere', () => {
    const low8 = { topM: 8, baseM: 0, densityPerM: 5 };
    const ground = groundOf({
      patches: [wood(-50, -125, 50, -60, low8)],
      trees: [{ x: 70, y: 60, radiusM: 5, canopy: { topM: 70, baseM: 2, densityPerM: 0.1 } }],
    });
    expect(apexOf(windowOf(high)).height * 150).toBeGreaterThan(20);
    expect(stopped(ground, high)).toBe(1);
  });

  it('beside the way stop nothing', () => {
    const beside = { topM: 60, baseM: 0, densityPerM: 5 };
    const alley = groundOf({ patches: [wood(-60, -290, -2, -60, beside), wood(2, -290, 60, -60, beside)] });
    expect(stopped(alley, low)).toBe(0);
    expect(stopped(alley, low, 3 * DEGREE)).toBe(1);
  });

  it('let a ball down where its speed and luck take it: on average a few metres on, to either side', () => {
    const canopy = { topM: 60, baseM: 0, densityPerM: 0.05 };
    const ground = groundOf({ patches: [wood(-50, -200, 50, -160, canopy)] });
    const resolver = new ShotResolver(ground);
    const draws = new ShotDrawer(4096).redraw(makeStreamKey('trees'), 2);
    const ends: number[] = [];
    const sides: number[] = [];
    for (let i = 0; i < draws.count; i++) {
      resolver.resolve(0, -250, low, NORTH, draws, i);
      if (!resolver.stoppedByTree) continue;
      // Never behind the player, and no farther than the fastest ball goes that keeps a quarter of its speed.
      expect(resolver.endY).toBeGreaterThanOrEqual(-250);
      ends.push(resolver.endY);
      sides.push(resolver.endX);
    }
    const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
    const { table } = low.flight;
    const speeds = [table.launch.speedMps, table.landingSpeedMps[0]!] as const;
    // The same average over where it is hit (exponential, cut at 40 m), what it keeps (u², mean 1/3) and where it turns
    // (normal of 1.1 rad: mean cosine exp(-1.1²/2)), in steps of a tenth of a metre.
    let share = 0;
    let expected = 0;
    for (let depth = 0.05; depth < 40; depth += 0.1) {
      const weight = Math.exp(-0.05 * depth);
      const f = (50 + depth) / 150;
      const speed = speeds[0] * (speeds[1] / speeds[0]) ** f;
      const height = heightAlong(windowOf(low), 150, 50 + depth);
      const way = (1.3 * 0.25 * speed * (Math.sqrt((2 * height) / 9.80665) + 0.3)) / 3;
      share += weight;
      expected += weight * (-200 + depth + way * Math.exp(-(1.1 ** 2) / 2));
    }
    const sd = Math.sqrt(mean(ends.map((y) => (y - mean(ends)) ** 2)));
    // A metre for the steps of two in which crowns are met.
    expect(Math.abs(mean(ends) - expected / share)).toBeLessThan(1 + (4 * sd) / Math.sqrt(ends.length));
    expect(Math.abs(mean(sides))).toBeLessThan(1);
    expect(Math.max(...sides)).toBeGreaterThan(2);
  });

  it('have trunks where they stand by themselves: met by a low ball aimed at them, passed beside', () => {
    const canopy = { topM: 12, baseM: 4, densityPerM: 0.1 };
    const ground = groundOf({ trees: [{ x: 0, y: -240, radiusM: 3, canopy }] });
    expect(heightAlong(windowOf(low), 150, 10)).toBeLessThan(4);
    expect(stopped(ground, low)).toBe(1);
    // The trunk is 42 cm thick: half a metre beside it at 10 m is past it.
    expect(stopped(ground, low, Math.atan(0.5 / 10))).toBe(0);
    // From farther away than its branches reach down to the ball's height, a high ball meets the crown or nothing.
    expect(heightAlong(windowOf(high), 150, 30)).toBeGreaterThan(12);
    expect(stopped(ground, high, NORTH, { x: 0, y: -270 })).toBe(0);
  });

  it('are looked for wherever the ball may meet them: a twin that walks every quarter of a metre agrees', () => {
    // Scattered trees on rolling ground, balls in all directions; the twin knows no shortcuts.
    const anyTree = fc.record({
      x: fc.double({ min: -70, max: 70, noNaN: true }),
      y: fc.double({ min: -290, max: -20, noNaN: true }),
      radiusM: fc.double({ min: 3, max: 12, noNaN: true }),
      canopy: fc
        .record({
          topM: fc.double({ min: 4, max: 30, noNaN: true }),
          baseShare: fc.double({ min: 0, max: 0.6, noNaN: true }),
          densityPerM: fc.double({ min: 0.02, max: 0.3, noNaN: true }),
        })
        .map(({ topM, baseShare, densityPerM }): Canopy => ({ topM, baseM: baseShare * topM, densityPerM })),
    });
    const anyGround = fc.record({
      trees: fc.array(anyTree, { minLength: 4, maxLength: 14 }),
      levels: fc.constantFrom(
        [],
        [
          { x: 0, y: -290, elevationM: 20 },
          { x: 0, y: -200, elevationM: 5 },
          { x: 0, y: -90, elevationM: 12 },
        ],
      ),
    });
    const count = 512;
    const draws = new ShotDrawer(count).redraw(makeStreamKey('trees'), 3);
    fc.assert(
      fc.property(anyGround, fc.constantFrom(12, 25, 50), (spec, loftDeg) => {
        const ground = groundOf(spec);
        const law = lawOf({ carryM: 130, carrySd: 15, directionSd: 0.4, loftDeg });
        const resolver = new ShotResolver(ground, false);
        let seen = 0;
        let expected = 0;
        let variance = 0;
        for (let i = 0; i < count; i++) {
          resolver.resolve(0, -200, law, NORTH, draws, i);
          if (resolver.stoppedByTree) seen++;
          const chance = 1 - Math.exp(-depthAlong(ground, law, draws.distanceZ[i]!, draws.directionZ[i]!));
          expected += chance;
          variance += chance * (1 - chance);
        }
        // Four binomial errors; the 2 m steps leave one share in fifty.
        expect(Math.abs(seen - expected) / count).toBeLessThan((4 * Math.sqrt(variance)) / count + 0.02);
      }),
      { numRuns: 25, seed: 61 },
    );
  });
});

/** Optical depth of canopy along one flight of the law from (0, -200) north, in steps of 25 cm. */
function depthAlong(ground: HoleGround, law: ShotLaw, distanceZ: number, directionZ: number): number {
  const start = elevationAt(ground, 0, -200);
  const direction = law.directionSd * directionZ;
  const level = law.carryMean + law.carrySd * distanceZ;
  const landing = { x: level * Math.sin(direction), y: -200 + level * Math.cos(direction) };
  const carry = carryToRise(
    law.flight.table.rises[0]!,
    level,
    elevationAt(ground, landing.x, landing.y) - start,
  );
  for (const trunk of ground.trunks) {
    const along = trunk.x * Math.sin(direction) + (trunk.y + 200) * Math.cos(direction);
    const aside = trunk.x * Math.cos(direction) - (trunk.y + 200) * Math.sin(direction);
    if (Math.hypot(trunk.x, trunk.y + 200) > 40 || along <= 0 || along >= carry) continue;
    const foot = elevationAt(ground, trunk.x, trunk.y);
    const above = start + heightAlong(windowOf(law), level, along) - foot;
    if (Math.abs(aside) < trunk.radiusM + BALL_RADIUS_M && above < trunk.heightM) return Infinity;
  }
  const step = 0.25;
  let depth = 0;
  for (let r = step / 2; r < carry; r += step) {
    const cell = cellIndexAt(ground, r * Math.sin(direction), -200 + r * Math.cos(direction));
    const above = start + heightAlong(windowOf(law), level, r) - (ground.elevation?.[cell] ?? 0);
    if (above > ground.canopyBase[cell]! && above < ground.canopyTop[cell]!) {
      depth += step * ground.canopyDensity[cell]!;
    }
  }
  return depth;
}

describe('the run', () => {
  const law = lawOf({ carryM: 180, loftDeg: 10.5 });
  const table = law.flight.runs[0]!;
  const bounce = (lie: number): number => table.bounceM[LEVEL_ROW * RUN_LIES + lie]!;
  const LAND = -250 + 180;

  function rest(ground: HoleGround, rollZ = 0): { y: number; lie: number } {
    const resolver = new ShotResolver(ground);
    resolver.resolve(0, -250, law, NORTH, handDraws({ rollZ }), 0);
    expect(resolver.endX).toBeCloseTo(0, 9);
    return { y: resolver.endY, lie: resolver.endLie };
  }

  it('on one kind of ground is that of the day’s flight, scattered by its draw', () => {
    const run = table.totalM[Lie.fairway]!;
    expect(run).toBeGreaterThan(10);
    // A billionth of a metre a step is taken off so that the walk ends.
    expect(rest(fairway).y).toBeCloseTo(LAND + run, 6);
    expect(rest(fairway, 1).y).toBeCloseTo(LAND + run * 1.35, 6);
    expect(rest(fairway, -10).y).toBeCloseTo(LAND, 6);
    expect(rest(open).y).toBeCloseTo(LAND + table.totalM[Lie.rough]!, 6);
    expect(table.totalM[Lie.rough]!).toBeLessThan(run / 2);
  });

  it('slows where fairway ends, by what each takes from a rolling ball', () => {
    const ground = groundOf({ patches: [box('fairway', -60, -310, 60, LAND + 9)] });
    const left = table.totalM[Lie.fairway]! - 9;
    const expected = LAND + 9 + (left * table.costPerM[Lie.fairway]!) / table.costPerM[Lie.rough]!;
    expect(bounce(Lie.fairway) / 2).toBeLessThan(9);
    // The step that crosses the edge is a metre at most.
    expect(Math.abs(rest(ground).y - expected)).toBeLessThan(1);
  });

  it.each(['bunker', 'penalty-yellow', 'penalty-red', 'out-of-bounds'] as const)(
    'ends in the first %s that it meets after its first hop, be it a ditch two metres wide',
    (kind) => {
      const lie = { bunker: 3, 'penalty-yellow': 8, 'penalty-red': 9, 'out-of-bounds': 10 }[kind];
      const hop = bounce(Lie.fairway) / 2;
      fc.assert(
        fc.property(
          fc.double({ min: hop + 0.1, max: table.totalM[Lie.fairway]! - 1, noNaN: true }),
          (ahead) => {
            const ditch = box(kind, -60, LAND + ahead, 60, LAND + 2 + ahead);
            const ground = groundOf({ patches: [box('fairway', -60, -310, 60, -20), ditch] });
            const end = rest(ground);
            expect(end.lie).toBe(lie);
            expect(end.y).toBeGreaterThan(LAND + ahead - 0.5);
            expect(end.y).toBeLessThan(LAND + 2 + ahead + 0.5);
          },
        ),
        { numRuns: 8, seed: 62 },
      );
      // The first hop flies over it.
      const ditch = box(kind, -60, LAND + 1, 60, LAND + 3);
      expect(hop).toBeGreaterThan(3.5);
      expect(rest(groundOf({ patches: [box('fairway', -60, -310, 60, -20), ditch] })).lie).toBe(Lie.fairway);
    },
  );

  it('is none where the ball comes down in sand or water', () => {
    for (const kind of ['bunker', 'penalty-red'] as const) {
      expect(rest(groundOf({ patches: [box(kind, -60, LAND - 5, 60, LAND + 5)] })).y).toBeCloseTo(LAND, 9);
    }
  });

  it('is left out on request', () => {
    const resolver = new ShotResolver(fairway, false);
    resolver.resolve(0, -250, law, NORTH, handDraws({}), 0);
    expect(resolver.endY).toBeCloseTo(LAND, 9);
  });

  it('goes back where the spin is stronger: a wedge on a firm green', () => {
    const conditions = { ...DEFAULT_CONDITIONS, firmness: 'soft' as const };
    const wedge = lawOf({ carryM: 100, loftDeg: 60 }, conditions);
    const back = wedge.flight.runs[0]!.totalM[Lie.green]!;
    const ground = groundOf({ greenRadiusM: 40 });
    const resolver = new ShotResolver(ground);
    resolver.resolve(0, -100, wedge, NORTH, handDraws({}), 0);
    expect(resolver.endY).toBeCloseTo(back, 6);
  });
});

describe('wind', () => {
  const blowing = (speedMps: number, fromDeg: number, gustSdMps = 0): Conditions => ({
    ...DEFAULT_CONDITIONS,
    wind: { speedMps, fromDeg, gustSdMps },
  });

  it('takes from carry against it, adds with it, and pushes aside across it, by the flight’s table', () => {
    for (const [fromDeg, bearing] of [
      [0, NORTH],
      [180, NORTH],
      [90, NORTH],
      [300, EAST],
    ] as const) {
      const conditions = blowing(6, fromDeg);
      const law = lawOf({ carryM: 150, loftDeg: 20 }, conditions);
      const { table } = law.flight;
      const angle = windAngle(conditions, bearing);
      const resolver = new ShotResolver(groundOf({ lengthM: 400 }), false);
      resolver.resolve(0, -250, law, bearing, handDraws({}), 0);
      const [east, north] = [resolver.landX, resolver.landY + 250];
      const along = east * Math.sin(bearing) + north * Math.cos(bearing);
      const right = east * Math.cos(bearing) - north * Math.sin(bearing);
      expect(along).toBeCloseTo(150 * carryFactorAt(table, angle), 6);
      expect(right).toBeCloseTo(150 * driftShareAt(table, angle), 6);
    }
  });

  it('is half as strong for a poor strike, and gusts by their draw', () => {
    const gusty = blowing(6, 0, 2);
    const law = lawOf({ carryM: 150, loftDeg: 20, poorShare: 0.5 }, gusty);
    const { table } = law.flight;
    const resolver = new ShotResolver(groundOf({ lengthM: 400 }), false);
    const carry = (draw: HandDraw): number => {
      resolver.resolve(0, -250, law, NORTH, handDraws(draw), 0);
      return Math.hypot(resolver.landX, resolver.landY + 250);
    };
    const factor = carryFactorAt(table, 0);
    expect(carry({ poorU: 0.1 })).toBeCloseTo(law.poorCarryMean * (1 + (factor - 1) / 2), 6);
    const gust = gustAt(table, 0, 1.5).carry;
    expect(gust).toBeLessThan(0);
    expect(carry({ poorU: 0.9, gustZ: 1.5 })).toBeCloseTo(150 * (factor + gust), 6);
    expect(carry({ poorU: 0.9, gustZ: -1.5 })).toBeCloseTo(150 * (factor - gust), 6);
    // Across the shot, what the gust turns is halved as what the wind turns.
    const across = lawOf({ carryM: 150, loftDeg: 20, poorShare: 0.5 }, blowing(6, 90, 2));
    const aside = (draw: HandDraw): number => {
      resolver.resolve(0, -250, across, NORTH, handDraws(draw), 0);
      return Math.atan2(resolver.landX, resolver.landY + 250);
    };
    const solid = aside({ poorU: 0.9, gustZ: 1.5 });
    expect(aside({ poorU: 0.1, gustZ: 1.5 })).toBeCloseTo(solid / 2, 6);
    expect(Math.abs(solid)).toBeGreaterThan(1.2 * Math.abs(aside({ poorU: 0.9 })));
  });
});

describe('sloping ground', () => {
  /** Level at both ends of a shot of 100 m, `rise` between them. */
  function slope(rise: number): HoleGround {
    return groundOf({
      levels: [
        { x: 0, y: -250, elevationM: 0 },
        { x: 0, y: -150, elevationM: rise },
      ],
    });
  }

  function carryOn(ground: HoleGround, law: ShotLaw): number {
    const resolver = new ShotResolver(ground, false);
    resolver.resolve(0, -250, law, NORTH, handDraws({}), 0);
    return Math.hypot(resolver.landX, resolver.landY + 250);
  }

  it('shortens a shot uphill and lengthens one downhill as its flight does', () => {
    const law = lawOf({ carryM: 100, loftDeg: 30 });
    for (const rise of [-15, -5, 5, 15]) {
      const ground = slope(rise);
      const climbed = elevationAt(ground, 0, -150) - elevationAt(ground, 0, -250);
      expect(Math.sign(climbed)).toBe(Math.sign(rise));
      // The height is that of the cell where the level shot would land, up to a cell aside.
      expect(
        Math.abs(carryOn(ground, law) - carryToRise(law.flight.table.rises[0]!, 100, climbed)),
      ).toBeLessThan(0.3);
    }
    // The table's heights are a few millimetres coarse.
    expect(carryOn(slope(0), law)).toBeCloseTo(100, 1);
  });

  it('takes more from a flat flight than from a steep one', () => {
    const ground = slope(10);
    const driver = carryOn(ground, lawOf({ carryM: 100, loftDeg: 10.5 }));
    const wedge = carryOn(ground, lawOf({ carryM: 100, loftDeg: 56 }));
    expect(driver).toBeLessThan(wedge);
    expect(wedge).toBeLessThan(100);
  });

  /** A plane of levels that rises by `east` and `north` metres per metre. */
  function plane(east: number, north: number): HoleGround {
    const base = groundOf({ patches: [box('fairway', -80, -300, 80, 80)] });
    const elevation = Float32Array.from(base.lie, (_, i) => {
      const x = base.west + (i % base.columns) + 0.5;
      const y = base.south + Math.floor(i / base.columns) + 0.5;
      return east * x + north * y;
    });
    return {
      ...base,
      elevation,
      slopes: Float32Array.from({ length: 2 * base.lie.length }, (_, k) => (k % 2 === 0 ? east : north)),
    };
  }

  it('turns a ball that lies above or below the feet to the low side, a lofted club more', () => {
    const ground = plane(0.08, 0);
    for (const loftDeg of [20, 50]) {
      const law = lawOf({ carryM: 100, loftDeg });
      const resolver = new ShotResolver(ground, false);
      resolver.resolve(0, -250, law, NORTH, handDraws({}), 0);
      const turn = Math.atan2(resolver.landX, resolver.landY + 250);
      // It rises to the right: the ball is below the feet of no right-hander; it goes left.
      expect(turn).toBeCloseTo(sideSlopeTurn(loftDeg * DEGREE, 0.08), 6);
      expect(turn).toBeLessThan(0);
    }
  });

  it('lengthens a run downhill, shortens it uphill, and bends it to the low side', () => {
    const law = lawOf({ carryM: 150, loftDeg: 10.5 });
    const runOn = (ground: HoleGround): { along: number; right: number } => {
      const resolver = new ShotResolver(ground);
      resolver.resolve(0, -250, law, NORTH, handDraws({}), 0);
      return { along: resolver.endY - resolver.landY, right: resolver.endX - resolver.landX };
    };
    const level = runOn(fairway);
    expect(runOn(plane(0, -0.04)).along).toBeGreaterThan(level.along + 1);
    expect(runOn(plane(0, 0.04)).along).toBeLessThan(level.along - 1);
    expect(runOn(plane(0.04, 0)).right).toBeLessThan(-0.3);
    expect(runOn(plane(-0.04, 0)).right).toBeGreaterThan(0.3);
  });
});
