/** Inks of the edges of ground where a hole is drawn as lines and areas, on paper and for clicking on. */

import { Lie, type LieCode } from '../../core/ground/lies.ts';

export function edgeInk(lie: LieCode): string {
  switch (lie) {
    case Lie.green:
      return '#4d7a38';
    case Lie.bunker:
      return '#9a8248';
    case Lie.penaltyYellow:
      return '#b89500';
    case Lie.penaltyRed:
      return '#b3261a';
    case Lie.outOfBounds:
      return '#555555';
    case Lie.rough:
    case Lie.fairway:
    case Lie.tee:
    case Lie.longRough:
    case Lie.woods:
    case Lie.path:
      return 'none';
  }
}
