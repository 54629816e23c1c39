/** Draws from the laws that the estimator needs, each from its published algorithm. */

import { inverseNormal } from '../../random/normal.ts';
import type { RandomStream } from '../../random/streams.ts';

export function drawNormal(stream: RandomStream): number {
  return inverseNormal(stream.nextUniform());
}

/**
 * Gamma law with this shape and unit scale (Marsaglia & Tsang 2000, ACM TOMS 26:363-372; below shape 1 by their
 * section 6: a draw of shape + 1 times a uniform to the power 1 / shape).
 */
export function drawGamma(stream: RandomStream, shape: number): number {
  if (shape < 1) {
    const u = stream.nextUniform();
    return drawGamma(stream, shape + 1) * u ** (1 / shape);
  }
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = drawNormal(stream);
    const v = (1 + c * x) ** 3;
    if (v <= 0) continue;
    const u = stream.nextUniform();
    if (u < 1 - 0.0331 * x ** 4 || Math.log(u) < 0.5 * x * x + d * (1 - v + Math.log(v))) return d * v;
  }
}

export function drawChiSquare(stream: RandomStream, degrees: number): number {
  return 2 * drawGamma(stream, degrees / 2);
}

/** Beta law as a ratio of gamma draws; kept off 0 and 1, whose logarithms the estimator takes. */
export function drawBeta(stream: RandomStream, a: number, b: number): number {
  const x = drawGamma(stream, a);
  const share = x / (x + drawGamma(stream, b));
  return Math.min(1 - 1e-12, Math.max(1e-12, Number.isNaN(share) ? 0 : share));
}

/** A symmetric 2 x 2 matrix [[cc, cd], [cd, dd]]. */
export interface Symmetric2 {
  readonly cc: number;
  readonly cd: number;
  readonly dd: number;
}

/**
 * Inverse-Wishart law with `degrees` degrees of freedom (more than 1) and this scale: the inverse of a Wishart draw
 * by Bartlett's decomposition (Bartlett 1933; Smith & Hocking 1972, AS 53).
 */
export function drawInverseWishart(stream: RandomStream, degrees: number, scale: Symmetric2): Symmetric2 {
  // With scale = U Uᵀ and A lower triangular (Bartlett), the draw is (U A⁻ᵀ)(U A⁻ᵀ)ᵀ; U lower triangular.
  const u11 = Math.sqrt(scale.cc);
  const u21 = scale.cd / u11;
  const u22 = Math.sqrt(Math.max(scale.dd - u21 * u21, 1e-12 * scale.dd));
  const a11 = Math.sqrt(drawChiSquare(stream, degrees));
  const a21 = drawNormal(stream);
  const a22 = Math.sqrt(drawChiSquare(stream, degrees - 1));
  // A⁻ᵀ = [[1 / a11, -a21 / (a11 a22)], [0, 1 / a22]].
  const i11 = 1 / a11;
  const i12 = -a21 / (a11 * a22);
  const i22 = 1 / a22;
  const m11 = u11 * i11;
  const m12 = u11 * i12;
  const m21 = u21 * i11;
  const m22 = u21 * i12 + u22 * i22;
  return {
    cc: m11 * m11 + m12 * m12,
    cd: m11 * m21 + m12 * m22,
    dd: m21 * m21 + m22 * m22,
  };
}
