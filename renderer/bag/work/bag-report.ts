/** All that the room shows of a player's file, worked out in one go away from the window. Plain data throughout. */

import { buildPlayer, readEvidence } from '../../../core/player/build.ts';
import { LEAST_SHOTS } from '../../../core/player/measured-shot.ts';
import type { PlayerDocument } from '../../../core/player/format.ts';
import { type Gap, distanceGaps, distanceLadder, type Rung } from '../../../core/player/gaps.ts';
import { clubsInRound, lieEffectsOf } from '../../../core/player/in-play.ts';
import type { PlayerModel, ShotSpread } from '../../../core/player/model.ts';
import { type LandingPattern, landingPattern, patternWords } from '../../../core/player/pattern.ts';
import {
  estimatesOf,
  numbersOf,
  SPREAD_NUMBERS,
  type SpreadEvidence,
  type SpreadNumber,
  type SpreadPosterior,
} from '../../../core/player/posterior.ts';
import type { Estimate } from '../../../core/player/posterior/intervals.ts';
import { levelName } from '../../../core/player/presets.ts';
import { type PuttingReading, readPutting } from '../../../core/player/read-putting.ts';
import { type UpAndDownChance, upAndDownChances } from '../../../core/player/short-game.ts';
import { type Fault, type Result, succeed } from '../../../core/result.ts';

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
  /** The pattern in sentences, by units. */
  readonly words: Readonly<Record<'yards' | 'metres', string>>;
}

/** A `PlayerModel` without its functions, so that it can cross from a worker. */
export interface ModelParts {
  readonly plain: Omit<PlayerModel, 'lieEffect' | 'posterior'>;
  readonly entries: readonly SpreadPosterior[];
  readonly drawCount: number;
  readonly handicap: number;
}

export interface BagReport {
  /** Longest first, clubs that stay at home included. */
  readonly lines: readonly SpreadLine[];
  readonly rungs: readonly Rung[];
  readonly gaps: readonly Gap[];
  readonly putting: PuttingReading;
  readonly upAndDowns: readonly UpAndDownChance[];
  /** What is not measured comes from this preset. */
  readonly level: string;
  readonly handicap: number;
  /** Measured shots that count. */
  readonly shots: number;
  readonly warnings: readonly Fault[];
  /** What the plan works with; the faults where the clubs chosen for the round cannot be planned with. */
  readonly model: Result<ModelParts, readonly Fault[]>;
}

/** Refuses a file that cannot be read as a player at all. */
export function reportOn(document: PlayerDocument): Result<BagReport, readonly Fault[]> {
  const atHome = clubsInRound(document.bag).length < document.bag.length;
  const out = buildPlayer(document);
  const whole = atHome ? buildPlayer(document, { wholeBag: true }) : out;
  const evidence = readEvidence(document);
  if (!evidence.ok) return evidence;
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
    level: levelName(level),
    handicap: level.handicap,
    shots: lines.reduce((sum, { shots, spread }) => sum + (spread.swing === 'part' ? 0 : shots), 0),
    warnings: whole.value.warnings,
    model: out.ok ? succeed(partsOf(out.value, level.handicap)) : out,
  });
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
    words: {
      yards: patternWords(spread, posterior.shots, 'yards'),
      metres: patternWords(spread, posterior.shots, 'metres'),
    },
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
