/** The slope under a landing ball, from the elevation raster. */

import { describe, expect, it } from 'vitest';
import { groundSlope } from '../../core/ground-run/ground-slope.ts';
import { elevationRaster } from '../../core/ground/elevation.ts';

const raster = { cellM: 1, columns: 60, rows: 50, west: -30, south: -25 };

function plane(east: number, north: number): Float32Array {
  return Float32Array.from({ length: 60 * 50 }, (_, i) => east * (i % 60) + north * Math.floor(i / 60));
}

describe('the slope of the ground', () => {
  it('is the plane’s, along the shot and to its right', () => {
    const ground = { ...raster, elevation: plane(0.04, -0.02) };
    expect(groundSlope(ground, 0, 0, 0).along).toBeCloseTo(-0.02, 4);
    expect(groundSlope(ground, 0, 0, 0).right).toBeCloseTo(0.04, 4);
    expect(groundSlope(ground, 5, 5, Math.PI / 2).along).toBeCloseTo(0.04, 4);
    expect(groundSlope(ground, 5, 5, Math.PI / 2).right).toBeCloseTo(0.02, 4);
  });

  it('is level without levels, bounded on a bank, and told at the rim too', () => {
    expect(groundSlope({ ...raster, elevation: null }, 0, 0, 1)).toEqual({ along: 0, right: 0 });
    const bank = { ...raster, elevation: plane(2, 0) };
    expect(groundSlope(bank, 0, 0, Math.PI / 2).along).toBe(0.35);
    expect(Number.isFinite(groundSlope(bank, 1000, 1000, 0.3).along)).toBe(true);
  });

  it('rises towards the higher of two levels', () => {
    const levels = [
      { x: -20, y: 0, elevationM: 10 },
      { x: 20, y: 0, elevationM: 14 },
    ];
    const ground = { ...raster, elevation: elevationRaster(raster, levels) };
    expect(groundSlope(ground, 0, 0, Math.PI / 2).along).toBeGreaterThan(0.02);
  });
});
