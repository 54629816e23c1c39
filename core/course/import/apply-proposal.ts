/** Takes an import into the document, as one step that can be undone. */

import { type DocumentFeature, type EditableDocument, featureById, freeIds } from '../document.ts';
import { type EditResult, makeEdit, refuseEdit } from '../edits/edit.ts';
import { told } from '../../words/told.ts';
import type { ImportProposal } from './proposal.ts';

/** New features get ids and stand at the end; sources are added to those that the course names already. */
export function applyProposal(document: EditableDocument, proposal: ImportProposal): EditResult {
  const { features, replaces } = proposal;
  if (features.length === 0) {
    return refuseEdit(
      'nothing-to-do',
      told(({ courseImport }) => courseImport.nothing),
    );
  }
  if (replaces.some((id) => featureById(document, id) === undefined)) {
    return refuseEdit(
      'document-changed',
      told(({ courseImport }) => courseImport.courseChanged),
    );
  }
  const ids = freeIds(document, features.length);
  const added = features.map(({ properties, geometry }, index): { feature: DocumentFeature } => ({
    feature: { type: 'Feature', id: ids[index]!, properties, geometry },
  }));
  const header = headerWith(document, proposal);
  const name = told(({ courseImport }) => courseImport.step, {
    count: features.length,
    from: told(({ courseImport }) => courseImport.from[proposal.kind]),
  });
  return makeEdit(document, name, {
    added,
    removed: replaces,
    ...(header === undefined ? {} : { header }),
  });
}

function headerWith(
  { holewright }: EditableDocument,
  { sources, courseName }: ImportProposal,
): EditableDocument['holewright'] | undefined {
  const old: unknown[] = Array.isArray(holewright['sources']) ? (holewright['sources'] as unknown[]) : [];
  const fresh = sources.filter((source) => !old.includes(source));
  const name = holewright['courseName'];
  const unnamed = typeof name !== 'string' || name.trim() === '';
  const naming = courseName !== undefined && unnamed ? { courseName } : {};
  if (fresh.length === 0 && !('courseName' in naming)) return undefined;
  return { ...holewright, ...naming, ...(fresh.length === 0 ? {} : { sources: [...old, ...fresh] }) };
}
