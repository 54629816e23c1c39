/**
 * From a player file to the player as the engine sees it: for each club and swing the measured law where there are
 * shots enough, else what the player states, else the preset for the player's level.
 */

import { type Fault, type Result, refuse, succeed } from '../result.ts';
import {
  type EstimatedGroup,
  estimateShots,
  LEAST_SHOTS,
  type MeasuredShot,
  type PooledPoorStrike,
  poolPoorStrikes,
  poorStrikeFor,
} from './estimate.ts';
import {
  type BagClub,
  DEFAULT_MARGIN_STROKES,
  MOST_CLUBS_IN_PLAY,
  type PlayerDocument,
  type StatedSpread,
} from './format.ts';
import { groupKey, groupShots } from './group-shots.ts';
import { inferLevel } from './infer-level.ts';
import { lieEffectsFor } from './lie-effects.ts';
import type { Club, PlayerModel, ShotSpread, Swing } from './model.ts';
import { deriveSwing } from './part-swing.ts';
import { levelName, type PlayerLevel, presetPoorStrike, presetPutting, presetSpread } from './presets.ts';

const DEGREE = Math.PI / 180;

/** The player that a file describes. Refuses a bag that cannot be planned with, and a player of unknown level. */
export function buildPlayer(document: PlayerDocument): Result<PlayerModel, readonly Fault[]> {
  const bagErrors = checkBag(document.bag);
  if (bagErrors.length > 0) return refuse(bagErrors);
  const warnings: Fault[] = countClubs(document.bag);
  const { groups, warnings: shotWarnings } = groupShots(document.bag, document.shots ?? []);
  warnings.push(...shotWarnings);

  const level = readLevel(document, groups, warnings);
  if (!level.ok) return refuse([level.error, ...warnings]);
  const bag = new BagReading(document.bag, level.value, groups);
  const spreads = document.bag.flatMap((_, index) => bag.spreadsOf(index, warnings));
  spreads.sort((a, b) => b.carryMean - a.carryMean);

  const putting = document.putting;
  return succeed({
    name: document.name,
    invented: document.invented ?? false,
    ...(document.handicap === undefined ? {} : { handicap: document.handicap }),
    hand: document.hand ?? 'right',
    spreads,
    putting:
      putting === undefined
        ? presetPutting(level.value)
        : { directionSd: putting.directionSdDeg * DEGREE, distanceSdShare: putting.distanceSdShare },
    puttingSource:
      putting === undefined ? { from: 'preset', level: levelName(level.value) } : { from: 'stated' },
    lieEffect: lieEffectsFor(level.value.handicap),
    units: document.settings?.units ?? 'yards',
    marginStrokes: document.settings?.marginStrokes ?? DEFAULT_MARGIN_STROKES,
    warnings,
  });
}

function checkBag(bag: readonly BagClub[]): readonly Fault[] {
  const faults: Fault[] = [];
  const seen = new Set<string>();
  bag.forEach(({ name }, index) => {
    if (seen.has(name)) {
      const message = `The bag holds "${name}" twice. Give one of them another name, such as its loft.`;
      faults.push({ severity: 'error', code: 'club-twice', where: `bag[${index}]`, message });
    }
    seen.add(name);
  });
  if (bag.every(({ kind }) => kind === 'putter')) {
    const message = 'The bag holds no club but a putter. Add the clubs that are played.';
    faults.push({ severity: 'error', code: 'no-clubs', where: 'bag', message });
  }
  return faults;
}

function countClubs(bag: readonly BagClub[]): Fault[] {
  if (bag.length <= MOST_CLUBS_IN_PLAY) return [];
  const message = `The bag holds ${bag.length} clubs; Rule 4.1b allows ${MOST_CLUBS_IN_PLAY} in a round. Take out what stays at home.`;
  return [{ severity: 'warning', code: 'over-fourteen-clubs', where: 'bag', message }];
}

/** The level whose presets stand in for what is not measured: the handicap given, else one that fits the carries. */
function readLevel(
  document: PlayerDocument,
  groups: ReadonlyMap<string, readonly MeasuredShot[]>,
  warnings: Fault[],
): Result<PlayerLevel, Fault> {
  const group = document.group ?? 'men';
  if (document.handicap !== undefined) return succeed({ handicap: document.handicap, group });
  const inferred = inferLevel(document.bag, groups, group);
  if (inferred === undefined) {
    const message = `There is neither a handicap nor a club with at least ${LEAST_SHOTS} measured shots or a stated carry. Add a handicap, or measure one club.`;
    return refuse({ severity: 'error', code: 'level-unknown', where: 'handicap', message });
  }
  const message = `There is no handicap: what is not measured is taken from the preset that fits the carries best (${levelName(inferred)}). Add the handicap.`;
  warnings.push({ severity: 'warning', code: 'handicap-missing', where: 'handicap', message });
  return succeed(inferred);
}

/** Every law of one bag; the groups are estimated once, the poor strikes of all clubs pooled. */
class BagReading {
  private readonly estimated = new Map<string, EstimatedGroup>();
  private readonly pooled: PooledPoorStrike;
  private readonly presetScale: number;

