/**
 * Names what a hole's plan depends on, so that an edit elsewhere on the course leaves the plan as it is: the hole
 * itself and every feature that can reach its raster (core/ground/rasterise.ts). When in doubt a feature counts.
 */

import { KNOT_SPACING_M, LEVEL_REACH_M } from '../../core/ground/elevation.ts';
import { isOwnFairway } from '../../core/ground/own-fairway.ts';
import { GROUND_MARGIN_M } from '../../core/ground/hole-window.ts';
import { metresPerDegree } from '../../core/course/degree-lengths.ts';
import type { Area, Course, GroundLevel, Hole, LonLat, SlopeMark, Tree } from '../../core/course/model.ts';

/** Room for the difference between degrees reckoned flat here and the raster's tangent plane. */
const SLACK_M = 10;
/** Heights are worked out on knots that stand so far outside the raster at the most. */
const KNOTS_BEYOND_M = 2 * KNOT_SPACING_M;
/** Where each square of this side holds a level, none farther off bears on anything: its diagonal is below `LEVEL_REACH_M`. */
const LEVEL_SQUARE_M = 80;

interface Extent {
  readonly west: number;
  readonly south: number;
  readonly east: number;
  readonly north: number;
}

const known = new WeakMap<Course, Map<number, string>>();

/** The same for two courses whose hole of this number is planned alike; empty where the course has no such hole. */
export function holeContent(course: Course, number: number): string {
  let contents = known.get(course);
  if (contents === undefined) {
    contents = new Map();
    known.set(course, contents);
  }
  const before = contents.get(number);
  if (before !== undefined) return before;
  const hole = course.holes.find((one) => one.number === number);
  const content = hole === undefined ? '' : contentOf(course, hole);
  contents.set(number, content);
  return content;
}

function contentOf(course: Course, hole: Hole): string {
  const own = extentOf([
    ...hole.line,
    ...hole.tees.map(({ at }) => at),
    ...hole.positions.map(({ at }) => at),
  ]);
  const ground = widened(own, GROUND_MARGIN_M + SLACK_M);
  const digest = new Digest();
  digest.add(holeText(hole));
  digest.add(course.sand ?? '');
  for (const area of course.areas) {
    // a hole's own green is played to wherever it lies, and out of bounds begins outside every boundary
    const always = area.kind === 'boundary' || (area.kind === 'green' && area.hole === hole.number);
    if (!always && !overlap(areaExtent(area), ground)) continue;
    digest.add(areaDigest(area));
    // by the lines of other holes, wherever they run
    if (area.kind === 'fairway') digest.add(isOwnFairway(course, hole.number, area) ? 'own' : 'other');
  }
  for (const tree of course.trees) {
    const extent = widened(extentOf([tree.at]), tree.crownRadiusM);
    if (overlap(extent, ground)) digest.add(treeText(tree));
  }
  for (const level of levelsFor(course.levels, own)) digest.add(levelText(level));
  // as a hole's own green, its arrows may lie anywhere
  const greens = course.areas.filter(({ kind, hole: of }) => kind === 'green' && of === hole.number);
  for (const mark of course.slopeMarks ?? []) {
    const at = extentOf([mark.at]);
    if (overlap(at, ground) || greens.some((green) => overlap(at, areaExtent(green))))
      digest.add(markText(mark));
  }
  return digest.text();
}

/** The levels that can bear on the hole; all of them where part of it lies far from any. */
function levelsFor(levels: readonly GroundLevel[], own: Extent): readonly GroundLevel[] {
  const reach = widened(own, GROUND_MARGIN_M + SLACK_M + KNOTS_BEYOND_M + LEVEL_REACH_M);
  const near = levels.filter(({ at }) => overlap(extentOf([at]), reach));
  return near.length === levels.length ||
    isCovered(widened(own, GROUND_MARGIN_M + SLACK_M + KNOTS_BEYOND_M), near)
    ? near
    : levels;
}

