/** Which clubs of a bag go out for a round, and the lies from which a player leaves a club in the bag. */

import type { LieName } from '../ground/lies.ts';
import { type Fault } from '../result.ts';
import { type BagClub, MOST_CLUBS_IN_PLAY } from './format.ts';
import { lieEffectsFor } from './lie-effects.ts';
import { playedAllTheSame } from './last-resort.ts';
import type { PlayerModel } from './model.ts';
import { told, toldFault } from '../words/told.ts';

/** Lies that a ball can be played from with a club other than the putter, in the order in which they are listed. */
export const LIES_TO_CHOOSE = ['tee', 'fairway', 'rough', 'longRough', 'bunker', 'woods'] as const;
export type LieToChoose = (typeof LIES_TO_CHOOSE)[number];

export function isInRound(club: Pick<BagClub, 'inRound'>): boolean {
  return club.inRound !== false;
}

export function clubsInRound(bag: readonly BagClub[]): readonly BagClub[] {
  return bag.filter(isInRound);
}

/** A warning where more clubs go out than Rule 4.1b of the Rules of Golf allows. */
export function countFault(bag: readonly BagClub[]): Fault | null {
  const count = clubsInRound(bag).length;
  if (count <= MOST_CLUBS_IN_PLAY) return null;
  return toldFault({
    severity: 'warning',
    code: 'over-fourteen-clubs',
    where: 'bag',
    message: told(({ faults }) => faults.player.tooManyClubs, { count, most: MOST_CLUBS_IN_PLAY }),
  });
}

/**
 * What a lie does to a shot of a player of this handicap, clubs left in the bag where the player says so. A lie that would leave
 * every club in the bag is played from all the same.
 */
export function lieEffectsOf(bag: readonly BagClub[], handicap: number): PlayerModel['lieEffect'] {
  const effects = playedAllTheSame(clubsInRound(bag), lieEffectsFor(handicap));
  const kept = new Map<string, ReadonlySet<LieName>>(
    bag.flatMap(({ name, notFrom }) => (notFrom === undefined ? [] : [[name, new Set<LieName>(notFrom)]])),
  );
  if (kept.size === 0) return effects;
  return (club, swing, lie) => {
    const effect = effects(club, swing, lie);
    return kept.get(club.name)?.has(lie) === true ? { ...effect, playable: false } : effect;
  };
}
