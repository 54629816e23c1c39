/** One drawn shot from strike to rest: where it lands, what stops it in the air, where it rolls to. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runShare } from '../../core/flight/roll.ts';
import { shotLaw, type ShotLaw } from '../../core/flight/shot-law.ts';
import { apexOf, heightAlong } from '../../core/flight/trajectory.ts';
import type { Canopy } from '../../core/course/model.ts';
import { cellIndexAt, elevationAt, type HoleGround } from '../../core/ground/hole-ground.ts';
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

function lawOf(spread: Partial<StatedSpread>): ShotLaw {
  const full = stated({ club: 'Club', carryM: 100, carrySd: 0, directionSd: 0, ...spread });
  const law = shotLaw(statedPlayer({ spreads: [full] }), full, Lie.fairway, full.carryMean);
  if (law === null) throw new Error('not playable');
  return law;
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
    const { at, height } = apexOf(high.window);
    const under = 0.9 * height * 150;
    const middle = -250 + at * 150;
    const dense = { baseM: 0, densityPerM: 5 };
    const belowTheBall = groundOf({
      patches: [wood(-50, middle - 8, 50, middle + 8, { ...dense, topM: under })],
    });
    expect(stopped(belowTheBall, high)).toBe(0);
    expect(stopped(belowTheBall, low)).toBe(1);
    // Near the tee the low ball is under the branches, the high one soon in them.
    const rise = heightAlong(high.window, 150, 20);
    const overTheBall = groundOf({
      patches: [wood(-50, -240, 50, -220, { topM: 40, baseM: rise / 2, densityPerM: 5 })],
    });
    expect(heightAlong(low.window, 150, 30)).toBeLessThan(rise / 2);
    expect(stopped(overTheBall, low)).toBe(0);
    expect(stopped(overTheBall, high)).toBe(1);
  });

  it('catch a ball that comes down into low ones, though the tallest trees stand elsewhere', () => {
    const low8 = { topM: 8, baseM: 0, densityPerM: 5 };
    const ground = groundOf({
      patches: [wood(-50, -125, 50, -60, low8)],
      trees: [{ x: 70, y: 60, radiusM: 5, canopy: { topM: 70, baseM: 2, densityPerM: 0.1 } }],
    });
    expect(apexOf(high.window).height * 150).toBeGreaterThan(20);
    expect(stopped(ground, high)).toBe(1);
  });

  it('beside the way stop nothing', () => {
    const beside = { topM: 60, baseM: 0, densityPerM: 5 };
    const alley = groundOf({ patches: [wood(-60, -290, -2, -60, beside), wood(2, -290, 60, -60, beside)] });
    expect(stopped(alley, low)).toBe(0);
    expect(stopped(alley, low, 3 * DEGREE)).toBe(1);
  });

  it('let a ball down where they stopped it, or a little back', () => {
    const canopy = { topM: 60, baseM: 0, densityPerM: 0.05 };
    const ground = groundOf({ patches: [wood(-50, -200, 50, -160, canopy)] });
    const resolver = new ShotResolver(ground);
    const draws = new ShotDrawer(1024).redraw(makeStreamKey('trees'), 2);
    let sum = 0;
    let count = 0;
    for (let i = 0; i < 1024; i++) {
      resolver.resolve(0, -250, low, NORTH, draws, i);
      if (!resolver.stoppedByTree) continue;
      expect(resolver.endX).toBeCloseTo(0, 9);
      // 3 % of the carry that was left, times a draw: 100 m left, and no draw of a thousand beyond four.
      expect(resolver.endY).toBeGreaterThan(-200 - 0.03 * 100 * 4);
      expect(resolver.endY).toBeLessThan(-160);
      sum += resolver.endY;
      count++;
    }
    // Depth reached before the stop: exponential cut at 40 m, mean 1/k - L/(exp(kL) - 1) = 13.7 m; less what drops
    // back, 0.03 x 86 m x E|z| = 2.1 m; found in steps of 2 m.
    expect(Math.abs(sum / count - (-200 + 13.7 - 2.1))).toBeLessThan(1 + (4 * 10) / Math.sqrt(count));
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
  const carry = level - (elevationAt(ground, landing.x, landing.y) - start) / law.window.tanDescent;
  const step = 0.25;
  let depth = 0;
  for (let r = step / 2; r < carry; r += step) {
    const cell = cellIndexAt(ground, r * Math.sin(direction), -200 + r * Math.cos(direction));
    const above = start + heightAlong(law.window, carry, r) - (ground.elevation?.[cell] ?? 0);
    if (above > ground.canopyBase[cell]! && above < ground.canopyTop[cell]!) {
      depth += step * ground.canopyDensity[cell]!;
    }
  }
  return depth;
}

describe('the roll', () => {
  const law = lawOf({ carryM: 100, loftDeg: 10.5 });
  const run = 100 * runShare(law.window.tanDescent);

  function rest(ground: HoleGround, rollZ = 0): { y: number; lie: number } {
    const resolver = new ShotResolver(ground);
    resolver.resolve(0, -250, law, NORTH, handDraws({ rollZ }), 0);
    expect(resolver.endX).toBeCloseTo(0, 9);
    return { y: resolver.endY, lie: resolver.endLie };
  }

  it('on fairway is the share of carry that the descent gives, scattered by its draw', () => {
    // A billionth of a metre a step is taken off so that the walk ends.
    expect(rest(fairway).y).toBeCloseTo(-150 + run, 6);
    expect(rest(fairway, 1).y).toBeCloseTo(-150 + run * 1.35, 6);
    expect(rest(fairway, -10).y).toBeCloseTo(-150, 6);
  });

  it('is short in rough: less after the bounce, more a metre', () => {
    expect(rest(open).y).toBeCloseTo(-150 + (run * 0.6) / 2.2, 6);
  });

  it('slows where fairway ends', () => {
    const ground = groundOf({ patches: [box('fairway', -60, -310, 60, -145)] });
    // 5 m of fairway, the rest at rough's rate; the step that crosses the edge is a metre at most.
    const expected = -145 + (run - 5) / 2.2;
    expect(Math.abs(rest(ground).y - expected)).toBeLessThan(1 - 1 / 2.2 + 1e-6);
  });

  it.each(['bunker', 'penalty-yellow', 'penalty-red', 'out-of-bounds'] as const)(
    'ends in the first %s that it meets, be it a ditch two metres wide',
    (kind) => {
      const lie = { bunker: 3, 'penalty-yellow': 8, 'penalty-red': 9, 'out-of-bounds': 10 }[kind];
      fc.assert(
        fc.property(fc.double({ min: 0.6, max: run - 1, noNaN: true }), (ahead) => {
          const ditch = box(kind, -60, -150 + ahead, 60, -148 + ahead);
          const ground = groundOf({ patches: [box('fairway', -60, -310, 60, -20), ditch] });
          const end = rest(ground);
          expect(end.lie).toBe(lie);
          expect(end.y).toBeGreaterThan(-150 + ahead - 0.5);
          expect(end.y).toBeLessThan(-148 + ahead + 0.5);
        }),
        { numRuns: 8, seed: 62 },
      );
    },
  );

  it('is none where the ball comes down in sand or water', () => {
    for (const kind of ['bunker', 'penalty-red'] as const) {
      expect(rest(groundOf({ patches: [box(kind, -60, -155, 60, -145)] })).y).toBeCloseTo(-150, 9);
    }
  });

  it('is left out on request', () => {
    const resolver = new ShotResolver(fairway, false);
    resolver.resolve(0, -250, law, NORTH, handDraws({}), 0);
    expect(resolver.endY).toBeCloseTo(-150, 9);
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
    return resolver.landY + 250;
  }

  it('shortens a shot uphill and lengthens one downhill by the rise over the descent', () => {
    const law = lawOf({ carryM: 100, loftDeg: 30 });
    for (const rise of [-15, -5, 5, 15]) {
      const ground = slope(rise);
      const climbed = elevationAt(ground, 0, -150) - elevationAt(ground, 0, -250);
      expect(Math.sign(climbed)).toBe(Math.sign(rise));
      expect(carryOn(ground, law)).toBeCloseTo(100 - climbed / law.window.tanDescent, 6);
    }
    expect(carryOn(slope(0), law)).toBeCloseTo(100, 9);
  });

  it('takes more from a flat flight than from a steep one', () => {
    const ground = slope(10);
    const driver = carryOn(ground, lawOf({ carryM: 100, loftDeg: 10.5 }));
    const wedge = carryOn(ground, lawOf({ carryM: 100, loftDeg: 56 }));
    expect(driver).toBeLessThan(wedge);
    expect(wedge).toBeLessThan(100);
  });
});
