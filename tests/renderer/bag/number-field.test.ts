import fc from 'fast-check';
import { expect, it } from 'vitest';
import { figuresOf } from '../../../core/words/figures.ts';
import { readTyped } from '../../../renderer/bag/number-field.tsx';

it('what a number field shows in either language is read as the same number', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('en', 'de'),
      fc.integer({ min: -200_000, max: 200_000 }),
      fc.integer({ min: 0, max: 2 }),
      (language, hundredths, decimals) => {
        const value = Number((hundredths / 100).toFixed(decimals));
        // −0 is written as 0
        expect(readTyped(figuresOf(language).short(value, decimals))).toBeCloseTo(value, 9);
      },
    ),
  );
});

it.each(['', '.', '1,2,3', 'ten', '1e3', '12 m', '12 5'])('%j is no number', (text) => {
  expect(readTyped(text)).toBeNull();
});
