/** Numbers, plurals, lists and dates in German. */

import { figuresOf } from '../figures.ts';

export const figures = figuresOf('de');