function isCovered(extent: Extent, levels: readonly GroundLevel[]): boolean {
  const { eastM, northM } = metresPerDegree((extent.south + extent.north) / 2);
  const columns = Math.max(1, Math.ceil(((extent.east - extent.west) * eastM) / LEVEL_SQUARE_M));
  const rows = Math.max(1, Math.ceil(((extent.north - extent.south) * northM) / LEVEL_SQUARE_M));
  const held = new Set<number>();
  for (const { at } of levels) {
    const column = Math.floor(((at[0] - extent.west) / (extent.east - extent.west)) * columns);
    const row = Math.floor(((at[1] - extent.south) / (extent.north - extent.south)) * rows);
    if (column >= 0 && column < columns && row >= 0 && row < rows) held.add(row * columns + column);
  }
  return held.size === columns * rows;
}

function extentOf(places: readonly LonLat[]): Extent {
  let west = Infinity;
  let south = Infinity;
  let east = -Infinity;
  let north = -Infinity;
  for (const [lon, lat] of places) {
    west = Math.min(west, lon);
    east = Math.max(east, lon);
    south = Math.min(south, lat);
    north = Math.max(north, lat);
  }
  return { west, south, east, north };
}

function widened({ west, south, east, north }: Extent, metres: number): Extent {
  const { eastM, northM } = metresPerDegree((south + north) / 2);
  const lon = metres / eastM;
  const lat = metres / northM;
  return { west: west - lon, south: south - lat, east: east + lon, north: north + lat };
}

function overlap(a: Extent, b: Extent): boolean {
  return a.west <= b.east && a.east >= b.west && a.south <= b.north && a.north >= b.south;
}

const extents = new WeakMap<Area, Extent>();

function areaExtent(area: Area): Extent {
  const before = extents.get(area);
  if (before !== undefined) return before;
  const extent = extentOf(area.rings[0] ?? []);
  extents.set(area, extent);
  return extent;
}

const digests = new WeakMap<Area, string>();

function areaDigest(area: Area): string {
  const before = digests.get(area);
  if (before !== undefined) return before;
  const digest = new Digest();
  digest.add(`${area.kind} ${area.hole ?? ''} ${JSON.stringify([area.canopy ?? null, area.lipM ?? null])}`);
  digest.add(JSON.stringify(area.rings));
  const text = digest.text();
  digests.set(area, text);
  return text;
}

/** Without the place in the file's list, which says nothing of the ground; a name shows in the plan's words. */
function holeText({ tees, positions, number, name, par, strokeIndex, line }: Hole): string {
  const marks = [...tees, ...positions].map((mark) => [mark.name, mark.at]);
  return JSON.stringify([number, name, par, strokeIndex, line, marks, tees.length]);
}

function treeText({ at, crownRadiusM, canopy }: Tree): string {
  return JSON.stringify([at, crownRadiusM, canopy]);
}

function levelText({ at, elevationM }: GroundLevel): string {
  return JSON.stringify([at, elevationM]);
}

function markText({ at, slopeShare, downhill }: SlopeMark): string {
  return JSON.stringify(['slope', at, slopeShare, downhill]);
}

/** Two FNV-1a hashes of 32 bits from different starts (Fowler, Noll, Vo 1991): 64 bits, so that no two holes meet by chance. */
class Digest {
  private a = 0x811c9dc5;
  private b = 0x1b873593;

  add(text: string): void {
    for (let i = 0; i <= text.length; i++) {
      // the end of a text counts as a character of its own
      const code = i === text.length ? 0x10ffff : text.charCodeAt(i);
      this.a = Math.imul(this.a ^ code, 0x01000193);
      this.b = Math.imul(this.b ^ code, 0x01000193) ^ (this.b >>> 15);
    }
  }

  text(): string {
    return (this.a >>> 0).toString(16).padStart(8, '0') + (this.b >>> 0).toString(16).padStart(8, '0');
  }
}
