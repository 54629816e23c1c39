/**
 * The one door for round files, and the edits that entering a round from the card needs. What can be lived with (more
 * putts than strokes, a hole entered twice) is listed, so that the person can mend it.
 */

import * as v from 'valibot';
import { readJsonText } from '../course/json-text.ts';
import { briefly, type Fault, refuse, type Result, succeed } from '../result.ts';
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
    const message = `It holds ${text.length} characters; at most ${MOST_ROUND_CHARACTERS} are read. Split it into single rounds.`;
    return refuse([fileFault('file-too-large', message)]);
  }
  const json = readJsonText(text);
  return json.ok ? parseRound(json.value) : json;
}

export function parseRound(json: unknown): Result<RoundFile, readonly Fault[]> {
  if (!v.is(RoundHeaderSchema, json) || json.holewright.format !== 'round') {
    const message =
      'It does not say that it is a round file (holewright.format "round" with a formatVersion from 1). Choose a round file, or begin a new round.';
    return refuse([fileFault('not-a-round', message)]);
  }
  const migrated = migrateRound(json, json.holewright.formatVersion);
  if (!migrated.ok) return refuse([migrated.error]);
  const parsed = v.safeParse(RoundDocumentSchema, migrated.value);
  if (!parsed.success) return refuse(issueFaults(parsed.issues));
  const doubled = firstDouble(parsed.output.played.map(({ hole }) => hole));
  if (doubled !== undefined) {
    const message = `Hole ${doubled} is entered twice. Take one of the two out.`;
    return refuse([{ severity: 'error', code: 'hole-twice', where: `hole ${doubled}`, message }]);
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
  const doubt = (code: string, message: string): void => {
    doubts.push({ severity: 'warning', code, where: `hole ${hole}`, message });
  };
  const others = (putts ?? 0) + (penalties ?? 0);
  if (others >= score && !(others === score && putts === score))
    doubt(
      'strokes-do-not-add-up',
      `The score is ${score}, putts and penalties are ${others}. Look at the card again.`,
    );
  if (penalties !== undefined && penalties < penaltiesOf(shots))
    doubt(
      'penalties-do-not-add-up',
      `The hole has ${penalties} penalty strokes, its shots have ${penaltiesOf(shots)}. Look at the shots again.`,
    );
  if (shots !== undefined && shots.length > 0) {
    const counted = shots.length + penaltiesOf(shots);
    if (counted > score)
      doubt(
        'more-shots-than-strokes',
        `The score is ${score}, its shots and penalties come to ${counted}. Look at the shots again.`,
      );
  }
  return doubts;
}

function firstDouble(holes: readonly number[]): number | undefined {
  return holes.find((hole, i) => holes.indexOf(hole) < i);
}

function issueFaults(issues: readonly v.BaseIssue<unknown>[]): readonly Fault[] {
  const faults = issues.slice(0, MOST_FAULTS).map((issue): Fault => {
    const wanted = issue.expected ?? 'something else';
    return {
      severity: 'error',
      code: 'field-unreadable',
      where: placeOf(issue),
      message:
        issue.received === 'undefined'
          ? `It is missing; ${wanted} is needed. Add it to the file, or restore the last good copy.`
          : `It is ${briefly(issue.received)}; ${wanted} was expected. Correct it in the file, or restore the last good copy.`,
    };
  });
  if (issues.length > MOST_FAULTS) {
    const more = issues.length - MOST_FAULTS;
    faults.push(fileFault('more-faults', `${more} more fields cannot be read. Mend these first.`));
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

function fileFault(code: string, message: string): Fault {
  return { severity: 'error', code, where: 'file', message };
}
