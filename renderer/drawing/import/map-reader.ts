/** One map file being read in a worker of its own, which is ended when the person stops or is done. */

import { told, toldFault } from '../../../core/words/told.ts';
import { transfer } from 'comlink';
import type { EditableDocument } from '../../../core/course/document.ts';
import type { ImportKind } from '../../../core/course/import/proposal.ts';
import { type Fault, refuse, type Result } from '../../../core/result.ts';
import { watchedDesk } from '../../workers/watched-desk.ts';
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
  const { desk, end } = watchedDesk<ImportApi>(worker, () => undefined);
  return {
    look: (bytes) => desk.look(transfer(bytes, [bytes])).catch(gone),
    propose: (document, kind, wishes) => desk.propose(document, kind, wishes).catch(gone),
    end: () => end(new Error('It was stopped.')),
  };
}

/** Reading ended by itself, most likely for want of memory; whoever stopped it does not look at the answer. */
function gone(): Result<never, readonly Fault[]> {
  return refuse([
    toldFault({
      severity: 'error',
      code: 'reading-ended',
      where: told(({ mapImport }) => mapImport.faults.file),
      message: told(({ mapImport }) => mapImport.faults.ended),
    }),
  ]);
}
