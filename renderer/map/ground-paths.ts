/** The course's drawn areas as paths in metres of a hole's frame, in the order in which the engine lets them win. */

import { isInside } from '../../core/course/polygon.ts';
import type { LocalFrame } from '../../core/course/local-frame.ts';
import type { Area, Course, LonLat, Rings } from '../../core/course/model.ts';
import { type LieCode, PAINTING_ORDER } from '../../core/ground/lies.ts';
import { remember } from '../state/remember.ts';

export interface GroundPaths {
  readonly grounds: readonly { readonly lie: LieCode; readonly path: Path2D }[];
  /** Inside of the course; null where no boundary is drawn. */
  readonly boundary: Path2D | null;
  /** Crowns scattered over the woods, for texture only. */
  readonly woodsLight: Path2D;
  readonly woodsDark: Path2D;
  readonly trees: Path2D;
}

export const groundPaths = remember((course: Course, frame: LocalFrame): GroundPaths => {
  const areasOf = (kind: Area['kind']): readonly Area[] => course.areas.filter((area) => area.kind === kind);
  const grounds = PAINTING_ORDER.map(([kind, lie]) => ({ lie, path: pathOf(areasOf(kind), frame) }));
  const boundaries = areasOf('boundary');
  const woods = areasOf('woods');
  const trees = new Path2D();
  for (const tree of course.trees) {
    const { x, y } = frame.toSpot(tree.at);
    addCircle(trees, x, y, tree.crownRadiusM);
  }
  return {
    grounds,
    boundary: boundaries.length === 0 ? null : pathOf(boundaries, frame),
    woodsLight: scatterCrowns(woods, frame, 0),
    woodsDark: scatterCrowns(woods, frame, 1),
    trees,
  };
});

function pathOf(areas: readonly Area[], frame: LocalFrame): Path2D {
  const path = new Path2D();
  for (const area of areas) addRings(path, area.rings, frame);
  return path;
}

function addRings(path: Path2D, rings: Rings, frame: LocalFrame): void {
  for (const ring of rings) {
    ring.forEach((place, i) => {
      const { x, y } = frame.toSpot(place);
      if (i === 0) path.moveTo(x, y);
      else path.lineTo(x, y);
    });
    path.closePath();
  }
}

function addCircle(path: Path2D, x: number, y: number, radius: number): void {
  path.moveTo(x + radius, y);
  path.arc(x, y, radius, 0, 2 * Math.PI);
}

/** Distance between neighbouring crowns of the texture, metres. */
const CROWN_GRID_M = 7;

/** Crowns on a shaken grid; the same woods always look the same. */
function scatterCrowns(woods: readonly Area[], frame: LocalFrame, half: number): Path2D {
  const path = new Path2D();
  for (const area of woods) {
    const outer = (area.rings[0] ?? []).map((place) => frame.toSpot(place));
    const xs = outer.map((spot) => spot.x);
    const ys = outer.map((spot) => spot.y);
    for (let x = Math.min(...xs); x < Math.max(...xs); x += CROWN_GRID_M) {
      for (let y = Math.min(...ys); y < Math.max(...ys); y += CROWN_GRID_M) {
        const shake = shakeAt(x + half * 31, y - half * 17);
        if (shake.keep < 0.25) continue;
        const at = { x: x + shake.x * CROWN_GRID_M, y: y + shake.y * CROWN_GRID_M };
        const place: LonLat = frame.toLonLat(at);
        if (isInside(place, area)) addCircle(path, at.x, at.y, 1.6 + 1.6 * shake.keep);
      }
    }
  }
  return path;
}

/** Three numbers in [0, 1) that look random and depend only on the place. */
function shakeAt(x: number, y: number): { readonly x: number; readonly y: number; readonly keep: number } {
  const part = (a: number, b: number): number => {
    const wave = Math.sin(x * a + y * b) * 43758.5453;
    return wave - Math.floor(wave);
  };
  return { x: part(12.9898, 78.233), y: part(39.3468, 11.135), keep: part(73.156, 52.235) };
}
