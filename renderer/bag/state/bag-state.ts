/** What the player's room knows: the open file with its unsaved changes, its estimates, and what is on show. */

import type { ShotMapping } from '../../../core/player/csv/mapping.ts';
import type { PreviewRow } from '../../../core/player/csv/preview.ts';
import type { ReadProgress, ShotTable } from '../../../core/player/csv/read-shots.ts';
import type { PlayerDocument } from '../../../core/player/format.ts';
import type { Swing } from '../../../core/player/model.ts';
import type { Fault } from '../../../core/result.ts';
import type { ClaimHolder, FileEntry } from '../../../electron/contract/host.ts';
import type { EarlierWork } from '../../host/earlier-work.ts';
import type { BagReport } from '../work/bag-report.ts';
import type { OpenTable } from '../work/read-table.ts';
import type { BagHistory } from './bag-history.ts';

export const PAGES = ['clubs', 'distances', 'shots', 'short', 'field', 'players'] as const;
export type Page = (typeof PAGES)[number];

export interface BagState {
  readonly file: OpenBag | null;
  readonly page: Page;
  readonly shown: ShownClub | null;
  /** The last thing that could not be done, in words; null when read. */
  readonly refusal: string | null;
  /** What was done, for those who do not see it. */
  readonly said: string | null;
  readonly intake: Intake | null;
  /** Cells of shots that are being typed, row by row. */
  readonly typed: readonly (readonly string[])[];
  /** True while a new player is being made up. */
  readonly making: boolean;
}

export interface ShownClub {
  readonly club: string;
  readonly swing: Swing;
}

export interface OpenBag {
  readonly entry: FileEntry;
  /** Of the file on disk that the changes build on. */
  readonly revision: string;
  readonly saved: PlayerDocument;
  readonly history: BagHistory;
  readonly access: Access;
  readonly estimate: Estimated;
  /** Work of earlier sittings that was not saved, newest first; each until the person has decided. */
  readonly found: readonly Found[];
  /** Revision that somebody else saved meanwhile. */
  readonly changedOnDisk: string | null;
  /** The file was taken out of its folder or renamed. */
  readonly isGone: boolean;
  readonly saving: boolean;
}

export type Access =
  | { readonly may: 'write' }
  | { readonly may: 'wait' }
  | { readonly may: 'read'; readonly why: 'demo' }
  | { readonly may: 'read'; readonly why: 'held'; readonly holder: ClaimHolder }
  | { readonly may: 'read'; readonly why: 'refused'; readonly message: string };

/** The report is the last one there was; it may be of an earlier content while a new one is worked out. */
export interface Estimated {
  readonly report: BagReport | null;
  /** The content that the report is of. */
  readonly of: PlayerDocument | null;
  readonly work: 'none' | 'busy' | 'stopped';
  /** Share of the work that is done, while it is busy. */
  readonly share: number;
  readonly faults: readonly Fault[];
}

export interface Found extends EarlierWork<PlayerDocument> {
  /** The file was saved since this was written. */
  readonly isOlder: boolean;
}

/** A table of shots on its way in. */
export interface Intake {
  readonly name: string;
  readonly stage:
    | { readonly at: 'opening' }
    | { readonly at: 'refused'; readonly message: string }
    | { readonly at: 'mapping' }
    | { readonly at: 'reading'; readonly progress: ReadProgress | null }
    | { readonly at: 'read'; readonly table: ShotTable };
  readonly table: OpenTable | null;
  readonly mapping: ShotMapping | null;
  /** Every name in the column of clubs. */
  readonly names: readonly string[];
  /** The first rows as they would be read. */
  readonly preview: readonly PreviewRow[];
  readonly fault: string | null;
  /** Shots that the player has already are added once more. */
  readonly withDuplicates: boolean;
}

export const EMPTY_BAG: BagState = {
  file: null,
  page: 'clubs',
  shown: null,
  refusal: null,
  said: null,
  intake: null,
  typed: [],
  making: false,
};
