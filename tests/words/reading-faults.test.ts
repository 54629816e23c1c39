import { describe, expect, it } from 'vitest';
import { checkCourse } from '../../core/course/check.ts';
import { readGeojson } from '../../core/course/import/geojson.ts';
import { readGpx } from '../../core/course/import/gpx.ts';
import { readOsm } from '../../core/course/import/osm.ts';
import { EMPTY_CONTEXT } from '../../core/course/import/proposal.ts';
import { openDocumentText } from '../../core/course/document.ts';
import { parseCourseText } from '../../core/course/parse.ts';
import { parseConditions } from '../../core/conditions/conditions.ts';
import { parsePlayerText } from '../../core/player/parse.ts';
import type { Fault } from '../../core/result.ts';
import { parseRoundText } from '../../core/round/record.ts';
import { faultText, sayIn } from '../../core/words/told.ts';
import { wordsIn } from '../../core/words/words.ts';

const german = wordsIn('de');
const header = { formatVersion: 1, courseName: 'Larkfield' };
const course = (features: readonly unknown[], more: object = {}): string =>
  JSON.stringify({ type: 'FeatureCollection', holewright: header, features, ...more });
const feature = (properties: object, geometry: unknown, more: object = {}): object => ({
  type: 'Feature',
  properties,
  geometry,
  ...more,
});
const point = { type: 'Point', coordinates: [4, 52] };
const square = (size: number): object => ({
  type: 'Polygon',
  coordinates: [
    [
      [4, 52],
      [4 + size, 52],
      [4 + size, 52 + size],
      [4, 52 + size],
      [4, 52],
    ],
  ],
});

const courses: readonly string[] = [
  ...['{"a": 1,}', '{"a" 1}', '[1, 2', '["a\nb"]', '["\\x"]', '"abc', '{} {}', '', '{\n"a": 1\n"b": 2}'],
  ...['[]', course([], { holewright: undefined }), course([], { holewright: { formatVersion: 99 } })],
  course([], { holewright: { formatVersion: 1, sand: 'deep' } }),
  course(Array.from({ length: 20_001 }, () => 1)),
  course([1, {}, feature({}, null), feature({ golf: 'clubhouse', name: 'House' }, point)]),
  course([feature({ golf: 'bunker' }, null), feature({ golf: 'bunker', ref: 3, name: 'Deep one' }, point)]),
  course([feature({ golf: 'bunker' }, { type: 'Polygon', coordinates: [[[999, 52]]] })]),
  course([feature({ golf: 'bunker' }, { type: 'Polygon', coordinates: [] })]),
  course([feature({ golf: 'bunker' }, { type: 'Polygon', coordinates: 'far' })]),
  course([
    feature(
      { golf: 'bunker' },
      { type: 'Polygon', coordinates: [[point.coordinates, point.coordinates, point.coordinates]] },
    ),
  ]),
  course([feature({ golf: 'hole' }, { type: 'LineString', coordinates: [[4, 52]] })]),
  course([
    feature({ golf: 'bunker', ref: 'x', lip_m: 'high' }, square(0.001)),
    feature(
      { golf: 'hole', ref: 'x', par: 'many' },
      {
        type: 'LineString',
        coordinates: [
          [4, 52],
          [4.01, 52],
        ],
      },
    ),
    feature({ holewright_kind: 'ground_level' }, point),
    feature({ natural: 'wood', ref: 7 }, square(0.002), { id: 'a' }),
    feature({ natural: 'wood', height: 5, canopy_base_m: 9 }, square(0.001), { id: 'a' }),
    feature({ natural: 'tree' }, point),
    feature({ natural: 'tree' }, point),
    feature({ natural: 'tree', height: 4 }, point),
  ]),
];

const hole = { hole: 1, par: 4, score: 4 };
const round = (more: object): string =>
  JSON.stringify({
    holewright: { format: 'round', formatVersion: 1 },
    name: 'A',
    course: { name: 'B' },
    player: { name: 'C' },
    played: [],
    ...more,
  });
const rounds: readonly string[] = [
  ...['{}', round({ holewright: { format: 'round', formatVersion: 99 } }), round({ name: undefined })],
  round({ played: [hole, hole] }),
  round({ played: [{ ...hole, par: 9 }] }),
  round({ played: [{ ...hole, putts: 3, penalties: 2 }] }),
  round({ played: [{ ...hole, penalties: 0, shots: [{ club: 'a', penalty: 1 }] }] }),
  round({ played: [{ ...hole, shots: Array.from({ length: 6 }, () => ({ club: 'a' })) }] }),
];

const players: readonly string[] = ['{}', '{"holewright":{"format":"player","formatVersion":99}}'];

