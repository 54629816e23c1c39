/** Where playing to an aim departs from the lowest mean, in words: “two strokes in hand on 17”. */

import type { Words } from '../words/words.ts';
import type { Aim } from './aim.ts';
import { meanOf } from './distribution.ts';
import type { HoleChoices, Standing, TargetPlan } from './play-to-target.ts';

/** One standing in which the best choice for the aim is not the one with the lowest mean. */
export interface Departure {
  readonly hole: number;
  readonly count: number;
  /** Strokes: what is left to spend beyond what the rest costs on average, rounded. Points and holes up: the count itself. */
  readonly inHand: number;
  readonly take: string;
  readonly insteadOf: string;
  readonly chance: number;
  readonly chanceByLowestMean: number;
  readonly gain: number;
  /** Chance that the round stands like this when the hole is reached. */
  readonly reach: number;
  /** Strokes that the choice costs on average. */
  readonly cost: number;
}

/** A gain smaller than this is not worth remembering on a tee. */
export const LEAST_GAIN = 0.003;
/** A standing rarer than this is not worth printing. */
export const LEAST_REACH = 0.01;

/** The departures worth knowing, the most valuable over many rounds (gain x reach) first. */
export function departuresOf(
  holes: readonly HoleChoices[],
  plan: TargetPlan,
  leastGain = LEAST_GAIN,
  leastReach = LEAST_REACH,
): readonly Departure[] {
  const means = holes.map(({ options }, i) => meanOf(options[plan.holes[i]!.lowestMean]!.scores));
  const departures = plan.holes.flatMap(({ hole, lowestMean, standings }, index) => {
    const { options } = holes[index]!;
    const rest = means.slice(index).reduce((sum, mean) => sum + mean, 0);
    return standings
      .filter((standing) => isDeparture(standing, lowestMean, leastGain, leastReach))
      .map((standing): Departure => {
        const take = options[standing.option]!;
        const plain = options[lowestMean]!;
        return {
          hole,
          count: standing.count,
          inHand: plan.aim.kind === 'score' ? Math.round(standing.count - rest) : standing.count,
          take: take.id,
          insteadOf: plain.id,
          chance: standing.chance,
          chanceByLowestMean: standing.chanceByLowestMean,
          gain: standing.chance - standing.chanceByLowestMean,
          reach: standing.reach,
          cost: meanOf(take.scores) - meanOf(plain.scores),
        };
      });
  });
  return departures.sort((a, b) => b.gain * b.reach - a.gain * a.reach);
}

function isDeparture(
  { option, chance, chanceByLowestMean, reach }: Standing,
  lowestMean: number,
  leastGain: number,
  leastReach: number,
): boolean {
  return option !== lowestMean && chance - chanceByLowestMean >= leastGain && reach >= leastReach;
}

/** `nameOf` gives an option's name by its id. */
export function departureWords(
  departure: Departure,
  aim: Aim,
  words: Words,
  nameOf: (id: string) => string,
): string {
  const { hole, take, insteadOf, chance, chanceByLowestMean, count } = departure;
  const told = words.round.departure;
  return told.line({
    standing: standingWords(departure, aim, words),
    hole,
    // The count itself, which needs no rounding.
    left: aim.kind === 'score' ? ` ${told.left({ count })}` : '',
    take: nameOf(take),
    insteadOf: nameOf(insteadOf),
    chance: percent(chance, words),
    lowest: percent(chanceByLowestMean, words),
  });
}

function standingWords({ inHand }: Departure, aim: Aim, words: Words): string {
  const told = words.round.departure;
  switch (aim.kind) {
    case 'score':
      if (inHand === 0) return told.level;
      return inHand > 0 ? told.inHand({ count: inHand }) : told.toMakeUp({ count: -inHand });
    case 'stableford':
      return told.points({ count: inHand });
    case 'match':
      if (inHand === 0) return told.allSquare;
      return inHand > 0 ? told.up({ count: inHand }) : told.down({ count: -inHand });
  }
}

function percent(chance: number, { figures }: Words): string {
  return `${figures.fixed(100 * chance, 1)} %`;
}
