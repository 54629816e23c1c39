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
import { told, toldFault } from '../../words/told.ts';

const PLAYED: ReadonlySet<AreaKind> = new Set(['tee', 'fairway', 'green', 'bunker']);
const NOT_JUDGED: ReadonlySet<AreaKind> = new Set(['boundary', 'out-of-bounds']);

export const outsideBoundary: CourseRule = (course) => {
  const boundaries = course.areas.filter(({ kind }) => kind === 'boundary');
  if (boundaries.length === 0) return [];
  const isOutside = (at: LonLat) => !boundaries.some((boundary) => isInside(at, boundary));
  const remedy = told(({ courseFaults }) => courseFaults.moveInside);
  const faults: Fault[] = [];

  for (const area of course.areas) {
    if (NOT_JUDGED.has(area.kind)) continue;
    const played = PLAYED.has(area.kind);
    if (played ? !area.rings[0]!.some(isOutside) : !liesWhollyOutside(area, boundaries, isOutside)) continue;
    faults.push(
      toldFault({
        severity: 'warning',
        code: 'outside-boundary',
        where: whereArea(area),
        message: told(
          ({ courseFaults }) => (played ? courseFaults.reachesOutside : courseFaults.whollyOutside),
          { remedy },
        ),
        featureIndex: area.featureIndex,
      }),
    );
  }
  for (const hole of course.holes) {
    if (hole.line.some(isOutside)) {
      const message = told(({ courseFaults }) => courseFaults.lineOutside, { remedy });
      faults.push(holeFault(hole, 'warning', 'outside-boundary', message));
    }
    for (const { name, at, featureIndex } of [...hole.tees, ...hole.positions]) {
      if (featureIndex === undefined || !isOutside(at)) continue;
      const message = told(({ courseFaults }) => courseFaults.namedOutside, {
        name,
        feature: featureIndex,
        remedy,
      });
      faults.push(holeFault(hole, 'warning', 'outside-boundary', message, featureIndex));
    }
  }
  const trees = course.trees.filter(({ at }) => isOutside(at)).map(({ featureIndex }) => featureIndex);
  if (trees.length > 0) {
    faults.push(
      toldFault({
        severity: 'warning',
        code: 'outside-boundary',
        where: told(({ features }) => features.trees, { list: featureList(trees) }),
        message:
          trees.length === 1
            ? told(({ courseFaults }) => courseFaults.treeOutside)
            : told(({ courseFaults }) => courseFaults.treesOutside, { count: trees.length }),
        featureIndex: trees[0]!,
      }),
    );
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
