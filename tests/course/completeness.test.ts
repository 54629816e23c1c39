/** What a course still lacks, what would mend it, and whether mending it does. */

import { inEnglish } from '../../core/words/told.ts';
import { describe, expect, it } from 'vitest';
import { applyFix, completenessOf } from '../../core/course/completeness.ts';
import { type EditableDocument, newDocument, propertiesOf } from '../../core/course/document.ts';
import { addFeature } from '../../core/course/edits/add-feature.ts';
import { setProperties } from '../../core/course/edits/set-properties.ts';
import { polylineLengthM } from '../../core/course/ellipsoid.ts';
import { lengthFromTeeM } from '../../core/course/hole-lengths.ts';
import type { Missing, MissingCode } from '../../core/course/missing.ts';
import { area, at, line, plainHole, point, square } from './builders.ts';
import { feature, must, open, withId } from './edits/edit-builders.ts';

const bare = open(withId('line', line({ golf: 'hole', ref: '4' }, at(0, 0), at(0, 200), at(60, 400))));

function ofHole(document: EditableDocument, hole: number): readonly Missing[] {
  return completenessOf(document).holes.find((each) => each.hole === hole)!.missing;
}

function codes(missing: readonly Missing[]): MissingCode[] {
  return missing.map(({ code }) => code);
}

function find(missing: readonly Missing[], code: MissingCode): Missing {
  return missing.find((each) => each.code === code)!;
}

describe('a hole with a line and nothing else', () => {
  it('lacks all the rest, and only the green stops it', () => {
    const missing = ofHole(bare, 4);
    expect(codes(missing)).toEqual([
      'no-green',
      'no-par',
      'no-stroke-index',
      'no-tee-area',
      'no-tee-marker',
      'no-hole-position',
    ]);
    expect(missing.filter(({ weight }) => weight === 'stops').map(({ code }) => code)).toEqual(['no-green']);
  });

  it('is mended step by step by what is offered', () => {
    let document = must(
      addFeature(bare, {
        kind: 'green',
        hole: 4,
        geometry: { type: 'Polygon', coordinates: [square(60, 400, 12)] },
      }),
    ).document;
    for (const code of ['no-par', 'no-tee-marker', 'no-hole-position'] as const) {
      const { fix } = find(ofHole(document, 4), code);
      document = must(applyFix(document, fix!)).document;
      expect(codes(ofHole(document, 4))).not.toContain(code);
    }
    expect(codes(ofHole(document, 4))).toEqual(['no-stroke-index', 'no-tee-area']);
    // 445 m: a par 5 by core/course/defaults.ts
    expect(propertiesOf(feature(document, 'line'))['par']).toBe(5);
    const [tee, position] = document.features.slice(-2);
    expect(tee!.geometry).toMatchObject({ coordinates: at(0, 0) });
    expect((position!.geometry as { coordinates: number[] }).coordinates[0]).toBeCloseTo(at(60, 400)[0], 8);
  });

  it('asks for a stroke index that no other hole has', () => {
    const { fix } = find(ofHole(open(...plainHole(1, 400), ...bare.features), 4), 'no-stroke-index');
    expect(fix).toMatchObject({ how: 'ask', property: 'handicap', features: ['line'] });
    expect(fix?.how === 'ask' && fix.choices).toEqual(Array.from({ length: 17 }, (_, i) => i + 2));
    expect(() => applyFix(bare, fix!)).toThrow('for the person');
  });
});

it('features that name a hole without a line ask for the line', () => {
  const document = open(area({ golf: 'green', ref: '9' }, square(0, 0, 9)));
  expect(completenessOf(document).holes).toEqual([
    {
      hole: 9,
      lengths: [],
      missing: [
        expect.objectContaining({
          code: 'no-line',
          fix: expect.objectContaining({ how: 'draw', kind: 'hole', hole: 9 }) as unknown,
        }),
      ],
    },
  ]);
});

it('an empty course asks for a hole and for heights', () => {
  expect(codes(completenessOf(newDocument('New')).course)).toEqual(['no-holes', 'no-heights']);
});

