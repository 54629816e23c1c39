/**
 * From a parsed GeoJSON geometry to the plain points and rings that the course model holds; without a jump where they cross
 * the 180° meridian (see longitude.ts).
 */

import { buffer } from '@turf/turf';
import { PATH_WIDTH_M } from './defaults.ts';
import { turnedAbout, turnedLine, turnedRings } from './longitude.ts';
import type { LonLat, Rings } from './model.ts';
import type { Geometry } from './schema.ts';

/** The polygons of an area, each with its holes; a line is widened to a path. Throws for a point. */
export function polygonsOf(geometry: Geometry): readonly Rings[] {
  switch (geometry.type) {
    case 'Polygon':
      return [turnedRings(geometry.coordinates.map((ring) => ring.map(lonLat)))];
    case 'MultiPolygon':
      return geometry.coordinates.map((polygon) => turnedRings(polygon.map((ring) => ring.map(lonLat))));
    case 'LineString':
      return widen(linePoints(geometry));
    case 'Point':
      throw new TypeError('a point has no polygons');
  }
}

/** A path drawn as a line, as the polygons that it covers. */
function widen(line: readonly LonLat[]): readonly Rings[] {
  const widened = buffer(
    { type: 'LineString', coordinates: line.map(([lon, lat]) => [lon, lat]) },
    PATH_WIDTH_M / 2,
    {
      units: 'meters',
      steps: 4,
    },
  )?.geometry;
  if (widened === undefined) return [];
  const polygons = widened.type === 'Polygon' ? [widened.coordinates] : widened.coordinates;
  const about = line[0]?.[0] ?? 0;
  return polygons.map((rings) =>
    rings.map((ring) => ring.map(([lon, lat]): LonLat => [turnedAbout(lon!, about), lat!])),
  );
}

/** The points of a line. Throws for any other geometry. */
export function linePoints(geometry: Geometry): readonly LonLat[] {
  if (geometry.type !== 'LineString') throw new TypeError(`a ${geometry.type} is no line`);
  return turnedLine(geometry.coordinates.map(lonLat));
}

/** The place of a point. Throws for any other geometry. */
export function pointOf(geometry: Geometry): LonLat {
  if (geometry.type !== 'Point') throw new TypeError(`a ${geometry.type} is no point`);
  return lonLat(geometry.coordinates);
}

function lonLat(position: readonly [number, number, ...unknown[]]): LonLat {
  return [position[0], position[1]];
}
