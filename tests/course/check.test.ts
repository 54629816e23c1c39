import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkCourse } from '../../core/course/check.ts';
import type { Course, LonLat } from '../../core/course/model.ts';
import type { Fault } from '../../core/result.ts';
import { area, at, collection, line, mustParse, mustRefuse, plainHole, point, square } from './builders.ts';

function check(...features: unknown[]): readonly Fault[] {
  return checkCourse(mustParse(collection(...features)));
}

function brief(faults: readonly Fault[]): string[] {
  return faults.map(({ severity, code, featureIndex }) => `${severity} ${code} ${String(featureIndex)}`);
}

it('finds nothing in a course without fault', () => {
  expect(check(...plainHole(1, 0), ...plainHole(2, 100))).toEqual([]);
});

it('finds nothing but a default in the fixture of version 1', () => {
  const text = readFileSync(new URL('./fixtures/version-1.geojson', import.meta.url), 'utf8');
  expect(brief(checkCourse(mustParse(JSON.parse(text))))).toEqual([]);
});

describe('a hole', () => {
  it('without a green is an error of that hole alone', () => {
    const faults = check(...plainHole(1, 0), ...plainHole(2, 100).slice(0, 2));
    expect(brief(faults)).toEqual(['error hole-without-green 3']);
    expect(faults[0]).toMatchObject({ where: 'hole 2 (feature 3)' });
    expect(faults[0]!.message).toContain('golf=green, ref=2');
  });

  it('may end on a green that carries no ref', () => {
    const [hole, tee] = plainHole(1, 0);
    expect(check(hole, tee, area({ golf: 'green' }, square(0, 300, 9)))).toEqual([]);
  });

  it('does not take the green of another hole for its own', () => {
    const [hole, tee] = plainHole(1, 0);
    expect(brief(check(hole, tee, area({ golf: 'green', ref: 2 }, square(0, 300, 9))))).toEqual([
      'error hole-without-line 2',
      'error hole-without-green 0',
    ]);
  });

  it('drawn twice is an error that names the first', () => {
    const again = line({ golf: 'hole', ref: 1, par: 4, handicap: 1 }, at(0, 0), at(0, 300));
    const faults = check(...plainHole(1, 0), again);
    expect(brief(faults)).toEqual(['error duplicate-hole 3']);
    expect(faults[0]!.message).toContain('Feature 0 is hole 1 already');
  });

  it.each([
    [undefined, 'par-missing'],
    [2, 'par-out-of-range'],
    ['7', 'par-out-of-range'],
    [4.5, 'par-out-of-range'],
  ])('with par %s is an error', (par, code) => {
    const [hole, ...rest] = plainHole(1, 0);
    const faults = check({ ...hole, properties: { golf: 'hole', ref: 1, par } }, ...rest);
    expect(brief(faults)).toEqual([`error ${code} 0`]);
  });

  it.each([0, 19, 3.5, -1])('with stroke index %d is an error', (handicap) => {
    const [hole, ...rest] = plainHole(1, 0);
    const faults = check({ ...hole, properties: { golf: 'hole', ref: 1, par: 4, handicap } }, ...rest);
    expect(brief(faults)).toEqual(['error stroke-index-out-of-range 0']);
  });

  it('with the stroke index of another is an error that names the other', () => {
    const [hole, ...rest] = plainHole(2, 100);
    const faults = check(
      ...plainHole(1, 0),
      { ...hole, properties: { ...hole!.properties, handicap: 1 } },
      ...rest,
    );
    expect(brief(faults)).toEqual(['error stroke-index-duplicate 3']);
    expect(faults[0]!.message).toContain('hole 1 too');
  });

  it('may share its stroke index with another where a file holds more than 18', () => {
    const holes = Array.from({ length: 19 }, (_, i) => plainHole(i + 1, i * 100));
    const [last, ...rest] = holes[18]!;
    const shared = { ...last, properties: { ...last!.properties, handicap: 1 } };
    expect(check(...holes.slice(0, 18).flat(), shared, ...rest)).toEqual([]);
  });

  it('that features name without a line of its own is an error, told once', () => {
    const faults = check(
      ...plainHole(1, 0),
      area({ golf: 'green', ref: 5 }, square(100, 300, 9)),
      point({ holewright_kind: 'tee_marker', ref: 5 }, at(100, 0)),
      point({ holewright_kind: 'hole_position', ref: 6 }, at(100, 0)),
    );
    expect(brief(faults)).toEqual(['error hole-without-line 3', 'error hole-without-line 5']);
    expect(faults[0]).toMatchObject({ where: 'hole 5' });
  });

  it('must not be missing altogether', () => {
    expect(brief(check(area({ golf: 'bunker' }, square(0, 0, 9))))).toEqual(['error no-holes undefined']);
  });
});

