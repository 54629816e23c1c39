/**
 * The laws of a bag's clubs and swings out of one estimate, what the player states, and the presets; with the words
 * that the player is told where a law rests on few shots or none.
 */

import type { Fault } from '../result.ts';
import type { BagClub, StatedSpread } from './format.ts';
import { groupKey } from './group-shots.ts';
import { LEAST_SHOTS, type MeasuredShot } from './measured-shot.ts';
import type { Club, ShotSpread, SpreadSource, Swing } from './model.ts';
import { derivePart, deriveSwing } from './part-swing.ts';
import {
  type BagPosterior,
  estimateBag,
  meanSpread,
  type SpreadEvidence,
  type SpreadPosterior,
} from './posterior.ts';
import { transformDraws } from './posterior/transform-draws.ts';
import { measuredPart, partPosterior } from './measured-part.ts';
import { levelName, type PlayerLevel, presetSpread } from './presets.ts';
import type { PartShot } from './short-game.ts';
import { told, type Told, toldFault } from '../words/told.ts';

const DEGREE = Math.PI / 180;

/** Shots by `groupKey`. */
export type ShotGroups = ReadonlyMap<string, readonly MeasuredShot[]>;

/** One law of the bag, and its doubt for when it is asked for. */
export interface DoubtedSpread {
  readonly spread: ShotSpread;
  readonly posterior: () => SpreadPosterior;
}

/** The laws of one club, and what the player must be told of them. */
export interface ClubLaws {
  readonly spreads: readonly DoubtedSpread[];
  readonly faults: readonly Fault[];
}

/** Every law of one bag, estimated together. */
export class BagReading {
  private readonly hasShots: boolean;
  private estimated: BagPosterior | undefined;

  constructor(
    private readonly bag: readonly BagClub[],
    private readonly level: PlayerLevel,
    private readonly evidence: readonly SpreadEvidence[],
    private readonly partShots: ReadonlyMap<string, readonly PartShot[]>,
    /** Of this evidence, where it is worked out already. */
    estimated?: BagPosterior,
  ) {
    this.estimated = estimated;
    this.hasShots = this.evidence.some(({ shots }) => shots.length > 0);
  }

  laws(): readonly ClubLaws[] {
    return this.bag.map((bagClub, index) => this.lawsOf(bagClub, `bag[${index}] (${bagClub.name})`));
  }

  private posterior(): BagPosterior {
    this.estimated ??= estimateBag(this.evidence);
    return this.estimated;
  }

  private lawsOf(bagClub: BagClub, where: string): ClubLaws {
    if (bagClub.kind === 'putter') return { spreads: [], faults: [] };
    const full = this.lawOf(bagClub, 'full');
    const faults: Fault[] = [];
    const spreads = bagClub.swings.map((swing): DoubtedSpread => {
      if (swing !== 'part') {
        const law = swing === 'full' ? full : this.lawOf(bagClub, swing, full.spread);
        faults.push(...this.faultsOf(bagClub, swing, law.spread, where));
        return law;
      }
      const derived = derivedSource(derivePart(full.spread), full.spread);
      const posterior = (): SpreadPosterior => transformDraws(full.posterior(), derivePart);
      const measured = measuredPart(derived, this.partShots);
      return measured === null
        ? { spread: derived, posterior }
        : { spread: measured.spread, posterior: () => partPosterior(posterior(), measured) };
    });
    return { spreads, faults };
  }

  private lawOf(bagClub: BagClub, swing: Swing, full?: ShotSpread): DoubtedSpread {
    const at = this.evidence.findIndex((one) => one.club.name === bagClub.name && one.swing === swing);
    const evidence = this.evidence[at]!;
    const posterior = (): SpreadPosterior => this.posterior().entries[at]!;
    if (evidence.shots.length > 0) {
      const { shots, poorShots } = posterior();
      // Readings may all have been left out as too long to be true.
      if (shots > 0)
        return { spread: meanSpread(posterior(), { from: 'measured', shots, poorShots }), posterior };
    }
    const preset: SpreadSource = { from: 'preset', level: levelName(this.level) };
    // A bag without shots stays with what is expected, untouched by chance.
    const isKnown = this.hasShots || this.evidence.some((one) => one.statedCarryM !== undefined);
    const base = isKnown ? meanSpread(posterior(), preset) : evidence.expected;
    const scaled = this.hasShots ? base : scaleTo(evidence.expected, base.carryMean);
    if (swing === 'full' && bagClub.stated !== undefined)
      return { spread: statedSpread(scaled, bagClub.stated), posterior };
    return { spread: full === undefined ? scaled : derivedSource(scaled, full), posterior };
  }

