/** Many shots at once against the same shots one by one. */

import { describe, expect, it } from 'vitest';
import { bagFlights } from '../../core/flight/bag-flights.ts';
import { shotLaw, type ShotLaw } from '../../core/flight/shot-law.ts';
import { DEFAULT_CONDITIONS, type Conditions } from '../../core/conditions/conditions.ts';
import type { HoleGround } from '../../core/ground/hole-ground.ts';
import { Lie } from '../../core/ground/lies.ts';
import { ShotResolver } from '../../core/plan/resolve-shot.ts';
import { BATCH_SHOTS, BY_TREE } from '../../core/plan/batch-shots.ts';
import { ShotBatch } from '../../core/plan/shot-batch.ts';
import { ShotDrawer } from '../../core/random/shot-draws.ts';
import { makeStreamKey } from '../../core/random/streams.ts';
import { box, disc, flatGround, handDraws, stated, statedPlayer, wood, type Patch } from './synthetic.ts';

const key = makeStreamKey('batch');
const BEARINGS = [-0.4, -0.05, 0, 0.3, 2.8];
const SPOTS = [
  { x: 0, y: -300 },
  { x: 14, y: -180 },
  { x: -25, y: -60 },
  { x: 3, y: -22 },
];
const breezy: Conditions = {
  ...DEFAULT_CONDITIONS,
  wind: { ...DEFAULT_CONDITIONS.wind, speedMps: 6, fromDeg: 70, gustSdMps: 1.5 },
};
const levels = [
  { x: -60, y: -320, elevationM: 3 },
  { x: 60, y: -320, elevationM: 0 },
  { x: -60, y: 40, elevationM: 12 },
  { x: 60, y: 40, elevationM: 5 },
  { x: 0, y: -140, elevationM: -4 },
];
const patches: readonly Patch[] = [
  box('fairway', -16, -290, 16, 20),
  box('penalty-red', -50, -150, -18, -90),
  box('boundary', -75, -370, 45, 70),
  disc('bunker', 16, -10, 7),
  box('path', 20, -300, 23, 0),
];
const canopy = { topM: 14, baseM: 2, densityPerM: 0.12 };

function lawOf(part: Partial<Parameters<typeof stated>[0]>, conditions: Conditions): ShotLaw {
  const spread = stated({
    club: 'Club',
    carryM: 140,
    carrySd: 9,
    directionSd: 0.07,
    directionMean: 0.02,
    correlation: 0.2,
    poorShare: 0.08,
    ...part,
  });
  const law = shotLaw(
    statedPlayer({ spreads: [spread] }),
    0,
    Lie.rough,
    spread.carryMean,
    bagFlights([spread], conditions),
  );
  if (law === null) throw new Error('not playable');
  return law;
}

interface Seen {
  readonly shots: number;
  readonly same: number;
  readonly stopped: number;
  readonly stoppedOneByOne: number;
  /** Mean difference of the ends, batch less one by one, metres east and north. */
  readonly gap: readonly [number, number];
}

function playBoth(
  ground: HoleGround,
  law: ShotLaw,
  spot: { x: number; y: number },
  bearing: number,
  shots: number,
): Seen {
  const draws = new ShotDrawer(shots).redraw(key, Math.round(100 * bearing));
  const batch = new ShotBatch(ground);
  const single = new ShotResolver(ground);
  let [same, stopped, stoppedOneByOne] = [0, 0, 0];
  const sums = [0, 0];
  for (let first = 0; first < shots; first += BATCH_SHOTS) {
    const end = Math.min(shots, first + BATCH_SHOTS);
    batch.play(spot.x, spot.y, law, bearing, draws, first, end);
    for (let i = first; i < end; i++) {
      const k = i - first;
      single.resolve(spot.x, spot.y, law, bearing, draws, i);
      const gap = [batch.shots.endX[k]! - single.endX, batch.shots.endY[k]! - single.endY] as const;
      if (Math.hypot(...gap) < 1e-9 && batch.shots.endLie[k] === single.endLie) same++;
      stopped += batch.shots.stopped[k]!;
      stoppedOneByOne += single.stoppedByTree ? 1 : 0;
      gap.forEach((value, axis) => {
        sums[axis] = sums[axis]! + value;
      });
    }
  }
  return {
    shots,
    same,
    stopped,
    stoppedOneByOne,
    gap: [sums[0]! / shots, sums[1]! / shots],
  };
}

