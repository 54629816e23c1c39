/** What the room's worker does. Everything that crosses is plain data. */

import type { RecentDrift } from './recent-drift.ts';
import type { ShotMapping } from '../../../core/player/csv/mapping.ts';
import type { PreviewRow } from '../../../core/player/csv/preview.ts';
import type { ReadProgress, ShotTable } from '../../../core/player/csv/read-shots.ts';
import type { PlayerDocument } from '../../../core/player/format.ts';
import type { Fault, Result } from '../../../core/result.ts';
import type { BagReport } from './bag-report.ts';
import type { OpenTable } from './read-table.ts';

export interface ReadPlayer {
  readonly document: PlayerDocument;
  readonly report: BagReport;
}

export type TableAnswer = Result<ShotTable, Fault | 'cancelled'>;

export interface BagApi {
  /** A player file's text as a document with its report. */
  readPlayer(text: string): Promise<Result<ReadPlayer, readonly Fault[]>>;
  /** Its document alone, so that it can be shown while the estimates are worked out. */
  readDocument(text: string): Promise<Result<PlayerDocument, readonly Fault[]>>;
  report(document: PlayerDocument): Promise<Result<BagReport, readonly Fault[]>>;
  /** The same in slices beside other work, telling the share done; a later call, or `cancelEstimate`, ends it. */
  estimate(
    document: PlayerDocument,
    tell: (share: number) => void,
  ): Promise<Result<BagReport, readonly Fault[] | 'cancelled'>>;
  cancelEstimate(): Promise<void>;
  /** How each club changed of late. */
  drifts(document: PlayerDocument): Promise<readonly RecentDrift[]>;
  /** Holds the table until another is opened or it is closed. */
  openTable(source: File | string, name: string, document: PlayerDocument): Promise<Result<OpenTable, Fault>>;
  closeTable(): Promise<void>;
  /** The first rows of the open table as they would be read. */
  preview(mapping: ShotMapping, document: PlayerDocument): Promise<readonly PreviewRow[]>;
  /** Texts in a column of the open table. */
  texts(mapping: ShotMapping, column: number): Promise<readonly string[]>;
  readTable(
    mapping: ShotMapping,
    document: PlayerDocument,
    report: (progress: ReadProgress) => void,
  ): Promise<TableAnswer>;
  cancelTable(): Promise<void>;
}
