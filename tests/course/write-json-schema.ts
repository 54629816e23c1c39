/** Writes maps/schemas/course.schema.json anew: `npx tsx tests/course/write-json-schema.ts`. */

import { writeFileSync } from 'node:fs';
import { courseJsonSchemaText } from './json-schema.ts';

writeFileSync(new URL('../../maps/schemas/course.schema.json', import.meta.url), courseJsonSchemaText());
