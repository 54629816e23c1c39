/**
 * The player file as valibot schemas: one JSON object with bag, measured shots, putting and settings. Members that
 * the schemas do not name pass through. Metres and degrees, whatever the player likes to see; directions are
 * positive right of the aim. maps/schemas/player.schema.json is made from `PlayerDocumentSchema`.
 */

import { bringUpToDate } from '../format-version.ts';
import * as v from 'valibot';
import type { Fault, Result } from '../result.ts';
import { ShotSourceSchema } from './csv/mapping.ts';
import { SWINGS } from './model.ts';
import { told } from '../words/told.ts';

/** Rule 4.1b: no more clubs than this in a round. */
export const MOST_CLUBS_IN_PLAY = 14;
export const MOST_CLUBS = 40;
export const MOST_SHOTS = 20_000;
/** Longest text that is read, in UTF-16 code units. */
export const MOST_PLAYER_CHARACTERS = 8_000_000;
/** What a file without `settings.marginStrokes` gets: options within this many strokes count as equal. */
export const DEFAULT_MARGIN_STROKES = 0.05;

function number(least: number, most: number) {
  return v.pipe(v.number(), v.minValue(least), v.maxValue(most));
}

function text(longest: number) {
  return v.pipe(v.string(), v.minLength(1), v.maxLength(longest));
}

const SwingSchema = v.picklist(SWINGS);
const DirectionDegSchema = number(-90, 90);
const DistanceSchema = number(0, 500);

/** What a player says of a club without having measured it; what is left out comes from the preset. */
const StatedSchema = v.looseObject({
  carryM: v.optional(number(1, 400)),
  carrySdM: v.optional(number(0.1, 100)),
  directionDeg: v.optional(DirectionDegSchema),
  directionSdDeg: v.optional(number(0.1, 45)),
  correlation: v.optional(number(-0.95, 0.95)),
  poorShare: v.optional(number(0, 0.6)),
});
export type StatedSpread = v.InferOutput<typeof StatedSchema>;

/** How full swings with this club leave, as a launch monitor tells it; what is left out is taken by loft. */
const LaunchSchema = v.object({
  angleDeg: v.optional(number(1, 60)),
  spinRpm: v.optional(number(100, 15000)),
  ballSpeedMps: v.optional(number(5, 100)),
  apexM: v.optional(number(0.5, 80)),
});

const BagClubSchema = v.looseObject({
  name: text(60),
  kind: v.picklist(['driver', 'wood', 'hybrid', 'iron', 'wedge', 'putter']),
  loftDeg: number(0, 80),
  lengthM: v.optional(number(0.3, 1.6)),
  swings: v.pipe(v.array(SwingSchema), v.minLength(1), v.maxLength(SWINGS.length)),
  /** False for a club that stays at home this round. */
  inRound: v.optional(v.boolean()),
  /** Lies from which the player leaves it in the bag, beside those that rule it out anyway. */
  notFrom: v.optional(
    v.pipe(v.array(v.picklist(['tee', 'fairway', 'rough', 'longRough', 'bunker', 'woods'])), v.maxLength(6)),
  ),
  stated: v.optional(StatedSchema),
  launch: v.optional(LaunchSchema),
});
export type BagClub = v.InferOutput<typeof BagClubSchema>;

const ShotSchema = v.looseObject({
  club: text(60),
  swing: v.optional(SwingSchema),
  /** Straight distance from the ball to where it landed. */
  carryM: DistanceSchema,
  /** Distance of the landing from the line of aim, positive right; either this or `directionDeg`. */
  offlineM: v.optional(number(-500, 500)),
  directionDeg: v.optional(DirectionDegSchema),
  totalM: v.optional(DistanceSchema),
  /** For part swings: the carry that was wanted. */
  intendedM: v.optional(DistanceSchema),
  /** `range`, or the lie on the course; a shot from a bad one counts as it would have flown from a good one. */
  lie: v.optional(text(40)),
  /** The air it was hit in; what is absent is as on an ordinary day: still, 15 °C, sea level. See `still-air.ts`. */
  windMps: v.optional(number(0, 80)),
  /** Where the wind came from, seen along the aim, clockwise: 0 from ahead, 90 from the right, 180 from behind. */
  windFromDeg: v.optional(number(-360, 360)),
  temperatureC: v.optional(number(-60, 70)),
  altitudeM: v.optional(number(-500, 9000)),
  /** Date, or date and time (ISO 8601). */
  at: v.optional(text(40)),
  /** Which stroke of a round it was, where it came from one: it is added once only. See core/round/fed-shots.ts. */
  fromRound: v.optional(text(300)),
});
export type RecordedShot = v.InferOutput<typeof ShotSchema>;

