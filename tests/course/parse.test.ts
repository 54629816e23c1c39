import { describe, expect, it } from 'vitest';
import { MOST_FEATURES, MOST_VERTICES, parseCourse, parseCourseText } from '../../core/course/parse.ts';
import {
  area,
  at,
  collection,
  line,
  mustParse,
  mustParseDocument,
  mustRefuse,
  plainHole,
  point,
  square,
} from './builders.ts';

describe('a file that cannot be read', () => {
  it('is refused with the line and column of a JSON error', () => {
    const parsed = parseCourseText('{\n  "type": "FeatureCollection",\n  "features": [,]\n}');
    expect(parsed.ok).toBe(false);
    if (parsed.ok) return;
    expect(parsed.error).toHaveLength(1);
    expect(parsed.error[0]).toMatchObject({
      severity: 'error',
      code: 'not-json',
      where: 'line 3, column 16',
    });
  });

  it.each([null, 7, 'text', [], {}, { type: 'Feature' }, { type: 'FeatureCollection', features: {} }])(
    'is refused as no collection: %j',
    (json) => {
      expect(mustRefuse(json)[0]).toMatchObject({ code: 'not-a-collection', where: 'file' });
    },
  );

  it('of a newer version is refused with both versions named', () => {
    const file = { ...collection(...plainHole(1, 0)), holewright: { formatVersion: 7, courseName: 'Later' } };
    const [fault] = mustRefuse(file);
    expect(fault).toMatchObject({ code: 'newer-format', where: 'holewright.formatVersion' });
    expect(fault!.message).toMatch(/version 7.*version 1/);
  });

  it.each([{ courseName: 'X' }, { formatVersion: '1' }, { formatVersion: 0 }, { formatVersion: 1.5 }])(
    'with the header %j is refused, the version named',
    (holewright) => {
      const faults = mustRefuse({ ...collection(), holewright });
      expect(faults).toHaveLength(1);
      expect(faults[0]).toMatchObject({ code: 'header-unreadable', where: 'holewright.formatVersion' });
    },
  );

  it('is refused over the limit of features, the number said', () => {
    const bare = { type: 'Feature', properties: null, geometry: null };
    const features = Array.from({ length: MOST_FEATURES + 1 }, () => bare);
    expect(mustRefuse(collection(...features))[0]).toMatchObject({
      code: 'too-many-features',
      where: 'file',
    });
    expect(mustRefuse(collection(...features))[0]!.message).toContain(String(MOST_FEATURES + 1));
  });

  it('is refused over the limit of positions', () => {
    const lineOf = (count: number) => ({
      ...line({}),
      geometry: { type: 'LineString', coordinates: Array.from({ length: count }, () => at(0, 0)) },
    });
    expect(mustRefuse(collection(lineOf(MOST_VERTICES + 1)))[0]).toMatchObject({ code: 'too-many-vertices' });
    expect(mustParse(collection(lineOf(MOST_VERTICES))).holes).toEqual([]);
  });
});

