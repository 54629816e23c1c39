/**
 * A hole played shot by shot against the player's own spread. Each shot says what it gained on the player's own
 * expectation: E(start) - E(end) - 1 - penalty (Broadie 2012, "Assessing golfer performance on the PGA TOUR",
 * Interfaces 42(2):146-165), E being expected strokes to hole out. What a choice itself costs is apart from what became of it.
 */

import { Lie, LIE_NAMES, type LieCode, type LieName } from '../ground/lies.ts';
import type { Swing } from '../player/model.ts';
import { ChoiceEvaluator } from '../plan/evaluate.ts';
import type { Choice, Spot } from '../plan/model.ts';
import type { PreparedHole } from '../plan/prepare.ts';
import type { StrokesField } from '../plan/strokes-field.ts';
import { type HoleLuck, OneShot, type ShotLuck } from './luck.ts';
import { type Decision, OwnPolicy } from './own-policy.ts';
import { puttOn } from './putt-once.ts';

/** Where strokes go. `approach` includes tee shots on par 3s; `short` is within 100 yards, off the green (Broadie 2012). */
export type ShotClass = 'tee' | 'approach' | 'short' | 'putt';
export const SHOT_CLASSES: readonly ShotClass[] = ['tee', 'approach', 'short', 'putt'];
export const SHORT_GAME_M = 91.44;

/** A ball to be played. */
export interface Ball {
  readonly spot: Spot;
  readonly lie: LieCode;
  /** Strokes and penalties so far. */
  readonly taken: number;
  /** Swings, putts and drops so far: the number under which luck is drawn. */
  readonly step: number;
  readonly onTee: boolean;
}

export interface PlayedShot {
  readonly kind: Decision['kind'];
  readonly decision: Decision;
  /** Null for a drop, which is no stroke. */
  readonly shotClass: ShotClass | null;
  readonly from: Spot;
  readonly fromLie: LieName;
  readonly club: string;
  readonly swing: Swing | null;
  readonly aim: Spot;
  /** Where it came down, and where it came to rest or was lost, before any relief. */
  readonly landing: Spot;
  readonly end: Spot;
  readonly endLie: LieName;
  readonly wasPoor: boolean;
  readonly hitTree: boolean;
  readonly penalty: number;
  readonly expectedBefore: number;
  /** 0 where holed. */
  readonly expectedAfter: number;
  readonly gained: number;
  /** The next ball; null: holed out. */
  readonly next: Ball | null;
}

export interface PlayedHole {
  readonly hole: number;
  readonly par: number;
  readonly score: number;
  readonly shots: readonly PlayedShot[];
  /** False where the ball was picked up at `MOST_STROKES`. */
  readonly holedOut: boolean;
}

/** A ball is picked up after so many strokes. */
export const MOST_STROKES = 20;

/** The plan from the tee: the choice and what it costs on average. */
export interface TeePlan {
  readonly choice: Choice;
  readonly expected: number;
}

/** One hole to be played, any number of times. */
export class HolePlay {
  private readonly evaluator: ChoiceEvaluator;
  private readonly policy: OwnPolicy;
  private readonly oneShot = new OneShot();

  constructor(
    readonly prepared: PreparedHole,
    readonly field: StrokesField,
    readonly tee: TeePlan,
  ) {
    this.evaluator = new ChoiceEvaluator(field, prepared.book);
    this.policy = new OwnPolicy(prepared, this.evaluator);
  }

  start(): Ball {
    return { spot: this.prepared.tee, lie: Lie.tee, taken: 0, step: 0, onTee: true };
  }

  /** Expected strokes to hole out with this ball. */
  expectedFrom(ball: Pick<Ball, 'spot' | 'lie' | 'onTee'>): number {
    return ball.onTee ? this.tee.expected : this.field.valueAt(ball.spot.x, ball.spot.y, ball.lie);
  }

  /** What the plan does with this ball. */
  ownDecision(ball: Ball): Decision {
    if (ball.onTee) return { kind: 'swing', choice: this.tee.choice };
    return this.policy.decide(ball.spot, ball.lie);
  }

  /** Plays one stroke (or takes a drop). Throws a RangeError for a club that is not played from that lie. */
  play(ball: Ball, decision: Decision, luck: ShotLuck): PlayedShot {
    switch (decision.kind) {
      case 'putt':
        return this.putt(ball, luck);
      case 'drop':
        return this.drop(ball, decision);
      case 'swing':
        return this.swing(ball, decision.choice, luck);
    }
  }

