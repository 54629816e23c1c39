/** Questions to a polygon that turf answers: is a point inside, where is its middle. */

import { booleanPointInPolygon, centerOfMass, pointOnFeature } from '@turf/turf';
import type { Feature, Polygon, Position } from 'geojson';
import { turnedAbout } from './longitude.ts';
import type { Area, LonLat, Rings } from './model.ts';

/** The centre of area, or a place inside where that falls outside the shape. */
export function middleOf(rings: Rings): LonLat {
  const shape = turfPolygon(rings);
  const centre = centerOfMass(shape).geometry.coordinates;
  const inside = booleanPointInPolygon(centre, shape) ? centre : pointOnFeature(shape).geometry.coordinates;
  return [inside[0]!, inside[1]!];
}

/** True inside the outer ring and outside the polygon's holes; the edge counts as inside, whole turns of longitude for nothing. */
export function isInside(at: LonLat, area: Pick<Area, 'rings'>): boolean {
  const about = area.rings[0]?.[0]?.[0] ?? at[0];
  return booleanPointInPolygon([turnedAbout(at[0], about), at[1]], turfPolygon(area.rings));
}

/** The same rings, not copied, as turf takes them; turf's functions leave their arguments as they are. */
export function turfPolygon(rings: Rings): Feature<Polygon> {
  const coordinates = rings as unknown as Position[][];
  return { type: 'Feature', properties: {}, geometry: { type: 'Polygon', coordinates } };
}
