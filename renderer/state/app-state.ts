/**
 * Everything that the window knows, as one immutable value. Places are longitude and latitude, so that they
 * keep their meaning whatever frame a hole is drawn in; lengths are metres.
 */

import type { Said } from '../../core/words/told.ts';
import type { Conditions } from '../../core/conditions/conditions.ts';
import type { Course, LonLat } from '../../core/course/model.ts';
import type { Comparison, Convergence, Option, ShotSample, SpreadEllipse } from '../../core/plan/model.ts';
import type { SolveProgress, SpotPlan, StrokesSurface } from '../../core/plan/model.ts';
import type { PlayerModel } from '../../core/player/model.ts';
import type { Fault } from '../../core/result.ts';
import type { FileEntry, FileKind, HostInfo, Settings } from '../../electron/contract/host.ts';
import type { ShotPicture } from '../workers/planner-api.ts';
import type { TreePassage, WayOutOfTrees } from '../workers/ways-out.ts';
import type { RoomName } from '../rooms/room.ts';
import type { TourStepName } from '../tour/steps.ts';
import type { History } from './history.ts';

export interface AppState {
  readonly host: HostInfo | null;
  readonly files: readonly FileEntry[] | null;
  readonly settings: Settings;
  /** Language tags that the person's system wishes for, most wanted first. */
  readonly wishedLanguages: readonly string[];
  readonly course: OpenDocument<Course> | null;
  readonly player: OpenDocument<PlayerModel> | null;
  /** What the course's rules found in the open course: nothing keeps it from opening, some may keep a hole from being planned. */
  readonly courseNotes: readonly Fault[];
  /** What the person should read, oldest first. */
  readonly notices: readonly Notice[];
  readonly view: View;
  readonly history: History;
  /** Keyed by hole number. */
  readonly work: Readonly<Record<number, HoleWork>>;
  /** False after the person stopped the background work. */
  readonly working: boolean;
  readonly seed: string;
  readonly answers: Answers;
}

export interface OpenDocument<T> {
  readonly entry: FileEntry;
  readonly text: string;
  readonly revision: string;
  readonly value: T;
}

export type Notice =
  | {
      readonly id: number;
      readonly kind: 'broken-file';
      readonly fileKind: FileKind;
      readonly fileName: string;
      readonly faults: readonly Fault[];
      /** Name of the document that stays open instead; null where there is none. */
      readonly stillOpen: string | null;
    }
  | { readonly id: number; readonly kind: 'trouble'; readonly title: Said; readonly message: Said }
  | { readonly id: number; readonly kind: 'changed-on-disk'; readonly entry: FileEntry }
  /** An open file was taken out of its folder or renamed. */
  | { readonly id: number; readonly kind: 'gone'; readonly entry: FileEntry }
  | {
      readonly id: number;
      readonly kind: 'notes';
      readonly fileKind: FileKind;
      readonly fileName: string;
      readonly faults: readonly Fault[];
    }
  | LeftBehindNotice;

/** Unsaved work on a file that is gone. */
export interface LeftBehindNotice extends LeftBehindFound {
  readonly id: number;
  readonly kind: 'left-behind';
}

export interface LeftBehindFound {
  /** Of the file that is gone, and its name. */
  readonly token: string;
  readonly name: string;
  readonly fileKind: FileKind;
  readonly journal: string;
  /** Number of the journal's last entry. */
  readonly upTo: number;
  /** Milliseconds since 1970. */
  readonly writtenAt: number;
  /** The work as the text of a file. */
  readonly text: string;
}

export type HelpPage = 'guide' | 'numbers' | 'limits' | 'checked' | 'changes' | 'licences';

export interface View {
  readonly room: RoomName;
  /** Null shows the whole course. */
  readonly hole: number | null;
  /** The direction from tee to green points up the screen; otherwise north does. */
  readonly holeUp: boolean;
  readonly showSurface: boolean;
  readonly showBalls: boolean;
  readonly showCarries: boolean;
  readonly showLegend: boolean;
  readonly help: HelpPage | null;
  /** Where the walk round the window is; null when nobody is on it. */
  readonly tour: TourStepName | null;
  /** What the map paints; null follows the recommendation. */
  readonly chosen: ShotId | null;
  readonly compareA: ShotId | null;
  readonly compareB: ShotId | null;
}

