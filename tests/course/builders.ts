/** Small course files for tests, built around one place that no course occupies. */

import { type CourseDocument, type ParseOptions, parseCourseDocument } from '../../core/course/parse.ts';
import type { Course, LonLat } from '../../core/course/model.ts';
import type { Fault } from '../../core/result.ts';

export interface TestFeature {
  type: 'Feature';
  properties: Record<string, unknown> | null;
  geometry: { type: string; coordinates: unknown } | null;
}

export const PLACE: LonLat = [4, 52];

/** Degrees from the place, in units of 1e-5 degree: about 0.7 m east, 1.1 m north. */
export function at(east: number, north: number): [number, number] {
  return [round(PLACE[0] + east * 1e-5), round(PLACE[1] + north * 1e-5)];
}

function round(degrees: number): number {
  return Number(degrees.toFixed(7));
}

/** Counter-clockwise closed square around `at(east, north)`. */
export function square(east: number, north: number, half: number): [number, number][] {
  return [
    at(east - half, north - half),
    at(east + half, north - half),
    at(east + half, north + half),
    at(east - half, north + half),
    at(east - half, north - half),
  ];
}

export function area(properties: Record<string, unknown>, ...rings: unknown[]): TestFeature {
  return { type: 'Feature', properties, geometry: { type: 'Polygon', coordinates: rings } };
}

export function point(properties: Record<string, unknown>, place: unknown): TestFeature {
  return { type: 'Feature', properties, geometry: { type: 'Point', coordinates: place } };
}

export function line(properties: Record<string, unknown>, ...places: unknown[]): TestFeature {
  return { type: 'Feature', properties, geometry: { type: 'LineString', coordinates: places } };
}

/** Line, tee and green of a hole 300 units long, its line `east` of the place: three features without fault. */
export function plainHole(ref: number, east: number): TestFeature[] {
  return [
    line({ golf: 'hole', ref: String(ref), par: '4', handicap: String(ref) }, at(east, 0), at(east, 300)),
    area({ golf: 'tee', ref: String(ref) }, square(east, 0, 8)),
    area({ golf: 'green', ref: String(ref) }, square(east, 300, 12)),
  ];
}

export function collection(...features: unknown[]) {
  return {
    type: 'FeatureCollection',
    holewright: { formatVersion: 1, courseName: 'Test course', invented: true },
    features,
  };
}

export function mustParse(json: unknown, options?: ParseOptions): Course {
  return mustParseDocument(json, options).course;
}

export function mustParseDocument(json: unknown, options?: ParseOptions): CourseDocument {
  const parsed = parseCourseDocument(json, options);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error, null, 2));
  return parsed.value;
}

export function mustRefuse(json: unknown): readonly Fault[] {
  const parsed = parseCourseDocument(json);
  if (parsed.ok) throw new Error('the file was read, though it should have been refused');
  return parsed.error;
}
