/** What a worker does for a round: ledgers, cards, play. Everything that crosses is plain data. */

import type { Language } from '../../core/words/language.ts';
import type { CardUnits } from '../../core/card/lengths.ts';
import type { CardHole } from '../../core/card/model.ts';
import type { Conditions } from '../../core/conditions/conditions.ts';
import type { LonLat } from '../../core/course/model.ts';
import type { SpotPlan } from '../../core/plan/model.ts';
import type { PlayerLevel } from '../../core/player/presets.ts';
import type { Result } from '../../core/result.ts';
import type { Aim } from '../../core/round/aim.ts';
import type { Departure } from '../../core/round/departures.ts';
import type { ScoreDistribution } from '../../core/round/distribution.ts';
import type { PlannedHoleRecord, PlayedHoleRecord } from '../../core/round/format.ts';
import type { HoleLedger } from '../../core/round/ledger.ts';
import type { Decision } from '../../core/round/own-policy.ts';
import type { Ball, PlayedHole, PlayedShot } from '../../core/round/play-hole.ts';
import type { HoleChoices, TargetPlan } from '../../core/round/play-to-target.ts';
import type { HoleReview } from '../../core/round/review-hole.ts';
import type { ChoiceCost } from '../../core/round/try-out.ts';
import type { ImprovementId } from '../../core/round/what-would-help.ts';
import type { PlannerApi, Unfinished } from './planner-api.ts';

/** From 0 to 1. */
export type ShareReport = (share: number) => void;

export interface LedgerTask {
  readonly resultKey: string;
  readonly plays: number;
  /** Whom to hold the game against; null: nobody. */
  readonly peer: PlayerLevel | null;
}

export interface LedgerAnswer {
  readonly ledger: HoleLedger;
  /** The peer's own scores on the hole; null without one. */
  readonly peerScores: ScoreDistribution | null;
}

/** A hole to be worked out on a coarse grid for a player who does one thing better; null: as is. */
export interface ImprovedTask {
  readonly hole: number;
  readonly teeName: string;
  readonly position: string | LonLat;
  readonly seed: string;
  /** An ordinary day where absent. */
  readonly conditions?: Conditions;
  readonly improvement: ImprovementId | null;
}

export interface PlayingQuestion {
  readonly choices: readonly HoleChoices[];
  readonly aim: Aim;
  readonly formSd: number;
}

export interface PlayingAnswer {
  readonly plan: TargetPlan;
  readonly departures: readonly Departure[];
}

/** Whose luck: the same seed, round and stroke give the same. */
export interface LuckName {
  readonly seed: string;
  readonly round: number;
}

export interface TriedShot {
  readonly shot: PlayedShot;
  /** Of the decision against the plan's; null where the two cannot be weighed. */
  readonly cost: ChoiceCost | null;
}

/** What may be done with a ball, and what the plan would do. */
export interface TryChoices {
  readonly plan: SpotPlan;
  readonly own: Decision;
}

/** Null where the worker no longer holds the hole asked about: the question is out of date. */
/** What a card's texts are written in. */
export interface CardStyle {
  readonly units: CardUnits;
  readonly language: Language;
}

export interface RoundApi extends PlannerApi {
  ledger(task: LedgerTask, report: ShareReport): Promise<Result<LedgerAnswer, Unfinished>>;
  improved(task: ImprovedTask, report: ShareReport): Promise<Result<ScoreDistribution, Unfinished>>;
  cancelLedgers(): Promise<void>;
  cancelImprovements(): Promise<void>;
  playTo(question: PlayingQuestion): Promise<PlayingAnswer>;
  /** The card of a worked-out hole; `chosen` is an option's id, the recommendation by default. */
  card(resultKey: string, style: CardStyle, chosen: string | null): Promise<CardHole | null>;
  /**
   * Held against the hole as it plays on `day`; another one than the hole is worked out for takes a moment, on a coarser grid.
   * Null too where that was stopped.
   */
  reviewHole(
    resultKey: string,
    played: PlayedHoleRecord,
    planned: PlannedHoleRecord | null,
    seed: string,
    day: Conditions,
  ): Promise<HoleReview | null>;
  cancelReviews(): Promise<void>;
  /** The ball on the tee. */
  startBall(resultKey: string): Promise<Ball | null>;
  tryChoices(resultKey: string, ball: Ball): Promise<TryChoices | null>;
  tryShot(resultKey: string, ball: Ball, decision: Decision, luck: LuckName): Promise<TriedShot | null>;
  /** The hole from its tee with these decisions, then the plan's, all with that luck. */
  replay(
    resultKey: string,
    decisions: readonly Decision[],
    luck: LuckName,
  ): Promise<{ readonly played: PlayedHole; readonly record: PlayedHoleRecord } | null>;
}
