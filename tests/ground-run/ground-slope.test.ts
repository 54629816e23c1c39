/** The slope under a ball, from the elevation raster. */

import { describe, expect, it } from 'vitest';
import { groundSlope, type SlopeGround } from '../../core/ground-run/ground-slope.ts';
import { elevationRaster, slopeRaster } from '../../core/ground/elevation.ts';

const raster = { cellM: 1, columns: 60, rows: 50, west: -30, south: -25 };

function groundOf(elevation: Float32Array): SlopeGround {
  return { ...raster, cellsPerM: 1, slopes: slopeRaster(raster, elevation) };
}

function plane(east: number, north: number): Float32Array {
  return Float32Array.from({ length: 60 * 50 }, (_, i) => east * (i % 60) + north * Math.floor(i / 60));
}

describe('the slope of the ground', () => {
  it('is the plane’s, along the shot and to its right, in the middle and at the rim', () => {
    const ground = groundOf(plane(0.04, -0.02));
    for (const [x, y] of [
      [0, 0],
      [-29.5, 24.5],
      [1000, -1000],
    ] as const) {
      expect(groundSlope(ground, x, y, 0).along).toBeCloseTo(-0.02, 4);
      expect(groundSlope(ground, x, y, 0).right).toBeCloseTo(0.04, 4);
      expect(groundSlope(ground, x, y, Math.PI / 2).along).toBeCloseTo(0.04, 4);
      expect(groundSlope(ground, x, y, Math.PI / 2).right).toBeCloseTo(0.02, 4);
    }
  });

  it('is level without levels, and bounded on a bank', () => {
    expect(groundSlope({ ...raster, cellsPerM: 1, slopes: null }, 0, 0, 1)).toEqual({ along: 0, right: 0 });
    expect(groundSlope(groundOf(plane(2, 0)), 0, 0, Math.PI / 2).along).toBeCloseTo(0.35, 6);
  });

  it('rises towards the higher of two levels', () => {
    const levels = [
      { x: -20, y: 0, elevationM: 10 },
      { x: 20, y: 0, elevationM: 14 },
    ];
    expect(groundSlope(groundOf(elevationRaster(raster, levels)!), 0, 0, Math.PI / 2).along).toBeGreaterThan(
      0.02,
    );
  });
});
