/** The drawing of one hole: well-formed, to scale, whole, and deaf to what names would have it do. */

import { readFileSync } from 'node:fs';
import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { distanceM } from '../../../core/course/ellipsoid.ts';
import { holeSvg, type HoleSvgOptions } from '../../../core/course/export/hole-svg.ts';
import { escapeXml } from '../../../core/course/export/svg-text.ts';
import type { Course } from '../../../core/course/model.ts';
import { parseCourseText } from '../../../core/course/parse.ts';
import { area, at, collection, mustParse, plainHole, point, square } from '../builders.ts';

interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  text: string;
}

/** Every element; throws where the XML is not well-formed. */
function elementsOf(svg: string): Element[] {
  const elements: Element[] = [];
  const open: Element[] = [];
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    const element = { name, attributes, text: '' };
    elements.push(element);
    open.push(element);
  });
  parser.on('text', (text) => {
    if (open.length > 0) open.at(-1)!.text += text;
  });
  parser.on('closetag', () => void open.pop());
  parser.write(svg).close();
  return elements;
}

function draw(course: Course, hole: number, options?: HoleSvgOptions): Element[] {
  const drawn = holeSvg(course, hole, options);
  if (!drawn.ok) throw new Error(drawn.error.message);
  return elementsOf(drawn.value);
}

function classed(elements: readonly Element[], name: string): Element[] {
  return elements.filter(({ attributes }) => attributes['class'] === name);
}

function points(path: string): [number, number][] {
  return [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}

const course = mustParse(
  collection(
    ...plainHole(1, 0),
    ...plainHole(2, 2000),
    area(
      { golf: 'fairway', ref: '1', name: 'Wide & "open" <b>' },
      square(0, 150, 30),
      square(0, 150, 5).toReversed(),
    ),
    area({ natural: 'wood' }, square(30, 100, 10)),
    area({ holewright_kind: 'out_of_bounds' }, square(-40, 100, 10)),
    point({ natural: 'tree' }, at(-20, 50)),
    point({ holewright_kind: 'tee_marker', ref: '1', name: '</text><script>alert(1)</script>' }, at(0, 1)),
  ),
);

describe('the drawing', () => {
  it('is to scale, turned up the line or north up', () => {
    const lengthM = distanceM(at(0, 0), at(0, 300));
    for (const scale of [1000, 2000, 3500]) {
      for (const up of ['line', 'north'] as const) {
        const elements = draw(course, 1, { scale, up });
        const line = points(classed(elements, 'line-of-play')[0]!.attributes['d']!);
        const [from, to] = [line[0]!, line.at(-1)!];
        // two ends rounded to 0.01 mm
        expect(
          Math.abs(Math.hypot(to[0] - from[0], to[1] - from[1]) - (lengthM * 1000) / scale),
        ).toBeLessThan(0.015);
        expect(to[0]).toBeCloseTo(from[0], 1);
        expect(to[1]).toBeLessThan(from[1]);
      }
    }
  });

  it('turns a hole played east upwards, and its arrow still points north', () => {
    const east = mustParse(
      collection({
        type: 'Feature',
        properties: { golf: 'hole', ref: '1', par: 3 },
        geometry: { type: 'LineString', coordinates: [at(0, 0), at(200, 0)] },
      }),
    );
    const line = points(classed(draw(east, 1), 'line-of-play')[0]!.attributes['d']!);
    expect(line[1]![0]).toBeCloseTo(line[0]![0], 1);
    expect(line[1]![1]).toBeLessThan(line[0]![1]);
    expect(classed(draw(east, 1), 'north')[0]!.attributes['transform']).toMatch(/rotate\(-90\)/);
    const north = draw(east, 1, { up: 'north' });
    expect(classed(north, 'north')[0]!.attributes['transform']).toMatch(/rotate\(0\)/);
    const flat = points(classed(north, 'line-of-play')[0]!.attributes['d']!);
    expect(flat[1]![0]).toBeGreaterThan(flat[0]![0]);
  });

  it('shows what lies around the hole, in painting order, and nothing of the next one', () => {
    const elements = draw(course, 1);
    const order = elements.map(({ attributes }) => attributes['class']).filter((name) => name !== undefined);
    for (const [earlier, later] of [
      ['woods', 'fairway'],
      ['fairway', 'tee'],
      ['tee', 'green'],
      ['green', 'out-of-bounds'],
      ['out-of-bounds', 'tree'],
    ] as const) {
      expect(order.indexOf(earlier)).toBeGreaterThan(-1);
      expect(order.indexOf(earlier)).toBeLessThan(order.indexOf(later));
    }
    expect(classed(elements, 'green')).toHaveLength(1);
    // the hole in the fairway is a second ring of one path
    expect(classed(elements, 'fairway')[0]!.attributes['d']!.match(/M/g)).toHaveLength(2);
  });

  it('has a scale bar as long as it says, in metres or yards', () => {
    for (const [unit, unitM] of [
      ['metres', 1],
      ['yards', 0.9144],
    ] as const) {
      const drawn = holeSvg(course, 1, { unit, scale: 2000, marginM: 60 });
      const bar =
        /data-metres="([\d.]+)"><path d="M[\d.]+ [\d.]+h([\d.]+)"[^>]*><text[^>]*>(\d+) (m|yd)</.exec(
          drawn.ok ? drawn.value : '',
        )!;
      expect(Number(bar[1])).toBeCloseTo(Number(bar[3]) * unitM, 1);
      expect(Number(bar[2])).toBeCloseTo((Number(bar[1]) * 1000) / 2000, 1);
      expect(bar[4]).toBe(unit === 'yards' ? 'yd' : 'm');
    }
  });

  it('has names that do nothing but stand there', () => {
    const elements = draw(course, 1);
    expect(elements.some(({ name }) => name === 'script' || name === 'b')).toBe(false);
    expect(elements.find(({ name, text }) => name === 'text' && text.includes('alert'))!.text).toBe(
      '</text><script>alert(1)</script>',
    );
    expect(elements.filter(({ name }) => name === 'title').map(({ text }) => text)).toContain(
      'fairway: Wide & "open" <b>',
    );
    expect(escapeXml('a\u0000b\u001Fc\uD800d\uFFFEe\u{1F333}"\'')).toBe('abcde\u{1F333}&quot;&#39;');
  });

  it('is refused for a hole that is not there and a scale that is none', () => {
    const refusal = holeSvg(course, 7);
    expect(!refusal.ok && refusal.error.code).toBe('no-such-hole');
    for (const scale of [0, -1, NaN, 1]) {
      const bad = holeSvg(course, 1, { scale });
      expect(!bad.ok && bad.error.code).toBe('bad-scale');
    }
  });

  it('of each hole of the demo course is well-formed and inside its frame', () => {
    const demo = parseCourseText(
      readFileSync(new URL('../../../maps/demo-course.geojson', import.meta.url), 'utf8'),
    );
    if (!demo.ok) throw new Error('unreadable');
    for (const { number } of demo.value.holes) {
      const elements = draw(demo.value, number);
      const [, , width, height] = elements[0]!.attributes['viewBox']!.split(' ').map(Number);
      for (const [x, y] of points(classed(elements, 'line-of-play')[0]!.attributes['d']!)) {
        expect(x > 0 && x < width! && y > 0 && y < height!).toBe(true);
      }
      expect(classed(elements, 'green').length).toBeGreaterThan(0);
    }
  });
});
