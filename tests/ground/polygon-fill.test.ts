/** Filled shapes against a general geometry library, cell by cell. */

import { booleanPointInPolygon } from '@turf/turf';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fillDisc, fillRings, type FlatRing, type RasterShape } from '../../core/ground/polygon-fill.ts';

type Point = [number, number];

/** A raster that the shapes below overhang on every side. */
const raster: RasterShape = { cellM: 1, columns: 40, rows: 34, west: -20, south: -17 };

function centreOf(index: number, shape: RasterShape): Point {
  return [
    shape.west + ((index % shape.columns) + 0.5) * shape.cellM,
    shape.south + (Math.floor(index / shape.columns) + 0.5) * shape.cellM,
  ];
}

/** How often each cell was painted. */
function painted(shape: RasterShape, fill: (paint: (index: number) => void) => void): Uint8Array {
  const counts = new Uint8Array(shape.columns * shape.rows);
  fill((index) => {
    if (!Number.isInteger(index) || index < 0 || index >= counts.length)
      throw new Error(`painted cell ${index}`);
    counts[index] = counts[index]! + 1;
  });
  return counts;
}

/** Corners at even angles from the centre, at the given reaches: star-shaped, so it never crosses itself. */
function star(centre: Point, reaches: readonly number[]): Point[] {
  return reaches.map((reach, k) => {
    const angle = (2 * Math.PI * k) / reaches.length;
    return [centre[0] + reach * Math.cos(angle), centre[1] + reach * Math.sin(angle)];
  });
}

function flat(ring: readonly Point[]): FlatRing {
  return Float64Array.from(ring.flat());
}

function closed(ring: readonly Point[]): Point[] {
  return [...ring, ring[0]!];
}

/** Distance from the point to the nearest edge of the rings. */
function distanceToEdge([x, y]: Point, rings: readonly Point[][]): number {
  let nearest = Infinity;
  for (const ring of rings) {
    ring.forEach(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length]!;
      const along = ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / ((bx - ax) ** 2 + (by - ay) ** 2);
      const t = Math.min(1, Math.max(0, along));
      nearest = Math.min(nearest, Math.hypot(ax + t * (bx - ax) - x, ay + t * (by - ay) - y));
    });
  }
  return nearest;
}

const anyStarWithHole = fc
  .record({
    centre: fc.tuple(
      fc.double({ min: -22, max: 22, noNaN: true }),
      fc.double({ min: -19, max: 19, noNaN: true }),
    ),
    reaches: fc.array(fc.double({ min: 3, max: 24, noNaN: true }), { minLength: 3, maxLength: 17 }),
    hole: fc.double({ min: 0.15, max: 0.8, noNaN: true }),
  })
  .map(({ centre, reaches, hole }) => {
    const outer = star(centre, reaches);
    // The outer ring shrunk towards its centre lies inside it.
    const inner = star(
      centre,
      reaches.map((reach) => reach * hole),
    );
    return { outer, inner };
  });

describe('filled rings', () => {
  it('cover the cells whose centres are inside, a hole left out, each once', () => {
    let inside = 0;
    let inHole = 0;
    fc.assert(
      fc.property(anyStarWithHole, ({ outer, inner }) => {
        const counts = painted(raster, (paint) => fillRings(raster, [flat(outer), flat(inner)], paint));
        const polygon = { type: 'Polygon' as const, coordinates: [closed(outer), closed(inner)] };
        const whole = { type: 'Polygon' as const, coordinates: [closed(outer)] };
        counts.forEach((count, index) => {
          const centre = centreOf(index, raster);
          const isIn = booleanPointInPolygon(centre, polygon);
          inside += isIn ? 1 : 0;
          if (count === (isIn ? 1 : 0)) {
            inHole += !isIn && booleanPointInPolygon(centre, whole) ? 1 : 0;
            return;
          }
          // On an edge, to rounding, either answer will do.
          expect([centre, count, distanceToEdge(centre, [outer, inner]) < 1e-9]).toEqual([
            centre,
            count,
            true,
          ]);
        });
      }),
      { numRuns: 60, seed: 11 },
    );
    // The shapes tried did have insides and holes.
    expect(inside).toBeGreaterThan(5000);
    expect(inHole).toBeGreaterThan(1000);
  });

  it('do not depend on closing, on the way round or on the corner they start from', () => {
    fc.assert(
      fc.property(anyStarWithHole, fc.nat(16), ({ outer }, start) => {
        const open = painted(raster, (paint) => fillRings(raster, [flat(outer)], paint));
        const turned = [...outer.slice(start % outer.length), ...outer.slice(0, start % outer.length)];
        for (const ring of [closed(outer), [...outer].reverse(), turned]) {
          const other = painted(raster, (paint) => fillRings(raster, [flat(ring)], paint));
          // Rounding of a crossing may differ by the edge's direction: cells on an edge apart.
          const differing = other.findIndex(
            (count, i) => count !== open[i] && distanceToEdge(centreOf(i, raster), [outer]) > 1e-9,
          );
          expect(differing).toBe(-1);
        }
      }),
      { numRuns: 40, seed: 12 },
    );
  });

  it('share out the cells between neighbours: none twice, none left over', () => {
    // Two boxes whose common edge runs through cell centres, corners on centres too.
    const left: Point[] = [
      [-10.5, -8.5],
      [0.5, -8.5],
      [0.5, 9.5],
      [-10.5, 9.5],
    ];
    const right: Point[] = [
      [0.5, -8.5],
      [12.5, -8.5],
      [12.5, 9.5],
      [0.5, 9.5],
    ];
    const counts = painted(raster, (paint) => {
      fillRings(raster, [flat(left)], paint);
      fillRings(raster, [flat(right)], paint);
    });
    expect(Math.max(...counts)).toBe(1);
    expect(counts.filter((count) => count === 1).length).toBe(23 * 18);
  });

  it('scale with the cells', () => {
    const ring: Point[] = [
      [-10, -10],
      [10, -10],
      [10, 10],
      [-10, 10],
    ];
    for (const cellM of [0.5, 2]) {
      const shape = { cellM, columns: 60 / cellM, rows: 60 / cellM, west: -30, south: -30 };
      const counts = painted(shape, (paint) => fillRings(shape, [flat(ring)], paint));
      expect(counts.filter((count) => count > 0).length * cellM * cellM).toBe(400);
    }
  });
});

describe('filled discs', () => {
  it('cover the cells whose centres are within the radius', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -25, max: 25, noNaN: true }),
        fc.double({ min: -22, max: 22, noNaN: true }),
        fc.double({ min: 0.2, max: 15, noNaN: true }),
        (x, y, radius) => {
          const counts = painted(raster, (paint) => fillDisc(raster, x, y, radius, paint));
          counts.forEach((count, index) => {
            const [cx, cy] = centreOf(index, raster);
            const away = Math.hypot(cx - x, cy - y);
            const isIn = away < radius;
            if (count === (isIn ? 1 : 0) || Math.abs(away - radius) < 1e-9) return;
            throw new Error(`cell at ${cx}, ${cy}, ${away} m from the middle, was painted ${count} times`);
          });
        },
      ),
      { numRuns: 25, seed: 13 },
    );
  });
});
