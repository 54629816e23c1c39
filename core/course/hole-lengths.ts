/** How long a hole is from each tee, along its line of play, and what the card says. */

import { cardLengthOf } from './card-length.ts';
import { type EditableDocument, type FeatureId, propertiesOf } from './document.ts';
import { polylineLengthM } from './ellipsoid.ts';
import type { Hole, LonLat } from './model.ts';
import { nearestSide } from './nearness.ts';

export interface TeeLength {
  readonly tee: string;
  /** Absent where the start of the line stands in for a marker. */
  readonly feature?: FeatureId;
  readonly lengthM: number;
  readonly cardLengthM?: number;
  /** Length on the map less length on the card, metres. */
  readonly differenceM?: number;
}

/** From a tee to the line's next bend and on along the line, metres: how a hole is measured along its line of play. */
export function lengthFromTeeM(line: readonly LonLat[], tee: LonLat): number {
  return polylineLengthM([tee, ...line.slice(nearestSide(line, tee) + 1)]);
}

/** One per tee marker, in the order of the file. `hole` must come from this very document. */
export function teeLengths(document: EditableDocument, hole: Hole): readonly TeeLength[] {
  return hole.tees.map(({ name, at, featureIndex }): TeeLength => {
    const lengthM = lengthFromTeeM(hole.line, at);
    const feature = featureIndex === undefined ? undefined : document.features[featureIndex];
    if (feature === undefined) return { tee: name, lengthM };
    const cardLengthM = cardLengthOf(propertiesOf(feature));
    return {
      tee: name,
      feature: feature.id,
      lengthM,
      ...(cardLengthM === undefined ? {} : { cardLengthM, differenceM: lengthM - cardLengthM }),
    };
  });
}