describe('a line of play', () => {
  it('that does not start at a tee is a warning', () => {
    const [, tee, green] = plainHole(1, 0);
    const off = line({ golf: 'hole', ref: 1, par: 4 }, at(30, 0), at(0, 300));
    expect(brief(check(off, tee, green))).toEqual(['warning line-start-off-tee 0']);
  });

  it('may start near a tee marker instead of on a tee area', () => {
    const [hole, , green] = plainHole(1, 0);
    // 13 units of 1e-5 degree of latitude are 14.5 m, 14 are 15.6 m
    const marker = (north: number) => point({ holewright_kind: 'tee_marker', ref: 1 }, at(0, north));
    expect(brief(check(hole, marker(13), green))).toEqual(['warning marker-off-tee 1']);
    expect(brief(check(hole, marker(14), green))).toEqual([
      'warning line-start-off-tee 0',
      'warning marker-off-tee 1',
    ]);
  });

  it('that does not end on its green is a warning', () => {
    const [, tee, green] = plainHole(1, 0);
    const short = line({ golf: 'hole', ref: 1, par: 4 }, at(0, 0), at(0, 250));
    expect(brief(check(short, tee, green))).toEqual(['warning line-end-off-green 0']);
  });

  it('that runs from green to tee is told to turn round', () => {
    const [, tee, green] = plainHole(1, 0);
    const backwards = line({ golf: 'hole', ref: 1, par: 4 }, at(0, 300), at(0, 0));
    expect(
      check(backwards, tee, green)
        .map(({ message }) => message)
        .join(),
    ).toContain('turn its direction round');
  });
});

describe('markers', () => {
  it('off their green or tee are named with their own feature', () => {
    const faults = check(
      ...plainHole(1, 0),
      point({ holewright_kind: 'hole_position', ref: 1, name: 'Far' }, at(0, 320)),
      point({ holewright_kind: 'hole_position', ref: 1, name: 'On' }, at(0, 305)),
      point({ holewright_kind: 'tee_marker', ref: 1, name: 'Astray' }, at(40, 0)),
      point({ holewright_kind: 'tee_marker', ref: 1, name: 'On' }, at(0, 0)),
    );
    expect(brief(faults)).toEqual(['error position-off-green 3', 'warning marker-off-tee 5']);
    expect(faults[0]!.where).toBe('hole 1 (feature 0), hole position "Far" (feature 3)');
  });
});

describe('an outline', () => {
  it('that crosses itself is an error, with the place', () => {
    const eight = [at(50, 50), at(60, 60), at(60, 50), at(50, 60), at(50, 50)];
    const faults = check(...plainHole(1, 0), area({ golf: 'bunker', ref: 1, name: 'Twist' }, eight));
    expect(brief(faults)).toEqual(['error self-crossing 3']);
    expect(faults[0]).toMatchObject({ where: 'feature 3 (bunker, hole 1, "Twist")' });
    expect(faults[0]!.message).toContain('longitude 4.000550, latitude 52.000550');
  });

  it('that is left open is an error, and closed for planning', () => {
    const course = mustParse(
      collection(...plainHole(1, 0), area({ golf: 'bunker' }, square(50, 50, 4).slice(0, 4))),
    );
    expect(course.areas[2]!.rings[0]).toHaveLength(5);
    expect(brief(checkCourse(course))).toEqual(['error ring-not-closed 3']);
  });
});

describe('slope arrows', () => {
  const arrow = (slope: number, ...place: [number, number]) =>
    point({ holewright_kind: 'slope_mark', slope_percent: slope, downhill_deg: 45 }, at(...place));

  it('are warned of off the greens and where a ball would not stop', () => {
    const faults = check(...plainHole(1, 0), arrow(2, 0, 298), arrow(2, 0, 200), arrow(9.5, 3, 303));
    expect(brief(faults)).toEqual(['warning slope-mark-off-green 4', 'warning slope-mark-steep 5']);
    expect(faults[1]!.message).toContain('falls by 9.5 %');
    expect(faults[1]!.message).toContain('takes 8 %');
  });

  it('without a slope or a direction are refused as a level without a height is', () => {
    const bare = point({ holewright_kind: 'slope_mark', slope_percent: 2 }, at(0, 300));
    expect(brief(mustRefuse(collection(...plainHole(1, 0), bare)))).toEqual(['error value-missing 3']);
  });
});

