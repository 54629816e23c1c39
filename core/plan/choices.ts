/** Which clubs and aims are worth trying from a spot, and the cached laws of their shots. */

import type { BagFlights } from '../flight/bag-flights.ts';
import { shotLaw, type ShotLaw } from '../flight/shot-law.ts';
import { isOnRaster, isPenaltyArea, lieAt, type HoleGround } from '../ground/hole-ground.ts';
import { Lie, type LieCode } from '../ground/lies.ts';
import type { PlayerModel, ShotSpread } from '../player/model.ts';
import { choicesOverLip } from './bunker-lip.ts';
import { carryToStop } from './finish.ts';
import type { Choice, Option, Spot } from './model.ts';
import { isPastHole } from './past-hole.ts';
import { shotTurn } from './shot-turn.ts';
import { isIdleSwing } from './tree-swings.ts';

const DEGREE = Math.PI / 180;
/** Shortest part swing that is planned, metres of carry. */
export const SHORTEST_PART_M = 1;
/** Laws are kept for carries in steps of a metre, of chips in steps of a quarter: they run as far again. */
const CHIP_M = 16;
const STEPS_PER_M = 4;

function keptCarry(carryM: number): number {
  if (carryM <= SHORTEST_PART_M) return SHORTEST_PART_M;
  return carryM < CHIP_M ? Math.round(STEPS_PER_M * carryM) / STEPS_PER_M : Math.round(carryM);
}

/** Laws of a player's shots on a day by spread, lie and carry (rounded; exact laws differ by less than a spread's doubt). */
export class LawBook {
  private readonly laws = new Map<number, ShotLaw | null>();
  private readonly fullLaws: (ShotLaw | null | undefined)[] = [];

  /** `flights`: those of the day, one for each of the player's spreads or ones a little different. */
  constructor(
    readonly player: PlayerModel,
    readonly flights: BagFlights,
  ) {}

  lawOf(spreadIndex: number, lie: LieCode, carryM: number): ShotLaw | null {
    const spread = this.player.spreads[spreadIndex]!;
    if (spread.swing !== 'part') {
      const at = spreadIndex * 16 + lie;
      const known = this.fullLaws[at];
      if (known !== undefined) return known;
      const made = shotLaw(this.player, spreadIndex, lie, 0, this.flights);
      this.fullLaws[at] = made;
      return made;
    }
    const metres = keptCarry(carryM);
    const key = (spreadIndex * 16 + lie) * 4096 + STEPS_PER_M * metres;
    let law = this.laws.get(key);
    if (law === undefined) {
      law = shotLaw(this.player, spreadIndex, lie, metres, this.flights);
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
 * short ways out. Spreads that the lie forbids are left out. Where none is sensible, the shortest that the bag has.
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
    const turn = shotTurn(ground, spot.x, spot.y, law, toPin);
    if (spread.swing === 'part') {
      addPartSwings(
        choices,
        spread,
        spreadIndex,
        (distanceM) => carryToStop(book, spreadIndex, lie, distanceM),
        distance,
        toPin - turn,
      );
      // One club is enough for short ways out of trees or back to good ground: the lowest-flying one.
      if (inTrees && !hasWaysOut) addWaysOut(choices, spread, spreadIndex, toPin);
      hasWaysOut = true;
      return;
    }
    if (isPastHole(law.carryMean, distance)) return;
    if (isIdleSwing(spread.swing, ground, spot, lie, toPin)) return;
    const aims = fanOfAims(fan, toPin - turn).map(
      (bearing): Choice => ({ spreadIndex, bearing, carryM: law.carryMean }),
    );
    choices.push(...onGoodGround(ground, spot, turn, aims));
  });
  if (choices.length === 0) choices.push(...shortestChoices(book, ground, spot, lie, toPin, fan));
  return lie === Lie.bunker ? choicesOverLip(book, ground, spot, toPin, choices) : choices;
}

/**
 * For a bag with nothing of the length: its shortest swing that flies past, and part swings as long as they go. The ball is
 * played somewhere, and the hole has a finite cost.
 */