describe('without trees, shots of a batch', () => {
  const cases = [
    ['on level ground', {}, DEFAULT_CONDITIONS],
    ['up and down hill', { levels }, DEFAULT_CONDITIONS],
    ['in wind and gusts, up and down hill', { levels }, breezy],
  ] as const;
  it.each(cases)('end where each alone ends: %s', (_, ground, conditions) => {
    const hole = flatGround({ lengthM: 300, patches, ...ground });
    for (const law of [lawOf({}, conditions), lawOf({ swing: 'part', carryM: 30, carrySd: 3 }, conditions)]) {
      for (const spot of SPOTS) {
        for (const bearing of BEARINGS) {
          const seen = playBoth(hole, law, spot, bearing, 256);
          expect(seen.same).toBe(seen.shots);
        }
      }
    }
  });
});

describe('out of a bunker with a lip, shots of a batch', () => {
  it('end where each alone ends; those that are too low at its edge fall back into the sand', () => {
    const spot = { x: 0, y: -200 };
    const holed = (lipM: number) =>
      flatGround({ lengthM: 300, patches: [{ ...disc('bunker', 0, -200, 6), lipM }] });
    const backIn = (lipM: number, loftDeg: number): number => {
      const law = lawOf({ loftDeg, kind: 'iron' }, DEFAULT_CONDITIONS);
      const ground = holed(lipM);
      const batch = new ShotBatch(ground);
      const single = new ShotResolver(ground);
      const draws = new ShotDrawer(BATCH_SHOTS).redraw(key, 9);
      batch.play(spot.x, spot.y, law, 0.1, draws, 0, BATCH_SHOTS);
      let back = 0;
      for (let k = 0; k < BATCH_SHOTS; k++) {
        single.resolve(spot.x, spot.y, law, 0.1, draws, k);
        expect(batch.shots.endX[k]).toBeCloseTo(single.endX, 9);
        expect(batch.shots.endY[k]).toBeCloseTo(single.endY, 9);
        if (batch.shots.endLie[k] === Lie.bunker) back += 1;
      }
      return back / BATCH_SHOTS;
    };
    // At 6 m a flight of 12 degrees is some 1.2 m high.
    expect(backIn(0, 20)).toBeLessThan(0.05);
    expect(backIn(4, 20)).toBeGreaterThan(0.95);
    expect(backIn(1.2, 20)).toBeGreaterThan(backIn(1.2, 50));
    expect(backIn(1.2, 50)).toBeLessThan(0.15);
  });
});