describe('greens', () => {
  it('of different holes that overlap are a warning, with the square metres', () => {
    const first = plainHole(1, 0);
    const second = plainHole(2, 20);
    const faults = check(...first, ...second);
    expect(brief(faults)).toEqual(['warning overlapping-greens 5']);
    // 4 by 24 units of 1e-5 degree at 52 degrees north: 2.75 m by 26.7 m
    expect(faults[0]!.message).toMatch(/^73 m² .* hole 1 \(feature 2\)/);
  });

  it('may share an edge, or be two of one hole', () => {
    expect(check(...plainHole(1, 0), ...plainHole(2, 24))).toEqual([]);
    expect(check(...plainHole(1, 0), area({ golf: 'green', ref: 1 }, square(5, 300, 9)))).toEqual([]);
  });

  it('may serve two holes when drawn once without ref', () => {
    const [first, teeA] = plainHole(1, 0);
    const [second, teeB] = plainHole(2, 10);
    expect(check(first, teeA, second, teeB, area({ golf: 'green' }, square(5, 300, 12)))).toEqual([]);
  });
});

describe('the boundary', () => {
  const boundary = area({ holewright_kind: 'boundary' }, [
    at(-60, -60),
    at(60, -60),
    at(60, 360),
    at(-60, 360),
    at(-60, -60),
  ]);

  it('is content with what lies inside and with rough, woods and water that reach over it', () => {
    const faults = check(
      ...plainHole(1, 0),
      boundary,
      area({ natural: 'wood', height: 9 }, square(60, 100, 20)),
      area({ golf: 'rough' }, square(0, 150, 500)),
      area({ holewright_kind: 'out_of_bounds' }, square(200, 0, 20)),
    );
    expect(faults).toEqual([]);
  });

  it('warns of what is played beyond it, of what lies wholly beyond it, of trees together', () => {
    const faults = check(
      ...plainHole(1, 0),
      boundary,
      area({ golf: 'bunker' }, square(60, 100, 5)),
      area({ golf: 'water_hazard' }, square(90, 100, 5)),
      ...[1, 2, 3, 4, 5, 6, 7].map((i) =>
        point({ natural: 'tree', height: 9, diameter_crown: 5 }, at(70 + i, 0)),
      ),
      point({ holewright_kind: 'tee_marker', ref: 1, name: 'Lost' }, at(0, -70)),
    );
    expect(brief(faults)).toEqual([
      'warning marker-off-tee 13',
      'warning outside-boundary 4',
      'warning outside-boundary 5',
      'warning outside-boundary 13',
      'warning outside-boundary 6',
    ]);
    expect(faults[2]!.message).toContain('wholly');
    expect(faults.at(-1)!.where).toBe('trees (features 6, 7, 8, 9, 10 and 2 more)');
  });

  it('warns of a line that runs beyond it', () => {
    const [, tee, green] = plainHole(1, 0);
    const wide = line({ golf: 'hole', ref: 1, par: 4 }, at(0, 0), at(80, 150), at(0, 300));
    expect(brief(check(wide, tee, green, boundary))).toEqual(['warning outside-boundary 0']);
  });
});

describe('canopies', () => {
  it('without height warn once per woods, once for all trees alike, and say the default', () => {
    const woods = {
      type: 'Feature',
      properties: { natural: 'wood', name: 'Dark' },
      geometry: { type: 'MultiPolygon', coordinates: [[square(50, 50, 5)], [square(80, 50, 5)]] },
    };
    const faults = check(
      ...plainHole(1, 0),
      woods,
      point({ natural: 'tree' }, at(30, 30)),
      point({ natural: 'tree' }, at(30, 40)),
      point({ natural: 'tree', height: 8, diameter_crown: 6 }, at(30, 50)),
    );
    expect(brief(faults)).toEqual(['warning canopy-assumed 3', 'warning canopy-assumed 4']);
    expect(faults[0]).toMatchObject({ where: 'feature 3 (woods, "Dark")' });
    expect(faults[0]!.message).toContain('top 12 m, base 2 m');
    expect(faults[1]!.where).toBe('trees (features 4, 5)');
    expect(faults[1]!.message).toMatch(/2 trees lack.*top 10 m, base 2.5 m.*crown radius 4 m/);
  });
});

it('puts errors before warnings and tells what reading noticed once', () => {
  const faults = check(
    area({ natural: 'wood' }, square(50, 50, 5)),
    line({ golf: 'hole', ref: 1, par: 'x' }, at(0, 0), at(0, 300)),
  );
  expect(brief(faults)).toEqual([
    'error hole-without-green 1',
    'error par-missing 1',
    'warning value-unreadable 1',
    'warning canopy-assumed 0',
    'warning line-start-off-tee 1',
  ]);
});

it('checks a course that was built by hand', () => {
  const lone: LonLat = [4, 52];
  const course: Course = {
    name: 'By hand',
    formatVersion: 1,
    invented: true,
    holes: [{ number: 1, par: 4, line: [lone, [4, 52.003]], tees: [], positions: [], featureIndex: 0 }],
    areas: [],
    trees: [],
    levels: [],
    warnings: [],
  };
  expect(brief(checkCourse(course))).toEqual(['error hole-without-green 0', 'warning line-start-off-tee 0']);
});