function shortestChoices(
  book: LawBook,
  ground: HoleGround,
  spot: Spot,
  lie: LieCode,
  toPin: number,
  fan: AimFan,
): Choice[] {
  let shortest = Infinity;
  const played = book.player.spreads.flatMap(({ swing, carryMean }, spreadIndex) => {
    const law = book.lawOf(spreadIndex, lie, carryMean);
    if (law === null) return [];
    if (swing !== 'part') shortest = Math.min(shortest, law.carryMean);
    return [{ spreadIndex, swing, law }];
  });
  return played
    .filter(({ swing, law }) => swing === 'part' || law.carryMean === shortest)
    .flatMap(({ spreadIndex, law }) => {
      const turn = shotTurn(ground, spot.x, spot.y, law, toPin);
      const aims = fanOfAims(fan, toPin - turn).map(
        (bearing): Choice => ({ spreadIndex, bearing, carryM: law.carryMean }),
      );
      return onGoodGround(ground, spot, turn, aims);
    });
}

/** A full swing that is to come down in trees, water, out of bounds or off the map is not sensible while another is to be had. */
function onGoodGround(
  ground: HoleGround,
  spot: Spot,
  turn: number,
  aims: readonly Choice[],
): readonly Choice[] {
  const dry = aims.filter(
    (choice) => !isBadTarget(ground, aimSpot(spot, { ...choice, bearing: choice.bearing + turn })),
  );
  return dry.length > 0 ? dry : aims;
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
  carryOf: (distanceM: number) => number | null,
  distance: number,
  toPin: number,
): void {
  // Around the hole: a little short to a little long, and to either side by the same reach.
  const reach = Math.max(1.5, 0.05 * distance);
  for (const along of [-2, -1, 0, 1]) {
    const wanted = carryOf(Math.max(SHORTEST_PART_M, distance + along * reach));
    if (wanted === null || wanted > spread.carryMean) continue;
    const carryM = Math.max(SHORTEST_PART_M, wanted);
    for (const aside of [-1.5, 0, 1.5]) {
      choices.push({ spreadIndex, bearing: toPin + Math.atan2(aside * reach, distance), carryM });
    }
  }
}

function addWaysOut(choices: Choice[], spread: ShotSpread, spreadIndex: number, toPin: number): void {
  for (const carryM of [15, 35]) choices.push(...waysOut(spread, spreadIndex, toPin, carryM, 16));
}

function waysOut(
  spread: ShotSpread,
  spreadIndex: number,
  toPin: number,
  carryM: number,
  count: number,
): Choice[] {
  if (carryM > spread.carryMean) return [];
  return Array.from({ length: count }, (_, k) => ({
    spreadIndex,
    bearing: toPin + (2 * k * Math.PI) / count,
    carryM,
  }));
}

/** A few short ways out of trees, for a node whose neighbours' ways may be blocked. */
export function fewWaysOut({ player }: LawBook, spot: Spot, pin: Spot): Choice[] {
  const spreadIndex = player.spreads.findIndex(({ swing }) => swing === 'part');
  const spread = player.spreads[spreadIndex];
  if (spread === undefined) return [];
  return waysOut(spread, spreadIndex, Math.atan2(pin.x - spot.x, pin.y - spot.y), 15, 8);
}

/** Choices near `choice`: a little left and right, and (part swings) a little shorter and longer. */
export function neighbouringChoices(player: PlayerModel, choice: Choice, stepRad: number): Choice[] {
  return [
    { ...choice, bearing: choice.bearing - stepRad },
    { ...choice, bearing: choice.bearing + stepRad },
    ...otherLengths(player, choice),
  ];
}

/** A part swing a little shorter and a little longer; none of other swings. */
export function otherLengths(player: PlayerModel, choice: Choice): Choice[] {
  const spread = player.spreads[choice.spreadIndex]!;
  if (spread.swing !== 'part') return [];
  return [0.93, 1.07]
    .map((factor) => choice.carryM * factor)
    .filter((carryM) => carryM >= SHORTEST_PART_M && carryM <= spread.carryMean)
    .map((carryM) => ({ ...choice, carryM }));
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
