/** Positions of GeoJSON geometries: [longitude, latitude, perhaps more], read and changed without losing the rest. */

import type { LonLat } from './model.ts';
import type { Geometry } from './schema.ts';

/** [longitude, latitude] in degrees and whatever the file writes after them (RFC 7946, 3.1.1: a height). */
export type Position = readonly [number, number, ...unknown[]];

/** Decimals of a degree that a file keeps: 1e-8 degree is 1.1 mm. */
const STEPS_PER_DEGREE = 1e8;

/** A coordinate as the file keeps it. Doing it twice changes nothing; numbers that are no coordinate stay as they are. */
export function roundCoordinate(degrees: number): number {
  if (!(Math.abs(degrees) < 1e6)) return degrees;
  const rounded = Math.round(degrees * STEPS_PER_DEGREE) / STEPS_PER_DEGREE;
  return rounded === 0 ? 0 : rounded;
}

export function roundLonLat([lon, lat]: LonLat): LonLat {
  return [roundCoordinate(lon), roundCoordinate(lat)];
}

/** Whether two numbers are a place: finite, longitude within 180 and latitude within 90 degrees. */
export function isPlace([lon, lat]: readonly [number, number, ...unknown[]]): boolean {
  return Math.abs(lon) <= 180 && Math.abs(lat) <= 90;
}

export function samePosition(a: Position, b: Position): boolean {
  return a[0] === b[0] && a[1] === b[1];
}

/** The same position moved to `at`, rounded; what stands after longitude and latitude is kept. */
export function movedTo(position: Position, at: LonLat): Position {
  const [lon, lat] = roundLonLat(at);
  return [lon, lat, ...position.slice(2)];
}

/** Every coordinate array of a geometry, or of a collection of them, rounded, bounding boxes dropped; the rest is kept. */
export function roundGeometry(geometry: unknown): unknown {
  if (typeof geometry !== 'object' || geometry === null || Array.isArray(geometry)) return geometry;
  return Object.fromEntries(
    Object.entries(geometry)
      .filter(([key]) => key !== 'bbox')
      .map(([key, value]: [string, unknown]) => {
        if (key === 'coordinates') return [key, roundDeep(value)];
        if (key === 'geometries' && Array.isArray(value)) return [key, value.map(roundGeometry)];
        return [key, value];
      }),
  );
}

function roundDeep(value: unknown): unknown {
  if (typeof value === 'number') return roundCoordinate(value);
  return Array.isArray(value) ? value.map(roundDeep) : value;
}

/** The geometry with each position sent through `move`; other members are kept. */
export function mapPositions(geometry: Geometry, move: (position: Position) => Position): Geometry {
  const ring = (points: readonly Position[]) => points.map((point) => [...move(point)] as Mutable);
  switch (geometry.type) {
    case 'Point':
      return { ...geometry, coordinates: [...move(geometry.coordinates)] as Mutable };
    case 'LineString':
      return { ...geometry, coordinates: ring(geometry.coordinates) };
    case 'Polygon':
      return { ...geometry, coordinates: geometry.coordinates.map(ring) };
    case 'MultiPolygon':
      return { ...geometry, coordinates: geometry.coordinates.map((part) => part.map(ring)) };
  }
}

/** All positions of a geometry, closing points of rings included. */
export function positionsOf(geometry: Geometry): readonly Position[] {
  switch (geometry.type) {
    case 'Point':
      return [geometry.coordinates];
    case 'LineString':
      return geometry.coordinates;
    case 'Polygon':
      return geometry.coordinates.flat();
    case 'MultiPolygon':
      return geometry.coordinates.flat(2);
  }
}

type Mutable = [number, number, ...unknown[]];
