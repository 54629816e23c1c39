/** A played hole against its plan: strokes gained or lost, and how much of that the record lets one explain. */

import { LIE_NAMES, Lie, type LieCode } from '../ground/lies.ts';
import type { Choice, Spot } from '../plan/model.ts';
import { lieOfSpot } from '../plan/sample.ts';
import type { PlannedHoleRecord, PlayedHoleRecord, RecordedStroke } from './format.ts';
import { type Ball, type HolePlay, SHORT_GAME_M, type ShotClass } from './play-hole.ts';
import { startAfter } from './penalties.ts';
import { type ShotSplit, splitShot } from './split-shot.ts';

/** Strokes gained on the plan by what they are put down to; they add up to `gained`. */
export interface GainParts {
  /** Club and aim that differ from the plan. */
  readonly choice: number;
  readonly execution: number;
  readonly luck: number;
  /** One putt says too little to be split. */
  readonly putting: number;
  /** What the record does not explain. */
  readonly unexplained: number;
}

export interface StrokeReview {
  readonly index: number;
  readonly club: string;
  readonly shotClass: ShotClass;
  readonly gained: number;
  readonly penalty: number;
  readonly split: ShotSplit | null;
}

export interface HoleReview {
  readonly hole: number;
  readonly par: number;
  readonly score: number;
  readonly budget: number | null;
  /** Of the option that was on the card; null without a plan for this hole. */
  readonly expected: number | null;
  readonly gained: number | null;
  /** Was the club on the card played? Null where either is not known. */
  readonly followedPlan: boolean | null;
  readonly parts: GainParts | null;
  readonly strokes: readonly StrokeReview[];
}

/** `play`: the hole solved for the player, for records with places; without it only totals are compared. */
export function reviewHole(
  played: PlayedHoleRecord,
  planned: PlannedHoleRecord | undefined,
  play: HolePlay | null,
  seed = 'review',
): HoleReview {
  const chosen = planned?.options.find(({ id }) => id === planned.chosen);
  const head = {
    hole: played.hole,
    par: played.par,
    score: played.score,
    budget: planned?.budget ?? null,
    followedPlan:
      chosen === undefined || played.teeClub === undefined ? null : played.teeClub === chosen.club,
  };
  const expected = play === null ? (chosen?.meanStrokes ?? null) : play.tee.expected;
  if (expected === null) return { ...head, expected, gained: null, parts: null, strokes: [] };
  const gained = expected - played.score;
  const strokes = play === null ? [] : reviewStrokes(play, played, seed);
  const parts = strokes.length > 0 ? partsOfStrokes(strokes, gained) : partsByClub(played, planned, gained);
  return { ...head, expected, gained, parts, strokes };
}

/** Without places: another club from the tee is known to cost so much on average, the rest is not explained. */
function partsByClub(
  { teeClub }: PlayedHoleRecord,
  planned: PlannedHoleRecord | undefined,
  gained: number,
): GainParts {
  const chosen = planned?.options.find(({ id }) => id === planned.chosen);
  const other = planned?.options.find(({ club }) => club === teeClub);
  const choice =
    chosen === undefined || other === undefined || teeClub === chosen.club
      ? 0
      : chosen.meanStrokes - other.meanStrokes;
  return { choice, execution: 0, luck: 0, putting: 0, unexplained: gained - choice };
}

function partsOfStrokes(strokes: readonly StrokeReview[], gained: number): GainParts {
  const sum = (of: (stroke: StrokeReview) => number): number =>
    strokes.reduce((total, stroke) => total + of(stroke), 0);
  const parts = {
    choice: sum(({ split }) => split?.choice ?? 0),
    execution: sum(({ split }) => split?.execution ?? 0),
    luck: sum(({ split }) => split?.luck ?? 0),
    putting: sum((stroke) => (stroke.shotClass === 'putt' ? stroke.gained : 0)),
  };
  const explained = parts.choice + parts.execution + parts.luck + parts.putting;
  return { ...parts, unexplained: gained - explained };
}