/** An option's id within the plan of the spot, or the player's own aim. */
export type ShotId = string;
export const OWN_AIM: ShotId = 'own-aim';

/** What undo covers: where the ball, the aims and the hole positions are, the tees, and the day. */
export interface Situation {
  /** Null plays every hole from its first tee. */
  readonly teeName: string | null;
  /** Of the day, for every hole. */
  readonly conditions: Conditions;
  readonly holes: Readonly<Record<number, HoleSituation>>;
}

export interface HoleSituation {
  /** Null is on the tee. */
  readonly ball: LonLat | null;
  readonly aim: OwnAim | null;
  /** A name from the file, a free place, or null for the file's first position. */
  readonly position: string | LonLat | null;
  /** Strokes played before this one; null leaves it to a guess from where the ball lies. */
  readonly strokesTaken: number | null;
}

/** A shot of the player's own choosing: which swing, towards which place. */
export interface OwnAim {
  readonly spreadIndex: number;
  readonly target: LonLat;
}

export interface HoleWork {
  /** Names the hole, tee, position, day, files and seed that the work is for. */
  readonly key: string;
  readonly status: 'waiting' | 'working' | 'ready' | 'stopped' | 'failed';
  readonly progress: SolveProgress | null;
  readonly fault: Fault | null;
  /** The last finished result; its own key tells whether it is for this work or for an earlier one. */
  readonly result: HoleResult | null;
}

/** A worked-out hole, as far as the window needs it; the field itself stays with the worker. */
export interface HoleResult {
  readonly key: string;
  readonly hole: number;
  /** True for a quick answer on a coarse grid. */
  readonly rough: boolean;
  /** Origin of the frame that the hole's spots are measured in. */
  readonly origin: LonLat;
  readonly tee: LonLat;
  readonly pin: LonLat;
  readonly teeName: string;
  readonly positionName: string;
  readonly lengthM: number;
  /** The day that it was worked out for. */
  readonly conditions: Conditions;
  readonly convergence: Convergence;
  readonly teePlan: SpotPlan;
  /** Its recommended shot as the map paints it; null for a quick answer, a putt or a drop. */
  readonly teePicture: ShotPicture | null;
}

/** The latest answers from the workers about the hole on screen. */
export interface Answers {
  readonly rough: HoleResult | null;
  /** As it was worked out at an earlier start from the same files; no worker holds it. */
  readonly kept: HoleResult | null;
  readonly plan: PlanAnswer | null;
  readonly own: OwnAnswer | null;
  readonly comparison: ComparisonAnswer | null;
  readonly paint: Readonly<Record<ShotId, PaintedShot>>;
  readonly surface: SurfaceAnswer | null;
  /** For a ball in trees only. */
  readonly waysOut: WaysOutAnswer | null;
  readonly treePassage: TreePassageAnswer | null;
}

export interface PlanAnswer {
  readonly hole: number;
  readonly resultKey: string;
  readonly ball: LonLat;
  /** The day that the plan is for. */
  readonly conditions: Conditions;
  /** True while something is being dragged, or from a coarse field. */
  readonly rough: boolean;
  readonly plan: SpotPlan;
}

export interface OwnAnswer {
  readonly hole: number;
  readonly rough: boolean;
  readonly option: Option;
  /** Against the plan's best option, with common random numbers. */
  readonly toBest: Comparison | null;
}

export interface ComparisonAnswer {
  readonly hole: number;
  readonly a: ShotId;
  readonly b: ShotId;
  readonly rough: boolean;
  readonly comparison: Comparison;
}

export interface PaintedShot {
  readonly hole: number;
  /** Names the exact shot painted. */
  readonly key: string;
  readonly origin: LonLat;
  readonly sample: ShotSample;
  readonly ellipses: readonly SpreadEllipse[];
}

export interface WaysOutAnswer {
  readonly hole: number;
  readonly resultKey: string;
  /** From where. */
  readonly ball: LonLat;
  readonly ways: readonly WayOutOfTrees[];
}

/** How the shot on the map passes the trees. */
export interface TreePassageAnswer {
  readonly hole: number;
  readonly ball: LonLat;
  readonly shot: ShotId;
  readonly passage: TreePassage;
}

export interface SurfaceAnswer {
  readonly hole: number;
  readonly resultKey: string;
  readonly origin: LonLat;
  readonly surface: StrokesSurface;
}
