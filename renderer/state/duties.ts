/** What panels may ask of the world outside the state: files, printing. Each reports back through actions. */

import type { FileKind } from '../../electron/contract/host.ts';

export interface Duties {
  readonly openFile: (kind: FileKind, token: string) => Promise<void>;
  readonly importFile: (kind: FileKind) => Promise<void>;
  readonly printHole: () => Promise<void>;
}
