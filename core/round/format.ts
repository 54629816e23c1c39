/**
 * The round file as valibot schemas: one JSON object with the day's conditions, the plan that was carried, and what was
 * played. Members that the schemas do not name pass through. Metres, degrees, longitude and latitude (WGS 84), whatever
 * the player likes to see. maps/schemas/round.schema.json is made from `RoundDocumentSchema`.
 */

import { bringUpToDate } from '../format-version.ts';
import * as v from 'valibot';
import { ConditionsSchema } from '../conditions/conditions.ts';
import { LIE_NAMES } from '../ground/lies.ts';
import { SWINGS } from '../player/model.ts';
import type { Fault, Result } from '../result.ts';
import { told } from '../words/told.ts';

/** Longest text that is read, in UTF-16 code units. */
export const MOST_ROUND_CHARACTERS = 4_000_000;
export const MOST_HOLES = 36;
export const MOST_SHOTS_ON_A_HOLE = 60;

function number(least: number, most: number) {
  return v.pipe(v.number(), v.minValue(least), v.maxValue(most));
}

function whole(least: number, most: number) {
  return v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));
}

function text(longest: number) {
  return v.pipe(v.string(), v.minLength(1), v.maxLength(longest));
}

const HoleNumberSchema = whole(1, 999);
const LonLatSchema = v.tuple([number(-180, 180), number(-90, 90)]);
const LieSchema = v.picklist(LIE_NAMES);
const SwingSchema = v.picklist(SWINGS);

const TeesSchema = v.looseObject({
  courseRating: number(1, 90),
  slopeRating: number(55, 155),
  par: whole(3, 90),
  holes: v.picklist([18, 9]),
});

const TargetSchema = v.variant('kind', [
  v.looseObject({ kind: v.literal('score'), score: whole(1, 400) }),
  v.looseObject({ kind: v.literal('beat'), score: whole(1, 400) }),
  v.looseObject({ kind: v.literal('net-par'), playingHandicap: whole(-20, 80) }),
  v.looseObject({ kind: v.literal('handicap'), aim: number(-10, 54), tees: v.optional(TeesSchema) }),
]);

/** What was noted of the weather before rounds kept a whole day; still read (see `dayOfRound`). */
const NotedWeatherSchema = v.looseObject({
  windMps: v.optional(number(0, 40)),
  /** Where it blows from, degrees clockwise from north. */
  windFromDeg: v.optional(number(0, 360)),
  temperatureC: v.optional(number(-20, 55)),
  firmness: v.optional(v.picklist(['soft', 'medium', 'firm'])),
  /** Stimpmeter reading, feet. */
  greenSpeedFt: v.optional(number(3, 18)),
  notes: v.optional(v.string()),
});

const PlannedOptionSchema = v.looseObject({
  /** As in a plan: club, swing and rank of aim. */
  id: text(200),
  club: text(60),
  swing: SwingSchema,
  aim: LonLatSchema,
  carryM: number(0, 400),
  meanStrokes: number(1, 30),
  scoreOdds: v.pipe(v.array(number(0, 1)), v.minLength(1), v.maxLength(40)),
});
export type PlannedOption = v.InferOutput<typeof PlannedOptionSchema>;

const PlannedHoleSchema = v.looseObject({
  hole: HoleNumberSchema,
  tee: text(120),
  /** Absent for a point that the player put there. */
  holePosition: v.optional(text(120)),
  budget: v.optional(whole(1, 20)),
  /** Id of the option that was on the card. */
  chosen: text(200),
  options: v.pipe(v.array(PlannedOptionSchema), v.minLength(1), v.maxLength(20)),
});
export type PlannedHoleRecord = v.InferOutput<typeof PlannedHoleSchema>;

const PlanSchema = v.looseObject({
  seed: text(200),
  holes: v.pipe(v.array(PlannedHoleSchema), v.maxLength(MOST_HOLES)),
});

/** Why a penalty was taken: relief from a penalty area, out of bounds or lost, unplayable (Rules 17.1, 18.2, 19.2). */
export const PENALTY_KINDS = ['penaltyArea', 'strokeAndDistance', 'unplayable'] as const;
export type PenaltyKind = (typeof PENALTY_KINDS)[number];

