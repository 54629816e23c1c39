/** Paints the features of a course into the raster of one hole. */

import type { Area, Course, Hole } from '../course/model.ts';
import type { LocalFrame } from '../course/local-frame.ts';
import type { Season } from '../conditions/conditions.ts';
import { withPaintedSlopes } from '../green/painted-slopes.ts';
import { bunkerLips } from './bunker-lips.ts';
import { clearOfTrees, sameLieDistance } from './safe-distance.ts';
import { elevationRaster, slopeRaster } from './elevation.ts';
import { CANOPY_STOREYS, type HoleGround, isOnRaster } from './hole-ground.ts';
import { windowAround } from './hole-window.ts';
import { Lie, PAINTING_ORDER } from './lies.ts';
import { canopyBlocks, SkylineBook } from './skyline.ts';
import { fillDisc, fillRings, flatRings, type FlatRing, type RasterShape } from './polygon-fill.ts';
import { ownFairways } from './own-fairway.ts';
import { kindOfCanopy, seasonalDensity, trunkRadiusM } from './tree-kinds.ts';
import type { Trunk } from './trunks.ts';

/**
 * The ground of `hole` within 80 m of its line, tees and hole positions. Where features overlap, the order in
 * `PAINTING_ORDER` decides. Greens of other holes count as fairway: a ball on a wrong green is dropped off it
 * (Rules of Golf 13.1f). Ground outside a drawn boundary is out of bounds. Densities of canopies in the file are those in leaf.
 * Takes tens of bytes a square metre: ask `tooLarge` first (hole-window.ts).
 */
export function rasteriseHole(
  course: Course,
  hole: Hole,
  frame: LocalFrame,
  cellM = 1,
  season: Season = 'leaf',
): HoleGround {
  const raster = windowAround(hole, frame, cellM);
  const cells = raster.columns * raster.rows;
  const lie = new Uint8Array(cells);
  const flat = (area: Area): FlatRing[] => flatRings(area, frame);

  const boundaries = course.areas.filter((area) => area.kind === 'boundary');
  const outside = new Uint8Array(cells);
  if (boundaries.length > 0) {
    outside.fill(1);
    for (const boundary of boundaries) fillRings(raster, flat(boundary), (i) => (outside[i] = 0));
  }
  for (const [kind, code] of PAINTING_ORDER) {
    for (const area of course.areas) {
      if (area.kind !== kind) continue;
      const isOtherGreen = kind === 'green' && area.hole !== undefined && area.hole !== hole.number;
      const paintAs = isOtherGreen ? Lie.fairway : code;
      fillRings(raster, flat(area), (i) => (lie[i] = paintAs));
    }
  }
  for (let i = 0; i < cells; i++) if (outside[i] === 1) lie[i] = Lie.outOfBounds;

  const canopies = paintCanopies(course, raster, frame, flat, season);
  const levels = course.levels.map((level) => ({ ...frame.toSpot(level.at), elevationM: level.elevationM }));
  const elevation = elevationRaster(raster, levels);
  return {
    ...raster,
    cellsPerM: 1 / raster.cellM,
    lie,
    ...canopies,
    lips: bunkerLips(course, frame),
    ownFairways: ownFairways(course, hole, frame),
    sameLie: sameLieDistance(raster, lie),
    ...canopyStoreys(raster, canopies.canopyTop, elevation),
    elevation,
    slopes: withPaintedSlopes(
      course,
      hole,
      frame,
      raster,
      elevation === null ? null : slopeRaster(raster, elevation),
    ),
  };
}

type Canopies = Pick<HoleGround, 'canopyTop' | 'canopyBase' | 'canopyDensity' | 'trunks'>;

/** Where crowns overlap: the highest top, the lowest base, the greatest density. */
function paintCanopies(
  course: Course,
  raster: RasterShape,
  frame: LocalFrame,
  flat: (area: Area) => FlatRing[],
  season: Season,
): Canopies {
  const cells = raster.columns * raster.rows;
  const canopyTop = new Float32Array(cells);
  const canopyBase = new Float32Array(cells);
  const canopyDensity = new Float32Array(cells);
  const trunks: Trunk[] = [];
  const painter =
    (topM: number, baseM: number, densityPerM: number) =>
    (i: number): void => {
      canopyBase[i] = canopyTop[i]! > 0 ? Math.min(canopyBase[i]!, baseM) : baseM;
      canopyTop[i] = Math.max(canopyTop[i]!, topM);
      canopyDensity[i] = Math.max(canopyDensity[i]!, densityPerM);
    };
  for (const area of course.areas) {
    if (area.kind !== 'woods' || area.canopy === undefined) continue;
    const { topM, baseM } = area.canopy;
    fillRings(raster, flat(area), painter(topM, baseM, seasonalDensity(area.canopy, season)));
  }
  for (const tree of course.trees) {
    const { x, y } = frame.toSpot(tree.at);
    const { topM, baseM } = tree.canopy;
    fillDisc(raster, x, y, tree.crownRadiusM, painter(topM, baseM, seasonalDensity(tree.canopy, season)));
    const radiusM = trunkRadiusM(kindOfCanopy(tree.canopy), topM);
    if (isOnRaster(raster, x, y)) trunks.push({ x, y, radiusM, heightM: baseM });
  }
  return { canopyTop, canopyBase, canopyDensity, trunks };
}

type Storeys = Pick<HoleGround, 'skylines' | 'clearOfTrees' | 'storeyBase' | 'storeyM' | 'highestCanopy'>;

/** How far it is to canopies of each height; see `HoleGround`. */
function canopyStoreys(
  raster: RasterShape,
  canopyTop: Float32Array,
  elevation: Float32Array | null,
): Storeys {
  let storeyBase = Infinity;
  let highestCanopy = -Infinity;
  const tops = canopyTop.map((top, i) => {
    if (top === 0) return -Infinity;
    const ground = elevation?.[i] ?? 0;
    storeyBase = Math.min(storeyBase, ground);
    highestCanopy = Math.max(highestCanopy, top + ground);
    return top + ground;
  });
  const cells = canopyTop.length;
  const skylines = new SkylineBook(raster, canopyBlocks(raster, tops));
  const all = new Uint8Array(cells * CANOPY_STOREYS).fill(255);
  if (highestCanopy === -Infinity)
    return { skylines, clearOfTrees: all, storeyBase: 0, storeyM: 1, highestCanopy };
  const storeyM = (highestCanopy - storeyBase) / CANOPY_STOREYS;
  for (let storey = 0; storey < CANOPY_STOREYS; storey++) {
    const floor = storey === 0 ? -Infinity : storeyBase + storey * storeyM;
    const clear = clearOfTrees(raster, (i) => tops[i]! > floor);
    for (let i = 0; i < cells; i++) all[i * CANOPY_STOREYS + storey] = clear[i]!;
  }
  return { skylines, clearOfTrees: all, storeyBase, storeyM, highestCanopy };
}
