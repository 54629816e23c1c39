/**
 * The sampler behind the estimates: Gibbs sampling (Geman & Geman 1984; Gelfand & Smith 1990) of one player's bag.
 *
 * Model, per club and swing j: with chance 1 - q_j a solid strike, (carry, direction) bivariate normal with mean m_j
 * and covariance S_j; with chance q_j a poor strike, carry a normal share (mean a, SD b) of the solid mean, direction
 * normal about the same middle, k times as wide as a solid strike. a, b, k are the same for all clubs, since one club
 * has too few poor strikes. Which strike is poor is drawn along (data augmentation, Diebolt & Robert 1994), so poor
 * strikes that fly like solid ones are counted with their chance and do not bias the share.
 * Priors: m over all clubs jointly normal about what is expected (`deviationCovariance`); S_j inverse-Wishart about
 * what is expected times a factor of the whole bag, gamma; q_j beta about what is expected times a factor of the whole
 * bag, log-normal on a grid (Ritter & Tanner 1992).
 *
 * A reading from a bad lie comes with how much wider that lie scatters (its deviations are divided by it) and with the
 * chance that the lie itself made the strike poor; such strikes do not count for q_j.
 *
 * Two liberties, both small: the poor strikes do not inform m and S (a cut, Plummer 2015), since a top tells next to
 * nothing of a good strike; and a weight below 1 lets a shot count as that part of a shot once its kind is drawn.
 */

import { RandomStream, type StreamKey } from '../../random/streams.ts';
import {
  type EntryState,
  expectedPoorShare,
  type KnownEntry,
  startEntry,
  summariseSolid,
} from './entry-state.ts';
import { gammaHalfStep } from './gamma-ratio.ts';
import { MeanBlock } from './mean-block.ts';
import { PoorLevels } from './poor-level.ts';
import { type BagEntry, type BagPrior, deviationCovariance } from './prior.ts';
import {
  drawBeta,
  drawChiSquare,
  drawGamma,
  drawInverseWishart,
  drawNormal,
  type Symmetric2,
} from './random-laws.ts';

/** A poor strike's direction counts at most this many solid standard deviations. */
const WIDEST_SDS = 10;
/** Least spread in use, so that rounded or equal readings do not make a spread of nothing: share of carry, radians. */
const LEAST_CARRY_SD_SHARE = 0.005;
const LEAST_DIRECTION_SD = 0.002;

/** What a sweep leaves behind for clubs and swings without any shots. */
export interface BagState {
  readonly carryDeviation: Float64Array;
  readonly directionDeviation: Float64Array;
  readonly carryFactor: number;
  readonly directionFactor: number;
  readonly poorLevel: number;
  readonly poorCarryMean: number;
  readonly poorCarrySd: number;
  readonly poorDirectionTimes: number;
}

export class BagSampler {
  readonly states: readonly EntryState[];
  readonly stream = new RandomStream();
  private readonly carries: MeanBlock;
  private readonly directions: MeanBlock;
  private readonly observed: Float64Array;
  private readonly precisions: Float64Array;
  /** Degrees of freedom of the spreads' prior, and its scale for an expected standard deviation of 1. */
  private readonly degrees: number;
  private readonly unitScale: number;
  private readonly levels: PoorLevels;
  private readonly usual: { readonly mean: number; readonly sd: number; readonly times: number };
  carryFactor = 1;
  directionFactor = 1;
  poorLevel = 1;
  poorCarryMean: number;
  poorCarrySd: number;
  poorDirectionTimes: number;

