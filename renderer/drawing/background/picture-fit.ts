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
