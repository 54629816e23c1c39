/** Numbers and their units stay together where a line breaks. */

import { expect, it } from 'vitest';
import { unbroken } from '../../core/card/unbroken.ts';

it('keeps a number and its unit together, and breaks elsewhere as before', () => {
  expect(unbroken('27.2 % instead of 26.7 %.')).toBe('27.2\u00a0% instead of 26.7\u00a0%.');
  expect(unbroken('168 yd left (8 of 10: 139 yd to 234 yd)')).toBe(
    '168\u00a0yd left (8 of 10: 139\u00a0yd to 234\u00a0yd)',
  );
  expect(unbroken('3 metres, 12 m, hole 7 more')).toBe('3 metres, 12\u00a0m, hole 7 more');
});
