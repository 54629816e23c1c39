/** Everything the sampler needs about one club, swing, lie and chosen carry, as plain numbers. */

import { Lie, LIE_NAMES, type LieCode } from '../ground/lies.ts';
import type { LieEffect, PlayerModel, ShotSpread } from '../player/model.ts';
import { partSpread } from '../player/part-swing.ts';
import { ballWindow, type BallWindow } from './trajectory.ts';
import { runShare } from './roll.ts';

/** Metres and radians; shares in [0, 1]. */
export interface ShotLaw {
  readonly carryMean: number;
  readonly carrySd: number;
  readonly directionMean: number;
  readonly directionSd: number;
  readonly correlation: number;
  /** sqrt(1 - correlation²). */
  readonly directionOwn: number;
  readonly poorShare: number;
  readonly poorCarryMean: number;
  readonly poorCarrySd: number;
  readonly poorDirectionSd: number;
  readonly window: BallWindow;
  /** Mean run on level fairway as a share of carry. */
  readonly runShare: number;
}

/** A flier or a plugged lie changes the run; here only that a ball from rough stops later. */
function runFactor(lie: LieCode): number {
  return lie === Lie.rough || lie === Lie.longRough || lie === Lie.woods ? 1.3 : 1;
}

/**
 * The law of `spread` from `lie`, or null where that club is not played from there. `carryM` is the carry asked for
 * and counts for part swings only.
 */
export function shotLaw(
  player: PlayerModel,
  spread: ShotSpread,
  lie: LieCode,
  carryM: number,
  window = ballWindow(spread),
): ShotLaw | null {
  const effect: LieEffect = player.lieEffect(spread.club, spread.swing, LIE_NAMES[lie]!);
  if (!effect.playable) return null;
  const base = spread.swing === 'part' ? partSpread(spread, carryM) : spread;
  // The player allows for what the lie takes off a part swing; a full swing has nothing to add.
  const carryFactor = spread.swing === 'part' ? 1 : effect.carryFactor;
  const carryMean = base.carryMean * carryFactor;
  const poorShare = Math.min(0.6, base.poorShare + effect.poorShareAdded);
  return {
    carryMean,
    carrySd: base.carrySd * carryFactor * effect.carrySdFactor,
    directionMean: base.directionMean,
    directionSd: base.directionSd * effect.directionSdFactor,
    correlation: base.correlation,
    directionOwn: Math.sqrt(1 - base.correlation ** 2),
    poorShare,
    poorCarryMean: carryMean * base.poor.carryShareMean,
    poorCarrySd: carryMean * base.poor.carryShareSd,
    poorDirectionSd: base.poor.directionSd * effect.directionSdFactor,
    window,
    runShare: runShare(window.tanDescent) * runFactor(lie),
  };
}
