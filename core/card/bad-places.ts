/** Where tee shots end badly, and what the plan does from there: for the few places that come up most. */

import { capital, type Words } from '../words/words.ts';
import { isPenaltyArea, lieAt } from '../ground/hole-ground.ts';
import { Lie, LIE_NAMES } from '../ground/lies.ts';
import { planFromSpot } from '../plan/options.ts';
import type { Choice, Option, Spot, SpotPlan } from '../plan/model.ts';
import type { PreparedHole } from '../plan/prepare.ts';
import { PenaltyRelief } from '../plan/relief.ts';
import { sampleShot } from '../plan/sample.ts';
import type { StrokesField } from '../plan/strokes-field.ts';
import { bearingOf, distanceOf, pointAlong, turnOf } from './frame.ts';
import { type CardUnits, lengthWords, sideOf } from './lengths.ts';
import type { BadPlace } from './model.ts';

const BALLS = 1024;
/** A place that fewer tee shots reach is left off the card. */
const LEAST_SHARE = 0.03;
const MOST_PLACES = 3;
const PLAN_SAMPLES = 256;

const BAD_LIES = ['woods', 'bunker', 'longRough', 'penaltyYellow', 'penaltyRed', 'outOfBounds'] as const;
type BadLie = (typeof BAD_LIES)[number];

interface Group {
  readonly lie: BadLie;
  readonly side: 'left' | 'right';
  readonly ends: Spot[];
}

/** Most frequent first. Same seed, same places. */
export function badPlaces(
  prepared: PreparedHole,
  field: StrokesField,
  choice: Choice,
  units: CardUnits,
  words: Words,
): readonly BadPlace[] {
  const balls = sampleShot(prepared, prepared.tee, choice, BALLS);
  const groups = new Map<string, Group>();
  for (let i = 0; i < balls.count; i++) {
    const lie = BAD_LIES.find((bad) => bad === LIE_NAMES[balls.lie[i]!]);
    if (lie === undefined) continue;
    const end = { x: balls.end[2 * i]!, y: balls.end[2 * i + 1]! };
    const side = sideOf(turnOf(choice.bearing, bearingOf(prepared.tee, end)));
    const key = `${lie} ${side}`;
    const group = groups.get(key) ?? { lie, side, ends: [] };
    group.ends.push(end);
    groups.set(key, group);
  }
  return [...groups.values()]
    .filter(({ ends }) => ends.length >= LEAST_SHARE * BALLS)
    .sort((a, b) => b.ends.length - a.ends.length)
    .slice(0, MOST_PLACES)
    .map(({ lie, side, ends }): BadPlace => {
      const at = mostCentral(ends);
      const { places, left, right } = words.cards.bad;
      const place = capital(places[lie]);
      return {
        share: ends.length / BALLS,
        where: side === 'left' ? left({ place }) : right({ place }),
        what: whatToDo(prepared, field, at, units, words),
        at,
      };
    });
}

/** The ball with the least sum of distances to the others: a real place, not a mean that may lie in a pond. */
function mostCentral(ends: readonly Spot[]): Spot {
  let best = ends[0]!;
  let least = Infinity;
  for (const candidate of ends.slice(0, 128)) {
    const sum = ends.reduce((total, end) => total + distanceOf(candidate, end), 0);
    if (sum < least) [least, best] = [sum, candidate];
  }
  return best;
}

function whatToDo(
  prepared: PreparedHole,
  field: StrokesField,
  at: Spot,
  units: CardUnits,
  words: Words,
): string {
  const told = words.cards.bad;
  const { again } = told;
  const lie = lieAt(prepared.ground, at.x, at.y);
  if (lie === Lie.outOfBounds) return again;
  if (!isPenaltyArea(lie)) return playFrom(prepared, field, at, units, words) ?? again;
  const { tee } = prepared;
  const drop = new PenaltyRelief(field).forBall(tee.x, tee.y, at.x, at.y, lie);
  // Stroke and distance is open to every ball (Rule 17.1d).
  if (drop.total === Infinity || drop.total > 1 + field.valueAt(tee.x, tee.y, Lie.tee)) return again;
  const crossed = crossingOf(prepared, at);
  const isLateral = distanceOf(crossed, drop) < LATERAL_REACH_M;
  const how = isLateral ? told.dropBeside : told.dropBack;
  const shot = playFrom(prepared, field, { x: drop.x, y: drop.y }, units, words);
  return shot === null ? how : told.then({ drop: how, shot });
}

/** Two club-lengths and the width of the cells in which the crossing is remembered, metres. */
const LATERAL_REACH_M = 4;

/** Where a ball from the tee last crossed the edge of the area that it lies in. */
function crossingOf({ ground, tee }: PreparedHole, at: Spot): Spot {
  const back = bearingOf(at, tee);
  const length = distanceOf(at, tee);
  for (let metres = 0; metres < length; metres += ground.cellM / 2) {
    const spot = pointAlong(at, back, metres);
    if (!isPenaltyArea(lieAt(ground, spot.x, spot.y))) return spot;
  }
  return tee;
}

/** The recommended way on from a ball at rest; null where there is none. */
function playFrom(
  prepared: PreparedHole,
  field: StrokesField,
  at: Spot,
  units: CardUnits,
  words: Words,
): string | null {
  const plan = planFromSpot(prepared, field, at, { samples: PLAN_SAMPLES });
  const option = plan.options.find(({ id }) => id === plan.recommendation.optionId);
  return option === undefined ? null : optionWords(prepared, plan, option, units, words);
}

function optionWords(
  prepared: PreparedHole,
  plan: SpotPlan,
  option: Option,
  units: CardUnits,
  words: Words,
): string {
  const told = words.cards.bad;
  if (option.kind === 'relief')
    return option.relief?.endsWith('lateral') === true ? told.unplayableLateral : told.unplayableBack;
  const { from } = plan;
  const turn = turnOf(bearingOf(from, prepared.pin), option.aim.bearing);
  const swing = words.golf.swings[option.swing];
  const club = told.club({
    club: option.club,
    manner: option.swing === 'full' ? '' : ` ${told.manner({ swing })}`,
    length: lengthWords(option.carryM, units),
  });
  const lie = lieAt(prepared.ground, option.aim.spot.x, option.aim.spot.y);
  const degrees = Math.round((Math.abs(turn) * 180) / Math.PI);
  if (lie === Lie.green || degrees <= 4) return told.atHole({ club });
  const where = lie === Lie.fairway ? told.toFairway : told.out;
  if (degrees > 120) return told.backwards({ club, where });
  if (degrees > 55) return told.sideways({ club, where });
  const beside = { club, where, degrees };
  return turn < 0 ? told.leftOfHole(beside) : told.rightOfHole(beside);
}
