/** Where a picture lies in the map's frame, from its control points. */

import { fitPicture, type FitRefusal, type PictureFit } from '../../../core/course/georeference.ts';
import type { LocalFrame } from '../../../core/course/local-frame.ts';
import type { Result } from '../../../core/result.ts';
import type { PictureBackground } from './background.ts';

/** Residuals are in the order of the pins. Stretching takes three pins; with two the picture is only turned. */
export function fitOf({ pins, fit }: PictureBackground, frame: LocalFrame): Result<PictureFit, FitRefusal> {
  const points = pins.map(({ pixelX, pixelY, lon, lat }) => ({
    pixelX,
    pixelY,
    ...frame.toSpot([lon, lat]),
  }));
  return fitPicture(points, points.length < 3 ? 'turn' : fit);
}

export const FIT_WORDS: Readonly<Record<FitRefusal, string>> = {
  'too-few-points': 'Two control points or more put the picture in its place.',
  'points-coincide': 'The control points lie on one another. Take places far apart.',
  'points-in-line': 'The control points lie in one line: stretching needs a third one beside it.',
  'not-finite': 'A control point is no place. Remove it and set it again.',
};
