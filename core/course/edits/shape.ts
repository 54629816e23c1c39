/** The geometry of a feature taken apart for an edit and put together again: closed rings, right-hand rule, 8 decimals. */

import { type Result, succeed } from '../../result.ts';
import { type DocumentFeature, type FeatureId, geometryOf } from '../document.ts';
import type { LonLat, Rings } from '../model.ts';
import { isPlace, mapPositions, movedTo, type Position, positionsOf, samePosition } from '../positions.ts';
import { isInside } from '../polygon.ts';
import { orderRings } from '../ring.ts';
import { findCrossing } from '../ring-crossing.ts';
import type { Geometry, GeometryType } from '../schema.ts';
import { type Refusal, refuseEdit } from './edit.ts';
import { sentenceTold, shapesTold, shapeTold } from './words.ts';
import { told, type Told } from '../../words/told.ts';

/** Most positions that one feature may grow to. */
export const MOST_FEATURE_VERTICES = 20_000;

/**
 * A corner of a feature. `part` counts the polygons of a MultiPolygon, `ring` the rings of a polygon (0 is the outer
 * one), `vertex` the positions from 0; the closing position of a ring is vertex 0 again.
 */
export interface VertexAddress {
  readonly feature: FeatureId;
  readonly part?: number;
  readonly ring?: number;
  readonly vertex: number;
}

/** The points of a line, or of a ring without its closing point. */
export interface Path {
  readonly points: readonly Position[];
  readonly closed: boolean;
}

/** Fewest points: a line joins 2, a ring encloses something from 3. */
export function fewestPoints(path: Path): number {
  return path.closed ? 3 : 2;
}

/** All lines and rings of a geometry in the order of the file, each ring open; a point gives one path of one point. */
export function pathsOf(geometry: Geometry): readonly (readonly Path[])[] {
  switch (geometry.type) {
    case 'Point':
      return [[{ points: [geometry.coordinates], closed: false }]];
    case 'LineString':
      return [[{ points: geometry.coordinates, closed: false }]];
    case 'Polygon':
      return [geometry.coordinates.map(openRing)];
    case 'MultiPolygon':
      return geometry.coordinates.map((part) => part.map(openRing));
  }
}

function openRing(ring: readonly Position[]): Path {
  const closedByPoint = ring.length > 1 && samePosition(ring[0]!, ring.at(-1)!);
  return { points: closedByPoint ? ring.slice(0, -1) : ring, closed: true };
}

/** A geometry like `like` of these paths; its unknown members are kept. */
export function geometryFrom(like: Geometry, parts: readonly (readonly Path[])[]): Geometry {
  const [first = []] = parts;
  switch (like.type) {
    case 'Point':
      return { ...like, coordinates: mutable(first[0]!.points)[0]! };
    case 'LineString':
      return { ...like, coordinates: mutable(first[0]!.points) };
    case 'Polygon':
      return { ...like, coordinates: first.map(({ points }) => closedRing(points)) };
    case 'MultiPolygon':
      return { ...like, coordinates: parts.map((part) => part.map(({ points }) => closedRing(points))) };
  }
}

function closedRing(points: readonly Position[]): Mutable[] {
  return mutable(points.length > 0 ? [...points, points[0]!] : points);
}

function mutable(points: readonly Position[]): Mutable[] {
  return points.map((point) => [...point] as Mutable);
}

type Mutable = [number, number, ...unknown[]];

/** Coordinates rounded as the file keeps them; polygons with closed rings, outer counter-clockwise, holes clockwise. */
export function tidyGeometry(geometry: Geometry): Geometry {
  const rounded = mapPositions(geometry, (position) => movedTo(position, [position[0], position[1]]));
  switch (rounded.type) {
    case 'Point':
    case 'LineString':
      return rounded;
    case 'Polygon':
      return { ...rounded, coordinates: ordered(rounded.coordinates) };
    case 'MultiPolygon':
      return { ...rounded, coordinates: rounded.coordinates.map(ordered) };
  }
}

