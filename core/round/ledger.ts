/**
 * Where strokes go: by kind of stroke and by hole, on average over many plays of the plan, and what each kind gains or
 * loses against another player's expectation on the same holes (strokes gained, Broadie 2012).
 */

import type { LieCode, LieName } from '../ground/lies.ts';
import { LIE_NAMES } from '../ground/lies.ts';
import type { Spot } from '../plan/model.ts';
import { LuckSource } from './luck.ts';
import { type HolePlay, type PlayedHole, playHole, SHOT_CLASSES, type ShotClass } from './play-hole.ts';

export type LedgerKind = ShotClass | 'penalty';
export const LEDGER_KINDS: readonly LedgerKind[] = [...SHOT_CLASSES, 'penalty'];

/** Somebody's expected strokes to hole out on one hole. */
export interface Expectation {
  /** From the tee used. */
  readonly fromTee: number;
  readonly from: (spot: Spot, lie: LieCode) => number;
}

/** What one hole's plays came to, per kind: sums over plays, and sums of squares for standard errors. */
export interface HoleLedger {
  readonly hole: number;
  readonly par: number;
  readonly plays: number;
  readonly score: Tally;
  readonly strokes: Readonly<Record<LedgerKind, Tally>>;
  /** Strokes gained on the own expectation; their spread is what makes scores go up and down. */
  readonly gainedOnPlan: Readonly<Record<LedgerKind, Tally>>;
  /** On the peer's expectation, penalties with the stroke that led to them; null without a peer. */
  readonly gainedOnPeer: Readonly<Record<ShotClass, Tally>> | null;
  readonly threePutts: Tally;
  readonly greensInRegulation: Tally;
  readonly penaltyBalls: Tally;
}

/** Mean per play, its standard error, and the standard deviation of one play. */
export interface Tally {
  readonly mean: number;
  readonly standardError: number;
  readonly sd: number;
}

