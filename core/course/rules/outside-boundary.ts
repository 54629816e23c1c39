/**
 * Things outside the drawn boundary, where ground counts as out of bounds. What is played must lie inside with all
 * its points; the rest (rough, woods, water, paths, trees) may reach over the edge, and is named where it lies
 * wholly outside.
 */

import { booleanIntersects } from '@turf/turf';
import type { Fault } from '../../result.ts';
import { whereArea } from '../feature-kind.ts';
import { isInside, turfPolygon } from '../polygon.ts';
import type { Area, AreaKind, LonLat } from '../model.ts';
import { type CourseRule, featureList, holeFault } from './rule.ts';

const PLAYED: ReadonlySet<AreaKind> = new Set(['tee', 'fairway', 'green', 'bunker']);
const NOT_JUDGED: ReadonlySet<AreaKind> = new Set(['boundary', 'out-of-bounds']);

export const outsideBoundary: CourseRule = (course) => {
  const boundaries = course.areas.filter(({ kind }) => kind === 'boundary');
  if (boundaries.length === 0) return [];
  const isOutside = (at: LonLat) => !boundaries.some((boundary) => isInside(at, boundary));
  const remedy = 'Move it inside, or redraw the boundary.';
  const faults: Fault[] = [];

  for (const area of course.areas) {
    if (NOT_JUDGED.has(area.kind)) continue;
    const played = PLAYED.has(area.kind);
    if (played ? !area.rings[0]!.some(isOutside) : !liesWhollyOutside(area, boundaries, isOutside)) continue;
    faults.push({
      severity: 'warning',
      code: 'outside-boundary',
      where: whereArea(area),
      message: `It ${played ? 'reaches' : 'lies wholly'} outside the drawn boundary. ${remedy}`,
      featureIndex: area.featureIndex,
    });
  }
  for (const hole of course.holes) {
    if (hole.line.some(isOutside)) {
      const message = `Its line runs outside the drawn boundary. ${remedy}`;
      faults.push(holeFault(hole, 'warning', 'outside-boundary', message));
    }
    for (const { name, at, featureIndex } of [...hole.tees, ...hole.positions]) {
      if (featureIndex === undefined || !isOutside(at)) continue;
      const message = `"${name}" (feature ${featureIndex}) lies outside the drawn boundary. ${remedy}`;
      faults.push(holeFault(hole, 'warning', 'outside-boundary', message, featureIndex));
    }
  }
  const trees = course.trees.filter(({ at }) => isOutside(at)).map(({ featureIndex }) => featureIndex);
  if (trees.length > 0) {
    faults.push({
      severity: 'warning',
      code: 'outside-boundary',
      where: `trees (${featureList(trees)})`,
      message: `${trees.length === 1 ? 'One tree lies' : `${trees.length} trees lie`} outside the drawn boundary. Leave them if they stand there; else move or remove them.`,
      featureIndex: trees[0]!,
    });
  }
  return faults;
};

function liesWhollyOutside(
  area: Area,
  boundaries: readonly Area[],
  isOutside: (at: LonLat) => boolean,
): boolean {
  if (!area.rings[0]!.every(isOutside)) return false;
  // no point inside, yet it may surround or cross the boundary
  const shape = turfPolygon(area.rings);
  return !boundaries.some((boundary) => booleanIntersects(shape, turfPolygon(boundary.rings)));
}
