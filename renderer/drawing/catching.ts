/** Places that catch on what is drawn already, so that neighbours share corners and sides exactly. */

import { type EditableDocument, type FeatureId, kindOf } from '../../core/course/document.ts';
import { makeSnapIndex, snap, type SnapIndex } from '../../core/course/edits/snap.ts';
import type { FeatureKind } from '../../core/course/feature-kind.ts';
import type { LonLat } from '../../core/course/model.ts';
import { roundLonLat } from '../../core/course/positions.ts';
import { remember } from '../state/remember.ts';
import type { Cursor, DrawingState } from './drawing-state.ts';

/** Screen pixels within which a place is caught. */
const REACH_PX = 10;

const NONE: readonly FeatureId[] = [];

/** Points and lines of play are no edges: an area drawn round a marker must not be pulled into it. */
const NO_EDGES: ReadonlySet<FeatureKind | undefined> = new Set<FeatureKind>([
  'hole',
  'tee-marker',
  'hole-position',
  'ground-level',
  'slope-mark',
  'tree',
]);

const indexOf = remember((document: EditableDocument, without: readonly FeatureId[]): SnapIndex => {
  const left = document.features.filter((feature) => NO_EDGES.has(kindOf(feature)));
  return makeSnapIndex(document, new Set([...without, ...left.map(({ id }) => id)]));
});

export interface Catching {
  readonly metresPerPixel: number;
  /** The key that suspends catching is held. */
  readonly suspended: boolean;
  /** Features that are themselves being moved; give the identical list during one drag. */
  readonly without?: readonly FeatureId[];
}

/** `at` itself, rounded as the file keeps it, where nothing is near or catching is off. */
export function caughtPlace(
  state: DrawingState,
  at: LonLat,
  { metresPerPixel, suspended, without = NONE }: Catching,
): Pick<Cursor, 'at' | 'caught'> {
  const free = { at: roundLonLat(at), caught: null };
  if (suspended || !state.catching) return free;
  const document = state.history.drag?.start ?? state.history.document;
  const found = snap(indexOf(document, without), at, REACH_PX * metresPerPixel);
  return found === null ? free : { at: found.at, caught: found.kind };
}
