/** The rooms there are, in the order of their buttons. */

import { playerRoom } from '../bag/player-room.tsx';
import { courseRoom } from '../drawing/course-room.tsx';
import { roundRoom } from '../round/round-room.tsx';
import { planRoom } from './plan-room.tsx';
import type { Room } from './room.ts';

export const ROOMS: readonly Room[] = [planRoom, courseRoom, playerRoom, roundRoom].filter(
  (room) => room !== null,
);
