/** The round file at hand as the window holds it: what is typed, what is on the disk, and what stands between them. */

import type { RoundDocument } from '../../../core/round/format.ts';
import type { Fault } from '../../../core/result.ts';
import type { FileEntry } from '../../../electron/contract/host.ts';

/** Typing that was written down and not saved, from an earlier sitting. */
export interface LostTyping {
  readonly journal: string;
  readonly upTo: number;
  /** Milliseconds since 1970. */
  readonly writtenAt: number;
  readonly document: RoundDocument;
}

export interface OpenRound {
  readonly entry: FileEntry;
  readonly revision: string;
  readonly document: RoundDocument;
  readonly saved: RoundDocument;
  /** Null: may be changed; otherwise why it may only be read. */
  readonly readOnlyWhy: string | null;
  readonly status: 'resting' | 'saving';
  readonly trouble: string | null;
  /** True where another program changed the file meanwhile. */
  readonly isChangedOnDisk: boolean;
  readonly lost: LostTyping | null;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
}

/** One step of undo: the round before it (or after it, once undone), and its name. */
export interface Step {
  readonly label: string;
  readonly document: RoundDocument;
}

export interface RoundFiles {
  readonly open: OpenRound | null;
  /** What keeps a file from opening. */
  readonly refused: { readonly name: string; readonly faults: readonly Fault[] } | null;
  readonly isBusy: boolean;
}

export const NO_ROUND: RoundFiles = { open: null, refused: null, isBusy: false };

export type RoundFileAction =
  | { readonly type: 'opened'; readonly open: OpenRound }
  | { readonly type: 'closed' }
  | { readonly type: 'refused'; readonly name: string; readonly faults: readonly Fault[] }
  | { readonly type: 'busy'; readonly isBusy: boolean }
  | { readonly type: 'changed'; readonly label: string; readonly document: RoundDocument }
  | { readonly type: 'undone' }
  | { readonly type: 'redone' }
  | { readonly type: 'told'; readonly change: Partial<OpenRound> };

const MOST_STEPS = 200;

export function reduceRoundFiles(state: RoundFiles, action: RoundFileAction): RoundFiles {
  const { open } = state;
  switch (action.type) {
    case 'opened':
      return { open: action.open, refused: null, isBusy: false };
    case 'closed':
      return NO_ROUND;
    case 'refused':
      return { ...state, isBusy: false, refused: { name: action.name, faults: action.faults } };
    case 'busy':
      return { ...state, isBusy: action.isBusy };
    case 'changed':
      if (open === null || action.document === open.document) return state;
      return {
        ...state,
        open: {
          ...open,
          document: action.document,
          past: withStep(open.past, { label: action.label, document: open.document }),
          future: [],
        },
      };
    case 'undone': {
      const step = open?.past.at(-1);
      if (open === null || step === undefined) return state;
      const future = [...open.future, { label: step.label, document: open.document }];
      return { ...state, open: { ...open, document: step.document, past: open.past.slice(0, -1), future } };
    }
    case 'redone': {
      const step = open?.future.at(-1);
      if (open === null || step === undefined) return state;
      const past = withStep(open.past, { label: step.label, document: open.document });
      return { ...state, open: { ...open, document: step.document, past, future: open.future.slice(0, -1) } };
    }
    case 'told':
      return open === null ? state : { ...state, open: { ...open, ...action.change } };
  }
}

/** Typing in one field is one step: a second change of the same name keeps the state before the first. */
function withStep(past: readonly Step[], step: Step): readonly Step[] {
  return past.at(-1)?.label === step.label ? past : [...past, step].slice(-MOST_STEPS);
}
