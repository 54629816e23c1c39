/** The flat frame in which a course is drawn: it touches the earth in the middle of what is there. */

import { makeLocalFrame, type LocalFrame } from '../../core/course/local-frame.ts';
import { type EditableDocument, geometryOf, kindOf } from '../../core/course/document.ts';
import { filedPlace, turnedAbout } from '../../core/course/longitude.ts';
import type { LonLat } from '../../core/course/model.ts';
import { isPlace, positionsOf } from '../../core/course/positions.ts';

/** Member of the course's header: where a course of which nothing is drawn yet lies, [longitude, latitude]. */
export const PLACE_MEMBER = 'place';

/** Where neither a feature nor the header says anything. */
const NOWHERE: LonLat = [0, 0];

export function frameFor(document: EditableDocument): LocalFrame {
  return makeLocalFrame(middleOfDrawn(document) ?? placeOfHeader(document) ?? NOWHERE);
}

/** The place that the person gave when the course was begun. */
export function placeOfHeader({ holewright }: EditableDocument): LonLat | null {
  const place = holewright[PLACE_MEMBER];
  if (!Array.isArray(place)) return null;
  const [lon, lat] = place as unknown[];
  return typeof lon === 'number' && typeof lat === 'number' && isPlace([lon, lat]) ? [lon, lat] : null;
}

export function middleOfDrawn(document: EditableDocument): LonLat | null {
  let west = Infinity;
  let south = Infinity;
  let east = -Infinity;
  let north = -Infinity;
  let about: number | null = null;
  for (const feature of document.features) {
    const kind = kindOf(feature);
    const geometry = kind === undefined || kind === 'ground-level' ? undefined : geometryOf(feature);
    if (geometry === undefined) continue;
    for (const [filed, lat] of positionsOf(geometry)) {
      about ??= filed;
      const lon = turnedAbout(filed, about);
      west = Math.min(west, lon);
      east = Math.max(east, lon);
      south = Math.min(south, lat);
      north = Math.max(north, lat);
    }
  }
  return west <= east ? filedPlace([(west + east) / 2, (south + north) / 2]) : null;
}
