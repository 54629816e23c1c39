/** Woods, long rough and single trees: they fill the ground that play leaves free. */

import seedrandom from 'seedrandom';
import type { Point } from './curves.ts';
import { cellCentre, distanceField, type Grid, markRing, outlines, windowAround } from './fields.ts';
import { LONG_ROUGH, type Spine, type WoodDesign, WOODS } from './planting-design.ts';
import { planeNoise } from './noise.ts';

export interface Planting {
  readonly woods: readonly { readonly design: WoodDesign; readonly rings: Point[][] }[];
  readonly longRough: readonly Point[][][];
  readonly trees: readonly PlantedTree[];
}

export interface PlantedTree {
  readonly at: Point;
  readonly heightM: number;
  readonly crownM: number;
  readonly baseM: number;
  readonly densityPerM: number;
}

/** What planting must keep away from. */
export interface Ground {
  readonly grid: Grid;
  readonly boundary: readonly Point[];
  /** Tees, lines of sight, fairways, greens, bunkers. */
  readonly play: readonly (readonly Point[])[];
  readonly water: readonly (readonly Point[])[];
  readonly paths: readonly (readonly Point[])[];
}

export function plant(ground: Ground): Planting {
  const { grid } = ground;
  const play = distanceFrom(grid, ground.play);
  const water = distanceFrom(grid, ground.water);
  const paths = distanceFrom(grid, ground.paths);
  const inside = depthInside(grid, ground.boundary);
  const rag = planeNoise('edge of woods', 22);
  const bays = planeNoise('bays of woods', 55);

  const woodMask = new Uint8Array(play.length);
  const woods = WOODS.flatMap((design) =>
    grow(grid, woodMask, design.spine, 260, (x, y, i, band) =>
      Math.min(
        band + 5 * rag(x, y) + 15 * bays(x, y),
        play[i]! - design.clearanceM + 3.5 * rag(x + 900, y) - 4 * Math.max(0, bays(y, x)),
        water[i]! - 3 + 1.5 * rag(x, y + 900),
        paths[i]! - 3,
        inside[i]! - 4 + 2 * rag(x, y),
      ),
    ).map((rings) => ({ design, rings })),
  );

  const tuft = planeNoise('edge of long grass', 16);
  const longMask = new Uint8Array(play.length);
  const longRough = LONG_ROUGH.flatMap(({ spine, clearanceM }) =>
    grow(grid, longMask, spine, 200, (x, y, i, band) =>
      Math.min(
        band + 6 * tuft(x, y),
        play[i]! - clearanceM + 3 * tuft(x + 700, y),
        water[i]! + 2,
        inside[i]! - 1,
      ),
    ),
  );

  const trees = scatterTrees(ground, { play, water, paths, inside, wood: distanceField(grid, woodMask) });
  return { woods, longRough, trees };
}

/**
 * Polygons where `strength` (of a place, its cell, and its depth in the band) is positive, outside what `taken` marks;
 * then marks them.
 */
function grow(
  grid: Grid,
  taken: Uint8Array,
  spine: Spine,
  leastM2: number,
  strength: (x: number, y: number, i: number, band: number) => number,
): Point[][][] {
  const reach = Math.max(...spine.map(([, , r]) => r)) + 30;
  const window = windowAround(
    grid,
    spine.map(([x, y]): Point => [x, y]),
    reach,
  );
  const field = new Float64Array(window.columns * window.rows).map((_, k) => {
    const [x, y] = cellCentre(window, k);
    const i = window.whole(k);
    const band = bandDepth(spine, x, y);
    return band < -24 || taken[i] === 1 ? -24 : strength(x, y, i, band);
  });
  const polygons = outlines(window, field, leastM2);
  for (const rings of polygons) markRing(grid, taken, rings[0]!);
  return polygons;
}

interface Distances {
  readonly play: Float64Array;
  readonly water: Float64Array;
  readonly paths: Float64Array;
  readonly inside: Float64Array;
  readonly wood: Float64Array;
}

/** Single trees in loose groups, thickest along the edges of fairways, never over them. */
function scatterTrees(ground: Ground, distances: Distances): PlantedTree[] {
  const { grid } = ground;
  const random = seedrandom('single trees');
  const group = planeNoise('groups of trees', 48);
  const trees: PlantedTree[] = [];
  const width = grid.columns * grid.cellM;
  const height = grid.rows * grid.cellM;
  for (let tried = 0; tried < 26000; tried++) {
    const at: Point = [grid.west + random() * width, grid.south + random() * height];
    const [chance, size, shape] = [random(), random(), random()];
    const i =
      Math.floor((at[1] - grid.south) / grid.cellM) * grid.columns +
      Math.floor((at[0] - grid.west) / grid.cellM);
    const crownM = 4.5 + 6.5 * size * size + 1.2 * shape;
    const reach = crownM / 2;
    const play = distances.play[i]!;
    if (play < 7 + reach || play > 62 || distances.wood[i]! < reach * 0.6 || distances.inside[i]! < 4)
      continue;
    if (distances.water[i]! < 2 + reach || distances.paths[i]! < 1.5 + reach * 0.5) continue;
    const density = group(at[0], at[1]) - 0.1 - 0.012 * Math.max(0, play - 22);
    const fringe = distances.wood[i]! < 9 ? 0.3 : 0;
    if (chance > density * 2.2 + fringe) continue;
    const apart = trees.some(
      (t) => Math.hypot(t.at[0] - at[0], t.at[1] - at[1]) < 1.5 + 0.62 * (reach + t.crownM / 2),
    );
    if (apart) continue;
    trees.push({
      at,
      crownM,
      heightM: 5 + crownM * 0.75 + 3.5 * shape,
      baseM: 1 + 1.6 * random(),
      densityPerM: 0.1 + 0.1 * random(),
    });
  }
  return trees;
}

function distanceFrom(grid: Grid, rings: readonly (readonly Point[])[]): Float64Array {
  const mask = new Uint8Array(grid.columns * grid.rows);
  for (const ring of rings) markRing(grid, mask, ring);
  return distanceField(grid, mask);
}

/** Metres inside the ring; 0 outside. */
function depthInside(grid: Grid, ring: readonly Point[]): Float64Array {
  const mask = new Uint8Array(grid.columns * grid.rows);
  markRing(grid, mask, ring);
  return distanceField(
    grid,
    mask.map((m) => 1 - m),
  );
}

/** How far inside a band of changing reach the point lies, metres; negative outside. */
function bandDepth(spine: Spine, x: number, y: number): number {
  let best = -Infinity;
  for (let i = 0; i + 1 < spine.length; i++) {
    const [a, b] = [spine[i]!, spine[i + 1]!];
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const t = Math.min(1, Math.max(0, ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy)));
    best = Math.max(best, a[2] + (b[2] - a[2]) * t - Math.hypot(x - a[0] - t * dx, y - a[1] - t * dy));
  }
  return best;
}
