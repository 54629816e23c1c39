/** The baseline: the lie of a point by testing it against the course's polygons with general geometry tools. */

import { booleanPointInPolygon, polygon } from '@turf/turf';
import type { Course } from '../../core/course/model.ts';
import { Lie, PAINTING_ORDER } from '../../core/ground/lies.ts';
import type { PreparedHole } from '../../core/plan/prepare.ts';

/** A function from a point of the hole's frame to its lie code, as a plain script would find it. */
export function lieByPolygons(
  course: Course,
  { frame, hole }: PreparedHole,
): (x: number, y: number) => number {
  const layers = PAINTING_ORDER.toReversed().map(([kind, code]) => ({
    polygons: course.areas
      .filter((area) => area.kind === kind)
      .map((area) => ({
        shape: polygon(area.rings.map((ring) => ring.map(([lon, lat]) => [lon, lat]))),
        code: kind === 'green' && area.hole !== undefined && area.hole !== hole.number ? Lie.fairway : code,
      })),
  }));
  const boundaries = course.areas
    .filter((area) => area.kind === 'boundary')
    .map((area) => polygon(area.rings.map((ring) => ring.map(([lon, lat]) => [lon, lat]))));
  return (x, y) => {
    const [lon, lat] = frame.toLonLat({ x, y });
    const at = [lon, lat];
    if (boundaries.length > 0 && !boundaries.some((shape) => booleanPointInPolygon(at, shape)))
      return Lie.outOfBounds;
    for (const { polygons } of layers) {
      for (const { shape, code } of polygons) if (booleanPointInPolygon(at, shape)) return code;
    }
    return Lie.rough;
  };
}
