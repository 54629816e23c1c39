/** Puts the whole course together in local metres: design in, outlines out. Same design, same outlines. */

import { BACK_NINE } from './back-nine.ts';
import {
  closedCurve,
  type Measured,
  measureLine,
  mixPoints,
  openCurve,
  type Point,
  roundCorners,
} from './curves.ts';
import { type HoleDesign, TEE_NAMES } from './design.ts';
import { cellCentre, distanceField, type Grid, markRing, outlines, windowAround } from './fields.ts';
import { FRONT_NINE } from './front-nine.ts';
import { PATHS } from './path-design.ts';
import { BOUNDARY, OUT_OF_BOUNDS } from './property.ts';
import { STREAMS } from './water-design.ts';
import { groundLevels, type LevelPoint } from './levels.ts';
import { planeNoise } from './noise.ts';
import { routePaths } from './paths.ts';
import { type Planting, plant } from './planting.ts';
import { centroid, distanceToRing, exitDistance } from './polygons.ts';
import { bunkerRing, fairwayRing, greenRing, ribbonRing, teeRing } from './shapes.ts';
import { drawWater, type WaterArea } from './water.ts';

export interface BuiltHole {
  readonly design: HoleDesign;
  readonly line: readonly Point[];
  readonly tees: readonly { readonly name: string; readonly marker: Point; readonly ring: Point[] }[];
  readonly fairways: readonly Point[][];
  readonly green: Point[];
  readonly bunkers: readonly Point[][];
  /** Mown rough round the hole. */
  readonly rough: readonly Point[][][];
  readonly positions: readonly { readonly name: string; readonly at: Point }[];
}

export interface BuiltCourse extends Planting {
  readonly holes: readonly BuiltHole[];
  readonly boundary: Point[];
  readonly outOfBounds: readonly { readonly name: string; readonly ring: Point[] }[];
  readonly water: readonly WaterArea[];
  readonly paths: readonly Point[][];
  readonly levels: readonly LevelPoint[];
}

export const HOLES: readonly HoleDesign[] = [...FRONT_NINE, ...BACK_NINE];

const GRID: Grid = { west: -700, south: -150, cellM: 2.5, columns: 564, rows: 400 };

export function buildCourse(): BuiltCourse {
  const hand = planeNoise('hand', 34);
  const grip = planeNoise('grip', 9);
  const lines = new Map(HOLES.map((hole) => [hole.number, playLine(hole)]));
  const parts = HOLES.map((design) => buildHole(design, lines.get(design.number)!, hand, grip));
  const boundary = closedCurve(BOUNDARY, 14);
  const water = drawWater(lines, boundary, grip, hand);
  const surfaces = parts.flatMap((hole) => [
    ...hole.tees.map((t) => t.ring),
    ...hole.fairways,
    hole.green,
    ...hole.bunkers,
  ]);
  const paths = routePaths(GRID, PATHS, surfaces).map((line) => {
    const control = line.map(([x, y]) => [x, y, 2.4] as const);
    return ribbonRing(
      control,
      0,
      control.length - 1,
      7,
      () => 0,
      () => 0,
    );
  });
  const play = [...surfaces, ...parts.map((hole) => sightLine(lines.get(hole.design.number)!, hole.design))];
  const planting = plant({ grid: GRID, boundary, play, water: water.map((w) => w.ring), paths });
  const valleys = STREAMS.map((stream) =>
    openCurve(
      stream.course.map(([x, y]): Point => [x, y]),
      20,
    ),
  );
  const greens = parts.map((hole) => {
    const line = lines.get(hole.design.number)!;
    return {
      ring: hole.green,
      centre: centroid(hole.green),
      direction: line.direction(line.lengthM),
      raisedM: 0.6,
      backSlope: 0.022 + 0.008 * hand(hole.design.number * 61, 7),
      sideSlope: 0.014 * hand(7, hole.design.number * 61),
    };
  });
  return {
    ...planting,
    holes: parts,
    boundary,
    outOfBounds: OUT_OF_BOUNDS.map(({ name, ring }) => ({ name, ring: closedCurve(ring, 12) })),
    water,
    paths,
    levels: groundLevels(
      boundary,
      valleys,
      greens,
      parts.flatMap((hole) => hole.tees.map((t) => t.marker)),
      water.filter((w) => w.pond).map((w) => w.ring),
    ),
  };
}

/** The line of play with rounded corners, along which the design's stations run. */
export function playLine(design: HoleDesign): Measured {
  return measureLine(roundCorners(design.line, 65));
}

function buildHole(
  design: HoleDesign,
  line: Measured,
  hand: ReturnType<typeof planeNoise>,
  grip: ReturnType<typeof planeNoise>,
): BuiltHole {
  const green = greenRing(design.green, line, grip);
  const fairways = design.fairways.map((stations) => fairwayRing(stations, line, hand));
  const bunkers = design.bunkers.map((bunker) => bunkerRing(bunker, line, green, grip));
  const tees = design.tees.map((tee, k) => ({
    name: TEE_NAMES[k]!,
    marker: line.at(Math.max(tee.at[0], 1e-6), tee.at[1]),
    ring: teeRing(tee, line, grip),
  }));
  return {
    design,
    line: design.line,
    tees,
    fairways,
    green,
    bunkers,
    positions: positions(design, line, green),
    rough: mownRough([...fairways, green, ...bunkers], hand),
  };
}

/** Middle (the one that counts where nobody says otherwise), front and back, each well inside the edge. */
function positions(
  design: HoleDesign,
  line: Measured,
  green: readonly Point[],
): { name: string; at: Point }[] {
  const centre = centroid(green);
  const [dx, dy] = line.direction(line.lengthM);
  const towards = (ahead: number, right: number): Point => {
    const norm = Math.hypot(ahead, right);
    const ray: Point = [(dx * ahead + dy * right) / norm, (dy * ahead - dx * right) / norm];
    const along = (reach: number): Point => [centre[0] + ray[0] * reach, centre[1] + ray[1] * reach];
    let reach = exitDistance(green, centre, ray) - 4;
    while (reach > 0 && distanceToRing(green, along(reach)) < 4) reach -= 0.25;
    return along(reach);
  };
  return [
    { name: 'middle', at: mixPoints(centre, line.at(line.lengthM - 1, 0), 0.5) },
    { name: 'front', at: towards(-1, design.frontSide) },
    { name: 'back', at: towards(1, design.backSide) },
  ];
}

/** Mown rough about 11 m wide round fairway, green and bunkers. */
function mownRough(rings: readonly (readonly Point[])[], hand: ReturnType<typeof planeNoise>): Point[][][] {
  const window = windowAround(GRID, rings.flat(), 20);
  const mask = new Uint8Array(window.columns * window.rows);
  for (const ring of rings) markRing(window, mask, ring);
  const field = distanceField(window, mask).map((d, i) => {
    const [x, y] = cellCentre(window, i);
    return 11 - d + 2.5 * hand(x, y);
  });
  return outlines(window, field, 200);
}

/** The open lane from the tees to the start of the fairway (or the green of a par 3), widening as it goes. */
function sightLine(line: Measured, design: HoleDesign): Point[] {
  const first = design.fairways[0]![0]!;
  const end = design.par === 3 ? line.lengthM : first[0];
  const stations = [0.5, 0.25 * end, 0.5 * end, 0.75 * end, end];
  const half = (s: number): number => 5 + (9 * s) / end;
  return [
    ...stations.map((s) => line.at(s, half(s))),
    ...stations.reverse().map((s) => line.at(s, -half(s))),
  ];
}
