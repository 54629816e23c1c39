/** All words in English: the pattern for the other languages. */

import { bar } from './bar.ts';
import { day } from './day.ts';
import { golf } from './golf.ts';
import { help } from './help.ts';
import { map } from './map.ts';
import { plan } from './plan.ts';
import { round } from './round.ts';
import { sensitivity } from './sensitivity.ts';
import { trees } from './trees.ts';
import { figures } from './figures.ts';

const language = 'en' as const;

export const english = { language, figures, bar, day, golf, help, map, plan, round, sensitivity, trees };
