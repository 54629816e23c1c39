/** The worker's own work: reports kept by content, and one open table at a time. */

import type { Told } from '../../../core/words/told.ts';
import { type PreviewRow, previewRows } from '../../../core/player/csv/preview.ts';
import { type ReadProgress, readShotsInSteps } from '../../../core/player/csv/read-shots.ts';
import type { ShotMapping } from '../../../core/player/csv/mapping.ts';
import type { PlayerDocument } from '../../../core/player/format.ts';
import { readPlayerDocumentText } from '../../../core/player/parse.ts';
import { StillAir } from '../../../core/player/still-air.ts';
import { type Fault, refuse, type Result, succeed } from '../../../core/result.ts';
import type { BagApi, ReadPlayer, TableAnswer } from './bag-api.ts';
import { type BagReport, reportInSteps } from './bag-report.ts';
import {
  emptyTable,
  MOST_TABLE_BYTES,
  openTable,
  type OpenTable,
  textOfBytes,
  textsInColumn,
  tooManyBytes,
} from './read-table.ts';
import { type RecentDrift, recentDriftsInSteps } from './recent-drift.ts';

/** Reports that are kept: enough for a while of undoing and redoing. */
const MOST_KEPT = 12;
/** Work is done in slices of this length; between them other messages are heard. */
const SLICE_MS = 40;
/** Rows of a table that are shown before it is read. */
const MOST_PREVIEWED = 8;

export class BagClerk implements BagApi {
  private readonly kept = new Map<string, Result<BagReport, readonly Fault[]>>();
  private table: string | null = null;
  private readonly air = new StillAir();
  /** Counts up when an estimate is to end; one that finds another number stops. */
  private estimating = 0;
  /** Counts up when reading is to end; a reader that finds another number stops. */
  private reading = 0;

  /** `turn` resolves after other messages have been heard; `now` is a clock in milliseconds. */
  constructor(
    private readonly turn: () => Promise<void>,
    private readonly now: () => number = () => performance.now(),
  ) {}

  async readPlayer(text: string): Promise<Result<ReadPlayer, readonly Fault[]>> {
    const read = readPlayerDocumentText(text);
    if (!read.ok) return read;
    const { document } = read.value;
    const report = await this.report(document);
    return report.ok ? succeed({ document, report: report.value }) : report;
  }

  readDocument(text: string): Promise<Result<PlayerDocument, readonly Fault[]>> {
    const read = readPlayerDocumentText(text);
    return Promise.resolve(read.ok ? succeed(read.value.document) : read);
  }

  report(document: PlayerDocument): Promise<Result<BagReport, readonly Fault[]>> {
    const key = JSON.stringify(document);
    const known = this.kept.get(key);
    if (known !== undefined) return Promise.resolve(this.keep(key, known));
    const steps = reportInSteps(document, this.air);
    for (;;) {
      const step = steps.next();
      if (step.done === true) return Promise.resolve(this.keep(key, step.value));
    }
  }

  async estimate(
    document: PlayerDocument,
    tell: (share: number) => void,
  ): Promise<Result<BagReport, readonly Fault[] | 'cancelled'>> {
    const own = ++this.estimating;
    const key = JSON.stringify(document);
    const steps = reportInSteps(document, this.air);
    let heard = this.now();
    for (;;) {
      const known = this.kept.get(key);
      if (known !== undefined) return this.keep(key, known);
      const step = steps.next();
      if (step.done === true) return this.keep(key, step.value);
      if (this.now() - heard < SLICE_MS) continue;
      tell(step.value);
      await this.turn();
      if (own !== this.estimating) return refuse('cancelled');
      heard = this.now();
    }
  }

  cancelEstimate(): Promise<void> {
    this.estimating++;
    return Promise.resolve();
  }

  private keep(
    key: string,
    report: Result<BagReport, readonly Fault[]>,
  ): Result<BagReport, readonly Fault[]> {
    // The latest used goes last, the first one goes when there are too many.
    this.kept.delete(key);
    this.kept.set(key, report);
    for (const oldest of this.kept.keys()) {
      if (this.kept.size <= MOST_KEPT) break;
      this.kept.delete(oldest);
    }
    return report;
  }

  async drifts(document: PlayerDocument): Promise<readonly RecentDrift[]> {
    const steps = recentDriftsInSteps(document, this.air);
    for (;;) {
      const step = steps.next();
      if (step.done === true) return step.value;
      await this.turn();
    }
  }

  async openTable(
    source: File | string,
    name: string,
    document: PlayerDocument,
  ): Promise<Result<OpenTable, Fault>> {
    this.reading++;
    this.table = null;
    let text: string;
    let doubt: Told | null = null;
    if (typeof source === 'string') text = source;
    else {
      if (source.size > MOST_TABLE_BYTES) return refuse(tooManyBytes(name, source.size));
      ({ text, doubt } = textOfBytes(new Uint8Array(await source.arrayBuffer())));
    }
    const opened = openTable(text, document);
    if (!opened.ok) return refuse({ ...opened.error, where: name });
    this.table = text;
    const { doubts } = opened.value;
    return succeed({ ...opened.value, doubts: doubt === null ? doubts : [doubt, ...doubts] });
  }

  closeTable(): Promise<void> {
    this.reading++;
    this.table = null;
    return Promise.resolve();
  }

  preview(mapping: ShotMapping, document: PlayerDocument): Promise<readonly PreviewRow[]> {
    return Promise.resolve(
      this.table === null ? [] : previewRows(this.table, mapping, document.bag, MOST_PREVIEWED),
    );
  }

  texts(mapping: ShotMapping, column: number): Promise<readonly string[]> {
    return Promise.resolve(this.table === null ? [] : textsInColumn(this.table, mapping, column));
  }

  async readTable(
    mapping: ShotMapping,
    document: PlayerDocument,
    report: (progress: ReadProgress) => void,
  ): Promise<TableAnswer> {
    if (this.table === null) return emptyTable();
    const own = ++this.reading;
    const steps = readShotsInSteps(this.table, mapping, {
      bag: document.bag,
      existing: document.shots ?? [],
    });
    for (let block = 0; ; block++) {
      const step = steps.next();
      if (step.done === true) return step.value;
      if (block % 4 !== 3) continue;
      report(step.value);
      await this.turn();
      if (own !== this.reading) return refuse('cancelled');
    }
  }

  cancelTable(): Promise<void> {
    this.reading++;
    return Promise.resolve();
  }
}
