/** Shorthands for tests of importing. */

import { readFileSync } from 'node:fs';
import { type EditableDocument, newDocument } from '../../../core/course/document.ts';
import type { Edit } from '../../../core/course/edits/edit.ts';
import { applyProposal } from '../../../core/course/import/apply-proposal.ts';
import type { ImportProposal, ProposedFeature } from '../../../core/course/import/proposal.ts';
import type { FeatureKind } from '../../../core/course/feature-kind.ts';
import type { Fault, Result } from '../../../core/result.ts';

export function fixture(name: string): string {
  return readFileSync(new URL(`fixtures/${name}`, import.meta.url), 'utf8');
}

export function mustPropose(result: Result<ImportProposal, readonly Fault[]>): ImportProposal {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

export function mustFault(result: Result<unknown, readonly Fault[]>): Fault {
  if (result.ok) throw new Error('it was read, though it should have been refused');
  return result.error[0]!;
}

export function mustApply(proposal: ImportProposal, document: EditableDocument = newDocument('')): Edit {
  const result = applyProposal(document, proposal);
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}

export function byOrigin(proposal: ImportProposal, origin: string): ProposedFeature | undefined {
  return proposal.features.find((feature) => feature.origin === origin);
}

/** `{ green: 2, bunker: 3 }` */
export function countsOf(proposal: ImportProposal): Partial<Record<FeatureKind, number>> {
  return Object.fromEntries(proposal.counts.map(({ kind, count }) => [kind, count]));
}

/** `what: why` of everything left out whose example list names the element. */
export function whyLeftOut(proposal: ImportProposal, element: string): string | undefined {
  const found = proposal.leftOut.find(({ examples }) => examples.includes(element));
  return found === undefined ? undefined : `${found.what}: ${found.why}`;
}