  /** What to tell of a law that rests on few shots or none. */
  private faultsOf(bagClub: BagClub, swing: Swing, spread: ShotSpread, where: string): Fault[] {
    const evidence = this.evidence.find((one) => one.club.name === bagClub.name && one.swing === swing)!;
    const count = evidence.shots.length;
    const handicap = Math.round(this.level.handicap * 10) / 10;
    const name =
      swing === 'full'
        ? bagClub.name
        : told(({ faults }) => faults.player.clubSwing, {
            club: bagClub.name,
            swing: told(({ golf }) => golf.shortSwings[swing]),
          });
    const faults: Fault[] = [];
    const warn = (code: string, message: Told): number =>
      faults.push(toldFault({ severity: 'warning', code, where, message }));
    const left = count === 0 ? 0 : this.strays(bagClub, swing);
    if (left > 0) {
      const readings = told(({ faults }) => faults.player.readings, { count: left });
      warn(
        'shot-too-long',
        told(({ faults }) => faults.player.tooLong, { club: name, readings }),
      );
    }
    if (count >= LEAST_SHOTS || (count === 0 && bagClub.stated !== undefined)) return faults;
    const on =
      swing === 'full' && bagClub.stated !== undefined
        ? told(({ faults }) => faults.player.onStated)
        : swing === 'full'
          ? told(({ faults }) => faults.player.onPreset, { handicap })
          : told(({ faults }) => faults.player.onFull);
    if (count > 0) {
      warn(
        'few-shots',
        told(({ faults }) => faults.player.fewShots, {
          club: name,
          shots: countShots(count),
          least: LEAST_SHOTS,
          on,
        }),
      );
    } else if (swing === 'full') {
      const share = spread.carryMean / evidence.expected.carryMean;
      const fitted =
        Math.abs(share - 1) < 0.005
          ? ''
          : told(({ faults }) => faults.player.fitted, { percent: Math.round(100 * share) });
      warn(
        'few-shots',
        told(({ faults }) => faults.player.noShots, { club: name, shots: countShots(0), handicap, fitted }),
      );
    }
    return faults;
  }

  private strays(bagClub: BagClub, swing: Swing): number {
    const at = this.evidence.findIndex((one) => one.club.name === bagClub.name && one.swing === swing);
    return this.posterior().entries[at]!.strays;
  }
}

/** What is expected and known of a club: one entry per swing but `part`, the full swing always among them. */
export function evidenceOf(bagClub: BagClub, level: PlayerLevel, groups: ShotGroups): SpreadEvidence[] {
  if (bagClub.kind === 'putter') return [];
  const club = clubOf(bagClub);
  const preset = presetSpread(level, club, 'full');
  const { stated } = bagClub;
  const expected = stated === undefined ? preset : statedWidths(preset, stated);
  const others = bagClub.swings.filter((swing) => swing !== 'full' && swing !== 'part');
  return (['full', ...others] as const).map((swing) => ({
    club,
    swing,
    expected: swing === 'full' ? expected : { ...deriveSwing(expected, swing), source: expected.source },
    shots: groups.get(groupKey(bagClub.name, swing)) ?? [],
    ...(swing === 'full' && stated?.carryM !== undefined ? { statedCarryM: stated.carryM } : {}),
  }));
}

/** A preset with what the player states of everything but the carry, which is believed only so far. */
function statedWidths(preset: ShotSpread, stated: StatedSpread): ShotSpread {
  const { carrySdM, carryM } = stated;
  const carrySd =
    carrySdM === undefined ? preset.carrySd : carrySdM * (preset.carryMean / (carryM ?? preset.carryMean));
  return {
    ...statedSpread(preset, { ...stated, carryM: preset.carryMean, carrySdM: carrySd }),
    source: preset.source,
  };
}

/** What the player states, over what is expected: a stated carry alone keeps the expected share of it. */
function statedSpread(expected: ShotSpread, stated: StatedSpread): ShotSpread {
  const carryMean = stated.carryM ?? expected.carryMean;
  const directionSd =
    stated.directionSdDeg === undefined ? expected.directionSd : stated.directionSdDeg * DEGREE;
  return {
    ...expected,
    carryMean,
    carrySd: stated.carrySdM ?? (expected.carrySd / expected.carryMean) * carryMean,
    directionMean: stated.directionDeg === undefined ? expected.directionMean : stated.directionDeg * DEGREE,
    directionSd,
    correlation: stated.correlation ?? expected.correlation,
    poorShare: stated.poorShare ?? expected.poorShare,
    poor: {
      ...expected.poor,
      directionSd: (expected.poor.directionSd / expected.directionSd) * directionSd,
    },
    source: { from: 'stated' },
  };
}

function scaleTo(spread: ShotSpread, carryMean: number): ShotSpread {
  return { ...spread, carryMean, carrySd: (spread.carrySd / spread.carryMean) * carryMean };
}

/** A swing without shots of its own: as much a preset as its full swing, else derived from it. */
function derivedSource(spread: ShotSpread, full: ShotSpread): ShotSpread {
  const source: SpreadSource =
    full.source.from === 'preset'
      ? full.source
      : { from: 'derived', fromSwing: full.swing, fromClub: full.club.name };
  return { ...spread, source };
}

function clubOf(club: BagClub): Club {
  const { name, kind, loftDeg, lengthM, swings, launch } = club;
  return {
    ...{ name, kind, loftDeg, swings },
    ...(lengthM === undefined ? {} : { lengthM }),
    ...(launch === undefined ? {} : { launch }),
  };
}

function countShots(count: number): Told {
  return count === 0
    ? told(({ faults }) => faults.player.noneYet)
    : told(({ faults }) => faults.player.shots, { count });
}
