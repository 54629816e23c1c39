/** The room's worker as the window sees it: started when first needed. */

import { proxy, type Remote } from 'comlink';
import { keepWorker, type KeptWorker } from '../../workers/kept-worker.ts';
import type { BagApi } from './bag-api.ts';

export interface BagOffice {
  readonly readPlayer: BagApi['readPlayer'];
  readonly report: BagApi['report'];
  readonly readDocument: BagApi['readDocument'];
  readonly estimate: BagApi['estimate'];
  readonly cancelEstimate: BagApi['cancelEstimate'];
  readonly drifts: BagApi['drifts'];
  readonly openTable: BagApi['openTable'];
  readonly closeTable: BagApi['closeTable'];
  readonly preview: BagApi['preview'];
  readonly texts: BagApi['texts'];
  readonly readTable: BagApi['readTable'];
  readonly cancelTable: BagApi['cancelTable'];
}

export function openOffice(): BagOffice {
  let running: KeptWorker<BagApi> | null = null;
  const clerk = (): Remote<BagApi> => {
    running ??= keepWorker<BagApi>({
      start: () => new Worker(new URL('./bag-worker.ts', import.meta.url), { type: 'module' }),
    });
    return running.desk();
  };
  return {
    readPlayer: (text) => clerk().readPlayer(text),
    report: (document) => clerk().report(document),
    readDocument: (text) => clerk().readDocument(text),
    estimate: (document, tell) => clerk().estimate(document, proxy(tell)),
    cancelEstimate: () => clerk().cancelEstimate(),
    drifts: (document) => clerk().drifts(document),
    openTable: (source, name, document) => clerk().openTable(source, name, document),
    closeTable: () => clerk().closeTable(),
    preview: (mapping, document) => clerk().preview(mapping, document),
    texts: (mapping, column) => clerk().texts(mapping, column),
    readTable: (mapping, document, report) => clerk().readTable(mapping, document, proxy(report)),
    cancelTable: () => clerk().cancelTable(),
  };
}
