/** The files that this window holds, let go of when the window is closed or loaded anew. */

import type { Claim, HostAnswer } from '../../electron/contract/host.ts';

export interface HeldFiles {
  /** Passes the answer to a claim on, remembering what was granted. */
  readonly claimed: (token: string, answer: HostAnswer<Claim>) => HostAnswer<Claim>;
  readonly released: (token: string) => void;
  /** Everything held, forgotten with this call. */
  readonly takeAll: () => readonly string[];
}

export function heldFiles(): HeldFiles {
  const held = new Set<string>();
  return {
    claimed: (token, answer) => {
      if (answer.ok && answer.value.isHeld) held.add(token);
      return answer;
    },
    released: (token) => {
      held.delete(token);
    },
    takeAll: () => {
      const all = [...held];
      held.clear();
      return all;
    },
  };
}

/** Calls back whenever the page is put away: closed, loaded anew, or kept for going back. */
export function whenPutAway(callback: () => void): void {
  window.addEventListener('pagehide', callback);
}
