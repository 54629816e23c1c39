/** What a choice costs from a spot: samples its shots and adds up what follows, penalties by the Rules included. */

import type { ShotLaw } from '../flight/shot-law.ts';
import { isPenaltyArea } from '../ground/hole-ground.ts';
import { Lie, type LieCode } from '../ground/lies.ts';
import type { ShotDraws } from '../random/shot-draws.ts';
import type { LawBook } from './choices.ts';
import type { Choice, Spot } from './model.ts';
import { PenaltyRelief, type ReliefSpot } from './relief.ts';
import { ShotResolver } from './resolve-shot.ts';
import { BATCH_SHOTS, BY_TREE } from './batch-shots.ts';
import { ShotBatch } from './shot-batch.ts';
import type { StrokesField } from './strokes-field.ts';

/** Where play goes on after a shot. `replay`: stroke and distance, from where it was played. */
export interface NextState {
  replay: boolean;
  x: number;
  y: number;
  lie: number;
  /** Strokes added besides the shot itself. */
  penalty: number;
  /** Expected strokes from there, penalty included; for a replay not known here. */
  value: number;
}

/** A choice's shots so far. `replays` are counted apart because their cost is the choice's own value. */
export interface Tally {
  sum: number;
  replays: number;
  count: number;
}

/** Lies from this code on cost a penalty or a replay. */
const FIRST_PENALISED: number = Lie.penaltyYellow;
/** More replays than this and a choice has no finite value worth naming. */
const MOST_REPLAYS = 0.9;

export class ChoiceEvaluator {
  readonly resolver: ShotResolver;
  readonly relief: PenaltyRelief;
  readonly batch: ShotBatch;
  /** Model Local Rule E-5. */
  private readonly mayDropForLost: boolean;
  readonly next: NextState = { replay: false, x: 0, y: 0, lie: 0, penalty: 0, value: 0 };

  constructor(
    readonly field: StrokesField,
    readonly book: LawBook,
  ) {
    this.resolver = new ShotResolver(field.ground);
    this.batch = new ShotBatch(field.ground);
    this.relief = new PenaltyRelief(field);
    this.mayDropForLost = book.flights.conditions.rules.strokeAndDistanceAlternative;
  }

  /** Plays shot `i`; `next` says where play goes on. `ownValue`: what a replay would cost, NaN where not yet known. */
  play(spot: Spot, law: ShotLaw, bearing: number, draws: ShotDraws, i: number, ownValue: number): NextState {
    const { resolver } = this;
    resolver.resolve(spot.x, spot.y, law, bearing, draws, i);
    return this.after(spot, resolver.endX, resolver.endY, resolver.endLie, ownValue);
  }

  /** Where play goes on after a ball from `spot` that ended at (x, y) in `lie`. */
  private after(spot: Spot, x: number, y: number, lie: number, ownValue: number): NextState {
    const { next } = this;
    next.replay = false;
    next.penalty = 0;
    next.x = x;
    next.y = y;
    next.lie = lie;
    if (next.lie === Lie.outOfBounds) {
      if (this.mayDropForLost) {
        const drop = this.relief.forLostBall(spot.x, spot.y, next.x, next.y);
        // Where the cost of a replay is not known yet the drop is taken: it counts two strokes and no distance lost.
        if (drop.total !== Infinity && !(drop.total > 1 + ownValue)) return this.takeDrop(drop);
      }
      next.replay = true;
      next.penalty = 1;
      return next;
    }
    if (isPenaltyArea(next.lie)) {
      const drop = this.relief.forBall(spot.x, spot.y, next.x, next.y, next.lie);
      // Stroke and distance is always allowed (17.1d); taken where it is known to be cheaper or nothing else is.
      if (drop.total === Infinity || drop.total > 1 + ownValue) {
        next.replay = true;
        next.penalty = 1;
        return next;
      }
      return this.takeDrop(drop);
    }
    next.value = this.field.valueAt(next.x, next.y, next.lie);
    return next;
  }

  private takeDrop(drop: ReliefSpot): NextState {
    const { next } = this;
    next.x = drop.x;
    next.y = drop.y;
    next.lie = drop.lie;
    next.penalty = drop.penalty;
    next.value = drop.total;
    return next;
  }

  /** Plays shots `from` .. `to - 1` of the draws; `visit` is told where play goes on after each, and what the shot met. */
  playEach(
    spot: Spot,
    law: ShotLaw,
    bearing: number,
    draws: ShotDraws,
    from: number,
    to: number,
    ownValue: number,
    visit: (next: NextState, endLie: number, stoppedByTree: boolean) => void,
  ): void {
    const { endX, endY, endLie, stopped } = this.batch.shots;
    for (let first = from; first < to; first += BATCH_SHOTS) {
      const end = Math.min(to, first + BATCH_SHOTS);
      this.batch.play(spot.x, spot.y, law, bearing, draws, first, end);
      for (let k = 0; k < end - first; k++) {
        visit(this.after(spot, endX[k]!, endY[k]!, endLie[k]!, ownValue), endLie[k]!, stopped[k] === BY_TREE);
      }
    }
  }

  /** Adds shots `from` .. `to - 1` of the draws to the tally. */
  addShots(
    spot: Spot,
    law: ShotLaw,
    bearing: number,
    draws: ShotDraws,
    from: number,
    to: number,
    ownValue: number,
    tally: Tally,
  ): void {
    for (let first = from; first < to; first += BATCH_SHOTS) {
      const end = Math.min(to, first + BATCH_SHOTS);
      this.batch.play(spot.x, spot.y, law, bearing, draws, first, end);
      this.addEnds(spot, 0, end - first, ownValue, this.field, tally);
    }
    tally.count += to - from;
  }

