/** Jointly normal means of all clubs, drawn at once: neighbours hang together too closely to be drawn one by one. */

import type { RandomStream } from '../../random/streams.ts';
import { factorCholesky, invertSymmetric, solveLower, solveUpper } from './matrix.ts';
import { drawNormal } from './random-laws.ts';

/** One block of means (carries or directions) of all clubs. */
export class MeanBlock {
  private readonly priorPrecision: Float64Array;
  private readonly precision: Float64Array;
  private readonly factor: Float64Array;
  private readonly vector: Float64Array;
  readonly deviation: Float64Array;

  constructor(
    readonly covariance: Float64Array,
    readonly size: number,
  ) {
    this.priorPrecision = invertSymmetric(covariance, size);
    this.precision = new Float64Array(size * size);
    this.factor = new Float64Array(size * size);
    this.vector = new Float64Array(size);
    this.deviation = new Float64Array(size);
  }

  /** Draws all deviations given observations of them; precision 0: not observed. */
  draw(stream: RandomStream, observed: ArrayLike<number>, precisions: ArrayLike<number>): void {
    const { size, precision, factor, vector, deviation } = this;
    precision.set(this.priorPrecision);
    for (let i = 0; i < size; i++) {
      precision[i * size + i] = precision[i * size + i]! + precisions[i]!;
      vector[i] = precisions[i]! * observed[i]!;
    }
    factorCholesky(precision, size, factor);
    solveLower(factor, size, vector);
    for (let i = 0; i < size; i++) deviation[i] = vector[i]! + drawNormal(stream);
    solveUpper(factor, size, deviation);
  }
}
