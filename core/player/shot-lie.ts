/** The lie of a recorded shot: what a file or a person writes, as one of the lies the program knows. */

import type { LieName } from '../ground/lies.ts';

/** `good`: tee, mat or fairway, the ground that a club is measured from. */
export type ShotLie = 'good' | Extract<LieName, 'rough' | 'longRough' | 'bunker' | 'woods'> | 'penalty';

/** English, German, French and Spanish, as devices and notes write them; letters and digits only, small. */
const WORDS: Readonly<Record<ShotLie, readonly string[]>> = {
  good: [
    ...['range', 'mat', 'tee', 'teebox', 'fairway', 'grass', 'path', 'green', 'fringe', 'collar', 'good'],
    ...['abschlag', 'matte', 'semifairway', 'depart', 'tapis', 'calle', 'alfombra', 'salida'],
  ],
  rough: [
    ...['rough', 'lightrough', 'semirough', 'firstcut', 'shortrough', 'normalrough', 'mediumrough'],
    ...['leichtesrough', 'halbrough', 'roughleger', 'roughcorto'],
  ],
  longRough: [
    ...['longrough', 'deeprough', 'heavyrough', 'thickrough', 'tiefesrough', 'hohesrough', 'hautrough'],
    ...['roughalto', 'secondcut'],
  ],
  bunker: [
    ...['bunker', 'sand', 'sandbunker', 'fairwaybunker', 'greensidebunker', 'greenbunker', 'sable', 'arena'],
  ],
  woods: ['woods', 'wood', 'trees', 'undertrees', 'forest', 'wald', 'baeume', 'bäume', 'bois', 'bosque'],
  penalty: [
    ...['penalty', 'penaltyarea', 'penaltyred', 'penaltyyellow', 'water', 'hazard', 'waterhazard'],
    ...['redpenaltyarea', 'yellowpenaltyarea'],
  ],
};

const LIES = new Map<string, ShotLie>(
  (Object.keys(WORDS) as ShotLie[]).flatMap((lie) => WORDS[lie].map((word) => [word, lie] as const)),
);

/** Null where the words say nothing that is known. No words at all are taken as a good lie. */
export function readLie(written: string | undefined): ShotLie | null {
  const plain = (written ?? '').toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');
  return plain === '' ? 'good' : (LIES.get(plain) ?? null);
}
