/**
 * How firm a course's sand is: in soft sand more balls plug. The table of lies holds what a ball in ordinary sand costs on
 * average, with the few that plug among them; another firmness makes more or fewer of the poor strikes that a plugged ball
 * brings. Common practice, no source: shares of plugged balls have not been published as far as we know. Greenkeeping
 * sorts sands by their resistance to a penetrometer (below 1.8 kg/cm² balls bury easily, above 2.4 hardly; from memory).
 */

import type { Sand } from '../course/model.ts';
import type { PlayerModel } from './model.ts';

/** Balls found plugged, as a share of those in sand. Soft: 0.05 to 0.25, firm: 0 to 0.02. */
export const PLUGGED_SHARE: Readonly<Record<Sand, number>> = { soft: 0.12, medium: 0.04, firm: 0.01 };

const known = new WeakMap<PlayerModel, Map<Sand, PlayerModel>>();

/** The player on a course with this sand; the same for the same two, and the player as is on ordinary sand. */
export function withSand(player: PlayerModel, sand: Sand | undefined): PlayerModel {
  const added = PLUGGED_SHARE[sand ?? 'medium'] - PLUGGED_SHARE.medium;
  if (sand === undefined || added === 0) return player;
  const before = known.get(player)?.get(sand);
  if (before !== undefined) return before;
  const made: PlayerModel = {
    ...player,
    lieEffect: (club, swing, lie) => {
      const effect = player.lieEffect(club, swing, lie);
      if (lie !== 'bunker' || !effect.playable) return effect;
      return { ...effect, poorShareAdded: Math.max(0, effect.poorShareAdded + added) };
    },
  };
  known.set(player, (known.get(player) ?? new Map<Sand, PlayerModel>()).set(sand, made));
  return made;
}
