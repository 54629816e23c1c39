/** A peer: the preset player of a level, to hold the own game against on the same holes. */

import { lieEffectsFor } from '../player/lie-effects.ts';
import type { PlayerModel } from '../player/model.ts';
import { levelName, type PlayerLevel, presetPlayer } from '../player/presets.ts';

/** The preset of this level with the standard bag; hand, units and margin are the player's. */
export function peerOf(player: PlayerModel, level: PlayerLevel): PlayerModel {
  const preset = presetPlayer(level);
  return {
    name: `peer, ${levelName(level)}`,
    invented: true,
    handicap: level.handicap,
    hand: player.hand,
    spreads: preset.spreads,
    putting: preset.putting,
    puttingSource: { from: 'preset', level: levelName(level) },
    lieEffect: lieEffectsFor(level.handicap),
    units: player.units,
    marginStrokes: player.marginStrokes,
    warnings: [],
  };
}