describe('a feature that cannot be read', () => {
  const bad: [string, unknown, string, string, RegExp][] = [
    ['is no object', 7, 'feature 3', 'not-a-feature', /7/],
    ['is a geometry', { type: 'Point', coordinates: [4, 52] }, 'feature 3', 'not-a-feature', /"Feature"/],
    [
      'has no geometry',
      { type: 'Feature', properties: { golf: 'bunker', name: 'Deep one' }, geometry: null },
      'feature 3 (bunker, "Deep one")',
      'wrong-geometry',
      /not drawn at all.*Polygon or MultiPolygon/,
    ],
    [
      'is a green drawn as a point',
      point({ golf: 'green', ref: '4' }, at(0, 0)),
      'feature 3 (green, hole 4)',
      'wrong-geometry',
      /drawn as a Point.*Polygon/,
    ],
    [
      'has its latitude out of range',
      area({ golf: 'bunker' }, [at(0, 0), at(1, 0), [4, 95.2], at(0, 0)]),
      'feature 3 (bunker)',
      'geometry-unreadable',
      /coordinates\[0\]\[2\]\[1\] is 95\.2: latitude must be from -90 to 90/,
    ],
    [
      'has a coordinate that is null',
      area({ golf: 'bunker' }, [at(0, 0), at(1, 0), [null, 52], at(0, 0)]),
      'feature 3 (bunker)',
      'geometry-unreadable',
      /coordinates\[0\]\[2\]\[0\] is null: longitude must be a number/,
    ],
    [
      'has a coordinate that is infinite',
      point({ natural: 'tree' }, [Number.POSITIVE_INFINITY, 52]),
      'feature 3 (tree)',
      'geometry-unreadable',
      /longitude must be/,
    ],
    [
      'has a ring of two positions',
      area({ golf: 'tee' }, [at(0, 0), at(5, 5)]),
      'feature 3 (tee area)',
      'geometry-unreadable',
      /at least 3/,
    ],
    [
      'has a ring that goes there and back',
      area({ golf: 'tee' }, [at(0, 0), at(5, 5), at(0, 0)]),
      'feature 3 (tee area)',
      'geometry-unreadable',
      /Ring 0.*encloses nothing/,
    ],
    [
      'is a hole line without number',
      line({ golf: 'hole', par: 4 }, at(0, 0), at(0, 300)),
      'feature 3 (hole line)',
      'value-missing',
      /^ref is missing/,
    ],
    [
      'is a tee marker with a number that is none',
      point({ holewright_kind: 'tee_marker', ref: 'first', name: 'Back' }, at(0, 0)),
      'feature 3 (tee marker, hole first, "Back")',
      'value-unreadable',
      /^ref is "first"; write the number of the hole/,
    ],
    [
      'is a ground level without level',
      point({ holewright_kind: 'ground_level' }, at(0, 0)),
      'feature 3 (ground level)',
      'value-missing',
      /^ele is missing/,
    ],
  ];

  it.each(bad)('refuses the file and is named when it %s', (_, feature, where, code, message) => {
    const faults = mustRefuse(collection(...plainHole(1, 0), feature));
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatchObject({ severity: 'error', code, where, featureIndex: 3 });
    expect(faults[0]!.message).toMatch(message);
  });

  it('does not hide the next one: all are named at once', () => {
    const faults = mustRefuse(collection(...bad.map(([, feature]) => feature)));
    expect(faults.map(({ featureIndex }) => featureIndex)).toEqual(bad.map((_, index) => index));
  });

  it('is left out and listed where the person chose to open the rest, and stays in the document', () => {
    const file = collection(...plainHole(1, 0), point({ golf: 'green' }, at(0, 0)));
    const { course, document } = mustParseDocument(file, { unreadable: 'leave-out' });
    expect(course.holes).toHaveLength(1);
    expect(course.areas.map(({ kind }) => kind)).toEqual(['tee', 'green']);
    expect(course.warnings).toMatchObject([{ severity: 'error', code: 'wrong-geometry', featureIndex: 3 }]);
    expect(document.features).toHaveLength(4);
  });
});

describe('a feature that can be read in part', () => {
  it('of no known kind is left out with a warning', () => {
    const course = mustParse(
      collection(
        ...plainHole(1, 0),
        area({ building: 'yes', name: 'Hut' }, square(50, 50, 5)),
        point({ golf: 'windmill' }, at(0, 0)),
        { type: 'Feature', properties: null, geometry: null },
        point({ golf: 'constructor' }, at(0, 0)),
      ),
    );
    expect(course.areas).toHaveLength(2);
    expect(course.warnings).toMatchObject([
      { severity: 'warning', code: 'unknown-feature', where: 'feature 3 ("Hut")', featureIndex: 3 },
      { code: 'unknown-feature', where: 'feature 4', featureIndex: 4 },
      { code: 'unknown-feature', featureIndex: 5 },
      { code: 'unknown-feature', featureIndex: 6 },
    ]);
    expect(course.warnings[1]!.message).toContain('golf=windmill');
  });

  it('keeps what can be read and names a value that cannot', () => {
    const hole = line({ golf: 'hole', ref: 1, par: 'four', handicap: 3 }, at(0, 0), at(0, 300));
    const course = mustParse(collection(hole));
    expect(course.holes[0]).toMatchObject({ number: 1, par: 4, parAssumed: true, strokeIndex: 3 });
    expect(course.warnings).toMatchObject([
      { severity: 'warning', code: 'value-unreadable', where: 'feature 0 (hole line, hole 1)' },
    ]);
    expect(course.warnings[0]!.message).toContain('par is "four"');
  });

  it('belongs to no hole where its ref names two', () => {
    const course = mustParse(collection(area({ golf: 'green', ref: '2;5' }, square(0, 0, 9))));
    expect(course.areas[0]).not.toHaveProperty('hole');
    expect(course.warnings).toMatchObject([{ code: 'value-unreadable', featureIndex: 0 }]);
  });

  it('does not look at properties that its kind has no use for', () => {
    const course = mustParse(collection(area({ golf: 'bunker', par: {}, ele: 'low' }, square(0, 0, 9))));
    expect(course.warnings).toEqual([]);
  });
});

