/** The room's worker as the window sees it: started when first needed, started anew after a stop. */

import { proxy, type Remote, wrap } from 'comlink';
import type { BagApi } from './bag-api.ts';

export interface BagOffice {
  readonly readPlayer: BagApi['readPlayer'];
  readonly report: BagApi['report'];
  readonly drifts: BagApi['drifts'];
  readonly openTable: BagApi['openTable'];
  readonly closeTable: BagApi['closeTable'];
  readonly preview: BagApi['preview'];
  readonly texts: BagApi['texts'];
  readonly readTable: BagApi['readTable'];
  readonly cancelTable: BagApi['cancelTable'];
  /** Ends what is under way; its promises are left unanswered. */
  readonly stop: () => void;
}

export function openOffice(): BagOffice {
  let running: { readonly worker: Worker; readonly clerk: Remote<BagApi> } | null = null;
  const clerk = (): Remote<BagApi> => {
    if (running === null) {
      const worker = new Worker(new URL('./bag-worker.ts', import.meta.url), { type: 'module' });
      running = { worker, clerk: wrap<BagApi>(worker) };
    }
    return running.clerk;
  };
  return {
    readPlayer: (text) => clerk().readPlayer(text),
    report: (document) => clerk().report(document),
    drifts: (document) => clerk().drifts(document),
    openTable: (source, name, document) => clerk().openTable(source, name, document),
    closeTable: () => clerk().closeTable(),
    preview: (mapping, document) => clerk().preview(mapping, document),
    texts: (mapping, column) => clerk().texts(mapping, column),
    readTable: (mapping, document, report) => clerk().readTable(mapping, document, proxy(report)),
    cancelTable: () => clerk().cancelTable(),
    stop: () => {
      running?.worker.terminate();
      running = null;
    },
  };
}
