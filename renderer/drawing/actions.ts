/** Everything that can happen to the course room's state. */

import type { EditableDocument, FeatureId } from '../../core/course/document.ts';
import type { Edit } from '../../core/course/edits/edit.ts';
import type { VertexAddress } from '../../core/course/edits/shape.ts';
import type { FeatureKind } from '../../core/course/feature-kind.ts';
import type { LocalFrame } from '../../core/course/local-frame.ts';
import type { LonLat } from '../../core/course/model.ts';
import type { CourseReport } from '../../core/course/report.ts';
import type { Cursor, EditedFile, Mode, PanelName, Said } from './drawing-state.ts';

export type DrawingAction = FileAction | EditAction | LookAction;

export type FileAction =
  | { readonly type: 'course-loaded'; readonly file: EditedFile; readonly document: EditableDocument }
  | { readonly type: 'course-closed' }
  | { readonly type: 'file-told'; readonly token: string; readonly change: Partial<EditedFile> }
  | { readonly type: 'report-arrived'; readonly report: CourseReport };

export type EditAction =
  /** `select` chooses what the edit touched. */
  | { readonly type: 'edited'; readonly edit: Edit; readonly select?: boolean }
  | { readonly type: 'drag-begun' }
  | { readonly type: 'dragged'; readonly edit: Edit; readonly corner?: VertexAddress }
  | { readonly type: 'drag-ended' }
  | { readonly type: 'drag-dropped' }
  | { readonly type: 'undone'; readonly said?: string }
  | { readonly type: 'redone'; readonly said?: string }
  | { readonly type: 'mode-set'; readonly mode: Mode }
  | { readonly type: 'place-added'; readonly at: LonLat }
  | { readonly type: 'place-taken-back' }
  | { readonly type: 'sketch-dropped' };

export type LookAction =
  | { readonly type: 'cursor-moved'; readonly cursor: Cursor | null }
  | { readonly type: 'selected'; readonly ids: readonly FeatureId[]; readonly show?: PanelName }
  | { readonly type: 'corner-chosen'; readonly corner: VertexAddress | null }
  | { readonly type: 'hole-chosen'; readonly hole: number | null }
  | { readonly type: 'kind-shown'; readonly kind: FeatureKind; readonly on: boolean }
  | { readonly type: 'feature-shown'; readonly id: FeatureId; readonly on: boolean }
  /** Another place becomes the middle of the map's flat frame; for a course of which nothing is drawn. */
  | { readonly type: 'frame-moved'; readonly frame: LocalFrame }
  | { readonly type: 'catching-set'; readonly on: boolean }
  | { readonly type: 'grid-set'; readonly gridM: number | null }
  | { readonly type: 'panel-shown'; readonly panel: PanelName }
  | { readonly type: 'said'; readonly said: Said | null };