  /** `evidence` holds the clubs and swings with readings or a stated carry; at least one. */
  constructor(
    evidence: readonly KnownEntry[],
    private readonly prior: BagPrior,
    key: StreamKey,
  ) {
    this.stream.restart(key, 0);
    const entries = evidence.map(({ entry }) => entry);
    const size = entries.length;
    this.carries = new MeanBlock(deviationCovariance(entries, prior.carry), size);
    this.directions = new MeanBlock(deviationCovariance(entries, prior.direction), size);
    this.observed = new Float64Array(size);
    this.precisions = new Float64Array(size);
    this.degrees = prior.spreadShots + 1;
    this.unitScale = prior.spreadShots / meanOfScaledInverseChi(prior.spreadShots) ** 2;
    this.states = evidence.map((one) => startEntry(one, prior));
    const { poor, directionSd } = entries[0]!.expected;
    this.usual = { mean: poor.carryShareMean, sd: poor.carryShareSd, times: poor.directionSd / directionSd };
    this.poorCarryMean = this.usual.mean;
    this.poorCarrySd = this.usual.sd;
    this.poorDirectionTimes = this.usual.times;

    this.levels = new PoorLevels(entries, prior);
  }

  sweep(): void {
    for (const state of this.states) summariseSolid(state);
    this.drawSpreads();
    this.drawCarries();
    this.drawDirections();
    this.drawFactors();
    this.drawPoorShares();
    this.drawPoorLaw();
    for (const state of this.states) this.drawKinds(state);
  }

  /** Adds the present kinds to the sums from which the chance of each reading to be poor is known. */
  countKinds(): void {
    for (const { isPoor, poorSum } of this.states) {
      for (let i = 0; i < isPoor.length; i++) poorSum[i] = poorSum[i]! + isPoor[i]!;
    }
  }

  state(): BagState {
    return {
      carryDeviation: this.carries.deviation,
      directionDeviation: this.directions.deviation,
      carryFactor: this.carryFactor,
      directionFactor: this.directionFactor,
      poorLevel: this.poorLevel,
      poorCarryMean: this.poorCarryMean,
      poorCarrySd: this.poorCarrySd,
      poorDirectionTimes: this.poorDirectionTimes,
    };
  }

  /** A spread from the prior of a club and swing without shots, given the factors of the bag. */
  drawPriorSpread(entry: BagEntry): Symmetric2 {
    return drawInverseWishart(this.stream, this.degrees, this.scaleOf(entry));
  }

  drawPriorPoorShare(entry: BagEntry): number {
    const share = expectedPoorShare(entry, this.poorLevel);
    const shots = this.prior.poorShareShots;
    return drawBeta(this.stream, shots * share, shots * (1 - share));
  }

  private drawKinds(state: EntryState): void {
    const { readings, isPoor, isOfLie, spread, carryMean, directionMean } = state;
    const { stream, poorCarryMean, poorCarrySd } = this;
    const directionSd = Math.sqrt(spread.dd);
    const determinant = spread.cc * spread.dd - spread.cd * spread.cd;
    const poorWidth = this.poorDirectionTimes;
    const poorScale = poorCarrySd * carryMean * poorWidth * directionSd;
    const logOdds =
      Math.log(state.poorShare / (1 - state.poorShare)) + 0.5 * Math.log(determinant) - Math.log(poorScale);
    const { count, carry, direction, carryWidth, directionWidth, poorAdded } = readings;
    const ownCarry = spread.dd / determinant;
    const ownBoth = (-2 * spread.cd) / determinant;
    const ownDirection = spread.cc / determinant;
    for (let i = 0; i < count; i++) {
      const dc = (carry[i]! - carryMean) / carryWidth[i]!;
      const dd = (direction[i]! - directionMean) / directionWidth[i]!;
      const solid = (ownCarry * dc + ownBoth * dd) * dc + ownDirection * dd * dd;
      const short = (carry[i]! / carryMean - poorCarryMean) / poorCarrySd;
      const wide = Math.min(WIDEST_SDS, Math.abs(dd) / directionSd) / poorWidth;
      const added = poorAdded[i]!;
      const base =
        added === 0 && carryWidth[i] === 1
          ? logOdds
          : logOdds + lieOdds(state.poorShare, added, carryWidth[i]!);
      const log = base + 0.5 * (solid - short * short - wide * wide);
      isPoor[i] = log > 30 || (log > -30 && stream.nextUniform() * (1 + Math.exp(-log)) < 1) ? 1 : 0;
      if (added === 0) continue;
      const { poorShare } = state;
      const isOwn = stream.nextUniform() * (poorShare + (1 - poorShare) * added) < poorShare;
      isOfLie[i] = isPoor[i] === 1 && !isOwn ? 1 : 0;
    }
  }

