/** One shot as the estimator takes it: from a good lie, on level ground, in still air. */

export interface MeasuredShot {
  /** Straight distance from the ball to where it landed. */
  readonly carryM: number;
  /** Radians, positive right of the aim. */
  readonly direction: number;
  /** How much it counts, in (0, 1]; 1 where absent. Older shots may count less. */
  readonly weight?: number;
  /** Days since 1970; absent where the shot has no date. */
  readonly day?: number;
}

/** With fewer shots than this a club's law rests mostly on what was expected of it, and the player is told. */
export const LEAST_SHOTS = 5;