  /**
   * Plays all the draws once and values each of as many equal groups as there are `fields` by one of them, into `tallies`
   * (overwritten). Drops are taken where this evaluator's own field says.
   */
  addGroups(
    spot: Spot,
    law: ShotLaw,
    bearing: number,
    draws: ShotDraws,
    ownValue: number,
    fields: readonly StrokesField[],
    tallies: readonly Tally[],
  ): void {
    const { batch } = this;
    const size = draws.count / fields.length;
    const perBatch = Math.max(1, Math.floor(BATCH_SHOTS / size));
    for (let first = 0; first < fields.length; first += perBatch) {
      const groups = Math.min(perBatch, fields.length - first);
      batch.play(spot.x, spot.y, law, bearing, draws, first * size, (first + groups) * size);
      for (let group = 0; group < groups; group++) {
        const field = fields[first + group]!;
        const tally = tallies[first + group]!;
        tally.sum = 0;
        tally.replays = 0;
        tally.count = size;
        this.addEnds(spot, group * size, (group + 1) * size, ownValue, field, tally);
      }
    }
  }

  /** What follows shots `from` .. `to - 1` of the batch, valued by `field`; drops are taken where the evaluator's own says. */
  private addEnds(
    spot: Spot,
    from: number,
    to: number,
    ownValue: number,
    field: StrokesField,
    tally: Tally,
  ): void {
    const { endX, endY, endLie } = this.batch.shots;
    let sum = 0;
    for (let k = from; k < to; k++) {
      const lie = endLie[k]!;
      if (lie < FIRST_PENALISED) {
        sum += field.valueAt(endX[k]!, endY[k]!, lie);
        continue;
      }
      const next = this.after(spot, endX[k]!, endY[k]!, lie, ownValue);
      if (next.replay) tally.replays++;
      // Of its own field the value of a drop is known.
      else sum += field === this.field ? next.value : next.penalty + field.valueAt(next.x, next.y, next.lie);
    }
    tally.sum += sum;
  }

  /**
   * Value of one choice by `draws`, or Infinity where it cannot be played from the lie.
   * With a share p of replays, V = 1 + sum of the rest + p (1 + V), so V = (1 + p + rest) / (1 - p).
   */
  valueOf(spot: Spot, lie: LieCode, choice: Choice, draws: ShotDraws, ownValue: number): number {
    const law = this.book.lawOf(choice.spreadIndex, lie, choice.carryM);
    if (law === null) return Infinity;
    const tally: Tally = { sum: 0, replays: 0, count: 0 };
    this.addShots(spot, law, choice.bearing, draws, 0, draws.count, ownValue, tally);
    return valueOfTally(tally);
  }

  /**
   * The choices that look best, best first, at most `keep`: all are tried on the first few draws, and the better part
   * goes on to twice as many (successive halving; the draws are common to all). `tried`: others that a search with the same
   * effort ended on, which need no second trial.
   */
  bestOf(
    spot: Spot,
    lie: LieCode,
    choices: readonly Choice[],
    draws: ShotDraws,
    ownValue: number,
    keep: number,
    { sureDraws = SURE_DRAWS, firstDraws = FIRST_DRAWS, mostDraws = draws.count }: SearchEffort = {},
    tried: readonly RankedChoice[] = [],
  ): RankedChoice[] {
    let ranked: RankedChoice[] = [];
    for (const choice of choices) {
      const law = this.book.lawOf(choice.spreadIndex, lie, choice.carryM);
      if (law !== null)
        ranked.push({ choice, law, tally: { sum: 0, replays: 0, count: 0 }, value: Infinity });
    }
    let done = 0;
    let upTo = Math.min(firstDraws, draws.count);
    for (;;) {
      for (const entry of ranked) {
        this.addShots(spot, entry.law, entry.choice.bearing, draws, done, upTo, ownValue, entry.tally);
        entry.value = valueOfTally(entry.tally);
      }
      ranked.sort((a, b) => a.value - b.value);
      if (upTo >= mostDraws) break;
      ranked = ranked.slice(
        0,
        Math.max(keep, upTo < sureDraws ? FEWEST_IN_DOUBT : 0, Math.ceil(ranked.length * KEPT_SHARE)),
      );
      done = upTo;
      upTo = Math.min(draws.count, upTo * 2);
    }
    return tried.length === 0
      ? ranked.slice(0, keep)
      : [...tried, ...ranked].sort((a, b) => a.value - b.value).slice(0, keep);
  }
}

/** How much a search for the best choices looks at. */
export interface SearchEffort {
  readonly firstDraws?: number;
  /** From so many draws on the order of the choices is trusted. */
  readonly sureDraws?: number;
  readonly mostDraws?: number;
}

const FIRST_DRAWS = 8;
const KEPT_SHARE = 0.3;
/** On fewer draws than this no fewer than so many choices go on: their order is still mostly chance. */
const SURE_DRAWS = 128;
const FEWEST_IN_DOUBT = 4;

export interface RankedChoice {
  readonly choice: Choice;
  readonly law: ShotLaw;
  readonly tally: Tally;
  value: number;
}

export function valueOfTally(tally: Tally): number {
  const p = tally.replays / tally.count;
  if (p > MOST_REPLAYS) return Infinity;
  return (1 + p + tally.sum / tally.count) / (1 - p);
}
