/**
 * The options that compete at a spot, valued anew under another day: each club with its aim, the aim that wind asks for
 * instead, and a few beside it, on the same shots for all clubs and all days, and on the same strokes-to-hole-out field.
 */

import type { Conditions } from '../conditions/conditions.ts';
import { aimedShot } from '../flight/aimed-shot.ts';
import { type BagFlights, bagFlights } from '../flight/bag-flights.ts';
import type { LieCode } from '../ground/lies.ts';
import type { ShotDraws } from '../random/shot-draws.ts';
import { overLip } from './bunker-lip.ts';
import { choiceOf, LawBook, otherLengths, SHORTEST_PART_M } from './choices.ts';
import type { ChoiceEvaluator, Tally } from './evaluate.ts';
import { type BatchedMean, meansOf } from './measure-choice.ts';
import type { Choice, Option, Spot } from './model.ts';
import type { PreparedHole } from './prepare.ts';
import { aimAlong, shotTurn } from './shot-turn.ts';

/** Aims tried beside the one that the wind asks for, degrees. */
const ASIDE_DEG = [-3, -1.5, 1.5, 3];
/** Batches of shots on which the aims of a club are held against each other; the best is then measured on all. */
const SEARCH_BATCHES = 2;
/** Clubs that compete with the recommended one: so many of the cheapest, and of the next longer and the next shorter. */
const CHEAPEST_RIVALS = 3;
const NEXT_CLUBS = 2;

export interface Contest {
  readonly prepared: PreparedHole;
  readonly spot: Spot;
  readonly lie: LieCode;
  readonly ownValue: number;
  /** One batch of draws for each valuation of the field. */
  readonly batches: readonly ShotDraws[];
  /** The recommended one first. */
  readonly choices: readonly Choice[];
}

/** What one club costs under a day. */
export interface Entry extends BatchedMean {
  /** With the best of its aims. */
  readonly choice: Choice;
  /** Of the aim that is planned with today. */
  readonly kept: BatchedMean;
}

/** The choices of the recommended option and its rivals; empty where a putt or a drop is recommended. */
export function competingChoices(
  prepared: PreparedHole,
  options: readonly Option[],
  recommendedId: string,
): readonly Choice[] {
  const swings = options.filter(({ kind, clubKind }) => kind === 'shot' && clubKind !== 'putter');
  const recommended = swings.find(({ id }) => id === recommendedId);
  if (recommended === undefined) return [];
  const others = swings.filter((option) => option !== recommended);
  const cheapest = others.slice(0, CHEAPEST_RIVALS);
  const byCarry = others.filter(({ swing }) => swing === recommended.swing);
  const longer = byCarry.filter(({ carryM }) => carryM > recommended.carryM);
  const shorter = byCarry.filter(({ carryM }) => carryM <= recommended.carryM);
  longer.sort((a, b) => a.carryM - b.carryM);
  shorter.sort((a, b) => b.carryM - a.carryM);
  const rivals = [...cheapest, ...longer.slice(0, NEXT_CLUBS), ...shorter.slice(0, NEXT_CLUBS)];
  return [recommended, ...new Set(rivals)].map((option) => choiceOf(prepared, option));
}

/** The laws of these clubs alone on a day; yields between clubs, since flights in wind take a moment. */
export function* lawsOfDay(
  { prepared: { player }, choices }: Contest,
  conditions: Conditions,
): Generator<null, LawBook, void> {
  const flights: BagFlights['flights'][number][] = [];
  for (const { spreadIndex } of choices) {
    if (flights[spreadIndex] !== undefined) continue;
    yield null;
    flights[spreadIndex] = bagFlights([player.spreads[spreadIndex]!], conditions).flights[0]!;
  }
  return new LawBook(player, { conditions, flights });
}

/** What each club costs under the laws of `book`, in the order of the contest; null where it cannot be played. */
export function* valueContest(
  contest: Contest,
  book: LawBook,
  evaluators: readonly ChoiceEvaluator[],
): Generator<null, readonly (Entry | null)[], void> {
  const entries: (Entry | null)[] = [];
  for (const planned of contest.choices) {
    yield null;
    const asked = turnedToDay(contest, planned, book);
    const tried = [asked, ...besides(contest, asked)];
    let best = asked;
    let least = Infinity;
    for (const choice of tried) {
      const value = valueOn(contest, book, evaluators, choice, SEARCH_BATCHES)?.meanStrokes ?? Infinity;
      if (value < least) [best, least] = [choice, value];
    }
    const all = contest.batches.length;
    const kept = valueOn(contest, book, evaluators, planned, all);
    const measured = valueOn(contest, book, evaluators, best, all);
    if (kept === null || measured === null) entries.push(null);
    else if (kept.meanStrokes <= measured.meanStrokes) entries.push({ choice: planned, ...kept, kept });
    else entries.push({ choice: best, ...measured, kept });
  }
  return entries;
}

/** The choice that starts so that it comes down where the planned one does today; a part swing as far, too. */
function turnedToDay({ prepared, spot, lie }: Contest, planned: Choice, book: LawBook): Choice {
  const { ground } = prepared;
  const { spreadIndex } = planned;
  const today = prepared.book.lawOf(spreadIndex, lie, planned.carryM);
  const law = book.lawOf(spreadIndex, lie, planned.carryM);
  if (today === null || law === null) return planned;
  const landing = planned.bearing + shotTurn(ground, spot.x, spot.y, today, planned.bearing);
  const bearing = aimAlong(ground, spot.x, spot.y, law, landing);
  const spread = prepared.player.spreads[spreadIndex]!;
  if (spread.swing !== 'part') return { ...planned, bearing };
  const factor = aimedShot(today, planned.bearing).carryFactor / aimedShot(law, bearing).carryFactor;
  const carryM = Math.min(spread.carryMean, Math.max(SHORTEST_PART_M, planned.carryM * factor));
  return { ...planned, bearing, carryM };
}

function besides({ prepared, spot, lie }: Contest, choice: Choice): readonly Choice[] {
  const turned = ASIDE_DEG.map((degrees) => ({
    ...choice,
    bearing: choice.bearing + (degrees * Math.PI) / 180,
  }));
  const clears = overLip(prepared.book, prepared.ground, spot, lie);
  return [...turned, ...otherLengths(prepared.player, choice)].filter(clears);
}

/** On the first so many batches; null where the club is not played from there or almost surely has to be replayed. */
function valueOn(
  { spot, lie, ownValue, batches }: Contest,
  book: LawBook,
  evaluators: readonly ChoiceEvaluator[],
  { spreadIndex, carryM, bearing }: Choice,
  count: number,
): BatchedMean | null {
  const law = book.lawOf(spreadIndex, lie, carryM);
  if (law === null) return null;
  const tallies = batches.slice(0, count).map((draws, b) => {
    const tally: Tally = { sum: 0, replays: 0, count: 0 };
    evaluators[b]!.addShots(spot, law, bearing, draws, 0, draws.count, ownValue, tally);
    return tally;
  });
  return meansOf(tallies);
}
