/**
 * How a player of a level hits each club, for players and clubs without measured shots. Levels are handicaps, from a
 * tour player (-5) to 36; between the levels given here every figure runs along a straight line, beyond them it stays.
 * Each figure names its source or is marked as common practice. Direction errors are symmetric but for the drift of the
 * long clubs to the outside, mirrored for the left-handed.
 */

import { type BrokenLine, readLine } from '../broken-line.ts';
import { deriveSwing } from './part-swing.ts';
import { english } from '../words/english/english.ts';
import { told, type Told } from '../words/told.ts';
import type { Words } from '../words/words.ts';
import type { Club, PoorStrike, PuttingSkill, ShotSpread, Swing } from './model.ts';

/** Seniors from about 65 years, juniors of about 12 to 14. */
export type PlayerGroup = 'men' | 'women' | 'senior-men' | 'senior-women' | 'juniors';

export interface PlayerLevel {
  /** Plus handicaps are negative: a tour player is about -5. */
  readonly handicap: number;
  readonly group: PlayerGroup;
  /** Right where absent. */
  readonly hand?: 'right' | 'left';
}

/**
 * Whose lengths a group hits, times what. A senior or junior of a handicap makes up in precision what is lost in length
 * (the handicap is the same), so only the length differs. Common practice, no source.
 */
const GROUP_LENGTH: Readonly<
  Record<PlayerGroup, { readonly like: 'men' | 'women'; readonly times: number }>
> = {
  men: { like: 'men', times: 1 },
  women: { like: 'women', times: 1 },
  'senior-men': { like: 'men', times: 0.9 },
  'senior-women': { like: 'women', times: 0.9 },
  juniors: { like: 'men', times: 0.8 },
};

const YARD_M = 0.9144;
const DEGREE = Math.PI / 180;

/**
 * Length of a solid drive on a level fairway, roll included, yards by handicap. Scratch and bogey players (men 0 and
 * 20, women 0 and 24): USGA Course Rating System, 250 and 200, 210 and 150. The ends: common practice, no source;
 * between them the lines pass within 10 % of the averages of club golfers (R&A/USGA Distance Insights).
 */
const DRIVE_YD: Readonly<Record<'men' | 'women', BrokenLine>> = {
  men: [
    [-5, 290],
    [0, 250],
    [20, 200],
    [28, 183],
    [36, 168],
  ],
  women: [
    [-5, 250],
    [0, 210],
    [24, 150],
    [36, 126],
  ],
};

/**
 * Length of the longest shot from the fairway, roll included, yards: what the same standard leaves for the second
 * shot of the longest hole reached in two (men 470 - 250 and 370 - 200, women 400 - 210 and 280 - 150). The ends:
 * common practice, no source.
 */
const SECOND_YD: Readonly<Record<'men' | 'women', BrokenLine>> = {
  men: [
    [-5, 260],
    [0, 220],
    [20, 170],
    [28, 156],
    [36, 143],
  ],
  women: [
    [-5, 225],
    [0, 190],
    [24, 130],
    [36, 110],
  ],
};

/** Roll in those lengths, for drives and second shots alike (USGA Course Rating System; from memory). */
const ROLL_YD = 20;

/** Carry as a share of the 3-wood's, by loft in degrees. Common practice, no source. */
const CARRY_RATIO: BrokenLine = [
  [12, 1.04],
  [15, 1],
  [18, 0.94],
  [22, 0.885],
  [25, 0.83],
  [28, 0.78],
  [32, 0.73],
  [36, 0.675],
  [41, 0.62],
  [46, 0.56],
  [50, 0.49],
  [56, 0.42],
  [60, 0.345],
  [64, 0.28],
];

/**
 * Standard deviation of a drive's direction, all drives, degrees by handicap: tour 3.4 (Broadie 2014), players who go
 * round in about 80, 90 and 100 (handicaps of about 6, 16 and 25, the average round being 2-5 above the handicap)
 * 5, 6.5 and 7.5 (from memory, low confidence). The last: common practice, no source.
 */
const DRIVE_DIRECTION_DEG: BrokenLine = [
  [-5, 3.4],
  [6, 5],
  [16, 6.5],
  [25, 7.5],
  [36, 8.5],
];

/**
 * Direction of other clubs as a share of the driver's, by loft: tour irons 2.2 to 2.6 degrees against 3.4. Common
 * practice, no source.
 */
const DIRECTION_RATIO: BrokenLine = [
  [10, 1],
  [15, 0.93],
  [18, 0.88],
  [22, 0.82],
  [25, 0.77],
  [32, 0.72],
  [41, 0.67],
  [46, 0.65],
  [60, 0.65],
];

