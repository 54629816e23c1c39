/**
 * Distances and directions from a photo of a level practice ground, taken from where the shots are hit. A camera that is
 * held level sees a point of the ground `d` metres ahead at f h / d picture points below the horizon and, `x` metres to
 * the side, f x / d points beside the middle (pinhole camera; Hartley & Zisserman 2004, Multiple View Geometry, ch. 6;
 * from memory). Two marks at known distances give horizon and f h, the height of the camera gives f.
 * Limits: level ground, a camera that is not tilted sideways, a lens without distortion.
 */

import { type Result, refuse, succeed } from '../result.ts';
import { told, type Told } from '../words/told.ts';

/** A point of the picture in its own points: from the left, from the top. */
export interface PicturePoint {
  readonly x: number;
  readonly y: number;
}

export interface KnownMark {
  readonly at: PicturePoint;
  /** Straight distance from the player, metres. */
  readonly distanceM: number;
}

export interface PictureScale {
  /** Height of the horizon in the picture, points from the top. */
  readonly horizonY: number;
  /** f h, points times metres. */
  readonly reach: number;
  /** f, points. */
  readonly focal: number;
  /** Middle of the picture, points from the left. */
  readonly middleX: number;
  /** Direction of the aim, radians right of the camera's. */
  readonly aim: number;
}

export interface PlaceInPicture {
  readonly distanceM: number;
  /** Radians, positive right of the aim. */
  readonly direction: number;
}

/** Rounds of finding horizon and f h for distances that are not straight ahead. */
const ROUNDS = 12;
/** Marks whose distances are closer than this to each other do not fix the scale. */
const LEAST_RATIO = 1.15;

/** The picture's scale from two marks; the aim is the farther one. `widthPoints` is the picture's width. */
export function scaleOfPicture(
  marks: readonly [KnownMark, KnownMark],
  cameraHeightM: number,
  widthPoints: number,
): Result<PictureScale, Told> {
  const [near, far] = [...marks].sort((a, b) => a.distanceM - b.distanceM) as [KnownMark, KnownMark];
  if (!(cameraHeightM > 0.2 && cameraHeightM < 30)) return refuse(told(({ faults }) => faults.photo.height));
  if (!(near.distanceM >= 5 && far.distanceM <= 400))
    return refuse(told(({ faults }) => faults.photo.distances));
  if (far.distanceM < LEAST_RATIO * near.distanceM) return refuse(told(({ faults }) => faults.photo.alike));
  if (far.at.y >= near.at.y) return refuse(told(({ faults }) => faults.photo.lower));
  const middleX = widthPoints / 2;
  let [aheadNear, aheadFar] = [near.distanceM, far.distanceM];
  let horizonY = 0;
  let reach = 0;
  for (let round = 0; round < ROUNDS; round++) {
    // y = horizon + reach / ahead for both marks.
    reach = (near.at.y - far.at.y) / (1 / aheadNear - 1 / aheadFar);
    horizonY = far.at.y - reach / aheadFar;
    const focal = reach / cameraHeightM;
    aheadNear = near.distanceM * Math.cos(Math.atan((near.at.x - middleX) / focal));
    aheadFar = far.distanceM * Math.cos(Math.atan((far.at.x - middleX) / focal));
  }
  const focal = reach / cameraHeightM;
  return succeed({ horizonY, reach, focal, middleX, aim: Math.atan((far.at.x - middleX) / focal) });
}

/** Where a ball lies that is seen at `point`. Refuses points on or above the horizon. */
export function placeInPicture(scale: PictureScale, point: PicturePoint): Result<PlaceInPicture, Told> {
  const below = point.y - scale.horizonY;
  if (below <= 0) return refuse(told(({ faults }) => faults.photo.sky));
  const angle = Math.atan((point.x - scale.middleX) / scale.focal);
  const distanceM = scale.reach / below / Math.cos(angle);
  if (distanceM > 400) return refuse(told(({ faults }) => faults.photo.tooFar));
  return succeed({ distanceM, direction: angle - scale.aim });
}

/** What one picture point in height is worth at a distance, metres: how sure a click can be. */
export function metresPerPoint(scale: PictureScale, distanceM: number): number {
  return distanceM ** 2 / scale.reach;
}
