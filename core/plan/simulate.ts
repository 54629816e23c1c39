/** Where the balls of one choice end: shares, pattern along and across the aim, mean strokes. */

import { LIE_NAMES, type LieName } from '../ground/lies.ts';
import { ShotDrawer } from '../random/shot-draws.ts';
import { makeStreamKey } from '../random/streams.ts';
import { measureChoice, measuringBatches, measuringEvaluators } from './measure-choice.ts';
import type { Choice, Spot } from './model.ts';
import type { PreparedHole } from './prepare.ts';
import { ShotResolver } from './resolve-shot.ts';
import { lieOfSpot } from './sample.ts';
import type { StrokesField } from './strokes-field.ts';

export interface SimulationSettings {
  readonly samples: number;
  /** False: balls stay where they come down. */
  readonly rolls: boolean;
}

/** Metres; `along` is in the aim's direction from the ball, `across` positive to the right. */
export interface Simulation {
  readonly samples: number;
  readonly endShare: Readonly<Record<LieName, number>>;
  readonly stoppedByTrees: number;
  readonly along: { readonly mean: number; readonly sd: number };
  readonly across: { readonly mean: number; readonly sd: number };
  /** Where balls came down, before any roll. */
  readonly landingAlong: { readonly mean: number; readonly sd: number };
  readonly landingAcross: { readonly mean: number; readonly sd: number };
}

const SIMULATING = 6;
const BATCH = 1024;

/** Null where the club is not played from that lie. The pattern counts every ball where it came to rest, before relief. */
export function simulateChoice(
  prepared: PreparedHole,
  spot: Spot,
  choice: Choice,
  settings: SimulationSettings,
): Simulation | null {
  const law = prepared.book.lawOf(choice.spreadIndex, lieOfSpot(prepared, spot), choice.carryM);
  if (law === null) return null;
  const resolver = new ShotResolver(prepared.ground, settings.rolls);
  const key = makeStreamKey(prepared.seed, 'simulate', prepared.hole.number);
  const drawer = new ShotDrawer(Math.min(BATCH, settings.samples));
  const counts = new Float64Array(LIE_NAMES.length);
  const moments = [newMoments(), newMoments(), newMoments(), newMoments()] as const;
  const sin = Math.sin(choice.bearing);
  const cos = Math.cos(choice.bearing);
  let stopped = 0;
  for (let done = 0, batch = 0; done < settings.samples; batch++) {
    const draws = drawer.redraw(key, batch, SIMULATING);
    for (let i = 0; i < draws.count && done < settings.samples; i++, done++) {
      resolver.resolve(spot.x, spot.y, law, choice.bearing, draws, i);
      counts[resolver.endLie] = counts[resolver.endLie]! + 1;
      if (resolver.stoppedByTree) stopped++;
      const ex = resolver.endX - spot.x;
      const ey = resolver.endY - spot.y;
      const lx = resolver.landX - spot.x;
      const ly = resolver.landY - spot.y;
      addMoment(moments[0], ex * sin + ey * cos);
      addMoment(moments[1], ex * cos - ey * sin);
      addMoment(moments[2], lx * sin + ly * cos);
      addMoment(moments[3], lx * cos - ly * sin);
    }
  }
  const shares = LIE_NAMES.map((name, code) => [name, counts[code]! / settings.samples]);
  return {
    samples: settings.samples,
    endShare: Object.fromEntries(shares) as Record<LieName, number>,
    stoppedByTrees: stopped / settings.samples,
    along: summary(moments[0]),
    across: summary(moments[1]),
    landingAlong: summary(moments[2]),
    landingAcross: summary(moments[3]),
  };
}

/** Mean strokes to hole out of one choice and its standard error; null where it cannot be played or never ends. */
export function simulateStrokes(
  prepared: PreparedHole,
  field: StrokesField,
  spot: Spot,
  choice: Choice,
  samples: number,
): { readonly mean: number; readonly standardError: number } | null {
  const lie = lieOfSpot(prepared, spot);
  const ownValue = field.valueAt(spot.x, spot.y, lie);
  const measured = measureChoice(
    measuringEvaluators(field, prepared.book),
    spot,
    lie,
    choice,
    measuringBatches(prepared, samples),
    ownValue,
  );
  return measured === null ? null : { mean: measured.meanStrokes, standardError: measured.standardError };
}

/** Running mean and sum of squared deviations (Welford 1962). */
interface Moments {
  count: number;
  mean: number;
  squares: number;
}

function newMoments(): Moments {
  return { count: 0, mean: 0, squares: 0 };
}

function addMoment(moments: Moments, value: number): void {
  moments.count++;
  const delta = value - moments.mean;
  moments.mean += delta / moments.count;
  moments.squares += delta * (value - moments.mean);
}

function summary(moments: Moments): { readonly mean: number; readonly sd: number } {
  return { mean: moments.mean, sd: Math.sqrt(moments.squares / Math.max(1, moments.count - 1)) };
}
