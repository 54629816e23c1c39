/** All words in German. */

import type { Words } from '../words.ts';
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

export const german: Words = {
  language: 'de',
  figures,
  bar,
  day,
  golf,
  help,
  map,
  plan,
  round,
  sensitivity,
  trees,
};
