/** Which clubs and aims are worth trying from a spot, and the cached laws of their shots. */

import { shotLaw, type ShotLaw } from '../flight/shot-law.ts';
import { ballWindow, type BallWindow } from '../flight/trajectory.ts';
import { isOnRaster, isPenaltyArea, lieAt, type HoleGround } from '../ground/hole-ground.ts';
import { Lie, type LieCode } from '../ground/lies.ts';
import type { PlayerModel, ShotSpread } from '../player/model.ts';
import type { Choice, Option, Spot } from './model.ts';

const DEGREE = Math.PI / 180;
/** Shortest part swing that is planned, metres of carry. */
const SHORTEST_PART_M = 2;
/** A full swing that carries this much farther than the hole is not sensible. */
const PAST_HOLE_SHARE = 1.12;
const PAST_HOLE_M = 12;

/** Laws of a player's shots by spread, lie and carry (carry to the metre; exact laws differ by less than a spread's doubt). */
export class LawBook {
  private readonly laws = new Map<number, ShotLaw | null>();

  /** `windows`: one for each of the player's spreads. */
  constructor(
    readonly player: PlayerModel,
    readonly windows: readonly BallWindow[] = player.spreads.map(ballWindow),
  ) {}

  lawOf(spreadIndex: number, lie: LieCode, carryM: number): ShotLaw | null {
    const spread = this.player.spreads[spreadIndex]!;
    const metres = spread.swing === 'part' ? Math.max(SHORTEST_PART_M, Math.round(carryM)) : 0;
    const key = (spreadIndex * 16 + lie) * 1024 + metres;
    let law = this.laws.get(key);
    if (law === undefined) {
      law = shotLaw(this.player, spread, lie, metres, this.windows[spreadIndex]);
      this.laws.set(key, law);
    }
    return law;
  }
}

/** How finely a fan of aims is spread. Degrees. */
export interface AimFan {
  readonly halfAngleDeg: number;
  readonly stepDeg: number;
}

/** Tee and open ground: either way round a dogleg. In trees: all the way round, more coarsely. */
export const OPEN_FAN: AimFan = { halfAngleDeg: 54, stepDeg: 6 };
export const TREES_FAN: AimFan = { halfAngleDeg: 180, stepDeg: 12 };

/**
 * Every sensible choice from `spot`: full and punch swings over the fan, part swings around the hole and, in trees,
 * short ways out. Spreads that the lie forbids are left out.
 */
export function sensibleChoices(
  book: LawBook,
  ground: HoleGround,
  spot: Spot,
  lie: LieCode,
  pin: Spot,
  fan: AimFan,
): Choice[] {
  const { spreads } = book.player;
  const distance = Math.hypot(pin.x - spot.x, pin.y - spot.y);
  const toPin = Math.atan2(pin.x - spot.x, pin.y - spot.y);
  const inTrees = lie === Lie.woods;
  const choices: Choice[] = [];
  let hasWaysOut = false;
  spreads.forEach((spread, spreadIndex) => {
    const law = book.lawOf(spreadIndex, lie, spread.carryMean);
    if (law === null) return;
    if (spread.swing === 'part') {
      addPartSwings(choices, spread, spreadIndex, law, distance, toPin);
      // One club is enough for short ways out of trees or back to good ground: the lowest-flying one.
      if (inTrees && !hasWaysOut) addWaysOut(choices, spread, spreadIndex, toPin);
      hasWaysOut = true;
      return;
    }
    if (law.carryMean > distance * PAST_HOLE_SHARE + PAST_HOLE_M) return;
    if (spread.swing === 'punch' && !inTrees && lie !== Lie.rough && lie !== Lie.longRough) return;
    const aims = fanOfAims(fan, toPin).map(
      (bearing): Choice => ({ spreadIndex, bearing, carryM: law.carryMean }),
    );
    // A full swing that is to come down in trees, water or out of bounds is not sensible while another is to be had.
    const dry = aims.filter((choice) => !isBadTarget(ground, aimSpot(spot, choice)));
    choices.push(...(dry.length > 0 ? dry : aims));
  });
  return choices;
}

function fanOfAims(fan: AimFan, middle: number): number[] {
  const steps = Math.round(fan.halfAngleDeg / fan.stepDeg);
  const isCircle = fan.halfAngleDeg >= 180;
  return Array.from(
    { length: 2 * steps + (isCircle ? 0 : 1) },
    (_, k) => middle + (k - steps) * fan.stepDeg * DEGREE,
  );
}

function isBadTarget(ground: HoleGround, target: Spot): boolean {
  const lie = lieAt(ground, target.x, target.y);
  return (
    lie === Lie.woods ||
    lie === Lie.outOfBounds ||
    isPenaltyArea(lie) ||
    !isOnRaster(ground, target.x, target.y)
  );
}

function addPartSwings(
  choices: Choice[],
  spread: ShotSpread,
  spreadIndex: number,
  law: ShotLaw,
  distance: number,
  toPin: number,
): void {
  const fits = (carryM: number): boolean => carryM >= SHORTEST_PART_M && carryM <= spread.carryMean;
  // Around the hole: a little short to a little long, and to either side by the same reach.
  const wanted = distance / (1 + law.runShare);
  const reach = Math.max(1.5, 0.05 * distance);
  for (const along of [-2, -1, 0, 1]) {
    const carryM = wanted + along * reach;
    if (!fits(carryM)) continue;
    for (const aside of [-1.5, 0, 1.5]) {
      choices.push({ spreadIndex, bearing: toPin + Math.atan2(aside * reach, distance), carryM });
    }
  }
}

function addWaysOut(choices: Choice[], spread: ShotSpread, spreadIndex: number, toPin: number): void {
  for (const carryM of [15, 35]) {
    if (carryM > spread.carryMean) continue;
    for (let k = 0; k < 16; k++) choices.push({ spreadIndex, bearing: toPin + (k * Math.PI) / 8, carryM });
  }
}

/** Choices near `choice`: a little left and right, and (part swings) a little shorter and longer. */
export function neighbouringChoices(player: PlayerModel, choice: Choice, stepRad: number): Choice[] {
  const near = [
    { ...choice, bearing: choice.bearing - stepRad },
    { ...choice, bearing: choice.bearing + stepRad },
  ];
  const spread = player.spreads[choice.spreadIndex]!;
  if (spread.swing === 'part') {
    for (const factor of [0.93, 1.07]) {
      const carryM = choice.carryM * factor;
      if (carryM >= SHORTEST_PART_M && carryM <= spread.carryMean) near.push({ ...choice, carryM });
    }
  }
  return near;
}

/** The point at the carry distance along the aim. */
export function aimSpot(from: Spot, choice: Choice): Spot {
  return {
    x: from.x + Math.sin(choice.bearing) * choice.carryM,
    y: from.y + Math.cos(choice.bearing) * choice.carryM,
  };
}

/** The choice behind a shot option. Throws a RangeError for an option that is no shot of this player. */
export function choiceOf({ player }: { readonly player: PlayerModel }, option: Option): Choice {
  const spreadIndex = player.spreads.findIndex(
    (spread) => spread.club.name === option.club && spread.swing === option.swing,
  );
  if (spreadIndex < 0)
    throw new RangeError(`Unexpected option: ${option.club} ${option.swing} is not in the bag.`);
  return { spreadIndex, bearing: option.aim.bearing, carryM: option.carryM };
}
