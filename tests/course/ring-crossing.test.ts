import { kinks, polygon } from '@turf/turf';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LonLat, Rings } from '../../core/course/model.ts';
import { findCrossing } from '../../core/course/ring-crossing.ts';
import { square } from './builders.ts';

describe('crossing outlines', () => {
  it('are found in a figure of eight, at the crossing', () => {
    const eight: Rings = [
      [
        [0, 0],
        [2, 2],
        [2, 0],
        [0, 2],
        [0, 0],
      ],
    ];
    expect(findCrossing(eight)).toEqual([1, 1]);
  });

  it.each<[string, LonLat[]]>([
    [
      'touches itself at a corner',
      [
        [0, 0],
        [2, 0],
        [2, 2],
        [1, 0],
        [0, 2],
        [0, 0],
      ],
    ],
    [
      'runs back along itself',
      [
        [0, 0],
        [3, 0],
        [1, 0],
        [1, 2],
        [0, 0],
      ],
    ],
    [
      'is three points on one line',
      [
        [0, 0],
        [2, 0],
        [1, 0],
        [0, 0],
      ],
    ],
    [
      'has a spike',
      [
        [0, 0],
        [2, 0],
        [2, 2],
        [5, 2],
        [2, 2],
        [0, 2],
        [0, 0],
      ],
    ],
  ])('are found where the outline %s', (_, ring) => {
    expect(findCrossing([ring])).toBeDefined();
  });

  it.each<[string, Rings]>([
    ['a square', [square(0, 0, 9)]],
    ['a square with a hole', [square(0, 0, 9), square(0, 0, 3).toReversed()]],
    ['a square with each point drawn twice', [square(0, 0, 9).flatMap((p) => [p, p])]],
    [
      'a square with a point half-way along an edge',
      [
        [
          [0, 0],
          [1, 0],
          [2, 0],
          [2, 2],
          [0, 2],
          [0, 0],
        ],
      ],
    ],
    ['a square left open', [square(0, 0, 9).slice(0, -1)]],
  ])('are not found in %s', (_, rings) => {
    expect(findCrossing(rings)).toBeUndefined();
  });

  it('are found where a hole reaches over the outer ring', () => {
    expect(findCrossing([square(0, 0, 9), square(9, 0, 3)])).toBeDefined();
  });

  it('are found where turf.kinks finds them', () => {
    const coordinate = fc.integer({ min: -50, max: 50 });
    const ring = fc
      .uniqueArray(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 12, selector: String })
      .map((points) => [...points, points[0]!] as LonLat[]);
    fc.assert(
      fc.property(ring, (points) => {
        const reference = kinks(polygon([points.map(([lon, lat]) => [lon, lat])])).features;
        // turf passes over segments on one line, which we count: so one way only for those
        if (reference.length > 0) expect(findCrossing([points])).toBeDefined();
        else if (!hasParallelEdges(points)) expect(findCrossing([points])).toBeUndefined();
      }),
      { numRuns: 3000 },
    );
  });

  it('are sought among 300,000 points without comparing all pairs, which would take minutes', () => {
    const many = Array.from({ length: 300_000 }, (_, i): LonLat => {
      const angle = (2 * Math.PI * i) / 300_000;
      return [Math.cos(angle), Math.sin(angle)];
    });
    expect(findCrossing([[...many, many[0]!]])).toBeUndefined();
  });
});

function hasParallelEdges(ring: readonly LonLat[]): boolean {
  const edges = ring.slice(1).map(([x, y], i) => [x - ring[i]![0], y - ring[i]![1]] as const);
  return edges.some(([ax, ay], i) => edges.slice(i + 1).some(([bx, by]) => ax * by - ay * bx === 0));
}