describe('what is read', () => {
  it('takes the lip of a bunker, and of no other area', () => {
    const course = mustParse(
      collection(
        area({ golf: 'bunker', lip_m: '1.2 m' }, square(0, 0, 9)),
        area({ golf: 'bunker' }, square(30, 0, 9)),
        area({ golf: 'fairway', lip_m: 2 }, square(60, 0, 9)),
      ),
    );
    expect(course.areas.map(({ lipM }) => lipM)).toEqual([1.2, undefined, undefined]);
  });

  it('takes numbers and text alike, units of metres and nulls included', () => {
    const course = mustParse(
      collection(
        line({ golf: 'hole', ref: 3, par: 5, handicap: null, name: null }, at(0, 0), at(0, 300)),
        area(
          { natural: 'wood', height: '14 m', canopy_base_m: '3', canopy_density_per_m: '.2' },
          square(50, 50, 9),
        ),
        area(
          {
            natural: 'wood',
            height: 15,
            canopy_base_m: 3,
            leaf_type: 'needleleaved',
            leaf_cycle: 'now and then',
          },
          square(90, 50, 9),
        ),
        point({ holewright_kind: 'ground_level', ele: '-2.5' }, at(0, 0)),
      ),
    );
    expect(course.holes[0]).toMatchObject({ number: 3, par: 5 });
    expect(course.holes[0]).not.toHaveProperty('strokeIndex');
    expect(course.areas[0]!.canopy).toEqual({ topM: 14, baseM: 3, densityPerM: 0.12 });
    expect(course.areas[1]!.canopy).toEqual({
      topM: 15,
      baseM: 3,
      densityPerM: 0.12,
      leafType: 'needleleaved',
    });
    expect(course.warnings).toMatchObject([
      { code: 'value-unreadable', where: 'feature 1 (woods)' },
      { code: 'value-unreadable', where: 'feature 2 (woods)' },
    ]);
    expect(course.levels).toEqual([{ at: [4, 52], elevationM: -2.5 }]);
  });

  it('turns every ring to the right hand and drops heights of positions', () => {
    const outer = square(0, 0, 20).toReversed();
    const inner = square(0, 0, 5);
    const course = mustParse(
      collection(
        area(
          { golf: 'rough' },
          outer.map(([lon, lat]) => [lon, lat, 12]),
          inner,
        ),
      ),
    );
    expect(course.areas[0]!.rings).toEqual([square(0, 0, 20), square(0, 0, 5).toReversed()]);
  });

  it('splits a MultiPolygon into one area per part', () => {
    const course = mustParse(
      collection({
        type: 'Feature',
        properties: { golf: 'water_hazard', name: 'Ponds' },
        geometry: { type: 'MultiPolygon', coordinates: [[square(0, 0, 5)], [square(50, 0, 5)]] },
      }),
    );
    expect(course.areas.map(({ kind, name, featureIndex }) => [kind, name, featureIndex])).toEqual([
      ['penalty-yellow', 'Ponds', 0],
      ['penalty-yellow', 'Ponds', 0],
    ]);
  });

  it('prefers our own kind where a golf tag stands beside it', () => {
    const course = mustParse(
      collection(area({ golf: 'rough', holewright_kind: 'long_rough' }, square(0, 0, 9))),
    );
    expect(course.areas[0]!.kind).toBe('long-rough');
  });

  it('keeps unknown members everywhere, in the document it was given', () => {
    const file = {
      ...collection({ ...plainHole(1, 0)[0]!, id: 'way/1', bbox: [1, 2, 3, 4] }),
      generator: 'some GIS',
      holewright: { formatVersion: 1, courseName: 'A', colour: 'kept' },
    };
    const before = structuredClone(file);
    const { document } = mustParseDocument(file);
    expect(document).toBe(file);
    expect(file).toEqual(before);
  });

  it('opens a collection without our header as an unnamed course, with a warning', () => {
    const course = mustParse({ type: 'FeatureCollection', features: plainHole(1, 0) });
    expect(course).toMatchObject({ name: 'Unnamed course', invented: false, formatVersion: 1 });
    expect(course.warnings).toMatchObject([{ severity: 'warning', code: 'no-header' }]);
  });

  it('gathers markers and positions around their hole and keeps strays apart', () => {
    const course = mustParse(
      collection(
        ...plainHole(2, 100),
        ...plainHole(1, 0),
        point({ holewright_kind: 'tee_marker', ref: 1 }, at(0, 2)),
        point({ holewright_kind: 'hole_position', ref: '1', name: 'Left' }, at(-3, 300)),
        point({ holewright_kind: 'hole_position', ref: 1 }, at(3, 300)),
        point({ holewright_kind: 'tee_marker', ref: 9 }, at(0, 0)),
      ),
    );
    const [first, second] = course.holes;
    expect(course.holes.map(({ number }) => number)).toEqual([1, 2]);
    expect(first!.tees).toEqual([{ name: 'Tee 1', at: at(0, 2), featureIndex: 6 }]);
    expect(first!.positions.map(({ name }) => name)).toEqual(['Left', 'Position 2']);
    expect(second!.tees).toEqual([{ name: 'Start of the line', at: at(100, 0) }]);
    expect(second!.positions[0]!.at[1]).toBeCloseTo(at(0, 300)[1], 9);
    expect(course.strayMarkers).toMatchObject([{ kind: 'tee-marker', hole: 9, featureIndex: 9 }]);
  });

  it('still reads a course in which one hole lacks a green; the end of its line stands in', () => {
    const [hole, tee] = plainHole(2, 100);
    const course = mustParse(collection(...plainHole(1, 0), hole, tee));
    expect(course.holes).toHaveLength(2);
    expect(course.holes[1]!.positions).toEqual([{ name: 'End of the line', at: at(100, 300) }]);
  });

  it('puts the default base below the top of a low tree, and says what it took', () => {
    const course = mustParse(collection(point({ natural: 'tree', height: 4 }, at(0, 0))));
    expect(course.trees[0]).toMatchObject({
      crownRadiusM: 4,
      canopy: { topM: 4, baseM: 1, densityPerM: 0.12 },
      assumed: ['canopy-base', 'canopy-density', 'crown-radius'],
    });
    expect(course.warnings).toMatchObject([{ code: 'canopy-assumed', where: 'trees (feature 0)' }]);
    expect(course.warnings[0]!.message).toContain('crown radius 4 m');
  });

  it('takes the default base where the stated one lies above the top', () => {
    const course = mustParse(
      collection(area({ natural: 'wood', height: 5, canopy_base_m: 8 }, square(0, 0, 9))),
    );
    expect(course.areas[0]!.canopy!.baseM).toBeCloseTo(5 / 6, 12);
    expect(course.warnings).toMatchObject([{ code: 'canopy-upside-down', featureIndex: 0 }]);
  });

  it('gives a path drawn as a line a width of 2.5 m', async () => {
    const { areaM2, distanceM } = await import('../../core/course/ellipsoid.ts');
    const course = mustParse(collection(line({ golf: 'cartpath' }, at(0, 0), at(0, 300))));
    const [path] = course.areas;
    expect(path!.kind).toBe('path');
    const long = distanceM(at(0, 0), at(0, 300));
    const round = Math.PI * 1.25 ** 2;
    // rounded ends are drawn with few corners; turf measures on a sphere: 1 %
    expect(areaM2(path!.rings)).toBeGreaterThan((long * 2.5 + round * 0.8) * 0.99);
    expect(areaM2(path!.rings)).toBeLessThan((long * 2.5 + round) * 1.01);
  });
});

it('gives the course alone from parseCourse', () => {
  const parsed = parseCourse(collection(...plainHole(1, 0)));
  expect(parsed.ok && parsed.value.holes[0]!.par).toBe(4);
});
