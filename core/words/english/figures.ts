/** Numbers, plurals, lists and dates in English. */

import { figuresOf } from '../figures.ts';

export const figures = figuresOf('en');
