/**
 * Out of a bunker a flight must clear the lip. Clubs that mostly do not are no sensible choice; a ball that strikes it all the
 * same falls back (`lip-strike.ts`).
 */

import { BALL_RADIUS_M } from '../flight/ball-flight.ts';
import { aimedShot } from '../flight/aimed-shot.ts';
import { heightAlong } from '../flight/flight-window.ts';
import type { ShotLaw } from '../flight/shot-law.ts';
import { bunkerAt, type LipAhead, lipAhead } from '../ground/bunker-lips.ts';
import type { HoleGround } from '../ground/hole-ground.ts';
import { Lie, type LieCode } from '../ground/lies.ts';
import { HEIGHT_SD_SHARE } from '../recovery/shot-heights.ts';
import type { LawBook } from './choices.ts';
import type { Choice, LipBlock, Spot } from './model.ts';
import { isPastHole } from './past-hole.ts';
import { isForTrees } from './tree-swings.ts';

/** Standard deviations of height that a shot must have to spare: five solid strikes in six clear the lip. */
const SPARE_SD = 1;

/** Does a solid strike clear the lip? It also does where it comes down in the sand before the edge. */
export function clearsLip(law: ShotLaw, bearing: number, carryM: number, lip: LipAhead): boolean {
  const shot = aimedShot(law, bearing);
  const carry = carryM * shot.carryFactor;
  if (carry <= lip.atM) return true;
  const height = heightAlong(shot.window, carry, lip.atM);
  return height * (1 - SPARE_SD * HEIGHT_SD_SHARE) >= lip.heightM + BALL_RADIUS_M;
}

/** Carries of a splash out where none towards the hole clears the lip, metres, and bearings tried all round. */
const SPLASH_OUT_M = [8, 15];
const SPLASH_BEARINGS = 16;

/**
 * Of the choices from a spot in a bunker those that clear its lip; where none does, short splashes to any side that do;
 * where none does either, the choices as they are.
 */
export function choicesOverLip(
  book: LawBook,
  ground: Pick<HoleGround, 'lips'>,
  spot: Spot,
  toPin: number,
  choices: Choice[],
): Choice[] {
  const clears = overLip(book, ground, spot, Lie.bunker);
  const clear = choices.filter(clears);
  if (clear.length > 0) return clear;
  const out = splashesOut(book, toPin).filter(clears);
  return out.length > 0 ? out : choices;
}

function splashesOut(book: LawBook, toPin: number): Choice[] {
  const { spreads } = book.player;
  const spreadIndex = spreads.findIndex(
    ({ swing, carryMean }, i) => swing === 'part' && book.lawOf(i, Lie.bunker, carryMean) !== null,
  );
  const spread = spreads[spreadIndex];
  if (spread === undefined) return [];
  return SPLASH_OUT_M.filter((carryM) => carryM <= spread.carryMean).flatMap((carryM) =>
    Array.from({ length: SPLASH_BEARINGS }, (_, k) => ({
      spreadIndex,
      bearing: toPin + (2 * k * Math.PI) / SPLASH_BEARINGS,
      carryM,
    })),
  );
}

/** A question to each choice from this spot; true for all of them off the sand. */
export function overLip(
  book: LawBook,
  ground: Pick<HoleGround, 'lips'>,
  { x, y }: Spot,
  lie: LieCode,
): (choice: Choice) => boolean {
  const bunker = lie === Lie.bunker ? bunkerAt(ground.lips ?? [], x, y) : undefined;
  if (bunker === undefined || bunker.heightM === 0) return () => true;
  return ({ spreadIndex, bearing, carryM }) => {
    const lip = lipAhead(bunker, x, y, bearing);
    const law = lip === null ? null : book.lawOf(spreadIndex, lie, carryM);
    return lip === null || law === null || clearsLip(law, bearing, law.carryMean, lip);
  };
}

/** Full swings that would be tried from this sand straight at the hole but for the lip. */
export function lipBlocks(
  book: LawBook,
  ground: Pick<HoleGround, 'lips'>,
  { x, y }: Spot,
  lie: LieCode,
  pin: Spot,
): readonly LipBlock[] {
  const bunker = lie === Lie.bunker ? bunkerAt(ground.lips ?? [], x, y) : undefined;
  const bearing = Math.atan2(pin.x - x, pin.y - y);
  const lip = bunker === undefined ? null : lipAhead(bunker, x, y, bearing);
  if (lip === null) return [];
  const distanceM = Math.hypot(pin.x - x, pin.y - y);
  return book.player.spreads.flatMap(({ club, swing, carryMean }, spreadIndex): LipBlock[] => {
    if (swing === 'part' || isForTrees(swing)) return [];
    const law = book.lawOf(spreadIndex, lie, carryMean);
    if (law === null || isPastHole(law.carryMean, distanceM) || clearsLip(law, bearing, law.carryMean, lip))
      return [];
    return [{ club: club.name, swing, lipM: lip.heightM, atM: lip.atM }];
  });
}
