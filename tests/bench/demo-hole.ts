/** One demo hole, prepared for the benchmarks. */

import { readFileSync } from 'node:fs';
import { parseCourseText } from '../../core/course/parse.ts';
import type { Course } from '../../core/course/model.ts';
import { parsePlayerText } from '../../core/player/parse.ts';
import { prepareHole, type PreparedHole } from '../../core/plan/prepare.ts';

export interface DemoHole {
  readonly course: Course;
  readonly prepared: PreparedHole;
}

export function demoHole(holeNumber: number): DemoHole {
  const read = (name: string): string => readFileSync(new URL(`../../maps/${name}`, import.meta.url), 'utf8');
  const course = parseCourseText(read('demo-course.geojson'));
  const player = parsePlayerText(read('demo-player.json'));
  if (!course.ok || !player.ok) throw new Error('The demo files do not parse.');
  const prepared = prepareHole({ course: course.value, player: player.value, holeNumber, seed: 'bench' });
  if (!prepared.ok) throw new Error(prepared.error.message);
  return { course: course.value, prepared: prepared.value };
}
