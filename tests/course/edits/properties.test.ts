/** Features added, removed, given values and kinds: what could not be read back is refused at the desk. */

import { describe, expect, it } from 'vitest';
import { kindOf, propertiesOf, serialise } from '../../../core/course/document.ts';
import { addFeature } from '../../../core/course/edits/add-feature.ts';
import { tagsOfKind } from '../../../core/course/edits/kind-tags.ts';
import { removeFeatures } from '../../../core/course/edits/remove-features.ts';
import { setCourse } from '../../../core/course/edits/set-course.ts';
import { setKind } from '../../../core/course/edits/set-kind.ts';
import { setProperties } from '../../../core/course/edits/set-properties.ts';
import { featureKindOf, KIND_WORDS, type FeatureKind } from '../../../core/course/feature-kind.ts';
import { parseCourse } from '../../../core/course/parse.ts';
import { at, square } from '../builders.ts';
import { feature, must, refused, ringFaults, ringsOf, smallCourse } from './edit-builders.ts';

const course = smallCourse();
const polygon = (...rings: [number, number][][]) => ({ type: 'Polygon' as const, coordinates: rings });

describe('adding a feature', () => {
  it('writes the tags of its kind, its hole and its values', () => {
    const { document, touched, name } = must(
      addFeature(course, {
        kind: 'woods',
        hole: 2,
        geometry: polygon(square(0, 0, 9)),
        properties: { height: 18 },
      }),
    );
    expect(name).toBe('Add woods of hole 2');
    const added = feature(document, touched[0]!);
    expect(document.features.at(-1)).toBe(added);
    expect(propertiesOf(added)).toEqual({ natural: 'wood', ref: '2', height: 18 });
    expect(added.id).toBe('feature-7');
  });

  it('closes the ring and turns it to the right-hand rule', () => {
    const drawn = square(0, 0, 9).toReversed().slice(1);
    const { document, touched } = must(addFeature(course, { kind: 'green', geometry: polygon(drawn) }));
    expect(ringsOf(document, touched[0]!)[0]).toHaveLength(5);
    expect(ringFaults(document)).toEqual([]);
  });

  it('every kind has tags that are read as that kind again', () => {
    for (const kind of Object.keys(KIND_WORDS) as FeatureKind[]) {
      expect(featureKindOf(tagsOfKind(kind))).toBe(kind);
    }
  });

  it.each([
    [
      'a bow tie',
      { kind: 'green', geometry: polygon([at(0, 0), at(9, 9), at(9, 0), at(0, 9)]) },
      'crosses-itself',
    ],
    ['two corners', { kind: 'green', geometry: polygon([at(0, 0), at(9, 9), at(0, 0)]) }, 'too-few-vertices'],
    [
      'corners that rounding joins',
      { kind: 'green', geometry: polygon([at(0, 0), [4 + 1e-9, 52], at(9, 0)]) },
      'too-few-vertices',
    ],
    [
      'a point for a green',
      { kind: 'green', geometry: { type: 'Point', coordinates: at(0, 0) } },
      'wrong-geometry',
    ],
    [
      'a place that is none',
      { kind: 'tree', geometry: { type: 'Point', coordinates: [0, 95] } },
      'not-a-place',
    ],
    [
      'a line without a number',
      { kind: 'hole', geometry: { type: 'LineString', coordinates: [at(0, 0), at(0, 9)] } },
      'value-missing',
    ],
    [
      'a par of 9',
      {
        kind: 'hole',
        hole: 3,
        properties: { par: 9 },
        geometry: { type: 'LineString', coordinates: [at(0, 0), at(0, 9)] },
      },
      'value-not-accepted',
    ],
  ] as const)('refuses %s', (_, drawn, reason) => {
    expect(refused(addFeature(course, drawn as never)).reason).toBe(reason);
  });

  it('refuses a shape of too many corners', () => {
    const ring = Array.from({ length: 20_001 }, (_, i): [number, number] => [
      4 + Math.cos(i / 4000) / 100,
      52 + Math.sin(i / 4000) / 100,
    ]);
    expect(refused(addFeature(course, { kind: 'woods', geometry: polygon(ring) })).reason).toBe(
      'too-many-vertices',
    );
  });
});

describe('removing', () => {
  it('takes each feature once and names what went', () => {
    const { document, name } = must(removeFeatures(course, ['fairway', 'neighbour', 'fairway']));
    expect(document.features).toHaveLength(course.features.length - 2);
    expect(name).toBe('Remove 2 fairways');
    expect(must(removeFeatures(course, ['fairway', 'path'])).name).toBe('Remove 2 features');
  });

  it('refuses nothing, and what is not there', () => {
    expect(refused(removeFeatures(course, [])).reason).toBe('nothing-chosen');
    expect(refused(removeFeatures(course, ['fairway', 'gone']))).toMatchObject({
      reason: 'no-such-feature',
      feature: 'gone',
    });
  });
});

