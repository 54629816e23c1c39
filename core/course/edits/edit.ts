/**
 * What an edit of the course is: the document before and after, and the patches (immer's, after RFC 6902) that lead
 * from one to the other and back. Edits that cannot be done refuse with a reason and say what to do instead.
 */

import { applyPatches, enablePatches, type Patch } from 'immer';
import { refuse, type Result, succeed } from '../../result.ts';
import type { DocumentFeature, EditableDocument, FeatureId } from '../document.ts';
import { MOST_FEATURES } from '../parse.ts';
import { inEnglish, told, type Told } from '../../words/told.ts';

// Switches immer's patch support on; holds no state of ours.
enablePatches();

export type RefusalReason =
  | 'nothing-chosen'
  | 'nothing-to-do'
  | 'no-such-feature'
  | 'no-such-vertex'
  | 'no-such-ring'
  | 'no-such-hole'
  | 'number-taken'
  | 'not-a-place'
  | 'wrong-geometry'
  | 'wrong-kind'
  | 'different-kinds'
  | 'value-not-accepted'
  | 'value-missing'
  | 'too-few-vertices'
  | 'too-many-vertices'
  | 'too-many-features'
  | 'crosses-itself'
  | 'would-cross-itself'
  | 'line-crosses-itself'
  | 'line-does-not-cross'
  | 'not-touching'
  | 'does-not-overlap'
  | 'nothing-left'
  | 'document-changed';

export interface Refusal {
  readonly reason: RefusalReason;
  /** What stands in the way and what to do, for the person. */
  readonly message: string;
  /** The same to be told in the language of the window. */
  readonly told?: Told;
  readonly feature?: FeatureId;
}

export interface Edit {
  /** What was done, as the undo list shows it: `Move fairway of hole 3`. */
  readonly name: string;
  /** The same to be told in the language of the window. */
  readonly told?: Told;
  readonly before: EditableDocument;
  readonly document: EditableDocument;
  readonly patches: readonly Patch[];
  readonly inverse: readonly Patch[];
  /** Features that are new or changed, in the order of the document. */
  readonly touched: readonly FeatureId[];
}

export type EditResult = Result<Edit, Refusal>;

export function refuseEdit(reason: RefusalReason, message: Told | string, feature?: FeatureId) {
  return refuse<Refusal>({
    reason,
    ...(typeof message === 'string' ? { message } : { message: inEnglish(message), told: message }),
    ...(feature === undefined ? {} : { feature }),
  });
}

function named(name: Told | string): Pick<Edit, 'name' | 'told'> {
  return typeof name === 'string' ? { name } : { name: inEnglish(name), told: name };
}

export interface FeatureChanges {
  /** New versions of features that the document holds, by their id. */
  readonly changed?: readonly DocumentFeature[];
  readonly removed?: readonly FeatureId[];
  /** New features, each behind the feature with the id `after` (in the order given), or at the end. */
  readonly added?: readonly { readonly feature: DocumentFeature; readonly after?: FeatureId }[];
  /** A new `holewright` member. */
  readonly header?: EditableDocument['holewright'];
}

/** Beyond this many features added in the middle or removed, one patch replaces the whole list: shifting costs more. */
const MOST_SHIFTS = 16;