function ordered(rings: Mutable[][]): Mutable[][] {
  // positions keep what stands behind longitude and latitude: the rings are turned round whole
  return orderRings(rings as unknown as Rings).rings as unknown as Mutable[][];
}

/** The polygons of a geometry as rings; empty for points and lines. */
export function polygonsOfGeometry(geometry: Geometry): readonly Rings[] {
  const polygons =
    geometry.type === 'Polygon'
      ? [geometry.coordinates]
      : geometry.type === 'MultiPolygon'
        ? geometry.coordinates
        : [];
  return polygons.map((rings) => rings.map((ring) => ring.map(([lon, lat]): LonLat => [lon, lat])));
}

/** The geometry of polygons that are not none. */
export function geometryOfPolygons(polygons: readonly Rings[]): Geometry {
  const coordinates = polygons.map((rings) => rings.map((ring) => mutable(ring)));
  return tidyGeometry(
    coordinates.length === 1
      ? { type: 'Polygon', coordinates: coordinates[0]! }
      : { type: 'MultiPolygon', coordinates },
  );
}

/** Whether the rings of any polygon cross or touch themselves or each other, or a hole lies outside its outer ring. */
export function crossesItself(geometry: Geometry): boolean {
  return polygonsOfGeometry(geometry).some(([outer, ...holes]) => {
    if (outer === undefined || findCrossing([outer, ...holes]) !== undefined) return true;
    // rings that do not cross lie inside or outside as a whole
    return holes.some((hole) => !isInside(hole[0]!, { rings: [outer] }));
  });
}

/** The feature's geometry where it is of one of these types; else a refusal that says so. */
export function requireGeometry<T extends GeometryType>(
  feature: DocumentFeature,
  types: readonly T[],
): Result<Extract<Geometry, { type: T }>, Refusal> {
  const geometry = geometryOf(feature);
  if (geometry === undefined) {
    return refuseEdit(
      'wrong-geometry',
      told(({ courseEdits }) => courseEdits.noShape, { what: sentenceTold(feature) }),
      feature.id,
    );
  }
  if (!(types as readonly GeometryType[]).includes(geometry.type)) {
    return refuseEdit(
      'wrong-geometry',
      told(({ courseEdits }) => courseEdits.worksOn, {
        what: sentenceTold(feature),
        drawn: shapeTold(geometry.type),
        types: shapesTold(types),
      }),
      feature.id,
    );
  }
  return succeed(geometry as Extract<Geometry, { type: T }>);
}

/** Refuses a new geometry that is no place on earth, has too many points, or encloses nothing. */
export function checkGeometry(
  geometry: Geometry,
  what: Told,
  feature?: FeatureId,
): Result<Geometry, Refusal> {
  const positions = positionsOf(geometry);
  if (positions.length > MOST_FEATURE_VERTICES) {
    return refuseEdit(
      'too-many-vertices',
      told(({ courseEdits }) => courseEdits.manyCorners, {
        what,
        count: positions.length,
        most: MOST_FEATURE_VERTICES,
      }),
      feature,
    );
  }
  if (!positions.every(isPlace)) {
    return refuseEdit(
      'not-a-place',
      told(({ courseEdits }) => courseEdits.leavesMap, { what }),
      feature,
    );
  }
  for (const path of pathsOf(geometry).flat()) {
    if (geometry.type === 'Point') continue;
    const different = new Set(path.points.map(([lon, lat]) => `${lon} ${lat}`)).size;
    if (different < fewestPoints(path)) {
      return refuseEdit(
        'too-few-vertices',
        path.closed
          ? told(({ courseEdits }) => courseEdits.enclosesNothing, { what })
          : told(({ courseEdits }) => courseEdits.noLength, { what }),
        feature,
      );
    }
  }
  return succeed(geometry);
}
