/**
 * The player's stroke as this room needs it. A player's putting is recorded (or preset) as the two errors of a simpler
 * model, which knows no slope and whose hole is narrower than the true one and takes any ball that would not run three
 * feet past. Here slopes are misread and the hole is the physical one, so both errors are restated: with the misreads of
 * an ordinary green they make the record again.
 */

import type { PuttingSkill } from '../player/model.ts';
import { chanceToHole, INTENDED_PAST_M } from '../putting/capture.ts';
import { gaussLegendre } from '../putting/gauss-legendre.ts';
import { normalCdf } from '../random/normal.ts';
import { captureHalfWidthM, FASTEST_CAPTURE_MPS } from './capture-speed.ts';
import { rollDeceleration } from './stimpmeter.ts';
import { ORDINARY_SLOPE_SHARE, strokeFrom } from './stroke.ts';
import { planeGreen } from './surface.ts';

export interface StrokeSkill {
  /** Standard deviation of the starting direction, radians. */
  readonly directionSd: number;
  /** Standard deviation of the run that the stroke would give on the level, as a share of it. */
  readonly runSdShare: number;
  /** Standard deviation of an ordinary slope as read, as a share of it, along the line and across it; see `strokeFrom`. */
  readonly readSdShare: number;
  /** How far past the hole a putt is meant to run, metres. */
  readonly pastM: number;
}

/** The green on which a player's record is taken to have been made. Common practice, no source. */
export const ORDINARY_GREEN = { greenSpeedFt: 10, slopeShare: ORDINARY_SLOPE_SHARE } as const;
/**
 * Error of reading a slope: no source for the figure itself; chosen so that tour players' 8 ft putts come out as Broadie
 * reports (golf.com, 11 June 2019): uphill holed 5 % more often than downhill, on steep slopes sidehill-downhill almost
 * 20 % less often than sidehill-uphill.
 */
export const READ_SD_SHARE = 0.2;
/** At least this share of the recorded error of the run is the stroke's own. */
const LEAST_OWN_RUN = 0.5;

/** Distances at which the two models are brought to agree, metres: where putts are neither certain nor hopeless. */
const MATCHED_M = [0.6, 0.9, 1.2, 1.5, 1.8, 2.4, 3, 4, 5, 7, 9, 12];
/** Where putts come from around the hole, degrees from the fall line; the other half mirrors them. */
const MATCHED_DEG = [0, 45, 90, 135, 180];
const RULE = gaussLegendre(16);
const REACH = 4.5;

/** The stroke that holes like `putting` on an ordinary green, averaged over directions. */
export function strokeSkill(putting: PuttingSkill): StrokeSkill {
  const deceleration = rollDeceleration(ORDINARY_GREEN.greenSpeedFt);
  const perfect: StrokeSkill = {
    directionSd: 0,
    runSdShare: 0,
    readSdShare: READ_SD_SHARE,
    pastM: INTENDED_PAST_M,
  };
  const green = planeGreen(ORDINARY_GREEN.slopeShare, 0);
  const putts = MATCHED_M.flatMap((metres) => {
    const wanted = chanceToHole(metres, putting);
    return MATCHED_DEG.map((degrees) => {
      const angle = (degrees * Math.PI) / 180;
      const [x, y] = [metres * Math.sin(angle), metres * Math.cos(angle)];
      const stroke = strokeFrom(green, deceleration, perfect, x, y);
      return {
        metres,
        wanted,
        turnSd: Math.hypot(stroke.turnByAlong, stroke.turnByAcross),
        runSd: Math.hypot(stroke.squareByAlong, stroke.squareByAcross) / stroke.square,
      };
    });
  });
  const readRun = putts.reduce((sum, putt) => sum + putt.runSd ** 2, 0) / putts.length;
  const recorded = putting.distanceSdShare;
  const runSdShare = Math.sqrt(Math.max((LEAST_OWN_RUN * recorded) ** 2, recorded ** 2 - readRun));
  const misfit = (directionSd: number): number => {
    let sum = 0;
    for (let i = 0; i < putts.length; i += MATCHED_DEG.length) {
      let mean = 0;
      for (const putt of putts.slice(i, i + MATCHED_DEG.length)) {
        const own = { ...perfect, directionSd: Math.hypot(directionSd, putt.turnSd) };
        const run = { ...own, runSdShare: Math.hypot(runSdShare, putt.runSd) };
        mean += levelChanceToHole(putt.metres, run, deceleration) / MATCHED_DEG.length;
      }
      sum += (mean - putts[i]!.wanted) ** 2;
    }
    return sum;
  };
  // Golden section (Kiefer 1953): the misfit has one valley.
  let [low, high] = [0.2 * putting.directionSd, 3 * putting.directionSd];
  while (high - low > 1e-4 * putting.directionSd) {
    const step = ((Math.sqrt(5) - 1) / 2) * (high - low);
    if (misfit(high - step) < misfit(low + step)) high = low + step;
    else low = high - step;
  }
  return { ...perfect, directionSd: (low + high) / 2, runSdShare };
}

/**
 * Chance to hole on the level: over the speeds that the stroke may give, the chance that the direction is within what
 * the hole takes at the speed of arrival. What the roller does shot by shot, as one integral.
 */
export function levelChanceToHole(distanceM: number, skill: StrokeSkill, decelerationMps2: number): number {
  const meant = distanceM + skill.pastM;
  const sd = skill.runSdShare * meant;
  // From a run that just arrives to the fastest that drops.
  const low = Math.max(-REACH, (distanceM - meant) / sd);
  const high = Math.min(REACH, (distanceM + FASTEST_CAPTURE_MPS ** 2 / (2 * decelerationMps2) - meant) / sd);
  if (!(high > low)) return 0;
  const half = (high - low) / 2;
  let sum = 0;
  for (let k = 0; k < RULE.nodes.length; k++) {
    const z = low + (1 + RULE.nodes[k]!) * half;
    const arrival = Math.sqrt(Math.max(0, 2 * decelerationMps2 * (meant + z * sd - distanceM)));
    const width = captureHalfWidthM(arrival);
    const limit = width >= distanceM ? Math.PI / 2 : Math.asin(width / distanceM);
    const onLine = 1 - 2 * normalCdf(-limit / skill.directionSd);
    sum += half * RULE.weights[k]! * (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * onLine;
  }
  return Math.min(1, sum);
}
