import type { Room } from '../rooms/room.ts';

export const courseRoom: Room | null = null;