describe('woods and trees without a height', () => {
  const document = open(
    ...plainHole(1, 0),
    withId('near', area({ natural: 'wood' }, square(60, 150, 20))),
    withId('based', area({ natural: 'wood', canopy_base_m: 4 }, square(-60, 150, 20))),
    withId('known', area({ natural: 'wood', height: 20 }, square(-60, 250, 20))),
    withId('far', area({ natural: 'wood' }, square(2000, 150, 20))),
    withId('tree', point({ natural: 'tree' }, at(30, 100))),
  );

  it('are told at the holes they matter to, those elsewhere for the course', () => {
    const { holes, course } = completenessOf(document);
    expect(
      holes[0]!.missing.filter(({ code }) => code === 'no-canopy-height').map(({ features }) => features),
    ).toEqual([['near'], ['based'], ['tree']]);
    expect(find(course, 'no-canopy-height').features).toEqual(['far']);
    expect(inEnglish(find(holes[0]!.missing, 'no-canopy-height').message)).toContain(
      '12 m high, branches from 2 m',
    );
  });

  it('get the defaults written, and nothing that was measured is lost', () => {
    let mended = document;
    for (const { code, fix } of ofHole(document, 1))
      if (code === 'no-canopy-height') mended = must(applyFix(mended, fix!)).document;
    expect(propertiesOf(feature(mended, 'near'))).toEqual({
      natural: 'wood',
      height: 12,
      canopy_base_m: 2,
      canopy_density_per_m: 0.12,
    });
    expect(propertiesOf(feature(mended, 'based'))).toEqual({
      natural: 'wood',
      canopy_base_m: 4,
      height: 12,
      canopy_density_per_m: 0.12,
    });
    expect(propertiesOf(feature(mended, 'tree'))['diameter_crown']).toBe(8);
    expect(codes(ofHole(mended, 1))).not.toContain('no-canopy-height');
  });
});

describe('lengths against the card', () => {
  const bend = [at(0, 0), at(0, 200), at(60, 400)] as const;
  const marker = (name: string, place: readonly [number, number], card?: number) =>
    point(
      {
        holewright_kind: 'tee_marker',
        ref: '4',
        name,
        ...(card === undefined ? {} : { card_length_m: card }),
      },
      place,
    );

  it('run from the tee to the next bend and on along the line', () => {
    const whole = polylineLengthM(bend);
    expect(lengthFromTeeM(bend, bend[0])).toBeCloseTo(whole, 9);
    expect(lengthFromTeeM(bend, at(3, 50))).toBeCloseTo(polylineLengthM([at(3, 50), bend[1], bend[2]]), 9);
    // a forward tee beyond the bend
    expect(lengthFromTeeM(bend, at(30, 310))).toBeCloseTo(polylineLengthM([at(30, 310), bend[2]]), 9);
    // a tee behind the start lengthens the hole
    expect(lengthFromTeeM(bend, at(0, -20))).toBeGreaterThan(whole);
  });

  it('are told per tee, and those that differ are named', () => {
    const whole = Math.round(polylineLengthM(bend));
    const document = open(
      ...bare.features,
      marker('Back', at(0, 0), whole),
      marker('Forward', at(0, 50), whole),
      marker('Other', at(0, 80)),
    );
    const { lengths, missing } = completenessOf(document).holes[0]!;
    expect(lengths.map(({ tee }) => tee)).toEqual(['Back', 'Forward', 'Other']);
    expect(Math.abs(lengths[0]!.differenceM!)).toBeLessThan(0.5);
    expect(lengths[1]!.differenceM).toBeCloseTo(-55.6, 0);
    expect(lengths[2]).not.toHaveProperty('cardLengthM');
    const differing = missing.filter(({ code }) => code === 'card-length-differs');
    expect(differing).toHaveLength(1);
    expect(inEnglish(differing[0]!.message)).toContain('"Forward"');
    expect(inEnglish(differing[0]!.message)).toContain('56 m shorter');
    const mended = must(
      setProperties(document, differing[0]!.features, { card_length_m: Math.round(lengths[1]!.lengthM) }),
    );
    expect(codes(ofHole(mended.document, 4))).not.toContain('card-length-differs');
  });
});