describe('setting properties', () => {
  it('sets, changes and takes away; other members keep their places', () => {
    const set = must(setProperties(course, ['double'], { name: 'Spinney', height: 17.5, canopy_base_m: 2 }));
    expect(propertiesOf(feature(set.document, 'double'))).toEqual({
      natural: 'wood',
      name: 'Spinney',
      height: 17.5,
      canopy_base_m: 2,
    });
    const changed = must(setProperties(set.document, ['double'], { name: null, height: 9 }));
    expect(JSON.stringify(propertiesOf(feature(changed.document, 'double')))).toBe(
      '{"natural":"wood","height":9,"canopy_base_m":2}',
    );
    expect(set.name).toBe('Change woods');
    expect(must(setProperties(course, ['feature-1'], { par: '5' })).name).toBe(
      'Change par of line of hole 1',
    );
  });

  it('changes nothing where one of several refuses', () => {
    const refusal = refused(setProperties(course, ['fairway', 'marker'], { ref: null }));
    expect(refusal).toMatchObject({ reason: 'value-missing', feature: 'marker' });
  });

  it('leaves no trace of values that are there already', () => {
    expect(must(setProperties(course, ['fairway'], { ref: '1', name: '' })).patches).toEqual([]);
  });

  it.each([
    [{ ref: 'ten' }, 'the number of the hole'],
    [{ ref: 0 }, 'the number of the hole'],
    [{ height: -1 }, 'metres from 0 to 200'],
    [{ height: 'tall' }, 'metres from 0 to 200'],
    [{ par: 7 }, 'a whole number from 3 to 6'],
    [{ par: 4.5 }, 'a whole number from 3 to 6'],
    [{ handicap: 19 }, 'a whole number from 1 to 18'],
    [{ name: 5 }, 'a text'],
    [{ card_length_m: 4000 }, 'metres'],
    [{ golf: 'bunker' }, 'kind'],
  ])('refuses %j and says what to write', (values, words) => {
    const refusal = refused(setProperties(course, ['feature-1'], values));
    expect(refusal.reason).toBe('value-not-accepted');
    expect(refusal.message).toContain(words);
  });

  it('takes what a file may hold: numbers as text, and members of any name', () => {
    const values = { par: '4', handicap: '7', height: '12 m', surface: { turf: ['fescue'] } };
    const { document } = must(setProperties(course, ['feature-1'], values));
    expect(propertiesOf(feature(document, 'feature-1'))).toMatchObject(values);
    expect(parseCourse(document, { unreadable: 'leave-out' }).ok).toBe(true);
  });
});

describe('changing the kind', () => {
  it('changes the tags and keeps the rest', () => {
    const { document, name } = must(setKind(course, ['bunker'], 'out-of-bounds'));
    expect(propertiesOf(feature(document, 'bunker'))).toEqual({ holewright_kind: 'out_of_bounds', ref: '1' });
    expect(name).toBe('Turn bunker of hole 1 into out of bounds');
    const back = must(setKind(document, ['bunker'], 'bunker'));
    expect(kindOf(feature(back.document, 'bunker'))).toBe('bunker');
  });

  it('refuses a kind that is drawn otherwise or needs what is missing', () => {
    expect(refused(setKind(course, ['fairway'], 'tree')).reason).toBe('wrong-geometry');
    expect(refused(setKind(course, ['strange'], 'green')).reason).toBe('wrong-geometry');
    expect(refused(setKind(course, ['path'], 'hole')).reason).toBe('value-missing');
    expect(refused(setKind(course, ['marker'], 'ground-level')).reason).toBe('value-missing');
  });

  it('leaves no trace where the kind is that already', () => {
    expect(must(setKind(course, ['bunker'], 'bunker')).patches).toEqual([]);
  });
});

it('the course is renamed, and its notes can go', () => {
  const named = must(setCourse(course, { courseName: 'Ambrevane', notes: 'Windy' }));
  expect(serialise(named.document)).toContain('"courseName":"Ambrevane"');
  const plain = must(setCourse(named.document, { notes: '' }));
  expect(plain.document.holewright).not.toHaveProperty('notes');
  expect(refused(setCourse(plain.document, { courseName: 'Ambrevane' })).reason).toBe('nothing-to-do');
});
