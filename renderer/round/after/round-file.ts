/** The round file at hand as the window holds it: what is typed, what is on the disk, and what stands between them. */

import type { RoundDocument } from '../../../core/round/format.ts';
import type { Fault } from '../../../core/result.ts';
import type { FileEntry } from '../../../electron/contract/host.ts';
import type { EarlierWork } from '../../host/earlier-work.ts';

/** Typing that was written down and not saved, from an earlier sitting. */
export type LostTyping = EarlierWork<RoundDocument>;

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
  /** Its place among the steps of the whole room. */
  readonly at: number;
  /** The field that is being typed into; null for what is whole at once, and once the field is left. */
  readonly field: string | null;
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
  | {
      readonly type: 'changed';
      readonly label: string;
      readonly document: RoundDocument;
      /** Names the field where this is typing: one step until the field is left. */
      readonly field?: string;
      readonly at?: number;
    }
  | { readonly type: 'field-left' }
  | { readonly type: 'future-forgotten' }
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
          past: withStep(open.past, {
            label: action.label,
            at: action.at ?? 0,
            field: action.field ?? null,
            document: open.document,
          }),
          future: [],
        },
      };
    case 'undone': {
      const step = open?.past.at(-1);
      if (open === null || step === undefined) return state;
      const future = [...open.future, { ...step, field: null, document: open.document }];
      return { ...state, open: { ...open, document: step.document, past: open.past.slice(0, -1), future } };
    }
    case 'redone': {
      const step = open?.future.at(-1);
      if (open === null || step === undefined) return state;
      const past = [...open.past, { ...step, document: open.document }];
      return { ...state, open: { ...open, document: step.document, past, future: open.future.slice(0, -1) } };
    }
    case 'field-left': {
      const step = open?.past.at(-1);
      if (open === null || step === undefined || step.field === null) return state;
      return { ...state, open: { ...open, past: [...open.past.slice(0, -1), { ...step, field: null }] } };
    }
    case 'future-forgotten':
      return open === null || open.future.length === 0 ? state : { ...state, open: { ...open, future: [] } };
    case 'told':
      return open === null ? state : { ...state, open: { ...open, ...action.change } };
  }
}

/** Typing in one field is one step: a second change in it keeps the state before the first. */
function withStep(past: readonly Step[], step: Step): readonly Step[] {
  const isTyping = step.field !== null && past.at(-1)?.field === step.field;
  return isTyping ? past : [...past, step].slice(-MOST_STEPS);
}
