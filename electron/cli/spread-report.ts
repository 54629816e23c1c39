/** What is known of a player's clubs, as plain data for `--json` and as lines for a terminal. */

import { inEnglish } from '../../core/words/told.ts';
import { SPREAD_NUMBERS, type SpreadNumber, estimatesOf } from '../../core/player/posterior.ts';
import type { Estimate } from '../../core/player/posterior/intervals.ts';
import type { PlayerModel, ShotSpread, SpreadSource } from '../../core/player/model.ts';
import type { PuttingReading } from '../../core/player/read-putting.ts';
import {
  upAndDownChances,
  type UpAndDownChance,
  type UpAndDownRecord,
} from '../../core/player/short-game.ts';
import type { ShotTable } from '../../core/player/csv/read-shots.ts';
import { columns } from './plan-report.ts';
import type { LengthUnit } from './units.ts';

const DEGREE = Math.PI / 180;
const YARD_M = 0.9144;

/** The numbers by the names that the JSON gives them; metres, degrees, shares. */
const JSON_NAMES: Readonly<Record<SpreadNumber, readonly [name: string, unit: number]>> = {
  carryMean: ['carryMeanM', 1],
  carrySd: ['carrySdM', 1],
  directionMean: ['directionMeanDeg', DEGREE],
  directionSd: ['directionSdDeg', DEGREE],
  correlation: ['correlation', 1],
  poorShare: ['poorShare', 1],
  poorCarryShareMean: ['poorCarryShareMean', 1],
  poorCarryShareSd: ['poorCarryShareSd', 1],
  poorDirectionSd: ['poorDirectionSdDeg', DEGREE],
};

export interface SpreadLine {
  readonly club: string;
  readonly swing: ShotSpread['swing'];
  readonly source: SpreadSource;
  readonly shots: number;
  readonly effectiveShots: number;
  readonly poorShots: number;
  readonly leftOut: number;
  readonly estimates: Readonly<Record<string, Estimate>>;
}

/** One entry per club and swing, longest carry first; the mean is what is planned with. */
export function spreadLines(player: PlayerModel): readonly SpreadLine[] {
  const entries = player.posterior?.().entries ?? [];
  return player.spreads.map((spread, i) => {
    const posterior = entries[i]!;
    const found = estimatesOf(posterior);
    const planned = plannedNumbers(spread);
    const estimates = SPREAD_NUMBERS.map((number): [string, Estimate] => {
      const [name, unit] = JSON_NAMES[number];
      const { low, high } = found[number];
      return [name, { mean: planned[number] / unit, low: low / unit, high: high / unit }];
    });
    return {
      club: spread.club.name,
      swing: spread.swing,
      source: spread.source,
      shots: posterior.shots,
      effectiveShots: posterior.effectiveShots,
      poorShots: posterior.poorShots,
      leftOut: posterior.strays,
      estimates: Object.fromEntries(estimates),
    };
  });
}

function plannedNumbers(spread: ShotSpread): Readonly<Record<SpreadNumber, number>> {
  return {
    carryMean: spread.carryMean,
    carrySd: spread.carrySd,
    directionMean: spread.directionMean,
    directionSd: spread.directionSd,
    correlation: spread.correlation,
    poorShare: spread.poorShare,
    poorCarryShareMean: spread.poor.carryShareMean,
    poorCarryShareSd: spread.poor.carryShareSd,
    poorDirectionSd: spread.poor.directionSd,
  };
}

export interface PuttingLine {
  readonly source: SpreadSource;
  readonly directionSdDeg: {
    readonly mean: number;
    readonly low: number | null;
    readonly high: number | null;
  };
  readonly distanceSdShare: {
    readonly mean: number;
    readonly low: number | null;
    readonly high: number | null;
  };
}

/** Intervals only where they come from a record. */
export function puttingLine({ skill, source, fit }: PuttingReading): PuttingLine {
  const direction = fit?.intervals.directionSd;
  const distance = fit?.intervals.distanceSdShare;
  return {
    source,
    directionSdDeg: {
      mean: skill.directionSd / DEGREE,
      low: direction === undefined ? null : direction.low / DEGREE,
      high: direction === undefined ? null : direction.high / DEGREE,
    },
    distanceSdShare: {
      mean: skill.distanceSdShare,
      low: distance?.low ?? null,
      high: distance?.high ?? null,
    },
  };
}

