/** The distance ladder and the lean of each club in sentences, for those who do not see the pictures. */

import type { Gap, Rung } from './gaps.ts';
import type { ShotSpread } from './model.ts';
import type { Estimate } from './posterior/intervals.ts';
import type { Words } from '../words/words.ts';

const YARD_M = 0.9144;
const DEGREE = Math.PI / 180;

type Units = 'yards' | 'metres';

function inUnits(metres: number, units: Units): number {
  return Math.round(metres / (units === 'yards' ? YARD_M : 1));
}

/** "Driver carries 188 yards on average, half of its solid strikes between 180 and 196." */
export function rungWords(rung: Rung, units: Units, { spread, figures }: Words): string {
  const length = (metres: number): string => figures.whole(inUnits(metres, units));
  const { doubt } = rung;
  return spread.rung({
    club: rung.club,
    carry: length(rung.carryM),
    low: length(rung.middleHalf.low),
    high: length(rung.middleHalf.high),
    unit: spread.unit[units],
    doubt: doubt === undefined ? '' : spread.rungDoubt({ low: length(doubt.low), high: length(doubt.high) }),
  });
}

/** What a gap means for play; null where there is nothing to say of it. */
export function gapWords(gap: Gap, units: Units, { spread }: Words): string | null {
  if (gap.kind === 'even') return null;
  const ends = { longer: gap.longer.club, shorter: gap.shorter.club };
  const apart = `${inUnits(Math.abs(gap.gapM), units)} ${spread.unit[units]}`;
  switch (gap.kind) {
    case 'wide':
      return spread.gaps.wide({ ...ends, apart });
    case 'narrow':
      return spread.gaps.narrow({ ...ends, apart, times: Math.round(100 * gap.overlap) });
    case 'turned':
      return spread.gaps.turned(ends);
  }
}

/** "7-iron leans 1.2° to the right; nine times in ten the lean lies between 0.3° left and 2.1° right." */
export function leanWords(law: ShotSpread, lean: Estimate | null, words: Words): string {
  const { spread, figures } = words;
  const club = clubInSentence(law, words);
  const degrees = law.directionMean / DEGREE;
  const side = (radians: number): string => sideText(radians, words);
  return spread.lean({
    main:
      Math.abs(degrees) < 0.05
        ? spread.noLean({ club })
        : spread.leans({ club, side: side(law.directionMean) }),
    doubt: lean === null ? '' : spread.leanDoubt({ low: side(lean.low), high: side(lean.high) }),
    within: figures.fixed(law.directionSd / DEGREE, 1),
  });
}

/** `7-iron`, `7-iron, half swing`. */
export function clubInSentence({ club, swing }: Pick<ShotSpread, 'club' | 'swing'>, words: Words): string {
  return swing === 'full'
    ? club.name
    : words.spread.clubSwing({ club: club.name, swing: words.golf.shortSwings[swing] });
}

/** `1.2° right`. */
function sideText(radians: number, { spread, figures }: Words): string {
  const size = Math.abs(radians / DEGREE);
  if (size < 0.05) return '0°';
  const degrees = figures.fixed(size, 1);
  return radians > 0 ? spread.degrees.right({ degrees }) : spread.degrees.left({ degrees });
}