  constructor(
    private readonly bag: readonly BagClub[],
    private readonly level: PlayerLevel,
    private readonly groups: ReadonlyMap<string, readonly MeasuredShot[]>,
  ) {
    for (const club of bag) {
      for (const swing of club.swings) {
        const shots = groups.get(groupKey(club.name, swing));
        if (shots === undefined) continue;
        const estimate = estimateShots(shots, presetSpread(level, clubOf(club), swing).poorShare);
        if (estimate.ok) this.estimated.set(groupKey(club.name, swing), { shots, estimate: estimate.value });
      }
    }
    const usual = presetPoorStrike(level, 1);
    this.pooled = poolPoorStrikes([...this.estimated.values()], {
      carryShareMean: usual.carryShareMean,
      carryShareSd: usual.carryShareSd,
      directionTimes: usual.directionSd,
    });
    this.presetScale = this.measurePresetScale();
  }

  /** The laws of the club at `index`, one per swing; what falls back on a preset says so in `warnings`. */
  spreadsOf(index: number, warnings: Fault[]): readonly ShotSpread[] {
    const bagClub = this.bag[index]!;
    if (bagClub.kind === 'putter') return [];
    const where = `bag[${index}] (${bagClub.name})`;
    const full = this.fullSpread(bagClub, where, warnings);
    return bagClub.swings.map((swing) => {
      if (swing === 'full') return full;
      const measured = this.measured(bagClub, swing);
      if (measured !== undefined) return measured;
      const shots = this.groups.get(groupKey(bagClub.name, swing))?.length ?? 0;
      if (shots > 0) {
        const message = `${bagClub.name}, ${swing} swing, has ${countShots(shots)}; it is derived from the full swing until it has at least ${LEAST_SHOTS}.`;
        warnings.push({ severity: 'warning', code: 'few-shots', where, message });
      }
      const derived = deriveSwing(full, swing);
      return full.source.from === 'preset' ? { ...derived, source: full.source } : derived;
    });
  }

  private fullSpread(bagClub: BagClub, where: string, warnings: Fault[]): ShotSpread {
    const measured = this.measured(bagClub, 'full');
    if (measured !== undefined) return measured;
    const preset = presetSpread(this.level, clubOf(bagClub), 'full');
    const scaled: ShotSpread = {
      ...preset,
      carryMean: preset.carryMean * this.presetScale,
      carrySd: preset.carrySd * this.presetScale,
    };
    if (bagClub.stated !== undefined) return statedSpread(scaled, bagClub.stated);
    if (bagClub.swings.includes('full')) {
      const shots = this.groups.get(groupKey(bagClub.name, 'full'))?.length ?? 0;
      const handicap = Math.round(this.level.handicap * 10) / 10;
      const fitted =
        Math.abs(this.presetScale - 1) < 0.005
          ? ''
          : ` Its carry is set to ${Math.round(100 * this.presetScale)} % of the preset, in line with the clubs that are known.`;
      const message = `${bagClub.name} has ${countShots(shots)}; the preset for handicap ${handicap} is used until it has at least ${LEAST_SHOTS}.${fitted}`;
      warnings.push({ severity: 'warning', code: 'few-shots', where, message });
    }
    return scaled;
  }

  private measured(bagClub: BagClub, swing: Swing): ShotSpread | undefined {
    const group = this.estimated.get(groupKey(bagClub.name, swing));
    if (group === undefined) return undefined;
    const { shots, estimate } = group;
    return {
      club: clubOf(bagClub),
      swing,
      carryMean: estimate.carryMean,
      carrySd: estimate.carrySd,
      directionMean: estimate.directionMean,
      directionSd: estimate.directionSd,
      correlation: estimate.correlation,
      poorShare: estimate.poorShare,
      poor: poorStrikeFor(this.pooled, estimate.directionSd),
      source: { from: 'measured', shots: shots.length, poorShots: estimate.poorCount },
    };
  }

  /** By how much this player's known full swings outcarry the preset's: the median over clubs, within reason. */
  private measurePresetScale(): number {
    const ratios: number[] = [];
    for (const bagClub of this.bag) {
      if (bagClub.kind === 'putter') continue;
      const known =
        this.estimated.get(groupKey(bagClub.name, 'full'))?.estimate.carryMean ?? bagClub.stated?.carryM;
      if (known !== undefined)
        ratios.push(known / presetSpread(this.level, clubOf(bagClub), 'full').carryMean);
    }
    if (ratios.length === 0) return 1;
    ratios.sort((a, b) => a - b);
    const half = ratios.length >> 1;
    const middle = ratios.length % 2 === 1 ? ratios[half]! : (ratios[half - 1]! + ratios[half]!) / 2;
    return Math.min(1.5, Math.max(0.6, middle));
  }
}

/** What the player states, over the preset: a stated carry alone keeps the preset's shares of it. */
function statedSpread(preset: ShotSpread, stated: StatedSpread): ShotSpread {
  const carryMean = stated.carryM ?? preset.carryMean;
  const directionSd =
    stated.directionSdDeg === undefined ? preset.directionSd : stated.directionSdDeg * DEGREE;
  return {
    ...preset,
    carryMean,
    carrySd: stated.carrySdM ?? (preset.carrySd / preset.carryMean) * carryMean,
    directionMean: (stated.directionDeg ?? 0) * DEGREE,
    directionSd,
    correlation: stated.correlation ?? preset.correlation,
    poorShare: stated.poorShare ?? preset.poorShare,
    poor: { ...preset.poor, directionSd: (preset.poor.directionSd / preset.directionSd) * directionSd },
    source: { from: 'stated' },
  };
}

function clubOf(club: BagClub): Club {
  const { name, kind, loftDeg, lengthM, swings } = club;
  return { name, kind, loftDeg, swings, ...(lengthM === undefined ? {} : { lengthM }) };
}

function countShots(count: number): string {
  return count === 1 ? '1 measured shot' : `${count === 0 ? 'no' : count} measured shots`;
}