export function upAndDownLines(records: readonly UpAndDownRecord[]): readonly UpAndDownChance[] {
  return upAndDownChances(records);
}

export interface SpreadReport {
  readonly lines: readonly SpreadLine[];
  readonly putting: PuttingLine;
  readonly upAndDowns: readonly UpAndDownChance[];
  readonly table: ShotTable | null;
  /** Shots from other lies, wind, temperature or altitude, taken to a good lie in still air. */
  readonly converted: number;
}

/** Rejected rows that are listed; the rest are counted. */
const LISTED_ROWS = 20;

export function spreadReport(
  name: string,
  { lines, putting, upAndDowns, table, converted }: SpreadReport,
  unit: LengthUnit,
): string {
  const [metres, word] = unit === 'yards' ? [YARD_M, 'yd'] : [1, 'm'];
  const within = (estimate: Estimate, scale: number, digits: number): string =>
    `${(estimate.mean / scale).toFixed(digits)} (${(estimate.low / scale).toFixed(digits)} to ${(estimate.high / scale).toFixed(digits)})`;
  const titles = [
    'club',
    'shots',
    'poor',
    `carry ${word}`,
    `± ${word}`,
    'direction °',
    '± °',
    'correlation',
    'poor strikes %',
    'poor carry %',
    'poor ± °',
  ];
  const rows = lines.map(({ club, swing, source, shots, poorShots, estimates }) => [
    swing === 'full' ? club : `${club}, ${swing}`,
    source.from === 'measured' ? String(shots) : source.from,
    source.from === 'measured' ? String(poorShots) : '',
    within(estimates['carryMeanM']!, metres, 1),
    within(estimates['carrySdM']!, metres, 1),
    within(estimates['directionMeanDeg']!, 1, 1),
    within(estimates['directionSdDeg']!, 1, 1),
    within(estimates['correlation']!, 1, 2),
    within(estimates['poorShare']!, 0.01, 0),
    within(estimates['poorCarryShareMean']!, 0.01, 0),
    within(estimates['poorDirectionSdDeg']!, 1, 0),
  ]);
  const text = [
    `${name}: mean and, in brackets, the interval that holds the truth nine times in ten; ± is the standard deviation`,
    '',
    ...columns([titles, ...rows]),
    '',
    puttingWords(putting),
    ...upAndDowns.map(
      ({ kind, saved, tries, mean, low, high }) =>
        `up and down from a ${kind}: ${saved} of ${tries}, ${(100 * mean).toFixed(0)} % (${(100 * low).toFixed(0)} to ${(100 * high).toFixed(0)})`,
    ),
  ];
  if (converted > 0)
    text.push(
      '',
      `${converted} ${converted === 1 ? 'shot is' : 'shots are'} counted as from a good lie in still air at 15 °C at sea level`,
    );
  return [...text, ...(table === null ? [] : ['', ...tableWords(table)])].join('\n');
}

function puttingWords({ source, directionSdDeg, distanceSdShare }: PuttingLine): string {
  const brackets = (low: number | null, high: number | null, digits: number): string =>
    low === null || high === null ? '' : ` (${low.toFixed(digits)} to ${high.toFixed(digits)})`;
  const from = source.from === 'measured' ? `${source.shots} putts on record` : source.from;
  return `putting (${from}): direction ± ${directionSdDeg.mean.toFixed(2)}°${brackets(directionSdDeg.low, directionSdDeg.high, 2)}, length ± ${(100 * distanceSdShare.mean).toFixed(0)} %${brackets(distanceSdShare.low === null ? null : 100 * distanceSdShare.low, distanceSdShare.high === null ? null : 100 * distanceSdShare.high, 0)}`;
}

function tableWords(table: ShotTable): string[] {
  const { accepted, rejected, furtherRejected, duplicates, rows, endedEarly } = table;
  const out = rejected.length + furtherRejected;
  const lines = [
    `table: ${rows} rows, ${accepted.length} shots taken, ${out} rejected, ${duplicates.length} already known`,
    ...rejected.slice(0, LISTED_ROWS).map(({ line, message }) => `  line ${line}: ${inEnglish(message)}`),
  ];
  if (out > LISTED_ROWS) lines.push(`  and ${out - LISTED_ROWS} more; --json lists up to ${rejected.length}`);
  if (endedEarly !== undefined) lines.push(`  ${inEnglish(endedEarly)}`);
  return lines;
}
