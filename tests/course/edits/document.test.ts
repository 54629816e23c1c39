/** Opening and saving: what the file holds is kept, ids are stable, coordinates end after 8 decimals. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  courseOf,
  kindOf,
  newDocument,
  openDocument,
  openDocumentText,
  serialise,
} from '../../../core/course/document.ts';
import { MOST_NESTING } from '../../../core/course/json-tree.ts';
import { roundCoordinate } from '../../../core/course/positions.ts';
import { area, at, collection, plainHole, point, square } from '../builders.ts';
import { open, ringFaults, smallCourse } from './edit-builders.ts';

function mustOpen(json: unknown) {
  const opened = openDocument(json);
  if (!opened.ok) throw new Error(JSON.stringify(opened.error));
  return opened.value;
}

describe('opening', () => {
  it('keeps members that nobody knows, and their order', () => {
    const json = {
      ...collection({
        ...area({ golf: 'green', colour: { deep: [1, null] } }, square(0, 0, 5)),
        seen: 'twice',
        id: 'g',
      }),
      generator: 'a GIS program',
      crs: { type: 'name' },
    };
    const { document, repairs } = mustOpen(json);
    expect(repairs).toEqual([]);
    expect(document).toEqual(json);
    expect(serialise(document)).toContain('"generator":"a GIS program","crs":{"type":"name"}');
  });

  it('gives the same ids on every opening, none twice, and keeps those of the file', () => {
    const json = collection(
      point({ natural: 'tree' }, at(0, 0)),
      { ...point({ natural: 'tree' }, at(1, 0)), id: 'feature-1' },
      { ...point({ natural: 'tree' }, at(2, 0)), id: 7 },
      { ...point({ natural: 'tree' }, at(3, 0)), id: '7' },
      { ...point({ natural: 'tree' }, at(4, 0)), id: null },
      { ...point({ natural: 'tree' }, at(5, 0)), id: '' },
    );
    const { document, repairs } = mustOpen(json);
    expect(document.features.map(({ id }) => id)).toEqual([
      'feature-2',
      'feature-1',
      7,
      'feature-3',
      'feature-4',
      'feature-5',
    ]);
    expect(repairs.map(({ code, featureIndex }) => [code, featureIndex])).toEqual([['duplicate-id', 3]]);
    expect(mustOpen(json).document).toEqual(document);
  });

  it('keeps what it cannot read and names what it leaves out', () => {
    const odd = {
      type: 'Feature',
      properties: { golf: 'green' },
      geometry: { type: 'Polygon', coordinates: 'none' },
    };
    const { document, repairs } = mustOpen(collection(...plainHole(1, 0), odd, null, 5, { anything: true }));
    expect(document.features).toHaveLength(5);
    expect(document.features[3]).toMatchObject(odd);
    expect(document.features[4]).toMatchObject({ anything: true });
    expect(kindOf(document.features[4]!)).toBeUndefined();
    expect(repairs.map(({ code, where }) => [code, where])).toEqual([
      ['feature-dropped', 'feature 4'],
      ['feature-dropped', 'feature 5'],
    ]);
    const course = courseOf(document);
    expect(course.ok && course.value.holes).toHaveLength(1);
  });

  it('drops bounding boxes, which the first edit would make wrong', () => {
    const tree = { ...point({ natural: 'tree' }, at(0, 0)), bbox: [1, 2, 3, 4] };
    const json = {
      ...collection(tree, { ...tree, geometry: { ...tree.geometry, bbox: [0] } }),
      bbox: [0, 0, 9, 9],
    };
    expect(serialise(mustOpen(json).document)).not.toContain('bbox');
  });

  it('rounds coordinates to 8 decimals and leaves heights and everything else alone', () => {
    const { document } = mustOpen(
      collection(point({ natural: 'tree', height: 10.123456789123 }, [4.123456789, 52.000000001, 12.5])),
    );
    expect(document.features[0]).toMatchObject({
      properties: { height: 10.123456789123 },
      geometry: { coordinates: [4.12345679, 52, 12.5] },
    });
  });

  it('refuses what the reader refuses, and nesting that would exhaust the stack', () => {
    let deep: unknown = 1;
    for (let i = 0; i < 20_000; i++) deep = [deep];
    const refusal = openDocument({ ...collection(), deep });
    expect(!refusal.ok && refusal.error[0]!.message).toContain(String(MOST_NESTING));
    expect(openDocument({ type: 'Feature' }).ok).toBe(false);
    expect(openDocument({ ...collection(), holewright: { formatVersion: 99 } }).ok).toBe(false);
    expect(openDocumentText('{"type":').ok).toBe(false);
  });

  it('is not led astray by members called __proto__', () => {
    const text = `{"type":"FeatureCollection","__proto__":{"polluted":1},"features":[{"type":"Feature","__proto__":{"id":"x"},"properties":{"__proto__":{"golf":"green"}},"geometry":null}]}`;
    const opened = openDocumentText(text);
    if (!opened.ok) throw new Error('refused');
    expect(opened.value.repairs[0]!.code).toBe('member-dropped');
    expect(opened.value.document.features[0]!.id).toBe('feature-1');
    expect(kindOf(opened.value.document.features[0]!)).toBeUndefined();
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  });
});

describe('saving', () => {
  it('writes one feature to a line', () => {
    const document = smallCourse();
    const lines = serialise(document).trimEnd().split('\n');
    expect(lines).toHaveLength(document.features.length + 2);
    for (const line of lines.slice(1, -1)) JSON.parse(line.replace(/,$/, ''));
  });

  it('gives back any document that JSON can hold', () => {
    fc.assert(
      fc.property(fc.array(fc.jsonValue(), { maxLength: 4 }), fc.jsonValue(), (values, member) => {
        const features = values.map((value, index) => ({
          ...point({ value, natural: 'tree' }, at(index, 0)),
          member: value,
        }));
        const { document } = mustOpen({ ...collection(...features), member });
        const again = openDocumentText(serialise(document));
        expect(again.ok && again.value.document).toEqual(document);
      }),
      { numRuns: 100 },
    );
  });

  it('rounding twice is rounding once', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (number) => {
        const once = roundCoordinate(number);
        expect(roundCoordinate(once)).toBe(once);
        expect(JSON.parse(JSON.stringify(once))).toBe(once);
      }),
    );
  });

  it('a new course can be opened', () => {
    const text = serialise(newDocument('Ambrevane "west"'));
    expect(text).toBe(
      '{"type":"FeatureCollection","holewright":{"formatVersion":1,"courseName":"Ambrevane \\"west\\""},"features":[]}\n',
    );
    expect(openDocumentText(text).ok).toBe(true);
  });
});

it('the small course of these tests keeps the right-hand rule', () => {
  expect(ringFaults(smallCourse())).toEqual([]);
  expect(ringFaults(open(area({ golf: 'green' }, square(0, 0, 5).toReversed())))).toHaveLength(1);
});