describe('among trees, shots of a batch', () => {
  const hole = flatGround({
    lengthM: 300,
    levels,
    patches: [...patches, wood(-40, -260, -20, -160, canopy), wood(17, -200, 40, -100, canopy)],
    trees: [
      { x: 5, y: -250, radiusM: 4, canopy },
      { x: -6, y: -205, radiusM: 3, canopy: { topM: 9, baseM: 3, densityPerM: 0.2 } },
      { x: 2, y: -160, radiusM: 5, canopy },
    ],
  });

  it('are stopped as often, and end in the same places but for chance', () => {
    let stopped = 0;
    let alone = 0;
    let shots = 0;
    const gaps: (readonly [number, number])[] = [];
    for (const law of [lawOf({}, breezy), lawOf({ loftDeg: 12, swing: 'punch' }, DEFAULT_CONDITIONS)]) {
      for (const spot of [...SPOTS, { x: -24, y: -240 }, { x: 22, y: -150 }]) {
        for (const bearing of BEARINGS) {
          const seen = playBoth(hole, law, spot, bearing, 1024);
          stopped += seen.stopped;
          alone += seen.stoppedOneByOne;
          shots += seen.shots;
          gaps.push(seen.gap);
        }
      }
    }
    expect(alone / shots).toBeGreaterThan(0.1);
    // A ray lies aside of the flight by as much to the left as to the right, so the gaps of many spots and aims even out.
    for (const axis of [0, 1] as const) {
      const mean = gaps.reduce((sum, gap) => sum + gap[axis], 0) / gaps.length;
      const variance = gaps.reduce((sum, gap) => sum + (gap[axis] - mean) ** 2, 0) / (gaps.length - 1);
      expect(Math.abs(mean)).toBeLessThan(4 * Math.sqrt(variance / gaps.length));
    }
    // Differences come from shots near the edges of crowns: a small part of those that are stopped at all.
    expect(Math.abs(stopped - alone) / alone).toBeLessThan(0.02);
  });

  it('that are bent on purpose go the same way as each alone, round what stands on the straight line', () => {
    const bent = lawOf({ swing: 'curved-right', directionMean: 0 }, DEFAULT_CONDITIONS);
    const straight = lawOf({ directionMean: 0 }, DEFAULT_CONDITIONS);
    let stopped = 0;
    for (const spot of SPOTS) {
      for (const bearing of BEARINGS) {
        const seen = playBoth(hole, bent, spot, bearing, 256);
        expect(seen.same).toBe(seen.shots);
        stopped += seen.stopped;
      }
    }
    expect(stopped).toBeGreaterThan(0);
    // A trunk-like crown half way: in the way of the straight ball, passed on the left by the one that bends to the right.
    const tree = { topM: 60, baseM: 0, densityPerM: 100 };
    const half = flatGround({ lengthM: 300, trees: [{ x: 0, y: -210, radiusM: 1.2, canopy: tree }] });
    const resolver = new ShotResolver(half);
    const middle = handDraws({ poorU: 0.99, canopyDepth: 1 });
    resolver.resolve(0, -280, straight, 0, middle, 0);
    expect(resolver.stoppedByTree).toBe(true);
    resolver.resolve(0, -280, bent, 0, middle, 0);
    expect(resolver.stoppedByTree).toBe(false);
    const aside = flatGround({ lengthM: 300, trees: [{ x: -3, y: -210, radiusM: 1.2, canopy: tree }] });
    const left = new ShotResolver(aside);
    left.resolve(0, -280, bent, 0, middle, 0);
    expect(left.stoppedByTree).toBe(true);
    left.resolve(0, -280, straight, 0, middle, 0);
    expect(left.stoppedByTree).toBe(false);
  });

  it('end where they did, after others have looked at more spots than are remembered, and at another hole', () => {
    const law = lawOf({ loftDeg: 25 }, DEFAULT_CONDITIONS);
    const draws = new ShotDrawer(BATCH_SHOTS).redraw(key, 8);
    const [one, other] = [new ShotBatch(hole), new ShotBatch(hole)];
    const endsOf = (batch: ShotBatch): readonly number[] => {
      batch.play(-10, -250, law, 0.05, draws, 0, BATCH_SHOTS);
      return [...batch.shots.endX, ...batch.shots.endY, ...batch.shots.stopped];
    };
    const before = endsOf(one);
    expect(before.slice(2 * BATCH_SHOTS)).toContain(BY_TREE);
    for (let k = 0; k < 3100; k++)
      other.play(20 + 0.001 * k, -190, law, 0.05, draws, 0, k < 2990 ? 1 : BATCH_SHOTS);
    expect(endsOf(one)).toEqual(before);
    expect(endsOf(other)).toEqual(before);
    const elsewhere = new ShotBatch(
      flatGround({ lengthM: 300, patches: [wood(-40, -260, 40, -160, canopy)] }),
    );
    elsewhere.play(-10, -250, law, 0.05, draws, 0, BATCH_SHOTS);
    expect(endsOf(one)).toEqual(before);
    elsewhere.play(-10, -250, law, 0.05, draws, 0, BATCH_SHOTS);
    expect(elsewhere.shots.endY).not.toEqual(one.shots.endY);
    expect(endsOf(other)).toEqual(before);
  });

  it('are blocked where most of their middle would be stopped', () => {
    const law = lawOf(
      { loftDeg: 12, swing: 'punch', carrySd: 0, directionSd: 0, directionMean: 0, poorShare: 0 },
      DEFAULT_CONDITIONS,
    );
    const batch = new ShotBatch(hole);
    const single = new ShotResolver(hole);
    // The middle of the law, through as much canopy as half of the balls get through.
    const middle = handDraws({ canopyDepth: Math.LN2 });
    let blocked = 0;
    for (const spot of SPOTS) {
      for (let k = 0; k < 90; k++) {
        const bearing = (k * Math.PI) / 45;
        const isBlocked = batch.isBlocked(spot.x, spot.y, law, bearing);
        blocked += isBlocked ? 1 : 0;
        single.resolve(spot.x, spot.y, law, bearing, middle, 0);
        if (isBlocked !== single.stoppedByTree) blocked += 1e-3;
      }
    }
    expect(Math.floor(blocked)).toBeGreaterThan(20);
    // The thousandths count disagreements: at edges only.
    expect((blocked % 1) * 1e3).toBeLessThan(0.05 * SPOTS.length * 90);
  });
});