function inCourse(text: string): readonly Fault[] {
  const opened = openDocumentText(text);
  const strict = parseCourseText(text);
  const lenient = parseCourseText(text, { unreadable: 'leave-out' });
  return [
    ...(opened.ok ? opened.value.repairs : opened.error),
    ...(strict.ok ? [] : strict.error),
    ...(lenient.ok ? [...lenient.value.warnings, ...checkCourse(lenient.value)] : lenient.error),
  ];
}

const found: readonly (readonly [string, Fault])[] = [
  ...courses.flatMap(inCourse),
  ...rounds.map(parseRoundText).flatMap((read) => (read.ok ? read.value.warnings : read.error)),
  ...players.map((text) => parsePlayerText(text)).flatMap((read) => (read.ok ? [] : read.error)),
  ...(() => {
    const read = parseConditions({ humidity: 7, wind: { speedMps: 'much' } });
    return read.ok ? [] : read.error;
  })(),
].map((fault) => [fault.code, fault]);

/** Every text between quotes or brackets is of the file, and so are tags and paths in it. */
const withoutFile = (text: string): string =>
  text.replace(/"[^"]*"|„[^“]*“|\[[^\]]*\]|[\w.]+[=.][\w.]+/gu, '').replace(/\w+_\w+/gu, '');

describe('a fault of a file', () => {
  it('is found of every sort', () => {
    expect([...new Set(found.map(([code]) => code))].sort()).toEqual([
      'canopy-assumed',
      'canopy-upside-down',
      'conditions-member',
      'duplicate-id',
      'feature-dropped',
      'field-unreadable',
      'geometry-unreadable',
      'header-unreadable',
      'hole-twice',
      'hole-without-line',
      'more-shots-than-strokes',
      'newer-format',
      'no-header',
      'no-holes',
      'not-a-collection',
      'not-a-feature',
      'not-a-player',
      'not-a-round',
      'not-json',
      'penalties-do-not-add-up',
      'strokes-do-not-add-up',
      'too-many-features',
      'unknown-feature',
      'value-missing',
      'value-unreadable',
      'wrong-geometry',
    ]);
  });

  it.each(found)('%s is told in German', (code, fault) => {
    const { where, message } = faultText(fault, german);
    expect(message).not.toBe(fault.message);
    // What a schema of valibot says by itself stays as it says it.
    if (code === 'conditions-member') return;
    expect(withoutFile(`${where}: ${message}`)).not.toMatch(
      /\b(the|is|are|and|of|it|not|must|line|column|feature|hole|tree|trees|or|file)\b/u,
    );
  });
});

describe('what a map file brings', () => {
  const osm = JSON.stringify({
    elements: [
      { type: 'node', id: 1, lat: 52, lon: 4, tags: { golf: 'bunker' } },
      { type: 'node', id: 2, lat: 152, lon: 4, tags: { golf: 'pin' } },
      { type: 'node', id: 3, lat: 52, lon: 4, tags: { golf: 'pin' } },
      { type: 'node', id: 4, lat: 52, lon: 4, tags: { golf: 'tee', ref: '1' } },
      { type: 'node', id: 5, lat: 52, lon: 4, tags: { building: 'yes' } },
      { type: 'node', id: 6, lat: 52, lon: 4, tags: { amenity: 'bench' } },
      { type: 'way', id: 7, nodes: [1], tags: { natural: 'water' } },
      { type: 'relation', id: 8, tags: { type: 'route', golf: 'hole' } },
      { type: 'nothing' },
    ],
  });

  it('is told in German, with what is left out and why', () => {
    const read = readOsm(osm, EMPTY_CONTEXT);
    if (!read.ok) throw new Error(read.error[0]?.message);
    const { leftOut, toldNotes, notes } = read.value;
    expect(leftOut.length).toBeGreaterThan(6);
    for (const { what, why, told } of leftOut) {
      expect(sayIn(told.why, german), `${what}: ${why}`).not.toBe(why);
      expect([sayIn(told.what), sayIn(told.why)]).toEqual([what, why]);
    }
    expect(notes).toEqual(['1 × golf=tee drawn as a point is taken as a tee marker']);
    expect(toldNotes.map((note) => sayIn(note, german))).toEqual([
      '1 × golf=tee als Punkt gilt als Teemarkierung',
    ]);
  });

  it('is refused in German where it is no such file', () => {
    const refused = [
      readOsm('<kml/>', EMPTY_CONTEXT),
      readOsm('<osm>', EMPTY_CONTEXT),
      readOsm('{}', EMPTY_CONTEXT),
      readGpx('<osm/>', EMPTY_CONTEXT),
      readGeojson('{}', EMPTY_CONTEXT),
    ].map((read) => (read.ok ? [] : read.error));
    for (const [fault] of refused) {
      expect(faultText(fault!, german).message).not.toBe(fault!.message);
      expect(faultText(fault!, german).where).toMatch(/^(Datei|Zeile \d+, Spalte \d+)$/u);
    }
  });
});
