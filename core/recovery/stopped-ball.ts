/**
 * Where a ball that a tree has stopped comes down. Common practice, no source: most fall more or less straight down, some are
 * thrown forwards or aside, one that meets a trunk or a thick branch comes back. The spread grows with the speed of the ball and
 * with the height from which it falls.
 */

export interface Hit {
  /** Speed of the ball as it meets the tree, m/s. */
  readonly speedMps: number;
  /** Above the ground, metres. */
  readonly heightM: number;
  readonly by: 'crown' | 'trunk';
}

/** Most of its speed that a ball keeps after leaves and twigs, and after wood. */
const KEPT = { crown: 0.25, trunk: 0.35 } as const;
/** Standard deviation of the turn from the line of flight, radians: a crown scatters, a trunk throws back. */
const TURN_SD = { crown: 1.1, trunk: 0.6 } as const;
const GRAVITY_MPS2 = 9.80665;
/** Bounces and roll under trees, as a share of the way through the air. */
const ROLL_ON = 1.3;

/**
 * Where it comes to rest from the place of the hit, metres along the line of flight and to its right. `keptU` in [0, 1) and
 * the standard normal `turnZ` are the draws.
 */
export function restAfterHit(
  hit: Hit,
  keptU: number,
  turnZ: number,
): { readonly along: number; readonly right: number } {
  // Squared: small shares of the speed are the rule.
  const speed = hit.speedMps * KEPT[hit.by] * keptU * keptU;
  const time = Math.sqrt((2 * Math.max(0, hit.heightM)) / GRAVITY_MPS2) + 0.3;
  const turn = (hit.by === 'trunk' ? Math.PI : 0) + TURN_SD[hit.by] * turnZ;
  const way = ROLL_ON * speed * time;
  return { along: way * Math.cos(turn), right: way * Math.sin(turn) };
}
