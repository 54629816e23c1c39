/**
 * The one door for round files, and the edits that entering a round from the card needs. What can be lived with (more
 * putts than strokes, a hole entered twice) is listed, so that the person can mend it.
 */

import * as v from 'valibot';
import { readJsonText } from '../course/json-text.ts';
import { briefly, type Fault, refuse, type Result, succeed } from '../result.ts';
import { told, type Told, toldFault } from '../words/told.ts';
import {
  migrateRound,
  MOST_ROUND_CHARACTERS,
  type PlayedHoleRecord,
  ROUND_FORMAT_VERSION,
  type RoundDocument,
  RoundDocumentSchema,
  RoundHeaderSchema,
} from './format.ts';
import { penaltiesOf } from './penalties.ts';

export interface RoundFile {
  readonly round: RoundDocument;
  readonly warnings: readonly Fault[];
}

const MOST_FAULTS = 40;

/** Text of a file to a round; unknown members are kept. */
export function parseRoundText(text: string): Result<RoundFile, readonly Fault[]> {
  if (text.length > MOST_ROUND_CHARACTERS) {
    const message = told(({ faults }) => faults.round.tooLong, {
      count: text.length,
      most: MOST_ROUND_CHARACTERS,
    });
    return refuse([fileFault('file-too-large', message)]);
  }
  const json = readJsonText(text);
  return json.ok ? parseRound(json.value) : json;
}

export function parseRound(json: unknown): Result<RoundFile, readonly Fault[]> {
  if (!v.is(RoundHeaderSchema, json) || json.holewright.format !== 'round') {
    const message = told(({ faults }) => faults.round.notRound);
    return refuse([fileFault('not-a-round', message)]);
  }
  const migrated = migrateRound(json, json.holewright.formatVersion);
  if (!migrated.ok) return refuse([migrated.error]);
  const parsed = v.safeParse(RoundDocumentSchema, migrated.value);
  if (!parsed.success) return refuse(issueFaults(parsed.issues));
  const doubled = firstDouble(parsed.output.played.map(({ hole }) => hole));
  if (doubled !== undefined) {
    const message = told(({ faults }) => faults.round.holeTwice, { hole: doubled });
    return refuse([toldFault({ severity: 'error', code: 'hole-twice', where: whereHole(doubled), message })]);
  }
  return succeed({ round: parsed.output, warnings: parsed.output.played.flatMap(doubtsOf) });
}

/** A round about to be played. */
export function newRound(
  parts: Pick<RoundDocument, 'name' | 'course' | 'player'> & Partial<RoundDocument>,
): RoundDocument {
  return {
    ...parts,
    holewright: { format: 'round', formatVersion: ROUND_FORMAT_VERSION },
    played: parts.played ?? [],
  };
}

/** The round with this hole entered, or entered anew; holes stay in the order in which they were first entered. */
export function withHole(round: RoundDocument, played: PlayedHoleRecord): RoundDocument {
  const known = round.played.some(({ hole }) => hole === played.hole);
  return {
    ...round,
    played: known
      ? round.played.map((entry) => (entry.hole === played.hole ? played : entry))
      : [...round.played, played],
  };
}

export function withoutHole(round: RoundDocument, hole: number): RoundDocument {
  return { ...round, played: round.played.filter((entry) => entry.hole !== hole) };
}

/** The round as played on this day (`2026-04-11`); a name that ends with the day before follows, a time of day stays. */
export function withDate(round: RoundDocument, date: string): RoundDocument {
  const { playedAt = '', name } = round;
  const before = playedAt.slice(0, 10);
  const isNamed = before !== '' && name.endsWith(`, ${before}`);
  return {
    ...round,
    playedAt: `${date}${playedAt.slice(10)}`,
    ...(isNamed ? { name: `${name.slice(0, -before.length)}${date}` } : {}),
  };
}

export interface RoundTotals {
  readonly holes: number;
  readonly score: number;
  readonly par: number;
  /** Null where any hole lacks them. */
  readonly putts: number | null;
  readonly penalties: number | null;
}

export function totalsOf(round: RoundDocument): RoundTotals {
  const sum = (of: (hole: PlayedHoleRecord) => number | undefined): number | null =>
    round.played.reduce<number | null>((total, hole) => {
      const value = of(hole);
      return total === null || value === undefined ? null : total + value;
    }, 0);
  return {
    holes: round.played.length,
    score: sum(({ score }) => score) ?? 0,
    par: sum(({ par }) => par) ?? 0,
    putts: sum(({ putts }) => putts),
    penalties: sum(({ penalties }) => penalties),
  };
}

/** What cannot quite be true of a hole. */
function doubtsOf({ hole, score, putts, penalties, shots }: PlayedHoleRecord): Fault[] {
  const doubts: Fault[] = [];
  const doubt = (code: string, message: Told): void => {
    doubts.push(toldFault({ severity: 'warning', code, where: whereHole(hole), message }));
  };
  const others = (putts ?? 0) + (penalties ?? 0);
  if (others >= score && !(others === score && putts === score))
    doubt(
      'strokes-do-not-add-up',
      told(({ faults }) => faults.round.doNotAddUp, { score, others }),
    );
  if (penalties !== undefined && penalties < penaltiesOf(shots))
    doubt(
      'penalties-do-not-add-up',
      told(({ faults }) => faults.round.penalties, { hole: penalties, shots: penaltiesOf(shots) }),
    );
  if (shots !== undefined && shots.length > 0) {
    const counted = shots.length + penaltiesOf(shots);
    if (counted > score)
      doubt(
        'more-shots-than-strokes',
        told(({ faults }) => faults.round.moreShots, { score, counted }),
      );
  }
  return doubts;
}

function firstDouble(holes: readonly number[]): number | undefined {
  return holes.find((hole, i) => holes.indexOf(hole) < i);
}

function issueFaults(issues: readonly v.BaseIssue<unknown>[]): readonly Fault[] {
  const faults = issues.slice(0, MOST_FAULTS).map((issue): Fault => {
    const wanted = issue.expected ?? told(({ faults }) => faults.file.somethingElse);
    return toldFault({
      severity: 'error',
      code: 'field-unreadable',
      where: placeOf(issue),
      message:
        issue.received === 'undefined'
          ? told(({ faults }) => faults.file.missing, { wanted })
          : told(({ faults }) => faults.file.unexpected, { found: briefly(issue.received), wanted }),
    });
  });
  if (issues.length > MOST_FAULTS) {
    const more = issues.length - MOST_FAULTS;
    faults.push(
      fileFault(
        'more-faults',
        told(({ faults }) => faults.file.moreFields, { count: more }),
      ),
    );
  }
  return faults;
}

/** `played[3].score`, with the indices in brackets. */
function placeOf(issue: v.BaseIssue<unknown>): string {
  let place = '';
  for (const { key } of (issue.path ?? []) as readonly { readonly key: unknown }[])
    place += typeof key === 'number' ? `[${key}]` : `${place === '' ? '' : '.'}${String(key)}`;
  return place === '' ? 'file' : place;
}

function whereHole(hole: number): Told {
  return told(({ features }) => features.whereOnlyHole, { hole });
}

function fileFault(code: string, message: Told): Fault {
  return toldFault({ severity: 'error', code, where: 'file', message });
}
