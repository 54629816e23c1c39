/** The middle of a green: its centre of area, or a place inside where that falls outside the shape. */

import { booleanPointInPolygon, centerOfMass, pointOnFeature, polygon } from '@turf/turf';
import type { Area, LonLat, Rings } from './model.ts';

export function middleOf(rings: Rings): LonLat {
  const shape = turfPolygon(rings);
  const centre = centerOfMass(shape).geometry.coordinates;
  const inside = booleanPointInPolygon(centre, shape) ? centre : pointOnFeature(shape).geometry.coordinates;
  return [inside[0]!, inside[1]!];
}

/** True inside the outer ring and outside the polygon's holes; the edge counts as inside. */
export function isInside(at: LonLat, area: Pick<Area, 'rings'>): boolean {
  return booleanPointInPolygon([at[0], at[1]], turfPolygon(area.rings));
}

export function turfPolygon(rings: Rings) {
  return polygon(rings.map((ring) => ring.map(([lon, lat]) => [lon, lat])));
}
