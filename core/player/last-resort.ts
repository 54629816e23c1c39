/**
 * A ball is played as it lies with what the bag holds: a driver alone is also struck off the ground. Where a lie rules out all
 * of its clubs, they play from it as a mid-iron does, and worse by a good deal. Common practice, no source.
 */

import type { LieName } from '../ground/lies.ts';
import type { Club, LieEffect, PlayerModel } from './model.ts';

type Effects = PlayerModel['lieEffect'];

/** Lies that a ball is played from with a club other than the putter. */
const PLAYED_FROM: readonly LieName[] = ['tee', 'fairway', 'path', 'rough', 'longRough', 'bunker', 'woods'];
const STAND_IN_LOFT_DEG = 30;
const CARRY_FACTOR = 0.8;
const SD_FACTOR = 1.5;
const POOR_SHARE_ADDED = 0.25;

/** `effects` itself for a bag with a club for every lie. */
export function playedAllTheSame(
  bag: readonly Pick<Club, 'name' | 'kind' | 'loftDeg' | 'swings'>[],
  effects: Effects,
): Effects {
  const clubs = bag.filter(({ kind }) => kind !== 'putter');
  const ruledOut = new Set(
    PLAYED_FROM.filter((lie) =>
      clubs.every((club) => club.swings.every((swing) => !effects(club as Club, swing, lie).playable)),
    ),
  );
  if (ruledOut.size === 0) return effects;
  return (club, swing, lie) => {
    if (!ruledOut.has(lie) || club.kind === 'putter') return effects(club, swing, lie);
    return worse(effects({ ...club, kind: 'iron', loftDeg: STAND_IN_LOFT_DEG }, 'full', lie));
  };
}

function worse(effect: LieEffect): LieEffect {
  return {
    ...effect,
    carryFactor: CARRY_FACTOR * effect.carryFactor,
    carrySdFactor: SD_FACTOR * effect.carrySdFactor,
    directionSdFactor: SD_FACTOR * effect.directionSdFactor,
    poorShareAdded: effect.poorShareAdded + POOR_SHARE_ADDED,
  };
}
