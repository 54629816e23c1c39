/** Union and difference of areas by turf, with what rounding leaves behind swept up. */

import { difference, featureCollection, union } from '@turf/turf';
import type { Feature, MultiPolygon, Polygon } from 'geojson';
import { areaM2 } from '../ellipsoid.ts';
import type { LonLat, Rings } from '../model.ts';
import { roundLonLat, samePosition } from '../positions.ts';

/** Rings smaller than this are dust of rounding to 8 decimals, square metres. */
const DUST_M2 = 0.01;

/** The ground that any of the polygons covers. Undefined where turf's sweep does not come to an end on them. */
export function unionOf(polygons: readonly Rings[]): readonly Rings[] | undefined {
  if (polygons.length < 2) return polygons;
  return attempt(() => union(featureCollection(polygons.map(asFeature))));
}

/** The ground of `polygons` that `taken` does not cover. Undefined where turf's sweep does not come to an end on them. */
export function differenceOf(
  polygons: readonly Rings[],
  taken: readonly Rings[],
): readonly Rings[] | undefined {
  return attempt(() => difference(featureCollection([asMulti(polygons), asMulti(taken)])));
}

function attempt(sweep: () => Feature<Polygon | MultiPolygon> | null): readonly Rings[] | undefined {
  let result: Feature<Polygon | MultiPolygon> | null;
  try {
    result = sweep();
  } catch {
    return undefined;
  }
  if (result === null) return [];
  const { geometry } = result;
  const polygons = geometry.type === 'Polygon' ? [geometry.coordinates] : geometry.coordinates;
  return polygons.flatMap((rings) => {
    const rounded = rings.map((ring) => roundRing(ring.map(([lon, lat]): LonLat => [lon!, lat!])));
    const [outer, ...holes] = rounded;
    if (outer === undefined || isDust(outer)) return [];
    return [[outer, ...holes.filter((hole) => !isDust(hole))]];
  });
}

/** Rounded to 8 decimals, positions that fell together joined; closed. */
export function roundRing(ring: readonly LonLat[]): LonLat[] {
  const rounded = ring.map(roundLonLat);
  return rounded.filter((point, index) => index === 0 || !samePosition(point, rounded[index - 1]!));
}

function isDust(ring: readonly LonLat[]): boolean {
  return ring.length < 4 || areaM2([ring]) < DUST_M2;
}

function asFeature(rings: Rings): Feature<Polygon> {
  return {
    type: 'Feature',
    properties: {},
    geometry: { type: 'Polygon', coordinates: asCoordinates(rings) },
  };
}

function asMulti(polygons: readonly Rings[]): Feature<MultiPolygon> {
  return {
    type: 'Feature',
    properties: {},
    geometry: { type: 'MultiPolygon', coordinates: polygons.map(asCoordinates) },
  };
}

function asCoordinates(rings: Rings): number[][][] {
  return rings.map((ring) => ring.map(([lon, lat]) => [lon, lat]));
}
