/** Clubs and swings without shots, sweep by sweep: what the clubs with shots, and the prior, say of them. */

import type { RandomStream } from '../../random/streams.ts';
import type { BagSampler } from './gibbs.ts';
import { factorCholesky, invertSymmetric } from './matrix.ts';
import { type BagEntry, type BagPrior, deviationCovariance } from './prior.ts';
import { drawNormal, type Symmetric2 } from './random-laws.ts';

/** A law that is drawn anew at every sweep. */
interface LooseLaw {
  carryMean: number;
  directionMean: number;
  spread: Symmetric2;
  poorShare: number;
}

/** Clubs and swings without shots: drawn from the prior, given the clubs that have some. */
export class OtherClubs {
  readonly laws: LooseLaw[];
  private readonly carries: Conditional;
  private readonly directions: Conditional;

  constructor(
    private readonly sampler: BagSampler,
    known: readonly BagEntry[],
    private readonly others: readonly BagEntry[],
    prior: BagPrior,
  ) {
    this.laws = others.map(() => ({
      carryMean: 0,
      directionMean: 0,
      spread: { cc: 0, cd: 0, dd: 0 },
      poorShare: 0,
    }));
    const all = [...known, ...others];
    this.carries = new Conditional(deviationCovariance(all, prior.carry), known.length, others.length);
    this.directions = new Conditional(deviationCovariance(all, prior.direction), known.length, others.length);
  }

  draw(): void {
    const { sampler, others } = this;
    if (others.length === 0) return;
    const state = sampler.state();
    this.carries.draw(sampler.stream, state.carryDeviation);
    this.directions.draw(sampler.stream, state.directionDeviation);
    others.forEach((entry, j) => {
      const { expected } = entry;
      const law = this.laws[j]!;
      law.carryMean = expected.carryMean * (1 + Math.max(-0.95, this.carries.values[j]!));
      law.directionMean = expected.directionMean + expected.directionSd * this.directions.values[j]!;
      law.spread = sampler.drawPriorSpread(entry);
      law.poorShare = sampler.drawPriorPoorShare(entry);
    });
  }
}

/** The last `others` of jointly normal deviations given the first `known` of them. */
class Conditional {
  readonly values: Float64Array;
  private readonly gain: Float64Array;
  private readonly factor: Float64Array;
  private readonly normals: Float64Array;
  private isMirror = false;

  constructor(
    covariance: Float64Array,
    private readonly known: number,
    private readonly others: number,
  ) {
    const size = known + others;
    const at = (i: number, j: number): number => covariance[i * size + j]!;
    const front = new Float64Array(known * known);
    for (let i = 0; i < known; i++) for (let j = 0; j < known; j++) front[i * known + j] = at(i, j);
    const inverse = invertSymmetric(front, known);
    this.gain = new Float64Array(others * known);
    for (let u = 0; u < others; u++) {
      for (let j = 0; j < known; j++) {
        let sum = 0;
        for (let k = 0; k < known; k++) sum += at(known + u, k) * inverse[k * known + j]!;
        this.gain[u * known + j] = sum;
      }
    }
    const rest = new Float64Array(others * others);
    for (let u = 0; u < others; u++) {
      for (let v = 0; v < others; v++) {
        let sum = at(known + u, known + v);
        for (let k = 0; k < known; k++) sum -= this.gain[u * known + k]! * at(k, known + v);
        rest[u * others + v] = sum;
      }
    }
    this.factor = new Float64Array(others * others);
    factorCholesky(rest, others, this.factor);
    this.values = new Float64Array(others);
    this.normals = new Float64Array(others);
  }

  draw(stream: RandomStream, deviations: Float64Array): void {
    const { known, others, gain, factor, values, normals } = this;
    // Every other draw mirrors the one before, so that means come out free of most of the chance in them.
    for (let u = 0; u < others; u++) normals[u] = this.isMirror ? -normals[u]! : drawNormal(stream);
    this.isMirror = !this.isMirror;
    for (let u = 0; u < others; u++) {
      let sum = 0;
      for (let k = 0; k < known; k++) sum += gain[u * known + k]! * deviations[k]!;
      for (let k = 0; k <= u; k++) sum += factor[u * others + k]! * normals[k]!;
      values[u] = sum;
    }
  }
}