  private swing(ball: Ball, choice: Choice, luck: ShotLuck): PlayedShot {
    const { evaluator, prepared } = this;
    const spread = prepared.player.spreads[choice.spreadIndex];
    const law =
      spread === undefined ? null : evaluator.book.lawOf(choice.spreadIndex, ball.lie, choice.carryM);
    if (spread === undefined || law === null)
      throw new RangeError(`Unexpected choice: that club is not played from ${LIE_NAMES[ball.lie]!}.`);
    const before = this.expectedFrom(ball);
    const next = evaluator.play(ball.spot, law, choice.bearing, this.oneShot.fill(luck), 0, before);
    const { resolver } = evaluator;
    const to: Ball = {
      spot: next.replay ? ball.spot : { x: next.x, y: next.y },
      lie: next.replay ? ball.lie : (next.lie as LieCode),
      taken: ball.taken + 1 + next.penalty,
      step: ball.step + 1,
      onTee: next.replay && ball.onTee,
    };
    return {
      ...this.shotFrom(ball, { kind: 'swing', choice }, next.penalty, to),
      club: spread.club.name,
      swing: spread.swing,
      aim: {
        x: ball.spot.x + Math.sin(choice.bearing) * choice.carryM,
        y: ball.spot.y + Math.cos(choice.bearing) * choice.carryM,
      },
      landing: { x: resolver.landX, y: resolver.landY },
      end: { x: resolver.endX, y: resolver.endY },
      endLie: LIE_NAMES[resolver.endLie]!,
      wasPoor: resolver.wasPoor,
      hitTree: resolver.stoppedByTree,
    };
  }

  private putt(ball: Ball, luck: ShotLuck): PlayedShot {
    const { pin, player, putts } = this.prepared;
    const left = puttOn(putts, ball.spot, pin, player.putting, luck);
    const end = left ?? pin;
    const to =
      left === null
        ? null
        : { spot: left, lie: Lie.green, taken: ball.taken + 1, step: ball.step + 1, onTee: false };
    return {
      ...this.shotFrom(ball, { kind: 'putt' }, 0, to),
      ...{ club: 'Putter', swing: null, aim: pin, landing: end, end, endLie: 'green' },
      ...{ wasPoor: false, hitTree: false },
    };
  }

  private drop(ball: Ball, decision: Decision & { readonly kind: 'drop' }): PlayedShot {
    const { to: spot, lie, penalty } = decision;
    const to: Ball = { spot, lie, taken: ball.taken + penalty, step: ball.step + 1, onTee: false };
    return {
      ...this.shotFrom(ball, decision, penalty, to),
      ...{ club: 'Drop', swing: null, aim: spot, landing: spot, end: spot, endLie: LIE_NAMES[lie]! },
      ...{ wasPoor: false, hitTree: false },
    };
  }

  private shotFrom(ball: Ball, decision: Decision, penalty: number, next: Ball | null) {
    const { kind } = decision;
    const expectedBefore = this.expectedFrom(ball);
    const expectedAfter = next === null ? 0 : this.expectedFrom(next);
    const strokes = (kind === 'drop' ? 0 : 1) + penalty;
    return {
      kind,
      decision,
      shotClass: kind === 'drop' ? null : this.classOf(ball),
      from: ball.spot,
      fromLie: LIE_NAMES[ball.lie]!,
      penalty,
      expectedBefore,
      expectedAfter,
      gained: expectedBefore - expectedAfter - strokes,
      next,
    };
  }

  private classOf(ball: Ball): ShotClass {
    if (ball.lie === Lie.green) return 'putt';
    if (ball.onTee) return this.prepared.hole.par >= 4 ? 'tee' : 'approach';
    const { pin } = this.prepared;
    const distance = Math.hypot(pin.x - ball.spot.x, pin.y - ball.spot.y);
    return distance <= SHORT_GAME_M ? 'short' : 'approach';
  }
}

/** Decisions by step, with the plan's own wherever there is none: for replays of a hole with another choice. */
export function decideBy(
  play: HolePlay,
  decisions: readonly (Decision | undefined)[],
): (ball: Ball) => Decision {
  return (ball) => decisions[ball.step] ?? play.ownDecision(ball);
}

/** Plays the hole to its end; `decide` defaults to the plan's own choices. */
export function playHole(
  play: HolePlay,
  luck: HoleLuck,
  decide: (ball: Ball) => Decision = (ball) => play.ownDecision(ball),
): PlayedHole {
  const { hole } = play.prepared;
  const shots: PlayedShot[] = [];
  let ball: Ball | null = play.start();
  let score = 0;
  while (ball !== null && ball.taken < MOST_STROKES) {
    const shot: PlayedShot = play.play(ball, decide(ball), luck(ball.step));
    shots.push(shot);
    score = ball.taken + shot.penalty + (shot.kind === 'drop' ? 0 : 1);
    ball = shot.next;
  }
  return { hole: hole.number, par: hole.par, score, shots, holedOut: ball === null };
}