/** Every stroke whose start and end are known; the putts together where only their number is. */
function reviewStrokes(play: HolePlay, played: PlayedHoleRecord, seed: string): StrokeReview[] {
  const shots = played.shots ?? [];
  const reviews: StrokeReview[] = [];
  let taken = 0;
  for (const [index, shot] of shots.entries()) {
    const ball = ballOf(play, shot, index, taken);
    const penalty = shot.penalty ?? 0;
    taken += 1 + penalty;
    const next = nextBall(play, shots, index, taken, played.score);
    if (ball === null || next === undefined) continue;
    const after = next === null ? 0 : play.expectedFrom(next);
    const gained = play.expectedFrom(ball) - after - 1 - penalty;
    // A place where nothing is known (off the raster, in water) explains nothing.
    if (!Number.isFinite(gained)) continue;
    const shotClass = classOf(play, ball);
    const end = shot.to === undefined ? next?.spot : play.prepared.frame.toSpot(shot.to);
    const choice = shotClass === 'putt' ? null : choiceOf(play, ball, shot);
    const split =
      choice === null || end === undefined ? null : splitShot(play, ball, choice, end, gained, seed);
    reviews.push({ index, club: shot.club, shotClass, gained, penalty, split });
    const isLast = index === shots.length - 1;
    if (isLast && next?.lie === Lie.green && taken + (played.putts ?? 0) === played.score) {
      const putts = play.expectedFrom(next) - (played.putts ?? 0);
      reviews.push({
        index: index + 1,
        club: 'Putter',
        shotClass: 'putt',
        gained: putts,
        penalty: 0,
        split: null,
      });
    }
  }
  return reviews;
}

function ballOf(play: HolePlay, shot: RecordedStroke, index: number, taken: number): Ball | null {
  const { prepared } = play;
  if (index === 0) return { ...play.start(), taken, step: 0 };
  if (shot.from === undefined) return null;
  const spot = prepared.frame.toSpot(shot.from);
  return { spot, lie: lieFrom(play, spot, shot.fromLie), taken, step: index, onTee: isTee(play, spot) };
}

/** Where play went on: the next start, or where the ball came to rest; null: holed; undefined: not known. */
function nextBall(
  play: HolePlay,
  shots: readonly RecordedStroke[],
  index: number,
  taken: number,
  score: number,
): Ball | null | undefined {
  const next = shots[index + 1];
  if (next?.from !== undefined) return ballOf(play, next, index + 1, taken);
  if (next === undefined && taken === score) return null;
  // After a penalty the ball is not played from where it ended.
  const start = startAfter(shots[index]!);
  if (start === null) return undefined;
  const spot = play.prepared.frame.toSpot([start.at[0], start.at[1]]);
  return { spot, lie: lieFrom(play, spot, start.lie), taken, step: index + 1, onTee: isTee(play, spot) };
}

function lieFrom(play: HolePlay, spot: Spot, given: RecordedStroke['fromLie']): LieCode {
  return given === undefined ? lieOfSpot(play.prepared, spot) : (LIE_NAMES.indexOf(given) as LieCode);
}

function isTee({ prepared: { tee } }: HolePlay, spot: Spot): boolean {
  return Math.hypot(spot.x - tee.x, spot.y - tee.y) < 0.5;
}

function classOf({ prepared: { hole, pin } }: HolePlay, ball: Ball): ShotClass {
  if (ball.lie === Lie.green) return 'putt';
  if (ball.onTee) return hole.par >= 4 ? 'tee' : 'approach';
  return Math.hypot(pin.x - ball.spot.x, pin.y - ball.spot.y) <= SHORT_GAME_M ? 'short' : 'approach';
}

/** Club and aim as recorded; the plan's own aim where none is recorded from the tee, else the hole. */
function choiceOf(play: HolePlay, ball: Ball, shot: RecordedStroke): Choice | null {
  const { spreads } = play.prepared.player;
  const spreadIndex = spreads.findIndex(
    ({ club, swing }) => club.name === shot.club && swing === (shot.swing ?? 'full'),
  );
  const spread = spreads[spreadIndex];
  if (spread === undefined) return null;
  if (shot.aim === undefined && ball.onTee && play.tee.choice.spreadIndex === spreadIndex)
    return play.tee.choice;
  const aim = shot.aim === undefined ? play.prepared.pin : play.prepared.frame.toSpot(shot.aim);
  const dx = aim.x - ball.spot.x;
  const dy = aim.y - ball.spot.y;
  const carryM = spread.swing === 'part' ? Math.min(spread.carryMean, Math.hypot(dx, dy)) : spread.carryMean;
  return { spreadIndex, bearing: Math.atan2(dx, dy), carryM };
}
