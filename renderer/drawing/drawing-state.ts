/** Everything that the course room knows, as one immutable value. Places are degrees, as in the file. */

import type { ClaimHolder } from '../../electron/contract/host.ts';
import type { EditableDocument, FeatureId } from '../../core/course/document.ts';
import { newDocument } from '../../core/course/document.ts';
import type { VertexAddress } from '../../core/course/edits/shape.ts';
import type { FeatureKind } from '../../core/course/feature-kind.ts';
import { type History, startHistory } from '../../core/course/history.ts';
import type { LocalFrame } from '../../core/course/local-frame.ts';
import type { LonLat } from '../../core/course/model.ts';
import type { FileEntry } from '../../electron/contract/host.ts';
import type { CourseReport } from '../../core/course/report.ts';
import type { Recovered } from './files/recover.ts';
import { frameFor } from './frame.ts';

/** What a click on the map does. */
export type Mode =
  | { readonly do: 'choose' }
  | { readonly do: 'draw'; readonly kind: FeatureKind }
  /** A line drawn across an area. */
  | { readonly do: 'cut'; readonly feature: FeatureId }
  /** An outline drawn inside an area. */
  | { readonly do: 'hollow'; readonly feature: FeatureId }
  /** One click that gives a place to whoever asked for it. */
  | { readonly do: 'point'; readonly words: string };

export const CHOOSING: Mode = { do: 'choose' };

export type PanelName = 'chosen' | 'hole' | 'checks' | 'course';

export interface DrawingState {
  readonly file: EditedFile | null;
  readonly history: History;
  /** Stays the same for as long as the file is open, so that nothing jumps. */
  readonly frame: LocalFrame;
  readonly mode: Mode;
  /** Places of the thing being drawn. */
  readonly sketch: readonly LonLat[];
  /** Where the next place would come, caught on a neighbour already; null while the pointer is away. */
  readonly cursor: Cursor | null;
  readonly selection: readonly FeatureId[];
  readonly corner: VertexAddress | null;
  /** Number of the hole that is worked on. */
  readonly hole: number | null;
  readonly hiddenKinds: ReadonlySet<FeatureKind>;
  readonly hiddenFeatures: ReadonlySet<FeatureId>;
  /** Whether new and dragged places catch on what is drawn already. */
  readonly catching: boolean;
  /** Length that the grid over the map counts in, metres; null without a grid. */
  readonly gridM: number | null;
  readonly panel: PanelName;
  readonly said: Said | null;
  readonly report: CourseReport | null;
}

export interface Cursor {
  readonly at: LonLat;
  /** By keys the cross-hair is painted, by mouse the pointer is there already. */
  readonly by: 'mouse' | 'keys';
  readonly caught: 'vertex' | 'edge' | null;
}

/** The last answer to what the person did. */
export interface Said {
  readonly tone: 'news' | 'refusal';
  readonly words: string;
}

/** The file under edit and how its keeping stands. */
export interface EditedFile {
  readonly entry: FileEntry;
  /** Revision on disk that the work builds on. */
  readonly baseRevision: string;
  readonly access: Access;
  /** History revision that the disk has; -1 where the disk has none of it. */
  readonly saved: number;
  readonly saving: boolean;
  /** Why the last save or journal entry was not written; the work is still in memory. */
  readonly trouble: string | null;
  /** The file was taken out of its folder or renamed; the work is still in memory and in the journal. */
  readonly isGone: boolean;
  /** Set when another program has changed the file. */
  readonly onDisk: { readonly revision: string | null } | null;
  /** Work of an earlier sitting that the person has not decided about. */
  readonly recovered: readonly Recovered[];
}

export type Access = { readonly may: 'edit' } | LookingOnly;

export type LookingOnly =
  | { readonly may: 'look'; readonly why: 'demo' | 'asking' }
  | { readonly may: 'look'; readonly why: 'held'; readonly holder: ClaimHolder }
  /** The host did not say who may write. */
  | { readonly may: 'look'; readonly why: 'refused'; readonly said: string };

export function emptyDrawing(): DrawingState {
  const document: EditableDocument = newDocument('');
  return {
    file: null,
    history: startHistory(document),
    frame: frameFor(document),
    mode: CHOOSING,
    sketch: [],
    cursor: null,
    selection: [],
    corner: null,
    hole: null,
    hiddenKinds: new Set(),
    hiddenFeatures: new Set(),
    catching: true,
    gridM: null,
    panel: 'hole',
    said: null,
    report: null,
  };
}

export function mayEdit(state: DrawingState): boolean {
  return state.file?.access.may === 'edit';
}
