import type { Room } from '../rooms/room.ts';

export const roundRoom: Room | null = null;
