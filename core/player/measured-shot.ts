/** One shot as the estimator takes it: on level ground, in still air, from a good lie or one whose effect is given. */

export interface MeasuredShot {
  /** Straight distance from the ball to where it landed. */
  readonly carryM: number;
  /** Radians, positive right of the aim. */
  readonly direction: number;
  /** How much it counts, in (0, 1]; 1 where absent. Older shots may count less. */
  readonly weight?: number;
  /** Days since 1970; absent where the shot has no date. */
  readonly day?: number;
  /** From a worse lie: `carryM` is then what the same strike carries from a good one. Absent: a good lie. */
  readonly lie?: LieWidening;
}

/** How much wider a lie scatters than a good one, and how many more strikes are poor there. */
export interface LieWidening {
  readonly carryWidth: number;
  readonly directionWidth: number;
  readonly poorAdded: number;
}

/** With fewer shots than this a club's law rests mostly on what was expected of it, and the player is told. */
export const LEAST_SHOTS = 5;
