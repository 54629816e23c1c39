/**
 * What a ball lands and rolls on. Firm greens: the impacts of Penner 2002 as they were measured (on courses in England in the
 * summer of 1987, Haake); that those count as firm is our choice. They roll by the Stimpmeter. Everything else: common
 * practice, no source, chosen so that drives run about as far as course rating takes them (see the tests).
 */

import type { Firmness } from '../conditions/conditions.ts';
import { Lie } from '../ground/lies.ts';
import { rollDeceleration } from '../green/stimpmeter.ts';
import type { Turf } from './bounce.ts';

export interface RunGround {
  readonly turf: Turf;
  /** Deceleration of a rolling ball on the level, m/s²; infinite where it stays where it lands. */
  readonly rollMps2: number;
}

const FIRMNESS: Readonly<
  Record<Firmness, { readonly give: number; readonly bounce: number; readonly roll: number }>
> = {
  firm: { give: 1, bounce: 1, roll: 0.8 },
  medium: { give: 1.1, bounce: 0.92, roll: 1 },
  soft: { give: 1.25, bounce: 0.78, roll: 1.3 },
};

interface Kind extends Turf {
  /** Length of roll of a Stimpmeter release on medium ground, feet: how it would read there. */
  readonly readingFt: number;
}

const PLUGS: Kind = { give: 1, bounce: 0, glide: 0, readingFt: 0 };

/** By lie. A path is hard; sand, water and out of bounds end the way. */
const KINDS: Readonly<Record<number, Kind>> = {
  [Lie.fairway]: { give: 0.92, bounce: 1.04, glide: 0.99, readingFt: 4 },
  [Lie.tee]: { give: 1, bounce: 1, glide: 0.99, readingFt: 4 },
  [Lie.rough]: { give: 1.1, bounce: 0.8, glide: 0.85, readingFt: 1.6 },
  [Lie.longRough]: { give: 1.2, bounce: 0.5, glide: 0.6, readingFt: 0.5 },
  [Lie.woods]: { give: 1.1, bounce: 0.7, glide: 0.75, readingFt: 0.9 },
  [Lie.path]: { give: 0.1, bounce: 1.4, glide: 1, readingFt: 10 },
};

/** The ground of a lie. Bunkers, penalty areas and out of bounds hold the ball. */
export function runGround(lie: number, firmness: Firmness, greenSpeedFt: number): RunGround {
  const { give, bounce, roll } = FIRMNESS[firmness];
  if (lie === Lie.green)
    return { turf: { give, bounce, glide: 1 }, rollMps2: rollDeceleration(greenSpeedFt) };
  const kind = KINDS[lie] ?? PLUGS;
  return {
    turf: { give: give * kind.give, bounce: bounce * kind.bounce, glide: kind.glide },
    rollMps2: kind.readingFt === 0 ? Infinity : roll * rollDeceleration(kind.readingFt),
  };
}

/**
 * Chance that a ball plugs in a bunker: rises with the speed at which it comes down. Common practice, no source: a
 * chip never plugs, a high iron in soft sand often does.
 */
export function plugShare(downMps: number, firmness: Firmness): number {
  const softness = { firm: 0.15, medium: 0.3, soft: 0.55 }[firmness];
  return softness * Math.min(1, Math.max(0, (downMps - 10) / 12));
}
