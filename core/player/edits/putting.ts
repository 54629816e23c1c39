/** Records of putting and of the short game, added to a player file and taken out again. */

import { type Result, refuse, succeed } from '../../result.ts';
import type { PlayerDocument } from '../format.ts';
import type { ShortGameKind } from '../short-game.ts';
import { told, type Told } from '../../words/told.ts';

const FOOT_M = 0.3048;
/** Distances of the ten-minute test on the practice green, feet. */
export const TEST_DISTANCES_FT = [3, 6, 10, 20, 30, 40] as const;

export interface TestLine {
  readonly distanceFt: number;
  readonly tries: number;
  readonly made: number;
}

type PuttingRecord = NonNullable<PlayerDocument['puttingRecord']>;

/** Adds a test; distances without a try are left out. `at` is the day (ISO 8601). */
export function addPuttingTest(
  document: PlayerDocument,
  lines: readonly TestLine[],
  at: string,
): Result<PlayerDocument, Told> {
  const bad = lines.find(({ tries, made }) => made > tries);
  if (bad !== undefined)
    return refuse(
      told(({ faults }) => faults.putts.holed, { made: bad.made, tries: bad.tries, feet: bad.distanceFt }),
    );
  const tried = lines.filter(({ tries }) => tries > 0);
  if (tried.length === 0) return refuse(told(({ faults }) => faults.putts.none));
  const added = tried.map(({ distanceFt, tries, made }) => ({
    distanceM: Math.round(distanceFt * FOOT_M * 1e4) / 1e4,
    tries,
    made,
    at,
  }));
  const holed = [...(document.puttingRecord?.holed ?? []), ...added];
  if (holed.length > 200) return refuse(told(({ faults }) => faults.putts.tooMany));
  return succeed(withRecord(document, { holed }));
}

/** One green of the log: from how far, how many putts, and where the first one stopped, if that is known. */
export function addGreen(
  document: PlayerDocument,
  green: { readonly distanceM: number; readonly putts: number; readonly pastM: number | null },
  at: string,
): PlayerDocument {
  const { distanceM, putts, pastM } = green;
  const { taken = [], missed = [] } = document.puttingRecord ?? {};
  return withRecord(document, {
    taken: [...taken, { distanceM, putts, at }],
    ...(pastM === null || putts === 1 ? {} : { missed: [...missed, { distanceM, pastM, at }] }),
  });
}

export function removeGreen(document: PlayerDocument, place: number): PlayerDocument {
  const taken = (document.puttingRecord?.taken ?? []).filter((_, i) => i !== place);
  return withRecord(document, { taken });
}

/** All lines of the tests of one day; those without a day where `at` is undefined. */
export function removePuttingTest(document: PlayerDocument, at: string | undefined): PlayerDocument {
  const holed = (document.puttingRecord?.holed ?? []).filter((line) => dayOfLine(line) !== at);
  return withRecord(document, { holed });
}

/** The day of a test's line; undefined where the file does not tell. */
export function dayOfLine(line: Readonly<Record<string, unknown>>): string | undefined {
  return typeof line['at'] === 'string' ? line['at'] : undefined;
}

export function addUpAndDown(
  document: PlayerDocument,
  record: { readonly kind: ShortGameKind; readonly tries: number; readonly saved: number },
  at: string,
): Result<PlayerDocument, Told> {
  if (record.tries === 0) return refuse(told(({ faults }) => faults.putts.noTry));
  if (record.saved > record.tries)
    return refuse(told(({ faults }) => faults.putts.saved, { saved: record.saved, tries: record.tries }));
  return succeed({ ...document, upAndDowns: [...(document.upAndDowns ?? []), { ...record, at }] });
}

/** Takes out every record of a kind. */
export function removeUpAndDowns(document: PlayerDocument, kind: ShortGameKind): PlayerDocument {
  return { ...document, upAndDowns: (document.upAndDowns ?? []).filter((record) => record.kind !== kind) };
}

function withRecord(document: PlayerDocument, change: Partial<PuttingRecord>): PlayerDocument {
  return { ...document, puttingRecord: { ...document.puttingRecord, ...change } };
}
