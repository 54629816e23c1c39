/** Writes maps/demo-course.geojson: `npx tsx tests/demo/course/write-course.ts`. */

import { writeFileSync } from 'node:fs';
import { buildCourse } from './build.ts';
import { courseText } from './collection.ts';

const target = new URL('../../../maps/demo-course.geojson', import.meta.url);
const text = courseText(buildCourse());
writeFileSync(target, text);
console.log(`${target.pathname}: ${Math.round(text.length / 1024)} KiB`);
