/** All that the room shows of a player's file, worked out in one go away from the window. Plain data throughout. */

import { buildPlayer, readEvidenceInSteps } from '../../../core/player/build.ts';
import { type CountedShot, countedWords } from '../../../core/player/count-shot.ts';
import { LEAST_SHOTS } from '../../../core/player/measured-shot.ts';
import type { PlayerDocument, RecordedShot } from '../../../core/player/format.ts';
import { type Gap, distanceGaps, distanceLadder, type Rung } from '../../../core/player/gaps.ts';
import { clubsInRound, lieEffectsOf } from '../../../core/player/in-play.ts';
import type { PlayerModel, ShotSpread } from '../../../core/player/model.ts';
import { type LandingPattern, landingPattern } from '../../../core/player/pattern.ts';
import {
  estimateBagInSteps,
  estimatesOf,
  numbersOf,
  SPREAD_NUMBERS,
  type SpreadEvidence,
  type SpreadNumber,
  type SpreadPosterior,
} from '../../../core/player/posterior.ts';
import type { Estimate } from '../../../core/player/posterior/intervals.ts';
import type { PlayerLevel } from '../../../core/player/presets.ts';
import { type PuttingReading, readPutting } from '../../../core/player/read-putting.ts';
import { type UpAndDownChance, upAndDownChances } from '../../../core/player/short-game.ts';
import type { StillAir } from '../../../core/player/still-air.ts';
import { type Fault, type Result, succeed } from '../../../core/result.ts';
import { tell, type Told } from '../../../core/words/told.ts';
import type { Words } from '../../../core/words/words.ts';
import type { Units } from '../../state/measures.ts';

/** One club and swing. The mean of an estimate is what is planned with. */
export interface SpreadLine {
  readonly spread: ShotSpread;
  readonly estimates: Readonly<Record<SpreadNumber, Estimate>>;
  readonly shots: number;
  readonly effectiveShots: number;
  readonly poorShots: number;
  /** Readings left out, too long to be true. */
  readonly strays: number;
  readonly pattern: LandingPattern;
}

/** A `PlayerModel` without its functions, so that it can cross from a worker. */
export interface ModelParts {
  readonly plain: Omit<PlayerModel, 'lieEffect' | 'posterior'>;
  readonly entries: readonly SpreadPosterior[];
  readonly drawCount: number;
  readonly handicap: number;
}

/** How a shot counts that does not simply count as measured: taken to a good lie in still air, in doubt, or left out. */
export type ShownCount = CountedShot | { readonly leftOut: Told };

export function isConverted(count: ShownCount): boolean {
  return !('leftOut' in count) && count.doubts.length === 0;
}

/** What a shot counts as, in a sentence. */
export function countWords(count: ShownCount, shot: RecordedShot, units: Units, words: Words): string {
  return 'leftOut' in count
    ? words.spread.counted.notCounted({ why: tell(count.leftOut, words) })
    : countedWords(count, shot, units, words);
}

/** Share of the work before anything is estimated. */
const READING = 0.3;

export interface BagReport {
  /** Longest first, clubs that stay at home included. */
  readonly lines: readonly SpreadLine[];
  readonly rungs: readonly Rung[];
  readonly gaps: readonly Gap[];
  readonly putting: PuttingReading;
  readonly upAndDowns: readonly UpAndDownChance[];
  /** What is not measured comes from this preset. */
  readonly level: PlayerLevel;
  readonly handicap: number;
  /** Measured shots that count. */
  readonly shots: number;
  /** By place in the file: shots that do not simply count as measured. */
  readonly counted: ReadonlyMap<number, ShownCount>;
  readonly warnings: readonly Fault[];
  /** What the plan works with; the faults where the clubs chosen for the round cannot be planned with. */
  readonly model: Result<ModelParts, readonly Fault[]>;
}

/** Refuses a file that cannot be read as a player at all. Each step tells the share done. */
export function* reportInSteps(
  document: PlayerDocument,
  air: StillAir,
): Generator<number, Result<BagReport, readonly Fault[]>, void> {
  const evidence = yield* scaled(0, READING, readEvidenceInSteps(document, { air }));
  if (!evidence.ok) return evidence;
  const posterior = yield* scaled(READING, 1, estimateBagInSteps(evidence.value.evidence));
  const known = { evidence: evidence.value, posterior };
  const atHome = clubsInRound(document.bag).length < document.bag.length;
  const out = buildPlayer(document, { known });
  const whole = atHome ? buildPlayer(document, { known, wholeBag: true }) : out;
  if (!whole.ok) return whole;
  const { level } = evidence.value;
  const { spreads } = whole.value;
  const entries = whole.value.posterior?.().entries ?? [];
  const lines = spreads.map((spread, i) => lineOf(spread, entries[i]!, evidence.value.evidence));
  return succeed({
    lines,
    rungs: distanceLadder(spreads, entries),
    gaps: distanceGaps(spreads, entries),
    putting: readPutting(document, level),
    upAndDowns: upAndDownChances(document.upAndDowns ?? []),
    level,
    handicap: level.handicap,
    shots: lines.reduce((sum, { shots, spread }) => sum + (spread.swing === 'part' ? 0 : shots), 0),
    warnings: whole.value.warnings,
    counted: evidence.value.counted,
    model: out.ok ? succeed(partsOf(out.value, level.handicap)) : out,
  });
}

/** Steps of a part of the work as shares of the whole. */
function* scaled<T>(from: number, to: number, steps: Generator<number, T, void>): Generator<number, T, void> {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    yield from + (to - from) * step.value;
  }
}

function lineOf(
  spread: ShotSpread,
  posterior: SpreadPosterior,
  evidence: readonly SpreadEvidence[],
): SpreadLine {
  const shots =
    evidence.find(({ club, swing }) => club.name === spread.club.name && swing === spread.swing)?.shots ?? [];
  const planned = numbersOf(spread);
  const found = estimatesOf(posterior);
  const estimates = Object.fromEntries(
    SPREAD_NUMBERS.map((name, i) => [name, { ...found[name], mean: planned[i]! }]),
  ) as Record<SpreadNumber, Estimate>;
  return {
    spread,
    estimates,
    shots: posterior.shots,
    effectiveShots: posterior.effectiveShots,
    poorShots: posterior.poorShots,
    strays: posterior.strays,
    pattern: landingPattern(spread, shots),
  };
}

function partsOf(model: PlayerModel, handicap: number): ModelParts {
  const doubt = model.posterior?.();
  const plain = { ...model };
  // Functions cannot be posted.
  Reflect.deleteProperty(plain, 'lieEffect');
  Reflect.deleteProperty(plain, 'posterior');
  return { plain, entries: doubt?.entries ?? [], drawCount: doubt?.drawCount ?? 0, handicap };
}

/** The model again, on the other side. */
export function modelOf(
  { plain, entries, drawCount, handicap }: ModelParts,
  document: PlayerDocument,
): PlayerModel {
  return {
    ...plain,
    lieEffect: lieEffectsOf(document.bag, handicap),
    posterior: () => ({ entries, drawCount }),
  };
}

/** Whether a law rests on the player's own shots: enough of them to speak. */
export function isOwn(line: SpreadLine): boolean {
  return line.shots >= LEAST_SHOTS;
}
