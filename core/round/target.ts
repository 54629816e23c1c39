/** What a player sets out to do, as the highest score that still does it. */

import type { Words } from '../words/words.ts';
import { scoreForDifferential, type TeeRating } from './handicap.ts';

export type Target =
  /** This score or fewer. */
  | { readonly kind: 'score'; readonly score: number }
  /** Fewer than this: 89 is the last score that beats 90. */
  | { readonly kind: 'beat'; readonly score: number }
  /** Par with the strokes of a playing handicap. */
  | { readonly kind: 'net-par'; readonly playingHandicap: number }
  /** A score differential of this or better; without a rating the course counts as rated at its par, slope 113. */
  | { readonly kind: 'handicap'; readonly aim: number; readonly tees?: TeeRating };

/** Handicaps are for 18 holes; a rating of nine asks for half. */
function scoreForAim(aim: number, tees: TeeRating): number {
  return scoreForDifferential(tees.holes === 9 ? aim / 2 : aim, tees);
}

/** The highest score that meets the target on a course of this par. */
export function scoreToMeet(target: Target, par: number): number {
  switch (target.kind) {
    case 'score':
      return target.score;
    case 'beat':
      return target.score - 1;
    case 'net-par':
      return par + target.playingHandicap;
    case 'handicap':
      return scoreForAim(target.aim, target.tees ?? { courseRating: par, slopeRating: 113, par, holes: 18 });
  }
}

export function targetWords(target: Target, { round }: Words): string {
  const { says } = round.target;
  switch (target.kind) {
    case 'score':
      return says.orFewer({ score: target.score });
    case 'beat':
      return says.beat({ score: target.score });
    case 'net-par':
      return says.netPar;
    case 'handicap':
      return says.playTo({ handicap: target.aim < 0 ? `+${-target.aim}` : String(target.aim) });
  }
}
