/**
 * Places that a hole has although nobody drew them. Their names are English wherever plans and files name them, and
 * told in the window's language where they are shown.
 */

import type { Words } from '../words/words.ts';

export const ASSUMED_PLACES = {
  startOfLine: 'Start of the line',
  endOfLine: 'End of the line',
  middleOfGreen: 'Middle of the green',
} as const;

/** The name of a tee or hole position, as it is shown. */
export function placeName(name: string, { features }: Words): string {
  switch (name) {
    case ASSUMED_PLACES.startOfLine:
      return features.assumedPlaces.startOfLine;
    case ASSUMED_PLACES.endOfLine:
      return features.assumedPlaces.endOfLine;
    case ASSUMED_PLACES.middleOfGreen:
      return features.assumedPlaces.middleOfGreen;
    default:
      return name;
  }
}
