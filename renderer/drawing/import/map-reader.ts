/** One map file being read in a worker of its own, which is ended when the person stops or is done. */

import { transfer, wrap } from 'comlink';
import type { EditableDocument } from '../../../core/course/document.ts';
import type { ImportKind } from '../../../core/course/import/proposal.ts';
import type { Fault, Result } from '../../../core/result.ts';
import type { ImportApi, ImportWishes, LookedAt, ProposalAnswer } from './import-worker.ts';

export interface MapReader {
  readonly look: (bytes: ArrayBuffer) => Promise<Result<LookedAt, readonly Fault[]>>;
  readonly propose: (
    document: EditableDocument,
    kind: ImportKind,
    wishes: ImportWishes,
  ) => Promise<ProposalAnswer>;
  readonly end: () => void;
}

export function startMapReader(): MapReader {
  const worker = new Worker(new URL('./import-worker.ts', import.meta.url), { type: 'module' });
  const desk = wrap<ImportApi>(worker);
  return {
    look: (bytes) => desk.look(transfer(bytes, [bytes])),
    propose: (document, kind, wishes) => desk.propose(document, kind, wishes),
    end: () => worker.terminate(),
  };
}
