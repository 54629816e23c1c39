/** What lies at a place of the course, by the drawn areas alone: for places that a person puts on the map. */

import type { Course, LonLat } from '../course/model.ts';
import { isInside } from '../course/polygon.ts';
import { LIE_NAMES, type LieName, PAINTING_ORDER } from '../ground/lies.ts';

/** As the ground is painted: what comes later covers what comes before; outside every boundary is out of bounds. */
export function lieOfPlace(course: Pick<Course, 'areas'>, at: LonLat): LieName {
  const boundaries = course.areas.filter(({ kind }) => kind === 'boundary');
  if (boundaries.length > 0 && !boundaries.some((area) => isInside(at, area))) return 'outOfBounds';
  for (const [kind, lie] of [...PAINTING_ORDER].reverse())
    if (course.areas.some((area) => area.kind === kind && isInside(at, area))) return LIE_NAMES[lie]!;
  return 'rough';
}
