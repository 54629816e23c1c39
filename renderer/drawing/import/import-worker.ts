/** Reads map files beside the page: what kind of file it is, what it would bring. */

import { told, type Told, toldFault } from '../../../core/words/told.ts';
import { expose } from 'comlink';
import type { EditableDocument } from '../../../core/course/document.ts';
import type { FeatureKind } from '../../../core/course/feature-kind.ts';
import { type KindMapping, readGeojson } from '../../../core/course/import/geojson.ts';
import { readGpx } from '../../../core/course/import/gpx.ts';
import { guessImportKind } from '../../../core/course/import/guess-kind.ts';
import { readHeights } from '../../../core/course/import/heights.ts';
import { readOsm } from '../../../core/course/import/osm.ts';
import { contextOf, type ImportKind, type ImportProposal } from '../../../core/course/import/proposal.ts';
import { type MappingSuggestions, suggestMappings } from '../../../core/course/import/suggest-mappings.ts';
import { type Fault, refuse, type Result, succeed } from '../../../core/result.ts';

export interface ImportWishes {
  readonly mappings: readonly KindMapping[];
  readonly holeProperty: string | null;
  readonly trackKind: FeatureKind | null;
  readonly spacingM: number;
}

/** A file that was looked at; `suggestions` for GeoJSON only. */
export interface LookedAt {
  readonly kind: ImportKind;
  readonly suggestions: MappingSuggestions | null;
}

export type ProposalAnswer = Result<ImportProposal, readonly Fault[]>;

export interface ImportApi {
  look(bytes: ArrayBuffer): Result<LookedAt, readonly Fault[]>;
  propose(document: EditableDocument, kind: ImportKind, wishes: ImportWishes): Promise<ProposalAnswer>;
}

let held: ArrayBuffer = new ArrayBuffer(0);

const api: ImportApi = {
  look(bytes) {
    held = bytes;
    const kind = guessImportKind(new Uint8Array(bytes));
    if (kind === undefined) {
      return refuse([
        fault(
          'kind-unknown',
          told(({ mapImport }) => mapImport.faults.unknown),
        ),
      ]);
    }
    if (kind !== 'geojson') return succeed({ kind, suggestions: null });
    const text = textOf(bytes);
    const suggestions = text.ok ? suggestMappings(text.value) : text;
    return suggestions.ok ? succeed({ kind, suggestions: suggestions.value }) : suggestions;
  },
  async propose(document, kind, wishes) {
    const context = contextOf(document);
    if (kind === 'heights') return readHeights(held, context, wishes.spacingM);
    const text = textOf(held);
    if (!text.ok) return text;
    switch (kind) {
      case 'osm':
        return readOsm(text.value, context);
      case 'gpx':
        return readGpx(text.value, context, wishes.trackKind === null ? {} : { trackKind: wishes.trackKind });
      case 'geojson':
        return readGeojson(text.value, context, {
          mappings: wishes.mappings,
          ...(wishes.holeProperty === null ? {} : { holeProperty: wishes.holeProperty }),
        });
    }
  },
};

function textOf(bytes: ArrayBuffer): Result<string, readonly Fault[]> {
  try {
    return succeed(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return refuse([
      fault(
        'not-text',
        told(({ mapImport }) => mapImport.faults.notText),
      ),
    ]);
  }
}

function fault(code: string, message: Told): Fault {
  return toldFault({ severity: 'error', code, where: 'file', message });
}

expose(api);
