/** What moves a ball that rolls over a green: friction of the green's speed against the motion, and the pull of the slope. */

import { type GreenSurface, SLOPE_PULL_MPS2 } from './surface.ts';

export class RollingBall {
  /** The last acceleration, metres per second squared, seen from above. */
  protected ax = 0;
  protected ay = 0;

  /** `decelerationMps2` on the level, see `rollDeceleration`. The hole is at (0, 0). */
  constructor(
    protected readonly surface: GreenSurface,
    protected readonly decelerationMps2: number,
  ) {}

  /** Acceleration at (x, y) of a ball that moves at (vx, vy), into `ax` and `ay`. */
  protected accelerate(x: number, y: number, vx: number, vy: number): void {
    const east = this.surface.riseEast(x, y);
    const north = this.surface.riseNorth(x, y);
    const v = Math.sqrt(vx * vx + vy * vy) || 1e-12;
    const steepness = 1 + east * east + north * north;
    // On the slope the ball presses less: cos of the slope for friction, sin times cos of it for the level part of the pull.
    const friction = this.decelerationMps2 / Math.sqrt(steepness) / v;
    const pull = SLOPE_PULL_MPS2 / steepness;
    this.ax = -friction * vx - pull * east;
    this.ay = -friction * vy - pull * north;
  }
}
