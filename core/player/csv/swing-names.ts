/** Words for swings as tables write them. */

import type { Swing } from '../model.ts';

const SWING_WORDS: readonly (readonly [RegExp, Swing])[] = [
  [/\b(?:full|voll|normal|100\s*%?)\b/iu, 'full'],
  [/three.?quarter|3\/4|¾|75\s*%/iu, 'three-quarter'],
  [/\bhalf\b|1\/2|½|halb|50\s*%/iu, 'half'],
  [/punch|knock.?down|low/iu, 'punch'],
  [/\bpart\b|pitch|chip|feel/iu, 'part'],
];

export function findSwing(written: string): Swing | undefined {
  return SWING_WORDS.find(([words]) => words.test(written))?.[1];
}