/**
 * Mean direction of a drive, degrees to the outside (right for a right-hander), by handicap; of other clubs as a share
 * of it, by loft. Most players of high handicap slice the long clubs. Common practice, no source.
 */
const DRIFT_DEG: BrokenLine = [
  [0, 0],
  [16, 0.5],
  [36, 1],
];
const DRIFT_RATIO: BrokenLine = [
  [10, 1],
  [22, 0.6],
  [41, 0],
];

/** Standard deviation of a solid strike's carry as a share of carry, by handicap. Common practice, no source. */
const DRIVER_CARRY_SHARE: BrokenLine = [
  [-5, 0.04],
  [0, 0.05],
  [16, 0.08],
  [28, 0.1],
  [36, 0.115],
];
const IRON_CARRY_SHARE: BrokenLine = [
  [-5, 0.045],
  [0, 0.055],
  [16, 0.085],
  [28, 0.105],
  [36, 0.12],
];

/** Chance of a poor strike, by handicap: common practice, no source. */
const POOR_SHARE: BrokenLine = [
  [-5, 0.01],
  [0, 0.025],
  [16, 0.08],
  [28, 0.14],
  [36, 0.18],
];

/** The same by loft, as a factor: long clubs off the ground are mis-hit more. Common practice, no source. */
const POOR_FACTOR: BrokenLine = [
  [10, 1],
  [14, 1.1],
  [22, 1.05],
  [25, 1.15],
  [32, 1],
  [41, 0.9],
  [46, 0.8],
  [60, 0.8],
];

/** Mean carry of a poor strike as a share of a solid one, by handicap. Common practice, no source. */
const POOR_CARRY: BrokenLine = [
  [-5, 0.75],
  [0, 0.7],
  [16, 0.6],
  [36, 0.5],
];
/** Its standard deviation, and how much wider than a solid strike it flies. Common practice, no source. */
const POOR_CARRY_SD = 0.18;
const POOR_DIRECTION_TIMES = 2;

/**
 * Putting. Tour: Gelman 2019's model fitted to Broadie 2018's putts. Handicap 16 (goes round in about 90): half holed
 * from about 5 ft, a quarter from about 8 ft (Broadie 2014). The rest: straight lines, common practice, no source.
 */
const PUTT_DIRECTION_SD: BrokenLine = [
  [-5, 0.0178],
  [16, 0.0285],
  [36, 0.037],
];
const PUTT_RUN_SHARE: BrokenLine = [
  [-5, 0.08],
  [16, 0.14],
  [36, 0.19],
];

/** A bag of fourteen (Rule 4.1b) with usual lofts and lengths. Common practice, no source. */
export const STANDARD_BAG: readonly Club[] = [
  { name: 'Driver', kind: 'driver', loftDeg: 10.5, lengthM: 1.14, swings: ['full'] },
  { name: '3-wood', kind: 'wood', loftDeg: 15, lengthM: 1.09, swings: ['full'] },
  { name: '5-wood', kind: 'wood', loftDeg: 18, lengthM: 1.07, swings: ['full'] },
  { name: '4-hybrid', kind: 'hybrid', loftDeg: 22, lengthM: 1, swings: ['full', 'punch'] },
  { name: '5-iron', kind: 'iron', loftDeg: 25, lengthM: 0.97, swings: ['full', 'punch'] },
  { name: '6-iron', kind: 'iron', loftDeg: 28, lengthM: 0.95, swings: ['full'] },
  { name: '7-iron', kind: 'iron', loftDeg: 32, lengthM: 0.94, swings: ['full', 'punch'] },
  { name: '8-iron', kind: 'iron', loftDeg: 36, lengthM: 0.93, swings: ['full'] },
  { name: '9-iron', kind: 'iron', loftDeg: 41, lengthM: 0.91, swings: ['full'] },
  { name: 'Pitching wedge', kind: 'wedge', loftDeg: 46, lengthM: 0.9, swings: ['full', 'part'] },
  { name: 'Gap wedge', kind: 'wedge', loftDeg: 50, lengthM: 0.9, swings: ['full', 'part'] },
  { name: 'Sand wedge', kind: 'wedge', loftDeg: 56, lengthM: 0.89, swings: ['full', 'part'] },
  { name: 'Lob wedge', kind: 'wedge', loftDeg: 60, lengthM: 0.89, swings: ['full', 'part'] },
  { name: 'Putter', kind: 'putter', loftDeg: 3, lengthM: 0.86, swings: ['full'] },
];

/** What a preset is made of: a law per club and swing of the standard bag, longest first, and the putting. */
export interface PresetPlayer {
  readonly spreads: readonly ShotSpread[];
  readonly putting: PuttingSkill;
}