const ShotSchema = v.looseObject({
  club: text(60),
  swing: v.optional(SwingSchema),
  from: v.optional(LonLatSchema),
  fromLie: v.optional(LieSchema),
  aim: v.optional(LonLatSchema),
  /** Where it came to rest or was lost. */
  to: v.optional(LonLatSchema),
  toLie: v.optional(LieSchema),
  penalty: v.optional(whole(0, 4)),
  penaltyKind: v.optional(v.picklist(PENALTY_KINDS)),
  /** Where the ball was dropped or placed before the next stroke, and the lie there. */
  drop: v.optional(LonLatSchema),
  dropLie: v.optional(LieSchema),
  /** A top, a shank, a chunk: not a try at the full distance. */
  poor: v.optional(v.boolean()),
  hitTree: v.optional(v.boolean()),
});
export type RecordedStroke = v.InferOutput<typeof ShotSchema>;

const PlayedHoleSchema = v.looseObject({
  hole: HoleNumberSchema,
  par: whole(3, 6),
  strokeIndex: v.optional(whole(1, 36)),
  score: whole(1, 40),
  putts: v.optional(whole(0, 20)),
  penalties: v.optional(whole(0, 20)),
  teeClub: v.optional(text(60)),
  teeEnd: v.optional(LieSchema),
  shots: v.optional(v.pipe(v.array(ShotSchema), v.maxLength(MOST_SHOTS_ON_A_HOLE))),
  notes: v.optional(v.string()),
});
export type PlayedHoleRecord = v.InferOutput<typeof PlayedHoleSchema>;

/** Only the part that says what the file is: read first, so that another kind or a newer version is named as such. */
export const RoundHeaderSchema = v.looseObject({
  holewright: v.looseObject({
    format: v.string(),
    formatVersion: v.pipe(v.number(), v.integer(), v.minValue(1)),
  }),
});

export const RoundDocumentSchema = v.looseObject({
  holewright: v.looseObject({
    format: v.literal('round'),
    formatVersion: v.pipe(v.number(), v.integer(), v.minValue(1)),
  }),
  /** Names the round wherever its shots go; older files have none. */
  id: v.optional(text(80)),
  name: text(120),
  invented: v.optional(v.boolean()),
  /** Date, or date and time (ISO 8601). */
  playedAt: v.optional(text(40)),
  course: v.looseObject({ name: text(200), sha256: v.optional(text(64)) }),
  player: v.looseObject({
    name: text(120),
    sha256: v.optional(text(64)),
    handicap: v.optional(number(-10, 54)),
  }),
  conditions: v.optional(NotedWeatherSchema),
  /** The day that the round was played under, as plans know it. */
  day: v.optional(v.looseObject(ConditionsSchema.entries)),
  target: v.optional(TargetSchema),
  plan: v.optional(PlanSchema),
  played: v.pipe(v.array(PlayedHoleSchema), v.maxLength(MOST_HOLES)),
  /** Course and player that go along where a plan is shared: read by their own doors, never trusted unread. */
  carried: v.optional(v.looseObject({ course: v.optional(v.unknown()), player: v.optional(v.unknown()) })),
  /** The player's consent, given for this round: its shots may be added to the measured ones. */
  feedsSpread: v.optional(v.boolean()),
});
export type RoundDocument = v.InferOutput<typeof RoundDocumentSchema>;

type JsonObject = Readonly<Record<string, unknown>>;

/** Takes a file of one version to the next; must not change its argument. */
export type RoundMigration = (document: JsonObject) => JsonObject;

/** `ROUND_MIGRATIONS[i]` leads from version i + 1 to version i + 2; version 1 is the first. */
export const ROUND_MIGRATIONS: readonly RoundMigration[] = [];

/** The version that this program writes. */
export const ROUND_FORMAT_VERSION = ROUND_MIGRATIONS.length + 1;

/** Brings a file up to the current version; refuses a newer one with both versions named. */
export function migrateRound(
  document: JsonObject,
  fileVersion: number,
  migrations: readonly RoundMigration[] = ROUND_MIGRATIONS,
): Result<JsonObject, Fault> {
  return bringUpToDate(document, fileVersion, migrations, (versions) =>
    told(({ faults }) => faults.round.newer, versions),
  );
}

/** The text of a round file, as it is saved: indented, with a line break at the end. */
export function roundText(document: RoundDocument): string {
  return `${JSON.stringify(document, null, 2)}\n`;
}
