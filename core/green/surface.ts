/** The fall of a green: how steeply it rises to the east and to the north, anywhere on it. */

/** Metres of rise per metre. Assumes gradients of greens: below about 0.15. */
export interface GreenSurface {
  /** A level surface, or one where every place is like every other seen from the hole. */
  readonly isLevel: boolean;
  readonly riseEast: (x: number, y: number) => number;
  readonly riseNorth: (x: number, y: number) => number;
}

export const LEVEL_GREEN: GreenSurface = { isLevel: true, riseEast: () => 0, riseNorth: () => 0 };

/** A plane that falls by `slopeShare` metres per metre towards `downhill` (radians clockwise from north). */
export function planeGreen(slopeShare: number, downhill: number): GreenSurface {
  if (slopeShare === 0) return LEVEL_GREEN;
  const east = -slopeShare * Math.sin(downhill);
  const north = -slopeShare * Math.cos(downhill);
  return { isLevel: false, riseEast: () => east, riseNorth: () => north };
}

/** What a slope takes from or gives to a rolling ball, m/s² per metre of fall per metre: 5/7 g, a solid sphere rolling. */
export const SLOPE_PULL_MPS2 = (5 / 7) * 9.80665;
