/** What a worker does for the window. Everything that crosses is plain data. */

import type { Conditions } from '../../core/conditions/conditions.ts';
import type { LonLat } from '../../core/course/model.ts';
import type {
  Comparison,
  Option,
  ShotSample,
  SolveProgress,
  SpotPlan,
  SpreadEllipse,
  StrokesSurface,
} from '../../core/plan/model.ts';
import type { Fault, Result } from '../../core/result.ts';
import type { HoleResult } from '../state/app-state.ts';
import type { TreePassage, WayOutOfTrees } from './ways-out.ts';

/** Balls of a painted shot at rest. */
export const PAINTED_BALLS = 400;

/** Shots with a spread: a putt and a drop have none. */
export function isSwing(option: Option): boolean {
  return option.kind === 'shot' && option.clubKind !== 'putter';
}

/** A hole to be worked out. */
export interface HoleTask {
  /** Names the work; comes back with the result. */
  readonly key: string;
  readonly hole: number;
  readonly teeName: string;
  readonly position: string | LonLat;
  /** An ordinary day where absent. */
  readonly conditions?: Conditions;
  readonly seed: string;
  /** A quick answer on a coarse grid. */
  readonly rough: boolean;
}

/** Why no result came. */
export type Unfinished = { readonly why: 'cancelled' } | { readonly why: 'fault'; readonly fault: Fault };

/** A shot to be weighed or painted: as the engine chose it, or one of the player's own. */
export type ShotRequest =
  | { readonly from: 'option'; readonly option: Option }
  | { readonly from: 'target'; readonly spreadIndex: number; readonly target: LonLat };

export interface SpotQuestion {
  /** The worked-out hole to be asked, by its key. */
  readonly resultKey: string;
  readonly rough: boolean;
  readonly ball: LonLat;
  readonly strokesTaken: number;
}

/** A painted shot without the window's own bookkeeping. */
export interface ShotPicture {
  readonly sample: ShotSample;
  readonly ellipses: readonly SpreadEllipse[];
}

export interface OwnShot {
  readonly option: Option;
  readonly toBest: Comparison | null;
}

/** Null where the worker no longer holds the hole asked about: the question is out of date. */
export interface PlannerApi {
  open(courseText: string, playerText: string): Promise<Result<null, readonly Fault[]>>;
  /** What the rules for courses find in the open course. */
  check(): Promise<readonly Fault[]>;
  solve(task: HoleTask, report: (progress: SolveProgress) => void): Promise<Result<HoleResult, Unfinished>>;
  /** Works on this hole before any other. */
  hurry(hole: number): Promise<void>;
  cancel(key: string): Promise<void>;
  plan(question: SpotQuestion): Promise<SpotPlan | null>;
  /** Weighs a shot of the player's own, alone and against the plan's best. */
  weigh(question: SpotQuestion, shot: ShotRequest, best: ShotRequest | null): Promise<OwnShot | null>;
  compare(question: SpotQuestion, a: ShotRequest, b: ShotRequest): Promise<Comparison | null>;
  paint(question: SpotQuestion, shot: ShotRequest, balls: number): Promise<ShotPicture | null>;
  surface(resultKey: string, cellM: number): Promise<StrokesSurface | null>;
  /** In slices beside other work; null too where another such question has taken its place. */
  waysOut(question: SpotQuestion): Promise<readonly WayOutOfTrees[] | null>;
  treePassage(question: SpotQuestion, shot: ShotRequest): Promise<TreePassage | null>;
}
