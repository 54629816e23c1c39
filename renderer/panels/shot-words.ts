/** Shots, aims, troubles and sources of spread in words. */

import { levelIn } from '../../core/player/presets.ts';
import type { Hole } from '../../core/course/model.ts';
import type { LocalFrame } from '../../core/course/local-frame.ts';
import { aimSide } from '../../core/plan/aim-side.ts';
import type { Option, Spot, Trouble } from '../../core/plan/model.ts';
import type { SpreadSource } from '../../core/player/model.ts';
import type { Words } from '../../core/words/words.ts';
import { asideText, type Units } from '../state/measures.ts';

/** Name and manner: `7 iron`, `three-quarter`. A full swing has no manner: it goes without saying. */
export function shotWords(
  option: Option,
  { golf }: Words,
): { readonly name: string; readonly manner: string } {
  if (option.relief !== undefined) return { name: golf.relief[option.relief].name, manner: '' };
  const plain = option.clubKind === 'putter' || option.swing === 'full';
  return { name: option.club, manner: plain ? '' : golf.swings[option.swing] };
}

/** One phrase: `7 iron, three-quarter`. */
export function shotPhrase(option: Option, words: Words): string {
  const { name, manner } = shotWords(option, words);
  return manner === '' ? name : `${name}, ${manner}`;
}

/** What there is to say of a drop or a putt in place of an aim; null for a swing. */
export function noAimWords(option: Option, words: Words): string | null {
  if (option.relief !== undefined) return words.golf.relief[option.relief].note;
  return option.clubKind === 'putter' ? words.plan.atTheHole : null;
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
  words: Words,
  short = false,
): string {
  const line = hole.line.map((point) => frame.toSpot(point));
  const { of, rightM } = aimSide(frame.toSpot(option.aim.lonLat), option.carryM, from, pin, line);
  const atFlag = of === 'flag';
  const told = words.plan;
  const aside = asideText(rightM, units, words);
  if (aside === words.golf.aside.straight)
    return atFlag ? told.atTheFlag : short ? told.onTheLine : told.onTheHolesLine;
  if (atFlag) return short ? told.ofFlag({ aside }) : told.ofTheFlag({ aside });
  return short ? told.ofLine({ aside }) : told.ofTheHolesLine({ aside });
}

/** Below this a trouble is not worth its place in a narrow column. */
const WORTH_TELLING = 0.01;

/** Kinds of trouble that matter, worst chance first. */
export function troubleList(
  trouble: Trouble,
  short: boolean,
  { golf }: Words,
): readonly { readonly words: string; readonly chance: number }[] {
  const told: Readonly<Record<keyof Trouble, string>> = short ? golf.shortTroubles : golf.troubles;
  return (Object.keys(told) as (keyof Trouble)[])
    .map((kind) => ({ words: told[kind], chance: trouble[kind] }))
    .filter((entry) => entry.chance >= WORTH_TELLING)
    .sort((a, b) => b.chance - a.chance);
}

export function sourceWords(source: SpreadSource | null, words: Words): string | null {
  if (source === null) return null;
  const told = words.plan.source;
  switch (source.from) {
    case 'measured': {
      const measured = told.measured({ shots: source.shots });
      return source.poorShots > 0 ? told.poor({ measured, poor: source.poorShots }) : measured;
    }
    case 'stated':
      return told.stated;
    case 'preset':
      return told.preset({ level: levelIn(source.level, words) });
    case 'derived':
      return told.derived({ club: source.fromClub, swing: words.golf.swings[source.fromSwing] });
  }
}
