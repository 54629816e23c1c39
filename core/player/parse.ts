/**
 * The one door for player files: text or JSON in, a `PlayerModel` out, or every fault that stands in the way. What
 * can be lived with (a club with few shots, a shot that names no club) becomes a warning of the model.
 */

import * as v from 'valibot';
import { readJsonText } from '../course/json-text.ts';
import { briefly, type Fault, type Result, refuse, succeed } from '../result.ts';
import { buildPlayer, type BuildSettings } from './build.ts';
import {
  MOST_CLUBS,
  MOST_PLAYER_CHARACTERS,
  MOST_SHOTS,
  migratePlayer,
  type PlayerDocument,
  PlayerDocumentSchema,
  PlayerHeaderSchema,
} from './format.ts';
import type { PlayerModel } from './model.ts';
import { told, type Told, toldFault } from '../words/told.ts';

/** No more faults than this are listed; the rest are counted. */
const MOST_FAULTS = 40;

/** A player with the file that it came from, members that we do not know included, so that it can be written back. */
export interface PlayerFile {
  readonly player: PlayerModel;
  /** As given where it is of the current format version, else as migrated. Not copied: treat it as read-only. */
  readonly document: PlayerDocument;
}

export function parsePlayer(
  json: unknown,
  settings: BuildSettings = {},
): Result<PlayerModel, readonly Fault[]> {
  const parsed = parsePlayerDocument(json, settings);
  return parsed.ok ? succeed(parsed.value.player) : parsed;
}

/** As `parsePlayer`, from the text of a file; a syntax error is a fault with its line and column. */
export function parsePlayerText(
  text: string,
  settings: BuildSettings = {},
): Result<PlayerModel, readonly Fault[]> {
  const parsed = parsePlayerDocumentText(text, settings);
  return parsed.ok ? succeed(parsed.value.player) : parsed;
}

export function parsePlayerDocumentText(
  text: string,
  settings: BuildSettings = {},
): Result<PlayerFile, readonly Fault[]> {
  const read = readPlayerDocumentText(text);
  return read.ok ? withPlayer(read.value, settings) : read;
}

/** A document as the schema read it, and as it was given. */
export interface ReadDocument {
  readonly parsed: PlayerDocument;
  readonly document: PlayerDocument;
}

/** The document alone, checked against the schema, without anything estimated from it. */
export function readPlayerDocumentText(text: string): Result<ReadDocument, readonly Fault[]> {
  if (text.length > MOST_PLAYER_CHARACTERS) {
    return refuse([
      fileFault(
        'file-too-large',
        told(({ faults }) => faults.file.playerTooLong, { count: text.length, most: MOST_PLAYER_CHARACTERS }),
      ),
    ]);
  }
  const json = readJsonText(text);
  return json.ok ? readPlayerDocument(json.value) : json;
}

export function parsePlayerDocument(
  json: unknown,
  settings: BuildSettings = {},
): Result<PlayerFile, readonly Fault[]> {
  const read = readPlayerDocument(json);
  return read.ok ? withPlayer(read.value, settings) : read;
}

function withPlayer(
  { parsed, document }: ReadDocument,
  settings: BuildSettings,
): Result<PlayerFile, readonly Fault[]> {
  const player = buildPlayer(parsed, settings);
  return player.ok ? succeed({ player: player.value, document }) : player;
}

function readPlayerDocument(json: unknown): Result<ReadDocument, readonly Fault[]> {
  if (!v.is(PlayerHeaderSchema, json) || json.holewright.format !== 'player') {
    return refuse([
      fileFault(
        'not-a-player',
        told(({ faults }) => faults.file.notPlayer),
      ),
    ]);
  }
  const migrated = migratePlayer(json, json.holewright.formatVersion);
  if (!migrated.ok) return refuse([migrated.error]);
  const tooMuch = overLimit(migrated.value);
  if (tooMuch !== undefined) return refuse([tooMuch]);
  const parsed = v.safeParse(PlayerDocumentSchema, migrated.value);
  if (!parsed.success) return refuse(issueFaults(parsed.issues));
  return succeed({ parsed: parsed.output, document: migrated.value as PlayerDocument });
}

/** Counts before the schema reads every entry. */
function overLimit(document: Readonly<Record<string, unknown>>): Fault | undefined {
  const { bag, shots } = document;
  if (Array.isArray(bag) && bag.length > MOST_CLUBS) {
    return fileFault(
      'too-many-clubs',
      told(({ faults }) => faults.file.manyClubs, { count: bag.length, most: MOST_CLUBS }),
    );
  }
  if (Array.isArray(shots) && shots.length > MOST_SHOTS) {
    return fileFault(
      'too-many-shots',
      told(({ faults }) => faults.file.manyShots, { count: shots.length, most: MOST_SHOTS }),
    );
  }
  return undefined;
}

function issueFaults(issues: readonly v.BaseIssue<unknown>[]): readonly Fault[] {
  const faults = issues.slice(0, MOST_FAULTS).map((issue): Fault => {
    const missing = issue.received === 'undefined';
    const wanted = issue.expected ?? told(({ faults }) => faults.file.somethingElse);
    return toldFault({
      severity: 'error',
      code: 'field-unreadable',
      where: placeOf(issue),
      message: missing
        ? told(({ faults }) => faults.file.missing, { wanted })
        : told(({ faults }) => faults.file.unexpected, { found: briefly(issue.received), wanted }),
    });
  });
  if (issues.length > MOST_FAULTS) {
    faults.push(
      fileFault(
        'more-faults',
        told(({ faults }) => faults.file.moreFields, { count: issues.length - MOST_FAULTS }),
      ),
    );
  }
  return faults;
}

/** `bag[3].loftDeg`, with the indices in brackets. */
function placeOf(issue: v.BaseIssue<unknown>): string {
  let place = '';
  for (const item of issue.path ?? []) {
    const key: unknown = item.key;
    place += typeof key === 'number' ? `[${key}]` : `${place === '' ? '' : '.'}${String(key)}`;
  }
  return place === '' ? 'file' : place;
}

function fileFault(code: string, message: Told): Fault {
  return toldFault({ severity: 'error', code, where: 'file', message });
}
