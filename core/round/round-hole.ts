/**
 * What a round and its cards need of one solved hole, as plain data that a worker can post: the plan from the tee, the
 * ledger of where strokes go, and the card.
 */

import { cardHole } from '../card/card-hole.ts';
import type { CardHole } from '../card/model.ts';
import type { Course } from '../course/model.ts';
import { planFromSpot } from '../plan/options.ts';
import { choiceOf } from '../plan/choices.ts';
import type { Convergence, Option, SpotPlan } from '../plan/model.ts';
import type { PreparedHole } from '../plan/prepare.ts';
import type { StrokesField } from '../plan/strokes-field.ts';
import { type Expectation, holeLedger, type HoleLedger } from './ledger.ts';
import { HolePlay } from './play-hole.ts';
import type { CardWishes } from '../card/card-hole.ts';

export interface RoundHoleWishes {
  /** Plays for the ledger; 0: none. */
  readonly plays: number;
  readonly peer?: Expectation;
  /** Units of a card; absent: no card. */
  readonly card?: Pick<CardWishes, 'units' | 'words'>;
}

export interface RoundHole {
  readonly hole: number;
  readonly par: number;
  readonly strokeIndex: number | null;
  readonly tee: string;
  readonly holePosition: string | null;
  readonly lengthM: number;
  readonly plan: SpotPlan;
  readonly convergence: Convergence;
  readonly ledger: HoleLedger | null;
  readonly card: CardHole | null;
}

export function roundHole(
  course: Course,
  prepared: PreparedHole,
  field: StrokesField,
  { plays, peer, card }: RoundHoleWishes,
): RoundHole {
  const plan = planFromSpot(prepared, field, prepared.tee);
  const play = new HolePlay(prepared, field, teePlanOf(prepared, plan));
  return {
    hole: prepared.hole.number,
    par: prepared.hole.par,
    strokeIndex: prepared.hole.strokeIndex ?? null,
    tee: prepared.teeName,
    holePosition: prepared.positionName,
    lengthM: prepared.lengthM,
    plan,
    convergence: field.convergence,
    ledger: plays === 0 ? null : holeLedger(play, plays, prepared.seed, peer ?? null),
    card: card === undefined ? null : cardHole(course, prepared, field, plan, card),
  };
}

/** The option that is recommended from the tee. Throws a RangeError where there is none: a tee that nothing is played from. */
export function recommendedOf(plan: SpotPlan): Option {
  const option = plan.options.find(({ id }) => id === plan.recommendation.optionId);
  if (option?.kind !== 'shot')
    throw new RangeError(`Unexpected plan of hole ${plan.hole}: no shot from its tee.`);
  return option;
}

/** The recommendation as `HolePlay` takes it. */
export function teePlanOf(prepared: PreparedHole, plan: SpotPlan) {
  const option = recommendedOf(plan);
  return { choice: choiceOf(prepared, option), expected: option.meanStrokes };
}

/** Another player's expectation on the hole, to hold the ledger against. */
export function expectationOf(prepared: PreparedHole, field: StrokesField): Expectation {
  const plan = planFromSpot(prepared, field, prepared.tee);
  return {
    fromTee: recommendedOf(plan).meanStrokes,
    from: (spot, lie) => field.valueAt(spot.x, spot.y, lie),
  };
}