/** The edit that makes these changes. Refuses ids that are not there, and documents that would hold too much. */
export function makeEdit(
  document: EditableDocument,
  name: Told | string,
  changes: FeatureChanges,
): EditResult {
  const { changed = [], removed = [], added = [], header } = changes;
  const { features } = document;
  const indexOf = new Map(features.map(({ id }, index) => [id, index]));
  for (const id of [...changed.map((feature) => feature.id), ...removed]) {
    if (!indexOf.has(id)) return noSuchFeature(id);
  }
  if (features.length - removed.length + added.length > MOST_FEATURES) {
    return refuseEdit(
      'too-many-features',
      told(({ courseEdits }) => courseEdits.tooMany, { most: MOST_FEATURES }),
    );
  }

  const patches: Patch[] = [];
  const inverse: Patch[] = [];
  if (header !== undefined) {
    patches.push({ op: 'replace', path: ['holewright'], value: header });
    inverse.unshift({ op: 'replace', path: ['holewright'], value: document.holewright });
  }
  for (const feature of changed) {
    const index = indexOf.get(feature.id)!;
    const old = features[index]!;
    if (old === feature) continue;
    patches.push({ op: 'replace', path: ['features', index], value: feature });
    inverse.unshift({ op: 'replace', path: ['features', index], value: old });
  }
  const gone = new Set(removed.map((id) => indexOf.get(id)!));
  const inMiddle = added.filter(({ after }) => after !== undefined).length;
  if (gone.size + inMiddle > MOST_SHIFTS) {
    const byId = new Map(changed.map((feature) => [feature.id, feature]));
    const list = features.map((feature) => byId.get(feature.id) ?? feature);
    patches.push({ op: 'replace', path: ['features'], value: arrange(list, gone, added) });
    inverse.unshift({ op: 'replace', path: ['features'], value: list });
  } else {
    const rest = features.map(({ id }) => id);
    for (const index of [...gone].sort((a, b) => b - a)) {
      patches.push({ op: 'remove', path: ['features', index] });
      inverse.unshift({ op: 'add', path: ['features', index], value: features[index]! });
      rest.splice(index, 1);
    }
    const lastBehind = new Map<FeatureId, FeatureId>();
    for (const { feature, after } of added) {
      const index = after === undefined ? rest.length : rest.indexOf(lastBehind.get(after) ?? after) + 1;
      if (after !== undefined) lastBehind.set(after, feature.id);
      patches.push({ op: 'add', path: ['features', index], value: feature });
      inverse.unshift({ op: 'remove', path: ['features', index] });
      rest.splice(index, 0, feature.id);
    }
  }
  const next = applyPatches(document, patches);
  const touchedIds = new Set([...changed.map(({ id }) => id), ...added.map(({ feature }) => feature.id)]);
  const touched = next.features.map(({ id }) => id).filter((id) => touchedIds.has(id));
  return succeed({ ...named(name), before: document, document: next, patches, inverse, touched });
}

function arrange(
  features: readonly DocumentFeature[],
  gone: ReadonlySet<number>,
  added: NonNullable<FeatureChanges['added']>,
): DocumentFeature[] {
  const behind = new Map<FeatureId, DocumentFeature[]>();
  const last: DocumentFeature[] = [];
  for (const { feature, after } of added) {
    if (after === undefined) last.push(feature);
    else behind.set(after, [...(behind.get(after) ?? []), feature]);
  }
  const kept = features.flatMap((feature, index) => [
    ...(gone.has(index) ? [] : [feature]),
    ...(behind.get(feature.id) ?? []),
  ]);
  return [...kept, ...last];
}

/** Several edits, each made from the one before, as one with a name of its own. Throws where they do not follow on. */
export function joinEdits(name: Told | string, edits: readonly [Edit, ...Edit[]]): Edit {
  edits.forEach((edit, index) => {
    if (index > 0 && edit.before !== edits[index - 1]!.document) {
      throw new Error(`"${edit.name}" was not made from the document that "${edits[index - 1]!.name}" left`);
    }
  });
  const document = edits.at(-1)!.document;
  const touched = new Set(edits.flatMap((edit) => edit.touched));
  return {
    ...named(name),
    before: edits[0].before,
    document,
    patches: edits.flatMap(({ patches }) => patches),
    inverse: edits.toReversed().flatMap(({ inverse }) => inverse),
    touched: document.features.map(({ id }) => id).filter((id) => touched.has(id)),
  };
}

/** Features by their ids, in the order asked; refuses an empty list and the first id that is not there. */
export function pickFeatures(
  document: EditableDocument,
  ids: readonly FeatureId[],
): Result<readonly DocumentFeature[], Refusal> {
  if (ids.length === 0)
    return refuseEdit(
      'nothing-chosen',
      told(({ courseEdits }) => courseEdits.nothingChosen),
    );
  const byId = new Map(document.features.map((feature) => [feature.id, feature]));
  const picked: DocumentFeature[] = [];
  for (const id of new Set(ids)) {
    const feature = byId.get(id);
    if (feature === undefined) return noSuchFeature(id);
    picked.push(feature);
  }
  return succeed(picked);
}

export function noSuchFeature(id: FeatureId) {
  return refuseEdit(
    'no-such-feature',
    told(({ courseEdits }) => courseEdits.noFeature, { id: JSON.stringify(id) }),
    id,
  );
}
