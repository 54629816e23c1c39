/** A new player file from a handicap: a usual bag, no shots, everything else from the preset. */

import { PLAYER_FORMAT_VERSION, type PlayerDocument } from '../format.ts';
import { type PlayerGroup, STANDARD_BAG } from '../presets.ts';

export interface NewPlayer {
  readonly name: string;
  readonly handicap: number;
  readonly group: PlayerGroup;
  readonly hand: 'right' | 'left';
  readonly units: 'yards' | 'metres';
}

export function newPlayer({ name, handicap, group, hand, units }: NewPlayer): PlayerDocument {
  return {
    holewright: { format: 'player', formatVersion: PLAYER_FORMAT_VERSION },
    name,
    hand,
    handicap,
    group,
    settings: { units },
    bag: STANDARD_BAG.map((club) => ({ ...club, swings: [...club.swings] })),
    shots: [],
  };
}
