/** The demo course: complete, plausible, and exactly what its design draws. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkCourse } from '../../core/course/check.ts';
import { distanceM } from '../../core/course/ellipsoid.ts';
import { makeLocalFrame } from '../../core/course/local-frame.ts';
import type { AreaKind, Hole, LonLat } from '../../core/course/model.ts';
import { parseCourseText } from '../../core/course/parse.ts';
import { buildCourse } from './course/build.ts';
import { COURSE_NAME, courseText, ORIGIN } from './course/collection.ts';
import type { Point } from './course/curves.ts';
import { distanceToRing, isInside, signedArea } from './course/polygons.ts';

const fileText = readFileSync(new URL('../../maps/demo-course.geojson', import.meta.url), 'utf8');
const parsed = parseCourseText(fileText);
if (!parsed.ok) throw new Error(parsed.error.map((fault) => `${fault.where}: ${fault.message}`).join('\n'));
const course = parsed.value;
const frame = makeLocalFrame(ORIGIN);

function toPoint(lonLat: LonLat): Point {
  const { x, y } = frame.toSpot(lonLat);
  return [x, y];
}

interface LocalArea {
  readonly kind: AreaKind;
  readonly hole: number | undefined;
  readonly outer: Point[];
  readonly holes: Point[][];
}

const areas: readonly LocalArea[] = course.areas.map((area) => {
  const [outer, ...holes] = area.rings.map((ring) => ring.slice(0, -1).map(toPoint));
  return { kind: area.kind, hole: area.hole, outer: outer!, holes };
});

function of(...kinds: AreaKind[]): LocalArea[] {
  return areas.filter((area) => kinds.includes(area.kind));
}

function covers(area: LocalArea, p: Point): boolean {
  return isInside(area.outer, p) && !area.holes.some((ring) => isInside(ring, p));
}

function touch(a: LocalArea, b: LocalArea): boolean {
  return a.outer.some((p) => covers(b, p)) || b.outer.some((p) => covers(a, p));
}

function lengthOf(hole: Hole): number {
  return hole.line.slice(1).reduce((sum, p, i) => sum + distanceM(hole.line[i]!, p), 0);
}

describe('the file', () => {
  it('is what the design draws, byte for byte', () => {
    expect(courseText(buildCourse()) === fileText).toBe(true);
  });

  it('says that place and course are invented', () => {
    expect(course.name).toBe(COURSE_NAME);
    expect(course.invented).toBe(true);
    expect(fileText).toContain('Invented place, invented course');
  });

  it('passes every rule of the course check without a warning', () => {
    expect(checkCourse(course)).toEqual([]);
    expect(course.warnings).toEqual([]);
  });

  it('winds outer rings counter-clockwise and inner ones clockwise, closed (RFC 7946, 3.1.6)', () => {
    for (const area of course.areas) {
      area.rings.forEach((ring, k) => {
        expect(ring[0]).toEqual(ring[ring.length - 1]);
        expect(signedArea(ring.slice(0, -1).map(toPoint)) > 0, `${area.kind} ${area.featureIndex}`).toBe(
          k === 0,
        );
      });
    }
  });
});

describe('the card', () => {
  it('is a par 70 of two loops of 35 with each stroke index once', () => {
    const pars = course.holes.map((hole) => hole.par);
    const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
    expect(course.holes.map((hole) => hole.number)).toEqual(Array.from({ length: 18 }, (_, i) => i + 1));
    expect(sum(pars)).toBe(70);
    expect(sum(pars.slice(0, 9))).toBe(35);
    const indices = course.holes.map((hole) => hole.strokeIndex ?? 0);
    expect([...indices].sort((a, b) => a - b)).toEqual(Array.from({ length: 18 }, (_, i) => i + 1));
    // odd on one nine and even on the other: common practice, no source
    expect(indices.slice(0, 9).every((index) => index % 2 === 1)).toBe(true);
  });

  it('has lengths that suit the pars', () => {
    // Rules of Handicapping, appendix F, men: par 3 up to 260 yd, par 4 240-490, par 5 450-710 (from memory)
    const ranges: Readonly<Record<number, readonly [number, number]>> = {
      3: [100, 260],
      4: [240, 490],
      5: [450, 710],
    };
    for (const hole of course.holes) {
      const [least, most] = ranges[hole.par]!;
      const yards = lengthOf(hole) / 0.9144;
      expect(yards, `hole ${hole.number}`).toBeGreaterThan(least);
      expect(yards, `hole ${hole.number}`).toBeLessThan(most);
    }
    const total = course.holes.reduce((sum, hole) => sum + lengthOf(hole), 0);
    expect(total).toBeGreaterThan(5700);
    expect(total).toBeLessThan(5900);
  });

  it('bends both ways', () => {
    const turns = course.holes.flatMap((hole) => {
      const line = hole.line.map(toPoint);
      return line.slice(2).map((c, i) => {
        const [a, b] = [line[i]!, line[i + 1]!];
        return (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]) > 0 ? 'left' : 'right';
      });
    });
    expect(turns.filter((turn) => turn === 'left').length).toBeGreaterThanOrEqual(5);
    expect(turns.filter((turn) => turn === 'right').length).toBeGreaterThanOrEqual(5);
  });

  it('has three tees in order on each hole, each on its own ground', () => {
    for (const hole of course.holes) {
      expect(hole.tees.map((tee) => tee.name)).toEqual(['Gorse', 'Heather', 'Clover']);
      const green = hole.line[hole.line.length - 1]!;
      const toGreen = hole.tees.map((tee) => distanceM(tee.at, green));
      expect(toGreen[0]).toBeGreaterThan(toGreen[1]!);
      expect(toGreen[1]).toBeGreaterThan(toGreen[2]!);
      for (const tee of hole.tees) {
        expect(
          of('tee').filter((area) => area.hole === hole.number && covers(area, toPoint(tee.at))),
        ).toHaveLength(1);
      }
    }
  });

  it('cuts three holes in each green, 3.5 m or more from the edge and apart from each other', () => {
    for (const hole of course.holes) {
      const green = of('green').find((area) => area.hole === hole.number)!;
      expect(hole.positions.map((position) => position.name).sort()).toEqual(['back', 'front', 'middle']);
      const spots = hole.positions.map((position) => toPoint(position.at));
      for (const spot of spots) {
        expect(covers(green, spot)).toBe(true);
        expect(distanceToRing(green.outer, spot), `hole ${hole.number}`).toBeGreaterThan(3.5);
      }
      const gaps = spots.map((p, i) =>
        Math.hypot(p[0] - spots[(i + 1) % 3]![0], p[1] - spots[(i + 1) % 3]![1]),
      );
      expect(Math.min(...gaps), `hole ${hole.number}`).toBeGreaterThan(3);
    }
  });
});

describe('the ground', () => {
  it('has greens of 350 to 600 m²', () => {
    for (const green of of('green')) {
      expect(signedArea(green.outer)).toBeGreaterThan(350);
      expect(signedArea(green.outer)).toBeLessThan(600);
    }
  });

  it('keeps the holes apart', () => {
    const played = of('tee', 'fairway', 'green', 'bunker');
    for (const a of played) {
      for (const b of played) {
        if (a.hole! < b.hole!) expect(touch(a, b), `${a.kind} ${a.hole} and ${b.kind} ${b.hole}`).toBe(false);
      }
    }
  });

  it('has no sand in a green or tee, and no wood, long grass, path or tree on a surface of play', () => {
    for (const sand of of('bunker')) {
      for (const other of of('green', 'tee')) expect(touch(sand, other)).toBe(false);
    }
    const surfaces = of('tee', 'fairway', 'green', 'bunker');
    for (const obstacle of of('woods', 'long-rough', 'path')) {
      for (const surface of surfaces) {
        expect(touch(obstacle, surface), `${obstacle.kind} on ${surface.kind} ${surface.hole}`).toBe(false);
      }
    }
    for (const tree of course.trees) {
      const at = toPoint(tree.at);
      for (const surface of surfaces) {
        expect(covers(surface, at) || distanceToRing(surface.outer, at) < tree.crownRadiusM).toBe(false);
      }
    }
  });

  it('draws nothing as a rectangle: surfaces of play turn by less than 75 degrees at a point', () => {
    for (const { kind, outer } of of('tee', 'fairway', 'green', 'bunker')) {
      expect(outer.length, kind).toBeGreaterThanOrEqual(12);
      outer.forEach((b, i) => {
        const a = outer[(i + outer.length - 1) % outer.length]!;
        const c = outer[(i + 1) % outer.length]!;
        const turn = Math.atan2(
          (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]),
          (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]),
        );
        expect(Math.abs(turn) * (180 / Math.PI), `${kind} at ${b.join(', ')}`).toBeLessThan(75);
      });
    }
  });

  it('has water of both colours, three stretches of out of bounds, woods, trees and levels', () => {
    expect(of('penalty-yellow').length).toBeGreaterThanOrEqual(3);
    expect(of('penalty-red').length).toBeGreaterThanOrEqual(3);
    expect(of('out-of-bounds')).toHaveLength(3);
    expect(of('boundary')).toHaveLength(1);
    expect(of('woods').length).toBeGreaterThan(20);
    expect(course.trees.length).toBeGreaterThan(300);
    const heights = course.levels.map((level) => level.elevationM);
    expect(Math.max(...heights) - Math.min(...heights)).toBeLessThan(20);
  });

  it('makes a stream cross the line of holes 2, 5, 6, 8, 12, 15 and 17, and a pond that of 18', () => {
    const water = of('penalty-yellow', 'penalty-red');
    const wet = course.holes.filter((hole) => {
      const line = hole.line.map(toPoint);
      return line.slice(1).some((b, i) =>
        Array.from({ length: 101 }, (_, k): Point => {
          const a = line[i]!;
          return [a[0] + ((b[0] - a[0]) * k) / 100, a[1] + ((b[1] - a[1]) * k) / 100];
        }).some((p) => water.some((area) => covers(area, p))),
      );
    });
    expect(wet.map((hole) => hole.number)).toEqual(expect.arrayContaining([2, 5, 6, 8, 12, 15, 17, 18]));
  });
});