  private drawSpreads(): void {
    for (const state of this.states) {
      const { carries, directions, both, carryMean, directionMean, entry } = state;
      const prior = this.scaleOf(entry);
      const c = carries.mean - carryMean;
      const d = directions.mean - directionMean;
      const cd = both.weight * (both.carry - carryMean) * (both.direction - directionMean);
      const drawn = drawInverseWishart(this.stream, this.degrees + state.weight, {
        cc: prior.cc + state.cc + carries.weight * c * c,
        cd: prior.cd + state.cd + cd,
        dd: prior.dd + state.dd + directions.weight * d * d,
      });
      const leastCarry = (LEAST_CARRY_SD_SHARE * entry.expected.carryMean) ** 2;
      if (drawn.cc >= leastCarry && drawn.dd >= LEAST_DIRECTION_SD ** 2) state.spread = drawn;
      else {
        const cc = Math.max(leastCarry, drawn.cc);
        const dd = Math.max(LEAST_DIRECTION_SD ** 2, drawn.dd);
        state.spread = { cc, dd, cd: (drawn.cd * Math.sqrt(cc * dd)) / Math.sqrt(drawn.cc * drawn.dd) };
      }
    }
  }

  /** Scale of the prior of a spread: the expected standard deviations times the bag's factors. */
  private scaleOf({ expected }: BagEntry): Symmetric2 {
    return {
      cc: this.unitScale * (this.carryFactor * expected.carrySd) ** 2,
      cd: 0,
      dd: this.unitScale * (this.directionFactor * expected.directionSd) ** 2,
    };
  }

  private drawCarries(): void {
    this.states.forEach((state, j) => {
      const { spread, carries, both } = state;
      const expected = state.entry.expected.carryMean;
      const slope = (spread.cd / spread.dd) * shareOf(both, carries);
      const seen = carries.mean - slope * (both.direction - state.directionMean);
      const own = (carries.weight * expected * expected) / (spread.cc - (spread.cd / spread.dd) * spread.cd);
      const precision = own + state.statedPrecision;
      const sum = own * (seen / expected - 1) + state.statedPrecision * state.statedDeviation;
      this.precisions[j] = precision;
      this.observed[j] = precision === 0 ? 0 : sum / precision;
    });
    this.carries.draw(this.stream, this.observed, this.precisions);
    this.states.forEach((state, j) => {
      // A deviation of -95 % is out of all reason and only keeps the carry positive.
      const deviation = Math.max(-0.95, this.carries.deviation[j]!);
      state.carryMean = state.entry.expected.carryMean * (1 + deviation);
    });
  }

  private drawDirections(): void {
    this.states.forEach((state, j) => {
      const { spread, directions, both, entry } = state;
      const { directionMean, directionSd } = entry.expected;
      const slope = (spread.cd / spread.cc) * shareOf(both, directions);
      const seen = directions.mean - slope * (both.carry - state.carryMean);
      this.precisions[j] =
        (directions.weight * directionSd * directionSd) / (spread.dd - (spread.cd / spread.cc) * spread.cd);
      this.observed[j] = (seen - directionMean) / directionSd;
    });
    this.directions.draw(this.stream, this.observed, this.precisions);
    this.states.forEach((state, j) => {
      const { directionMean, directionSd } = state.entry.expected;
      state.directionMean = directionMean + directionSd * this.directions.deviation[j]!;
    });
  }