const PuttingSchema = v.looseObject({
  directionSdDeg: number(0.2, 10),
  distanceSdShare: number(0.02, 0.5),
});

const count = (most: number) => v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(most));
const PuttDistanceSchema = number(0.1, 60);

/** Putts on record, from which the two errors are worked out; see core/putting/fit.ts. */
const PuttingRecordSchema = v.looseObject({
  /** Holed of tries per distance, as in a ten-minute test. */
  holed: v.optional(
    v.pipe(
      v.array(v.looseObject({ distanceM: PuttDistanceSchema, tries: count(100_000), made: count(100_000) })),
      v.maxLength(200),
    ),
  ),
  /** Putts taken from a distance on the course. */
  taken: v.optional(
    v.pipe(
      v.array(
        v.looseObject({
          distanceM: PuttDistanceSchema,
          putts: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(20)),
          at: v.optional(text(40)),
        }),
      ),
      v.maxLength(5000),
    ),
  ),
  /** Where misses stopped: metres beyond the hole, negative short of it. */
  missed: v.optional(
    v.pipe(
      v.array(v.looseObject({ distanceM: PuttDistanceSchema, pastM: number(-60, 60) })),
      v.maxLength(5000),
    ),
  ),
});

const UpAndDownSchema = v.looseObject({
  kind: v.picklist(['chip', 'pitch', 'bunker']),
  tries: count(100_000),
  saved: count(100_000),
  at: v.optional(text(40)),
});

const SettingsSchema = v.looseObject({
  units: v.optional(v.picklist(['yards', 'metres'])),
  marginStrokes: v.optional(number(0, 1)),
  /** A shot this many days old counts half as much as one of today; all count alike where it is absent. */
  halfLifeDays: v.optional(number(1, 36_500)),
  /** How the columns of each device's tables are read. */
  sources: v.optional(v.pipe(v.array(ShotSourceSchema), v.maxLength(50))),
});

/** Only the part that says what the file is: read first, so that another kind or a newer version is named as such. */
export const PlayerHeaderSchema = v.looseObject({
  holewright: v.looseObject({
    format: v.string(),
    formatVersion: v.pipe(v.number(), v.integer(), v.minValue(1)),
  }),
});

export const PlayerDocumentSchema = v.looseObject({
  holewright: v.looseObject({
    format: v.literal('player'),
    formatVersion: v.pipe(v.number(), v.integer(), v.minValue(1)),
  }),
  name: text(120),
  invented: v.optional(v.boolean()),
  hand: v.optional(v.picklist(['right', 'left'])),
  /** Plus handicaps are negative. */
  handicap: v.optional(number(-10, 54)),
  group: v.optional(v.picklist(['men', 'women', 'senior-men', 'senior-women', 'juniors'])),
  settings: v.optional(SettingsSchema),
  bag: v.pipe(v.array(BagClubSchema), v.minLength(1), v.maxLength(MOST_CLUBS)),
  shots: v.optional(v.pipe(v.array(ShotSchema), v.maxLength(MOST_SHOTS))),
  /** What the player states; a record counts more. */
  putting: v.optional(PuttingSchema),
  puttingRecord: v.optional(PuttingRecordSchema),
  upAndDowns: v.optional(v.pipe(v.array(UpAndDownSchema), v.maxLength(5000))),
});
export type PlayerDocument = v.InferOutput<typeof PlayerDocumentSchema>;

type JsonObject = Readonly<Record<string, unknown>>;

/** Takes a file of one version to the next; must not change its argument. */
export type PlayerMigration = (document: JsonObject) => JsonObject;

/** `PLAYER_MIGRATIONS[i]` leads from version i + 1 to version i + 2; version 1 is the first. */
export const PLAYER_MIGRATIONS: readonly PlayerMigration[] = [];

/** The version that this program writes. */
export const PLAYER_FORMAT_VERSION = PLAYER_MIGRATIONS.length + 1;

/** Brings a file up to the current version; refuses a newer one with both versions named. */
export function migratePlayer(
  document: JsonObject,
  fileVersion: number,
  migrations: readonly PlayerMigration[] = PLAYER_MIGRATIONS,
): Result<JsonObject, Fault> {
  return bringUpToDate(document, fileVersion, migrations, (versions) =>
    told(({ faults }) => faults.file.newerPlayer, versions),
  );
}

/** The text of a player file, as it is saved: indented, with a line break at the end. */
export function playerText(document: PlayerDocument): string {
  return `${JSON.stringify(document, null, 2)}\n`;
}
