/** Sampled balls and spread ellipses of one choice, for drawing. */

import { aimedShot } from '../flight/aimed-shot.ts';
import { lieAt } from '../ground/hole-ground.ts';
import { Lie } from '../ground/lies.ts';
import { ShotDrawer } from '../random/shot-draws.ts';
import type { Choice, ShotSample, SpreadEllipse, Spot } from './model.ts';
import type { PreparedHole } from './prepare.ts';
import { ShotResolver } from './resolve-shot.ts';
import { shotTurn } from './shot-turn.ts';

const DRAWING = 5;

/** `count` balls of a choice from `spot`; none where the club is not played from that lie. */
export function sampleShot(prepared: PreparedHole, spot: Spot, choice: Choice, count: number): ShotSample {
  const law = prepared.book.lawOf(choice.spreadIndex, lieOfSpot(prepared, spot), choice.carryM);
  const kept = law === null ? 0 : count;
  const sample = {
    count: kept,
    landing: new Float32Array(2 * kept),
    end: new Float32Array(2 * kept),
    lie: new Uint8Array(kept),
  };
  if (law === null) return sample;
  const resolver = new ShotResolver(prepared.ground);
  const draws = new ShotDrawer(count).redraw(prepared.key, DRAWING);
  for (let i = 0; i < count; i++) {
    resolver.resolve(spot.x, spot.y, law, choice.bearing, draws, i);
    sample.landing[2 * i] = resolver.landX;
    sample.landing[2 * i + 1] = resolver.landY;
    sample.end[2 * i] = resolver.endX;
    sample.end[2 * i + 1] = resolver.endY;
    sample.lie[i] = resolver.endLie;
  }
  return sample;
}

/**
 * Where solid strikes come down: the ellipse that holds each share of a bivariate normal law, whose squared radius in
 * standard units is the chi-square quantile with two degrees of freedom, -2 ln(1 - share).
 */
export function spreadEllipses(
  prepared: PreparedHole,
  spot: Spot,
  choice: Choice,
  shares: readonly number[],
): SpreadEllipse[] {
  const law = prepared.book.lawOf(choice.spreadIndex, lieOfSpot(prepared, spot), choice.carryM);
  if (law === null) return [];
  const day = aimedShot(law, choice.bearing);
  const bearing =
    choice.bearing + law.directionMean + shotTurn(prepared.ground, spot.x, spot.y, law, choice.bearing);
  const carryMean = law.carryMean * day.carryFactor;
  const along = law.carrySd * day.carryFactor;
  const across = carryMean * law.directionSd;
  const covariance = law.correlation * along * across;
  // Principal axes of [[along², cov], [cov, across²]]; the angle is from the line of play, clockwise.
  const angle = 0.5 * Math.atan2(2 * covariance, along * along - across * across);
  const mean = (along * along + across * across) / 2;
  const half = Math.hypot((along * along - across * across) / 2, covariance);
  const centre = {
    x: spot.x + Math.sin(bearing) * carryMean,
    y: spot.y + Math.cos(bearing) * carryMean,
  };
  return shares.map((share) => {
    const radius = Math.sqrt(-2 * Math.log(1 - share));
    return {
      share,
      centre,
      semiMajorM: radius * Math.sqrt(mean + half),
      semiMinorM: radius * Math.sqrt(Math.max(0, mean - half)),
      majorBearing: bearing + angle,
    };
  });
}

/** The lie that a shot from `spot` is played from: the tee at the chosen tee, else the ground's. */
export function lieOfSpot(prepared: PreparedHole, spot: Spot): ReturnType<typeof lieAt> {
  const isTee = Math.hypot(spot.x - prepared.tee.x, spot.y - prepared.tee.y) < 0.5;
  return isTee ? Lie.tee : lieAt(prepared.ground, spot.x, spot.y);
}
