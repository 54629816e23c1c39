import { describe, expect, it } from 'vitest';
import {
  checkGreenPicture,
  LARGEST_GREEN_SCALE,
  mayCarryGreenPicture,
} from '../../core/card/green-limits.ts';
import { english } from '../../core/words/english/english.ts';

// R&A and USGA, “Green-reading materials” (clarification of Rule 4.3a, in force since 2019).
describe('a picture of a green', () => {
  it('3/8 inch to 5 yards is 1:480', () => {
    expect((5 * 36) / (3 / 8)).toBe(LARGEST_GREEN_SCALE);
  });

  it.each([
    ['A6 at 1:480', { scale: 480, pageWidthMm: 105, pageHeightMm: 148 }, []],
    ['4 1/4 x 7 in, either way round', { scale: 600, pageWidthMm: 177.8, pageHeightMm: 107.95 }, []],
    ['too large a scale', { scale: 479, pageWidthMm: 105, pageHeightMm: 148 }, ['green-scale-too-large']],
    ['too large a page', { scale: 500, pageWidthMm: 110, pageHeightMm: 170 }, ['green-page-too-large']],
    ['too long a page', { scale: 500, pageWidthMm: 100, pageHeightMm: 180 }, ['green-page-too-large']],
    [
      'A4 with one green, too large both ways',
      { scale: 300, pageWidthMm: 210, pageHeightMm: 297 },
      ['green-scale-too-large', 'green-page-too-large'],
    ],
    ['a sheet of nine hole locations', { scale: 480, pageWidthMm: 210, pageHeightMm: 297, greens: 9 }, []],
    ['no scale at all', { scale: NaN, pageWidthMm: 105, pageHeightMm: 148 }, ['green-scale-too-large']],
  ])('%s', (_, picture, codes) => {
    const faults = checkGreenPicture(picture, english);
    expect(faults.map(({ code }) => code)).toEqual(codes);
    expect(mayCarryGreenPicture(picture)).toBe(codes.length === 0);
    for (const { message } of faults) expect(message).toMatch(/(Draw|Cut) it/);
  });
});
