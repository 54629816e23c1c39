/** How far from the aim a solid strike of a club starts on its way to where it lands: by the wind, and by a sloping stance. */

import { aimedShot } from '../flight/aimed-shot.ts';
import type { ShotLaw } from '../flight/shot-law.ts';
import { groundSlope, type SlopeGround } from '../ground-run/ground-slope.ts';
import { sideSlopeTurn } from '../ground-run/slope-lie.ts';
import { lieAt, type HoleGround } from '../ground/hole-ground.ts';
import { Lie } from '../ground/lies.ts';

/** Turn by the stance, radians, positive to the right. A teeing area is level. */
export function stanceTurn(
  ground: SlopeGround & Pick<HoleGround, 'lie'>,
  x: number,
  y: number,
  loft: number,
  bearing: number,
): number {
  if (ground.slopes === null || lieAt(ground, x, y) === Lie.tee) return 0;
  return sideSlopeTurn(loft, groundSlope(ground, x, y, bearing).right);
}

/** Turn by wind and stance together; a player who knows of it aims off by as much. */
export function shotTurn(
  ground: SlopeGround & Pick<HoleGround, 'lie'>,
  x: number,
  y: number,
  law: ShotLaw,
  bearing: number,
): number {
  return aimedShot(law, bearing).turn + stanceTurn(ground, x, y, law.loft, bearing);
}

/** The aim from which a solid strike starts along `line` and comes down on it, radians; a bias of the player's is not allowed for. */
export function aimAlong(
  ground: SlopeGround & Pick<HoleGround, 'lie'>,
  x: number,
  y: number,
  law: ShotLaw,
  line: number,
): number {
  let aim = line;
  // The drift of the new aim differs a little from that of the old one.
  for (let k = 0; k < 3; k++) aim = line - shotTurn(ground, x, y, law, aim);
  return aim;
}
