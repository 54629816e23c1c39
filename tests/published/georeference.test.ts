/** The fit of a picture to control points against a textbook's worked example and against exact cases. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitPicture, pixelSizeM, placeOfPixel, type ControlPoint } from '../../core/course/georeference.ts';

describe('two-dimensional conformal fit', () => {
  /*
   * C. Ghilani & P. Wolf, Adjustment Computations, worked example of the two-dimensional conformal transformation (from memory;
   * its parameters reproduce its first point to 0.03, which the mean of its residuals allows): E = a x - b y + TE,
   * N = b x + a y + TN with a = -4.51249, b = -0.25371, TE = 1,050,003.715, TN = 50,542.131. Pixel rows run downwards, so v = -y.
   */
  it('finds the parameters of the worked example', () => {
    const points: ControlPoint[] = [
      { pixelX: 121.622, pixelY: 128.066, x: 1049422.4, y: 51089.2 },
      { pixelX: 141.228, pixelY: -187.718, x: 1049413.95, y: 49659.3 },
      { pixelX: 175.802, pixelY: -135.728, x: 1049244.95, y: 49884.95 },
    ];
    const fit = fitPicture(points, 'turn');
    if (!fit.ok) throw new Error(fit.error);
    const { a, d, c, f } = fit.value.transform;
    expect(Math.abs(a - -4.51249)).toBeLessThan(2e-5);
    expect(Math.abs(d - -0.25371)).toBeLessThan(2e-5);
    expect(Math.abs(c - 1050003.715)).toBeLessThan(0.01);
    expect(Math.abs(f - 50542.131)).toBeLessThan(0.01);
    expect(Math.max(...fit.value.residualsM)).toBeLessThan(0.2);
  });
});

const number = (limit: number) => fc.double({ min: -limit, max: limit, noNaN: true });
const pixel = fc.record({ u: fc.integer({ min: 0, max: 5000 }), v: fc.integer({ min: 0, max: 5000 }) });

describe('a fit', () => {
  it('gives back any turn and scale from two points', () => {
    fc.assert(
      fc.property(
        pixel,
        pixel,
        fc.double({ min: 0.05, max: 5, noNaN: true }),
        number(3.14),
        number(1000),
        number(1000),
        (m, n, scale, turn, x0, y0) => {
          fc.pre(Math.hypot(m.u - n.u, m.v - n.v) > 50);
          const place = ({ u, v }: { u: number; v: number }): ControlPoint => ({
            pixelX: u,
            pixelY: v,
            x: scale * (Math.cos(turn) * u + Math.sin(turn) * v) + x0,
            y: scale * (Math.sin(turn) * u - Math.cos(turn) * v) + y0,
          });
          const fit = fitPicture([place(m), place(n)], 'turn');
          if (!fit.ok) throw new Error(fit.error);
          expect(fit.value.standardErrorM).toBeNull();
          expect(Math.max(...fit.value.residualsM)).toBeLessThan(1e-6);
          expect(pixelSizeM(fit.value.transform)).toBeCloseTo(scale, 6);
          const there = place({ u: 17, v: 4000 });
          const at = placeOfPixel(fit.value.transform, 17, 4000);
          expect(Math.hypot(at.x - there.x, at.y - there.y)).toBeLessThan(1e-5);
        },
      ),
    );
  });

  it('with stretch fits any three points not in line exactly, and shows a slip among four', () => {
    const points: ControlPoint[] = [
      { pixelX: 0, pixelY: 0, x: 0, y: 0 },
      { pixelX: 1000, pixelY: 0, x: 510, y: 20 },
      { pixelX: 0, pixelY: 800, x: -10, y: -390 },
    ];
    const exact = fitPicture(points, 'stretch');
    expect(exact.ok && Math.max(...exact.value.residualsM) < 1e-9).toBe(true);
    const slip = fitPicture([...points, { pixelX: 1000, pixelY: 800, x: 500 + 12, y: -370 }], 'stretch');
    // The misfit of one of four points of a parallelogram is shared evenly: a quarter each.
    expect(slip.ok && slip.value.residualsM.every((r) => Math.abs(r - 3) < 1e-9)).toBe(true);
    expect(slip.ok && slip.value.standardErrorM).toBeCloseTo(Math.sqrt((4 * 9) / 2), 9);
  });

  it('refuses what cannot be fitted, by reason', () => {
    const p = (pixelX: number, pixelY: number): ControlPoint => ({ pixelX, pixelY, x: pixelX, y: -pixelY });
    expect(fitPicture([p(0, 0)], 'turn')).toEqual({ ok: false, error: 'too-few-points' });
    expect(fitPicture([p(5, 5), p(5, 5)], 'turn')).toEqual({ ok: false, error: 'points-coincide' });
    expect(fitPicture([p(0, 0), p(1, 1), p(2, 2)], 'stretch')).toEqual({
      ok: false,
      error: 'points-in-line',
    });
    expect(fitPicture([p(0, 0), p(NaN, 1)], 'turn')).toEqual({ ok: false, error: 'not-finite' });
  });
});
