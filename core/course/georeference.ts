/**
 * Lays a picture over the map: the transformation from picture pixels to metres of a local frame that fits control
 * points best by least squares, with the residual of each point so that a slip shows.
 */

import { refuse, succeed, type Result } from '../result.ts';

/** A place that the person recognised in the picture (pixels, y downwards) and on the map (metres, y northwards). */
export interface ControlPoint {
  readonly pixelX: number;
  readonly pixelY: number;
  readonly x: number;
  readonly y: number;
}

/** x = a u + b v + c, y = d u + e v + f for a pixel (u, v). */
export interface PictureTransform {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

export interface PictureFit {
  /** `turn`: one scale, turned and mirrored as pictures are; `stretch`: scales and shear of its own in each direction. */
  readonly kind: 'turn' | 'stretch';
  readonly transform: PictureTransform;
  /** Metres from each control point to where the fit puts it, in the points' order. */
  readonly residualsM: readonly number[];
  /** Root mean square of the residuals over the degrees of freedom; null where the points leave none. */
  readonly standardErrorM: number | null;
}

export type FitRefusal = 'too-few-points' | 'points-coincide' | 'points-in-line' | 'not-finite';

/**
 * Two points or more: a turned and scaled picture (four parameters, conformal). With `stretch` and three points or
 * more that are not in line: six parameters (affine). Ghilani & Wolf, Adjustment Computations, chapter on coordinate
 * transformations.
 */
export function fitPicture(
  points: readonly ControlPoint[],
  kind: PictureFit['kind'],
): Result<PictureFit, FitRefusal> {
  if (points.length < (kind === 'turn' ? 2 : 3)) return refuse('too-few-points');
  if (points.some((p) => ![p.pixelX, p.pixelY, p.x, p.y].every(Number.isFinite))) return refuse('not-finite');
  // Working from the centres of gravity keeps the normal equations small and well conditioned.
  const u0 = mean(points.map((p) => p.pixelX));
  const v0 = mean(points.map((p) => p.pixelY));
  const x0 = mean(points.map((p) => p.x));
  const y0 = mean(points.map((p) => p.y));
  const centred = points.map((p) => ({ u: p.pixelX - u0, v: p.pixelY - v0, x: p.x - x0, y: p.y - y0 }));
  const linear = kind === 'turn' ? fitTurn(centred) : fitStretch(centred);
  if (typeof linear === 'string') return refuse(linear);
  const { a, b, d, e } = linear;
  const transform = { a, b, c: x0 - a * u0 - b * v0, d, e, f: y0 - d * u0 - e * v0 };
  const residualsM = points.map((p) => {
    const at = placeOfPixel(transform, p.pixelX, p.pixelY);
    return Math.hypot(at.x - p.x, at.y - p.y);
  });
  const freedom = 2 * points.length - (kind === 'turn' ? 4 : 6);
  const squares = residualsM.reduce((sum, r) => sum + r * r, 0);
  return succeed({
    kind,
    transform,
    residualsM,
    standardErrorM: freedom === 0 ? null : Math.sqrt(squares / freedom),
  });
}

export function placeOfPixel(
  t: PictureTransform,
  u: number,
  v: number,
): { readonly x: number; readonly y: number } {
  return { x: t.a * u + t.b * v + t.c, y: t.d * u + t.e * v + t.f };
}

/** Metres on the ground per pixel: the geometric mean of both directions. */
export function pixelSizeM(t: PictureTransform): number {
  return Math.sqrt(Math.abs(t.a * t.e - t.b * t.d));
}

interface Centred {
  readonly u: number;
  readonly v: number;
  readonly x: number;
  readonly y: number;
}
type Linear = Pick<PictureTransform, 'a' | 'b' | 'd' | 'e'>;

/** Pixel rows run downwards, so the picture is mirrored before it is turned: x = p u + q v, y = q u - p v. */
function fitTurn(points: readonly Centred[]): Linear | FitRefusal {
  const spread = sum(points, (p) => p.u * p.u + p.v * p.v);
  if (!(spread > 0)) return 'points-coincide';
  const p = sum(points, (c) => c.u * c.x - c.v * c.y) / spread;
  const q = sum(points, (c) => c.v * c.x + c.u * c.y) / spread;
  return Math.hypot(p, q) > 0 ? { a: p, b: q, d: q, e: -p } : 'points-coincide';
}

function fitStretch(points: readonly Centred[]): Linear | FitRefusal {
  const uu = sum(points, (p) => p.u * p.u);
  const uv = sum(points, (p) => p.u * p.v);
  const vv = sum(points, (p) => p.v * p.v);
  const determinant = uu * vv - uv * uv;
  if (!(uu + vv > 0)) return 'points-coincide';
  if (!(determinant > 1e-9 * (uu + vv) ** 2)) return 'points-in-line';
  const solve = (ru: number, rv: number): [number, number] => [
    (ru * vv - rv * uv) / determinant,
    (rv * uu - ru * uv) / determinant,
  ];
  const [a, b] = solve(
    sum(points, (p) => p.u * p.x),
    sum(points, (p) => p.v * p.x),
  );
  const [d, e] = solve(
    sum(points, (p) => p.u * p.y),
    sum(points, (p) => p.v * p.y),
  );
  return { a, b, d, e };
}

function sum<T>(items: readonly T[], of: (item: T) => number): number {
  return items.reduce((total, item) => total + of(item), 0);
}

function mean(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0) / values.length;
}
