/** The steps of the first walk round the window: in which room each stands, and at what it points. */

import type { RoomName } from '../rooms/room.ts';

export type TourStepName = 'plan' | 'move' | 'shots' | 'draw' | 'cards' | 'round';

export interface TourStep {
  readonly name: TourStepName;
  readonly room: RoomName;
  /** Selectors of what is outlined: the first that is on the page. */
  readonly outlined: readonly string[];
  /** What takes the focus within it; null for the outlined thing itself. */
  readonly focused: string | null;
}

/** Their words stand in the catalogue, `tour.ts`. */
export const TOUR_STEPS = [
  { name: 'plan', room: 'plan', outlined: ['.advice-card'], focused: '.advice-name' },
  { name: 'move', room: 'plan', outlined: ['[data-marker="ball"]'], focused: null },
  { name: 'shots', room: 'player', outlined: ['.page-tabs [data-page="shots"]'], focused: null },
  { name: 'draw', room: 'course', outlined: ['.banner-acts button', '.kind-palette'], focused: 'button' },
  { name: 'cards', room: 'round', outlined: ['.round-pages [data-page="cards"]'], focused: null },
  { name: 'round', room: 'round', outlined: ['.round-pages [data-page="playing"]'], focused: null },
] as const satisfies readonly TourStep[];

export function tourStep(name: TourStepName): TourStep {
  return TOUR_STEPS.find((step) => step.name === name) ?? TOUR_STEPS[0];
}

export function roomOfStep(name: TourStepName): RoomName {
  return tourStep(name).room;
}
