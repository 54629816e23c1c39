/** Everything that can happen to the window's state, as one union. */

import type { Said } from '../../core/words/told.ts';
import type { Course } from '../../core/course/model.ts';
import type { SolveProgress } from '../../core/plan/model.ts';
import type { PlayerModel } from '../../core/player/model.ts';
import type { Fault } from '../../core/result.ts';
import type { FileEntry, FileKind, HostInfo, Settings } from '../../electron/contract/host.ts';
import type { RoomName } from '../rooms/room.ts';
import type { TourStepName } from '../tour/steps.ts';
import type {
  ComparisonAnswer,
  HelpPage,
  HoleResult,
  OpenDocument,
  OwnAnswer,
  PaintedShot,
  PlanAnswer,
  ShotId,
  Situation,
  SurfaceAnswer,
  TreePassageAnswer,
  WaysOutAnswer,
  LeftBehindFound,
} from './app-state.ts';

export type Action = FileAction | ViewAction | SituationAction | WorkAction | AnswerAction;

export type FileAction =
  | { readonly type: 'host-connected'; readonly info: HostInfo }
  | { readonly type: 'settings-read'; readonly settings: Settings }
  | { readonly type: 'files-listed'; readonly files: readonly FileEntry[] }
  | { readonly type: 'course-opened'; readonly document: OpenDocument<Course> }
  | { readonly type: 'player-opened'; readonly document: OpenDocument<PlayerModel> }
  | {
      readonly type: 'file-refused';
      readonly fileKind: FileKind;
      readonly fileName: string;
      readonly faults: readonly Fault[];
    }
  | { readonly type: 'course-checked'; readonly revision: string; readonly notes: readonly Fault[] }
  | { readonly type: 'notes-shown'; readonly fileKind: 'course' | 'player' }
  | { readonly type: 'trouble-met'; readonly title: Said; readonly message: Said }
  | { readonly type: 'file-changed-on-disk'; readonly entry: FileEntry }
  | { readonly type: 'file-gone'; readonly entry: FileEntry }
  | { readonly type: 'left-behind-found'; readonly found: LeftBehindFound }
  | { readonly type: 'notice-dismissed'; readonly id: number };

export type Layer = 'showSurface' | 'showBalls' | 'showCarries' | 'showLegend';

export type ViewAction =
  | { readonly type: 'room-shown'; readonly room: RoomName }
  | { readonly type: 'hole-shown'; readonly hole: number | null }
  | { readonly type: 'units-set'; readonly units: Settings['units'] }
  | { readonly type: 'theme-set'; readonly theme: Settings['theme'] }
  | { readonly type: 'language-set'; readonly language: NonNullable<Settings['language']> }
  | { readonly type: 'layer-set'; readonly layer: Layer; readonly on: boolean }
  | { readonly type: 'hole-up-set'; readonly on: boolean }
  | { readonly type: 'help-shown'; readonly page: HelpPage | null }
  | { readonly type: 'tour-shown'; readonly step: TourStepName }
  /** Finished, or left on the way: it does not begin by itself again. */
  | { readonly type: 'tour-left' }
  | { readonly type: 'shot-chosen'; readonly shot: ShotId | null }
  | { readonly type: 'compare-set'; readonly side: 'A' | 'B'; readonly shot: ShotId | null };

export type SituationAction =
  | { readonly type: 'situation-previewed'; readonly situation: Situation }
  | { readonly type: 'preview-dropped' }
  | {
      readonly type: 'situation-taken';
      readonly situation: Situation;
      readonly label: string;
      /** Equal marks in a row make one step: a key held down. */
      readonly mark?: string;
    }
  | { readonly type: 'undone' }
  | { readonly type: 'redone' };

export type WorkAction =
  | { readonly type: 'work-started'; readonly hole: number; readonly key: string }
  | {
      readonly type: 'work-progressed';
      readonly hole: number;
      readonly key: string;
      readonly progress: SolveProgress;
    }
  | { readonly type: 'work-finished'; readonly result: HoleResult }
  /** A worker broke: what it knew of its holes (those whose number leaves it as remainder) is gone. */
  | { readonly type: 'work-lost'; readonly worker: number; readonly workers: number }
  | { readonly type: 'work-failed'; readonly hole: number; readonly key: string; readonly fault: Fault }
  | { readonly type: 'work-stopped' }
  | { readonly type: 'work-resumed' }
  | { readonly type: 'seed-set'; readonly seed: string };

export type AnswerAction =
  | { readonly type: 'rough-arrived'; readonly result: HoleResult }
  | { readonly type: 'kept-arrived'; readonly result: HoleResult }
  | { readonly type: 'plan-arrived'; readonly answer: PlanAnswer }
  | { readonly type: 'own-arrived'; readonly answer: OwnAnswer | null }
  | { readonly type: 'comparison-arrived'; readonly answer: ComparisonAnswer | null }
  | { readonly type: 'paint-arrived'; readonly paint: Readonly<Record<ShotId, PaintedShot>> }
  | { readonly type: 'surface-arrived'; readonly answer: SurfaceAnswer | null }
  | { readonly type: 'ways-out-arrived'; readonly answer: WaysOutAnswer | null }
  | { readonly type: 'tree-passage-arrived'; readonly answer: TreePassageAnswer | null };
