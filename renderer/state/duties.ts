/** What panels may ask of the world outside the state: files, printing. Each reports back through actions. */

import type { FileKind } from '../../electron/contract/host.ts';
import type { LeftBehindNotice } from './app-state.ts';

export interface Duties {
  readonly openFile: (kind: FileKind, token: string) => Promise<void>;
  readonly importFile: (kind: FileKind) => Promise<void>;
  readonly printHole: () => Promise<void>;
  /** Makes a new file of work whose file is gone, and opens it where it is a course or a player. */
  readonly keepLeftBehind: (notice: LeftBehindNotice) => Promise<void>;
  readonly giveUpLeftBehind: (notice: LeftBehindNotice) => Promise<void>;
}
