/** Where handicap strokes fall, in one sentence. */

import type { Words } from '../words/words.ts';

/** `received` per hole, all of one sign (negative: given); `numbers` are the holes' numbers in the same order. */
export function strokesWords(received: readonly number[], numbers: readonly number[], words: Words): string {
  const told = words.round.strokes;
  const sizes = received.map(Math.abs);
  const total = sizes.reduce((sum, size) => sum + size, 0);
  if (total === 0) return told.none;
  const everywhere = Math.min(...sizes);
  const more = numbers.filter((_, i) => sizes[i]! > everywhere);
  const holes = { holes: more.length, list: words.figures.list(more.map(String)) };
  const where = [
    ...(everywhere === 0 ? [] : [told.everywhere({ count: everywhere })]),
    ...(more.length === 0 ? [] : [everywhere === 0 ? told.one(holes) : told.oneMore(holes)]),
  ].join(', ');
  const isGiven = received.some((strokes) => strokes < 0);
  return isGiven ? told.given({ count: total, where }) : told.received({ count: total, where });
}
