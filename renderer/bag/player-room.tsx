import type { Room } from '../rooms/room.ts';

export const playerRoom: Room | null = null;
