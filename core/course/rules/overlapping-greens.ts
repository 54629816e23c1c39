/** Greens of different holes do not overlap; one green for two holes is drawn once, without ref. */

import { bbox, featureCollection, intersect } from '@turf/turf';
import type { Fault } from '../../result.ts';
import { areaM2 } from '../ellipsoid.ts';
import { whereArea } from '../feature-kind.ts';
import { turfPolygon } from '../polygon.ts';
import { greenOf } from '../hole-features.ts';
import type { Area, LonLat } from '../model.ts';
import { findCrossing } from '../ring-crossing.ts';
import type { CourseRule } from './rule.ts';
import { told, toldFault } from '../../words/told.ts';

/** Outlines drawn along one edge overlap by slivers; those are let pass. */
const SLIVER_M2 = 1;

export const overlappingGreens: CourseRule = (course) => {
  const holeOf = new Map<Area, number>();
  for (const hole of course.holes) {
    const green = greenOf(course, hole);
    if (green !== undefined && !holeOf.has(green)) holeOf.set(green, hole.number);
  }
  const greens = course.areas
    // an outline that crosses itself has its own fault and no area to compare
    .filter(({ kind, rings }) => kind === 'green' && findCrossing(rings) === undefined)
    .map((area) => ({ area, hole: area.hole ?? holeOf.get(area), shape: turfPolygon(area.rings) }))
    .map((green) => ({ ...green, box: bbox(green.shape) }));

  const faults: Fault[] = [];
  greens.forEach((a, i) => {
    for (const b of greens.slice(i + 1)) {
      if (a.hole === undefined || b.hole === undefined || a.hole === b.hole) continue;
      if (a.box[2] < b.box[0] || b.box[2] < a.box[0] || a.box[3] < b.box[1] || b.box[3] < a.box[1]) continue;
      const shared = sharedAreaM2(a, b);
      if (shared <= SLIVER_M2) continue;
      faults.push(
        toldFault({
          severity: 'warning',
          code: 'overlapping-greens',
          where: whereArea(b.area),
          message: told(({ courseFaults }) => courseFaults.greensOverlap, {
            area: Math.round(shared),
            hole: a.hole,
            feature: a.area.featureIndex,
          }),
          featureIndex: b.area.featureIndex,
        }),
      );
    }
  });
  return faults;
};

type Shape = ReturnType<typeof turfPolygon>;

function sharedAreaM2(a: { readonly shape: Shape }, b: { readonly shape: Shape }): number {
  const shared = intersect(featureCollection([a.shape, b.shape]))?.geometry;
  if (shared === undefined) return 0;
  const polygons = shared.type === 'Polygon' ? [shared.coordinates] : shared.coordinates;
  return polygons
    .map((rings) => areaM2(rings.map((ring) => ring.map(([lon, lat]): LonLat => [lon!, lat!]))))
    .reduce((sum, area) => sum + area, 0);
}