/** Plays the hole `plays` times by its own plan. Same seed, same numbers. */
export function holeLedger(
  play: HolePlay,
  plays: number,
  seed: string,
  peer: Expectation | null = null,
): HoleLedger {
  const steps = holeLedgerSteps(play, plays, seed, peer);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** Plays between two breaths: a few milliseconds. */
const PLAYS_PER_STEP = 50;

/** The same in steps, for a caller that reports, answers and cancels between them; each yields the plays done. */
export function* holeLedgerSteps(
  play: HolePlay,
  plays: number,
  seed: string,
  peer: Expectation | null = null,
): Generator<number, HoleLedger, void> {
  const source = new LuckSource(seed, play.prepared.hole.number);
  const sums = new Sums(plays);
  for (let round = 0; round < plays; round++) {
    if (round % PLAYS_PER_STEP === 0) yield round;
    sums.add(round, playHole(play, source.hole(round)), peer);
  }
  return sums.ledger(play.prepared.hole.number, play.prepared.hole.par, peer !== null);
}

/** The same of a hole that was really played, or of any plays at hand. */
export function ledgerOfPlays(
  hole: number,
  par: number,
  played: readonly PlayedHole[],
  peer: Expectation | null = null,
): HoleLedger {
  const sums = new Sums(played.length);
  played.forEach((one, round) => sums.add(round, one, peer));
  return sums.ledger(hole, par, peer !== null);
}

class Sums {
  private readonly columns = new Map<string, Float64Array>();

  constructor(private readonly plays: number) {}

  private put(name: string, round: number, value: number): void {
    let column = this.columns.get(name);
    if (column === undefined) this.columns.set(name, (column = new Float64Array(this.plays)));
    column[round] = column[round]! + value;
  }

  add(round: number, played: PlayedHole, peer: Expectation | null): void {
    let putts = 0;
    let strokesBeforeGreen = 0;
    let cause: LedgerKind = 'tee';
    for (const shot of played.shots) {
      const kind: LedgerKind = shot.shotClass ?? 'penalty';
      if (shot.kind === 'putt') putts++;
      else strokesBeforeGreen += shot.penalty + (shot.kind === 'drop' ? 0 : 1);
      if (shot.kind !== 'drop') this.put(`strokes ${kind}`, round, 1);
      if (shot.penalty > 0) {
        this.put('strokes penalty', round, shot.penalty);
        this.put('penalty balls', round, 1);
      }
      // A penalty is its own line; the stroke that led to it keeps the loss of place.
      this.put(`plan ${kind}`, round, shot.gained + shot.penalty);
      this.put('plan penalty', round, -shot.penalty);
      if (peer === null) continue;
      // The peer's expectation holds the peer's own penalties, so here a penalty stays with the stroke that led to it.
      if (shot.shotClass !== null) cause = shot.shotClass;
      const isStart = shot.fromLie === 'tee' && sameSpot(shot.from, played.shots[0]!.from);
      const start = isStart ? peer.fromTee : peer.from(shot.from, codeOf(shot.fromLie));
      const end =
        shot.next === null ? 0 : shot.next.onTee ? peer.fromTee : peer.from(shot.next.spot, shot.next.lie);
      this.put(`peer ${cause}`, round, start - end - (shot.kind === 'drop' ? 0 : 1) - shot.penalty);
    }
    this.put('score', round, played.score);
    this.put('three putts', round, putts >= 3 ? 1 : 0);
    this.put('regulation', round, putts > 0 && strokesBeforeGreen <= played.par - 2 ? 1 : 0);
  }

  ledger(hole: number, par: number, withPeer: boolean): HoleLedger {
    const by = <Kind extends LedgerKind>(kinds: readonly Kind[], prefix: string) =>
      Object.fromEntries(kinds.map((kind) => [kind, this.tally(`${prefix} ${kind}`)])) as Record<Kind, Tally>;
    return {
      ...{ hole, par, plays: this.plays, score: this.tally('score') },
      strokes: by(LEDGER_KINDS, 'strokes'),
      gainedOnPlan: by(LEDGER_KINDS, 'plan'),
      gainedOnPeer: withPeer ? by(SHOT_CLASSES, 'peer') : null,
      threePutts: this.tally('three putts'),
      greensInRegulation: this.tally('regulation'),
      penaltyBalls: this.tally('penalty balls'),
    };
  }

  private tally(name: string): Tally {
    const column = this.columns.get(name) ?? new Float64Array(this.plays);
    const mean = column.reduce((sum, value) => sum + value, 0) / this.plays;
    const squares = column.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    const sd = this.plays > 1 ? Math.sqrt(squares / (this.plays - 1)) : 0;
    return { mean, sd, standardError: this.plays > 1 ? sd / Math.sqrt(this.plays) : NaN };
  }
}

function codeOf(name: LieName): LieCode {
  return LIE_NAMES.indexOf(name) as LieCode;
}

function sameSpot(a: Spot, b: Spot): boolean {
  return a.x === b.x && a.y === b.y;
}

export interface LedgerLine {
  readonly kind: LedgerKind;
  /** Per round. */
  readonly strokes: Tally;
  /** Per round, positive: better than the peer; null without one, and for penalties, which stay with their strokes. */
  readonly gainedOnPeer: Tally | null;
  /** Share of the round's ups and downs (variance of the score) that this kind of stroke makes. */
  readonly shareOfSpread: number;
}

export interface RoundLedger {
  readonly lines: readonly LedgerLine[];
  readonly score: Tally;
  readonly threePutts: number;
  readonly greensInRegulation: number;
  readonly penaltyBalls: number;
  readonly holes: readonly HoleLedger[];
}

/** The holes of a round added up; holes are independent plays, so variances add. */
export function roundLedger(holes: readonly HoleLedger[]): RoundLedger {
  const spread = (kind: LedgerKind): number =>
    holes.reduce((sum, hole) => sum + hole.gainedOnPlan[kind].sd ** 2, 0);
  const wholeSpread = LEDGER_KINDS.reduce((sum, kind) => sum + spread(kind), 0);
  const withPeer = holes.length > 0 && holes.every((hole) => hole.gainedOnPeer !== null);
  return {
    lines: LEDGER_KINDS.map((kind) => ({
      kind,
      strokes: sumOfTallies(holes.map((hole) => hole.strokes[kind])),
      gainedOnPeer:
        withPeer && kind !== 'penalty' ? sumOfTallies(holes.map((hole) => hole.gainedOnPeer![kind])) : null,
      shareOfSpread: wholeSpread === 0 ? 0 : spread(kind) / wholeSpread,
    })),
    score: sumOfTallies(holes.map((hole) => hole.score)),
    threePutts: holes.reduce((sum, hole) => sum + hole.threePutts.mean, 0),
    greensInRegulation: holes.reduce((sum, hole) => sum + hole.greensInRegulation.mean, 0),
    penaltyBalls: holes.reduce((sum, hole) => sum + hole.penaltyBalls.mean, 0),
    holes,
  };
}

function sumOfTallies(tallies: readonly Tally[]): Tally {
  return {
    mean: tallies.reduce((sum, tally) => sum + tally.mean, 0),
    standardError: Math.hypot(...tallies.map((tally) => tally.standardError)),
    sd: Math.hypot(...tallies.map((tally) => tally.sd)),
  };
}