  /** Variance factors of the bag: gamma, given the inverse spreads of its clubs. */
  private drawFactors(): void {
    const shape0 = this.prior.bagSpreadShape;
    const rate0 = gammaHalfStep(shape0) ** 2;
    let carryRate = rate0;
    let directionRate = rate0;
    for (const { entry, spread } of this.states) {
      const determinant = spread.cc * spread.dd - spread.cd * spread.cd;
      const { carrySd, directionSd } = entry.expected;
      carryRate += (0.5 * this.unitScale * carrySd * carrySd * spread.dd) / determinant;
      directionRate += (0.5 * this.unitScale * directionSd * directionSd * spread.cc) / determinant;
    }
    const shape = shape0 + (this.states.length * this.degrees) / 2;
    this.carryFactor = Math.sqrt(drawGamma(this.stream, shape) / carryRate);
    this.directionFactor = Math.sqrt(drawGamma(this.stream, shape) / directionRate);
  }

  private drawPoorShares(): void {
    const { states, prior, stream } = this;
    const shots = prior.poorShareShots;
    for (const state of states) {
      const share = expectedPoorShare(state.entry, this.poorLevel);
      const solidWeight = state.weight + state.lieWeight;
      const [poor, solid] = [shots * share + state.poorWeight, shots * (1 - share) + solidWeight];
      state.poorShare = drawBeta(stream, poor, solid);
    }
    this.poorLevel = this.levels.draw(stream, states);
  }

  /** The common law of poor strikes: mean and width of the carry share, width of the direction. */
  private drawPoorLaw(): void {
    const { prior, usual, stream } = this;
    let weight = 0;
    let sum = 0;
    let squares = 0;
    let wideSquares = 0;
    for (const { readings, isPoor, carryMean, directionMean, spread } of this.states) {
      const directionSd = Math.sqrt(spread.dd);
      for (let i = 0; i < readings.count; i++) {
        if (isPoor[i] === 0) continue;
        const w = readings.weight[i]!;
        const share = readings.carry[i]! / carryMean;
        const aside = Math.abs(readings.direction[i]! - directionMean) / readings.directionWidth[i]!;
        const wide = Math.min(WIDEST_SDS, aside / directionSd);
        weight += w;
        sum += w * share;
        squares += w * share * share;
        wideSquares += w * wide * wide;
      }
    }
    const precision = 1 / prior.poorCarrySd ** 2 + weight / this.poorCarrySd ** 2;
    const mean = (usual.mean / prior.poorCarrySd ** 2 + sum / this.poorCarrySd ** 2) / precision;
    this.poorCarryMean = Math.max(0.05, mean + drawNormal(stream) / Math.sqrt(precision));
    const about = Math.max(0, squares - 2 * this.poorCarryMean * sum + weight * this.poorCarryMean ** 2);
    const degrees = prior.poorLawStrikes;
    const unit = degrees / meanOfScaledInverseChi(degrees) ** 2;
    this.poorCarrySd = Math.sqrt((unit * usual.sd ** 2 + about) / drawChiSquare(stream, degrees + weight));
    this.poorDirectionTimes = Math.sqrt(
      (unit * usual.times ** 2 + wideSquares) / drawChiSquare(stream, degrees + weight),
    );
  }
}

/**
 * What a bad lie adds to the logarithm of the odds that a strike was poor: it makes strikes poor of its own, apart from
 * the player's share, and its solid ones scatter wider.
 */
function lieOdds(poorShare: number, added: number, carryWidth: number): number {
  const both = poorShare + (1 - poorShare) * added;
  return Math.log((both * (1 - poorShare)) / (poorShare * (1 - both))) + Math.log(carryWidth);
}

/** 1 where all readings are from good lies. */
function shareOf(both: { readonly weight: number }, own: { readonly weight: number }): number {
  return own.weight > 0 ? both.weight / own.weight : 1;
}

/** Mean of sqrt(n / chi-square(n)): what a scaled inverse chi law's root averages for a scale of 1. */
function meanOfScaledInverseChi(degrees: number): number {
  return degrees <= 1 ? 1 : Math.sqrt(degrees / 2) / gammaHalfStep((degrees - 1) / 2);
}
