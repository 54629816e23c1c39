import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { parseCourseDocumentText } from '../../core/course/parse.ts';

const text = readFileSync(new URL('./fixtures/version-1.geojson', import.meta.url), 'utf8');

it('opens a file of format version 1 for good', () => {
  const parsed = parseCourseDocumentText(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  const { course, document } = parsed.value;
  expect(document).toEqual(JSON.parse(text));
  expect(course.name).toBe('Two invented holes');
  expect(course.invented).toBe(true);
  expect(course.warnings).toEqual([]);
  expect(course.holes.map(({ number, par, strokeIndex }) => [number, par, strokeIndex])).toEqual([
    [1, 4, 1],
    [2, 3, 2],
  ]);
  expect(course.holes[0]!.tees).toEqual([{ name: 'Back', at: [4, 52.00002], featureIndex: 5 }]);
  expect(course.holes[0]!.positions).toEqual([{ name: 'Sunday', at: [4.00003, 52.00302], featureIndex: 6 }]);
  expect(course.holes[1]!.tees).toEqual([{ name: 'Start of the line', at: [4.002, 52.003] }]);
  expect(course.holes[1]!.positions[0]!.name).toBe('Middle of the green');
  expect(course.areas.map(({ kind }) => kind)).toEqual([
    'tee',
    'fairway',
    'green',
    'bunker',
    'tee',
    'green',
    'penalty-yellow',
    'penalty-red',
    'woods',
    'path',
    'rough',
    'long-rough',
    'out-of-bounds',
    'boundary',
  ]);
  expect(course.trees).toEqual([
    {
      at: [4.0015, 52.002],
      crownRadiusM: 3.5,
      canopy: { topM: 9, baseM: 2, densityPerM: 0.12 },
      assumed: ['canopy-density'],
      featureIndex: 13,
    },
  ]);
  expect(course.levels).toEqual([{ at: [4, 52], elevationM: 2.5 }]);
});
