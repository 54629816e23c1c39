/** The built course as a GeoJSON FeatureCollection (RFC 7946), one feature to a line. */

import type { Geometry, Position } from 'geojson';
import { makeLocalFrame } from '../../../core/course/local-frame.ts';
import type { BuiltCourse } from './build.ts';
import type { Point } from './curves.ts';
import { signedArea } from './polygons.ts';

/** The clubhouse: open ocean, hundreds of kilometres from any land, so that the place matches no course. */
export const ORIGIN = [-38, 44] as const;

export const COURSE_NAME = 'Ambrevane';

const NOTES =
  'Invented place, invented course. The coordinates lie in open ocean on purpose: nothing here depicts a real course. ' +
  'Drawn by tests/demo/course; change the design there and run `npx tsx tests/demo/course/write-course.ts`. ' +
  'Levels are metres above an invented datum.';

interface Feature {
  readonly type: 'Feature';
  readonly properties: Readonly<Record<string, string | number>>;
  readonly geometry: Geometry;
}

/** Text of the course file. */
export function courseText(course: BuiltCourse): string {
  const member = { formatVersion: 1, courseName: COURSE_NAME, invented: true, notes: NOTES };
  const lines = courseFeatures(course).map((feature) => JSON.stringify(feature));
  return `{"type":"FeatureCollection","holewright":${JSON.stringify(member)},"features":[\n${lines.join(',\n')}\n]}\n`;
}

export function courseFeatures(course: BuiltCourse): Feature[] {
  const frame = makeLocalFrame(ORIGIN);
  const place = ([x, y]: Point): Position =>
    frame.toLonLat({ x, y }).map((degrees) => Number(degrees.toFixed(7)));
  const closed = (ring: readonly Point[], counterClockwise: boolean): Position[] => {
    const turned = signedArea(ring) > 0 === counterClockwise ? [...ring] : [...ring].reverse();
    const placed = turned.map(place);
    return [...placed, placed[0]!];
  };
  const area = (properties: Feature['properties'], rings: readonly (readonly Point[])[]): Feature => ({
    type: 'Feature',
    properties,
    geometry: { type: 'Polygon', coordinates: rings.map((ring, k) => closed(ring, k === 0)) },
  });
  const point = (properties: Feature['properties'], at: Point): Feature => ({
    type: 'Feature',
    properties,
    geometry: { type: 'Point', coordinates: place(at) },
  });

  const features: Feature[] = [
    area({ holewright_kind: 'boundary', name: 'Edge of the property' }, [course.boundary]),
  ];
  for (const hole of course.holes) {
    const { design } = hole;
    const ref = String(design.number);
    features.push({
      type: 'Feature',
      properties: {
        golf: 'hole',
        ref,
        par: String(design.par),
        handicap: String(design.strokeIndex),
        name: design.name,
      },
      geometry: { type: 'LineString', coordinates: hole.line.map(place) },
    });
    for (const { name, marker } of hole.tees)
      features.push(point({ holewright_kind: 'tee_marker', ref, name }, marker));
    for (const { name, at } of hole.positions)
      features.push(point({ holewright_kind: 'hole_position', ref, name }, at));
    for (const { name, ring } of hole.tees) features.push(area({ golf: 'tee', ref, name }, [ring]));
    for (const rings of hole.rough) features.push(area({ golf: 'rough', ref }, rings));
    for (const ring of hole.fairways) features.push(area({ golf: 'fairway', ref }, [ring]));
    features.push(area({ golf: 'green', ref }, [hole.green]));
    for (const ring of hole.bunkers) features.push(area({ golf: 'bunker', ref }, [ring]));
  }
  for (const rings of course.longRough) features.push(area({ holewright_kind: 'long_rough' }, rings));
  for (const { design, rings } of course.woods) {
    features.push(
      area(
        {
          natural: 'wood',
          name: design.name,
          height: design.topM,
          canopy_base_m: design.baseM,
          canopy_density_per_m: design.densityPerM,
        },
        rings,
      ),
    );
  }
  for (const { name, red, ring } of course.water) {
    features.push(area({ golf: red ? 'lateral_water_hazard' : 'water_hazard', name }, [ring]));
  }
  for (const ring of course.paths) features.push(area({ golf: 'cartpath' }, [ring]));
  for (const { name, ring } of course.outOfBounds)
    features.push(area({ holewright_kind: 'out_of_bounds', name }, [ring]));
  for (const tree of course.trees) {
    features.push(
      point(
        {
          natural: 'tree',
          height: rounded(tree.heightM, 1),
          diameter_crown: rounded(tree.crownM, 1),
          canopy_base_m: rounded(tree.baseM, 1),
          canopy_density_per_m: rounded(tree.densityPerM, 2),
        },
        tree.at,
      ),
    );
  }
  for (const { at, elevationM } of course.levels) {
    features.push(point({ holewright_kind: 'ground_level', ele: rounded(elevationM, 2) }, at));
  }
  return features;
}

function rounded(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}
