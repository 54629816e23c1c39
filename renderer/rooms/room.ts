/** A room is what fills the window below the bar: planning, the course, the player, the round. */

import type { ComponentType } from 'preact';

export type RoomName = 'plan' | 'course' | 'player' | 'round';

export interface Room {
  readonly name: RoomName;
  readonly View: ComponentType;
}
