/** Where handicap strokes fall, in words. */

import { expect, it } from 'vitest';
import { strokesReceived } from '../../core/round/handicap.ts';
import { strokesWords } from '../../core/round/strokes-words.ts';
import { english } from '../../core/words/english/english.ts';

it('says on which holes strokes are received or given', () => {
  const indexes = [7, 1, 5, 3];
  const numbers = [1, 2, 3, 4];
  const words = (handicap: number): string =>
    strokesWords(strokesReceived(handicap, indexes), numbers, english);
  expect(words(0)).toBe('No handicap strokes are received.');
  expect(words(1)).toBe('One handicap stroke is received: one on hole 2.');
  expect(words(3)).toBe('3 handicap strokes are received: one on holes 2, 3 and 4.');
  expect(words(4)).toBe('4 handicap strokes are received: 1 on every hole.');
  expect(words(6)).toBe('6 handicap strokes are received: 1 on every hole, one more on holes 2 and 4.');
  expect(words(-1)).toBe('One handicap stroke is given: one on hole 1.');
});
