/** Heights between measured levels. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { elevationRaster, type Level } from '../../core/ground/elevation.ts';

const raster = { cellM: 1, columns: 120, rows: 90, west: -30, south: -20 };

const anyLevels = fc.array(
  fc.record({
    x: fc.double({ min: -300, max: 300, noNaN: true }),
    y: fc.double({ min: -300, max: 300, noNaN: true }),
    elevationM: fc.double({ min: -50, max: 400, noNaN: true }),
  }),
  { minLength: 1, maxLength: 12 },
);

function heights(levels: readonly Level[]): Float32Array {
  const raised = elevationRaster(raster, levels);
  if (raised === null) throw new Error('no heights');
  return raised;
}

function heightAt(elevation: Float32Array, x: number, y: number): number {
  return elevation[Math.floor(y - raster.south) * raster.columns + Math.floor(x - raster.west)]!;
}

describe('ground heights', () => {
  it('are none where no level is given', () => {
    expect(elevationRaster(raster, [])).toBeNull();
  });

  it('stay within the lowest and the highest level', () => {
    fc.assert(
      fc.property(anyLevels, (levels) => {
        const given = levels.map((level) => level.elevationM);
        // Stored in single precision: 24 bits of up to 450 m.
        const rounding = 5e-5;
        const low = Math.min(...given) - rounding;
        const high = Math.max(...given) + rounding;
        expect(heights(levels).findIndex((height) => !(height >= low && height <= high))).toBe(-1);
      }),
      { numRuns: 40, seed: 31 },
    );
  });

  it('are level on level ground', () => {
    const even = heights([
      { x: -10, y: 0, elevationM: 7.25 },
      { x: 60, y: 30, elevationM: 7.25 },
    ]);
    expect(even.every((height) => Math.abs(height - 7.25) < 1e-5)).toBe(true);
  });

  it('come close to each level at its place', () => {
    const levels = [
      { x: 0, y: 0, elevationM: 10 },
      { x: 50, y: 0, elevationM: 20 },
      { x: 50, y: 50, elevationM: 5 },
    ];
    const found = heights(levels);
    // Knots lie on these places; the other two levels, 50 m and more away, weigh 1/2501 each against 1. The cell's centre
    // is 0.7 m off, where the bilinear slope is at most 15 m in 10 m.
    for (const { x, y, elevationM } of levels) {
      expect(Math.abs(heightAt(found, x, y) - elevationM)).toBeLessThan(15 / 1000 + 1.5);
    }
    expect(heightAt(found, 50, 0)).toBeGreaterThan(heightAt(found, 25, 0));
    expect(heightAt(found, 25, 0)).toBeGreaterThan(heightAt(found, 0, 0));
  });

  it('are halfway between two levels in the middle between them', () => {
    const found = heights([
      { x: 0, y: 10, elevationM: 0 },
      { x: 40, y: 10, elevationM: 8 },
    ]);
    // The cells on both sides of the middle, x = 20.
    expect((heightAt(found, 19.5, 10.5) + heightAt(found, 20.5, 10.5)) / 2).toBeCloseTo(4, 4);
  });

  it('have no steps from cell to cell', () => {
    fc.assert(
      fc.property(anyLevels, (levels) => {
        const given = levels.map((level) => level.elevationM);
        const range = Math.max(...given) - Math.min(...given);
        const found = heights(levels);
        // Bilinear between knots 10 m apart: at most a tenth of the range per metre, and rounding.
        let steepest = 0;
        for (let i = 1; i < found.length; i++) {
          if (i % raster.columns !== 0) steepest = Math.max(steepest, Math.abs(found[i]! - found[i - 1]!));
          if (i >= raster.columns)
            steepest = Math.max(steepest, Math.abs(found[i]! - found[i - raster.columns]!));
        }
        expect(steepest).toBeLessThanOrEqual(range / 10 + 1e-4);
      }),
      { numRuns: 25, seed: 32 },
    );
  });

  it('take the nearest level where none is within reach', () => {
    const found = heights([
      { x: 1000, y: 0, elevationM: 3 },
      { x: -2000, y: 0, elevationM: 90 },
    ]);
    expect(found.every((height) => height === 3)).toBe(true);
  });

  it('leave a level out of account beyond its reach', () => {
    const near = [
      { x: 0, y: 0, elevationM: 3 },
      { x: 60, y: 30, elevationM: 5 },
    ];
    expect(heights([...near, { x: 260, y: 0, elevationM: 500 }])).toEqual(heights(near));
  });
});
