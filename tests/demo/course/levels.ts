/** Ground levels: a gentle rise to the north, two shallow valleys along the brooks, greens that tilt to the player. */

import seedrandom from 'seedrandom';
import type { Point } from './curves.ts';
import { planeNoise } from './noise.ts';
import { centroid, distanceToLine, distanceToRing, isInside } from './polygons.ts';

export interface LevelPoint {
  readonly at: Point;
  readonly elevationM: number;
}

const roll = planeNoise('rolling ground', 150);

/** Height of the natural ground above the course's invented datum, metres. */
export function naturalHeight([x, y]: Point, valleys: readonly (readonly Point[])[]): number {
  const rise = 14 + 0.0085 * y + 1.6 * roll(x, y);
  const crown = 2.4 * Math.exp(-(((x - 10) / 170) ** 2));
  const valley = valleys.reduce(
    (depth, line) => Math.max(depth, 4.2 * Math.exp(-((distanceToLine(line, [x, y]) / 52) ** 2))),
    0,
  );
  return rise + crown - valley;
}

export interface RaisedGround {
  readonly ring: readonly Point[];
  readonly centre: Point;
  /** Unit vector of play into it. */
  readonly direction: Point;
  readonly raisedM: number;
  /** Rise per metre from front to back, and from left to right. */
  readonly backSlope: number;
  readonly sideSlope: number;
}

/** A jittered net about every 42 m inside the boundary, and seven levels on each green, one on each tee, and the water of the ponds. */
export function groundLevels(
  boundary: readonly Point[],
  valleys: readonly (readonly Point[])[],
  greens: readonly RaisedGround[],
  tees: readonly Point[],
  ponds: readonly (readonly Point[])[],
): LevelPoint[] {
  const random = seedrandom('ground levels');
  const levels: LevelPoint[] = [];
  const near = (p: Point, q: Point, m: number): boolean => Math.hypot(p[0] - q[0], p[1] - q[1]) < m;
  for (let y = -100; y < 820; y += 42) {
    for (let x = -620; x < 680; x += 42) {
      const at: Point = [x + 24 * random() - 12, y + 24 * random() - 12];
      if (
        !isInside(boundary, at) ||
        greens.some((g) => near(at, g.centre, 26)) ||
        tees.some((t) => near(at, t, 10)) ||
        ponds.some((pond) => isInside(pond, at) || distanceToRing(pond, at) < 8)
      )
        continue;
      levels.push({ at, elevationM: naturalHeight(at, valleys) });
    }
  }
  for (const g of greens) {
    const base = naturalHeight(g.centre, valleys) + g.raisedM;
    const ring = [0, 1, 2, 3, 4, 5].map((k) => g.ring[Math.floor((k * g.ring.length) / 6)]!);
    for (const at of [g.centre, ...ring]) {
      const [dx, dy] = [at[0] - g.centre[0], at[1] - g.centre[1]];
      const ahead = dx * g.direction[0] + dy * g.direction[1];
      const right = dx * g.direction[1] - dy * g.direction[0];
      levels.push({ at, elevationM: base + g.backSlope * ahead + g.sideSlope * right });
    }
  }
  // still water is level, half a metre under its lowest bank
  for (const pond of ponds) {
    const lowest = Math.min(...pond.map((at) => naturalHeight(at, valleys)));
    const bank = pond.filter((_, k) => k % 6 === 0);
    for (const at of [centroid(pond), ...bank]) levels.push({ at, elevationM: lowest - 0.5 });
  }
  for (const at of tees) levels.push({ at, elevationM: naturalHeight(at, valleys) + 0.8 });
  return levels;
}