/** The preset for a level with the standard bag, or with `bag`. */
export function presetPlayer(level: PlayerLevel, bag: readonly Club[] = STANDARD_BAG): PresetPlayer {
  const spreads = bag.flatMap((club) =>
    club.kind === 'putter' ? [] : club.swings.map((swing) => presetSpread(level, club, swing)),
  );
  spreads.sort((a, b) => b.carryMean - a.carryMean);
  return { spreads, putting: presetPutting(level) };
}

export function presetPutting(level: PlayerLevel): PuttingSkill {
  return {
    directionSd: readLine(PUTT_DIRECTION_SD, level.handicap),
    distanceSdShare: readLine(PUTT_RUN_SHARE, level.handicap),
  };
}

/** The preset law of any club but the putter, by its kind and loft. */
export function presetSpread(level: PlayerLevel, club: Club, swing: Swing): ShotSpread {
  const full = presetFull(level, club);
  // A preset's shorter swings are as much a preset as its full swing.
  return swing === 'full' ? full : { ...deriveSwing(full, swing), source: full.source };
}

/** The level in words, as it stands in a spread's source. */
/** `handicap 18, men`: in English as files have it, else in the language of the window. */
export function levelName(level: PlayerLevel, words: Words = english): string {
  return words.spread.level({
    handicap: handicapText(level.handicap, words),
    group: words.spread.levelGroups[level.group],
  });
}

/** A level as a spread's source names it, in the language of the window; another text comes back as it is. */
export function levelIn(name: string, words: Words): string {
  const [, sign, handicap, said] = /^handicap (\+?)([\d.]+), (.+)$/u.exec(name) ?? [];
  const group = Object.entries(english.spread.levelGroups).find(([, groupWords]) => groupWords === said)?.[0];
  if (group === undefined) return name;
  return levelName(
    { handicap: Number(handicap) * (sign === '+' ? -1 : 1), group: group as PlayerLevel['group'] },
    words,
  );
}

/** The same to be told later. */
export function levelTold({ handicap, group }: PlayerLevel): Told {
  return told(({ spread }) => spread.level, {
    handicap: handicapText(handicap, english),
    group: told(({ spread }) => spread.levelGroups[group]),
  });
}

/** Plus handicaps with their plus, a tenth at most. */
export function handicapText(handicap: number, { figures }: Words): string {
  return `${handicap < 0 ? '+' : ''}${figures.short(Math.abs(handicap), 1)}`;
}

function presetFull(level: PlayerLevel, club: Club): ShotSpread {
  const { handicap, group } = level;
  const isDriver = club.kind === 'driver';
  const { like, times } = GROUP_LENGTH[group];
  const carryMean =
    times *
    (isDriver
      ? (readLine(DRIVE_YD[like], handicap) - ROLL_YD) * YARD_M
      : (readLine(SECOND_YD[like], handicap) - ROLL_YD) * YARD_M * readLine(CARRY_RATIO, club.loftDeg));
  const carryShare = readLine(isDriver ? DRIVER_CARRY_SHARE : IRON_CARRY_SHARE, handicap);
  const ratioLoft = isDriver ? 10 : club.loftDeg;
  const poorShare = readLine(POOR_SHARE, handicap) * readLine(POOR_FACTOR, ratioLoft);
  // The published spread is that of all shots: solid^2 (1 - q + q k^2) = all^2.
  const allDirectionSd =
    readLine(DRIVE_DIRECTION_DEG, handicap) * DEGREE * readLine(DIRECTION_RATIO, ratioLoft);
  const directionSd = allDirectionSd / Math.sqrt(1 - poorShare + poorShare * POOR_DIRECTION_TIMES ** 2);
  const drift = readLine(DRIFT_DEG, handicap) * DEGREE * readLine(DRIFT_RATIO, ratioLoft);
  return {
    club,
    swing: 'full',
    carryMean,
    carrySd: carryShare * carryMean,
    directionMean: level.hand === 'left' ? -drift : drift,
    directionSd,
    correlation: 0,
    poorShare,
    poor: presetPoorStrike(level, directionSd),
    source: { from: 'preset', level: levelName(level) },
  };
}

/** The poor strike of a level for a club whose solid strikes have `solidDirectionSd` radians. */
export function presetPoorStrike(level: PlayerLevel, solidDirectionSd: number): PoorStrike {
  return {
    carryShareMean: readLine(POOR_CARRY, level.handicap),
    carryShareSd: POOR_CARRY_SD,
    directionSd: POOR_DIRECTION_TIMES * solidDirectionSd,
  };
}

/** The same law for the other hand: what went right goes left. */
export function mirrorSpread(spread: ShotSpread): ShotSpread {
  return { ...spread, directionMean: -spread.directionMean, correlation: -spread.correlation };
}
