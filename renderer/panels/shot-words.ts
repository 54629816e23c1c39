/** Shots, aims, troubles and sources of spread in words. */

import type { Hole } from '../../core/course/model.ts';
import type { LocalFrame } from '../../core/course/local-frame.ts';
import type { LieName } from '../../core/ground/lies.ts';
import { aimSide } from '../../core/plan/aim-side.ts';
import type { Option, Spot, Trouble } from '../../core/plan/model.ts';
import type { SpreadSource, Swing } from '../../core/player/model.ts';
import { asideText, countText, type Units } from '../state/measures.ts';

export const SWING_WORDS: Readonly<Record<Swing, string>> = {
  full: 'full',
  'three-quarter': 'three-quarter',
  half: 'half',
  punch: 'punch',
  part: 'part swing',
};

type Relief = NonNullable<Option['relief']>;

const RELIEF_WORDS: Readonly<Record<Relief, { readonly name: string; readonly note: string }>> = {
  'unplayable-lateral': { name: 'Drop to the side', note: 'unplayable ball, one penalty stroke' },
  'unplayable-back-on-line': { name: 'Drop back on the line', note: 'unplayable ball, one penalty stroke' },
  'unplayable-outside-bunker': {
    name: 'Drop outside the bunker',
    note: 'unplayable ball, back on the line, two penalty strokes',
  },
  'penalty-replay': {
    name: 'Play from the tee again',
    note: 'stroke and distance, one penalty stroke',
  },
  'penalty-lateral': { name: 'Drop to the side', note: 'out of the penalty area, one penalty stroke' },
  'penalty-back-on-line': {
    name: 'Drop back on the line',
    note: 'out of the penalty area, one penalty stroke',
  },
};

/** Name and manner: `7 iron`, `three-quarter`. A full swing has no manner: it goes without saying. */
export function shotWords(option: Option): { readonly name: string; readonly manner: string } {
  if (option.relief !== undefined) return { name: RELIEF_WORDS[option.relief].name, manner: '' };
  const plain = option.clubKind === 'putter' || option.swing === 'full';
  return { name: option.club, manner: plain ? '' : SWING_WORDS[option.swing] };
}

/** One phrase: `7 iron, three-quarter`. */
export function shotPhrase(option: Option): string {
  const { name, manner } = shotWords(option);
  return manner === '' ? name : `${name}, ${manner}`;
}

/** What there is to say of a drop or a putt in place of an aim; null for a swing. */
export function noAimWords(option: Option): string | null {
  if (option.relief !== undefined) return RELIEF_WORDS[option.relief].note;
  return option.clubKind === 'putter' ? 'at the hole' : null;
}

/** What an aim is told against. */
export interface AimGround {
  readonly hole: Hole;
  readonly frame: LocalFrame;
  readonly from: Spot;
  readonly pin: Spot;
}

/** Where the aim lies: beside the flag for a shot at the green, else beside the hole's line of play. */
export function aimWords(
  option: Option,
  { hole, frame, from, pin }: AimGround,
  units: Units,
  short = false,
): string {
  const line = hole.line.map((point) => frame.toSpot(point));
  const { of, rightM } = aimSide(frame.toSpot(option.aim.lonLat), option.carryM, from, pin, line);
  const atFlag = of === 'flag';
  const words = asideText(rightM, units);
  if (words === 'straight') return atFlag ? 'at the flag' : short ? 'on the line' : 'on the hole’s line';
  if (atFlag) return `${words} of ${short ? '' : 'the '}flag`;
  return `${words} of ${short ? 'line' : 'the hole’s line'}`;
}

const TROUBLE_WORDS: Readonly<Record<keyof Trouble, string>> = {
  outOfBounds: 'out of bounds',
  penaltyRed: 'red penalty area',
  penaltyYellow: 'yellow penalty area',
  bunker: 'bunker',
  trees: 'trees',
  longRough: 'long rough',
};

const SHORT_TROUBLE_WORDS: Readonly<Record<keyof Trouble, string>> = {
  ...TROUBLE_WORDS,
  outOfBounds: 'out',
  penaltyRed: 'red area',
  penaltyYellow: 'yellow area',
};

/** Below this a trouble is not worth its place in a narrow column. */
const WORTH_TELLING = 0.01;

/** Kinds of trouble that matter, worst chance first. */
export function troubleList(
  trouble: Trouble,
  short: boolean,
): readonly { readonly words: string; readonly chance: number }[] {
  const words = short ? SHORT_TROUBLE_WORDS : TROUBLE_WORDS;
  return (Object.keys(words) as (keyof Trouble)[])
    .map((kind) => ({ words: words[kind], chance: trouble[kind] }))
    .filter((entry) => entry.chance >= WORTH_TELLING)
    .sort((a, b) => b.chance - a.chance);
}

export const LIE_WORDS: Readonly<Record<LieName, string>> = {
  rough: 'rough',
  fairway: 'fairway',
  green: 'green',
  bunker: 'bunker',
  tee: 'tee',
  longRough: 'long rough',
  woods: 'trees',
  path: 'path',
  penaltyYellow: 'yellow penalty area',
  penaltyRed: 'red penalty area',
  outOfBounds: 'out of bounds',
};

/** Where the ball lies, as part of a sentence: `on the tee`. */
export function lieWords(lie: LieName): string {
  switch (lie) {
    case 'tee':
    case 'fairway':
    case 'green':
    case 'path':
      return `on the ${LIE_WORDS[lie]}`;
    case 'woods':
      return 'among the trees';
    case 'outOfBounds':
      return 'out of bounds';
    case 'rough':
    case 'longRough':
      return `in ${LIE_WORDS[lie]}`;
    case 'bunker':
    case 'penaltyYellow':
    case 'penaltyRed':
      return `in a ${LIE_WORDS[lie]}`;
  }
}

export function sourceWords(source: SpreadSource | null): string | null {
  if (source === null) return null;
  switch (source.from) {
    case 'measured':
      return `your own ${countText(source.shots, 'measured shot', 'measured shots')}${
        source.poorShots > 0 ? `, ${source.poorShots} of them poor strikes` : ''
      }`;
    case 'stated':
      return 'the spread that you stated';
    case 'preset':
      return `a preset for ${source.level}, since no shots of yours are known`;
    case 'derived':
      return `worked out from your ${source.fromClub}, ${SWING_WORDS[source.fromSwing]}`;
  }
}
