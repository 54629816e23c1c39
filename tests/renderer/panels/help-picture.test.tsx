/** The pictures of the help pages: drawn from core, within their axes, with words for those who do not see them. */

import { readFileSync, statSync } from 'node:fs';
import type { ComponentChildren, VNode } from 'preact';
import { describe, expect, it } from 'vitest';
import { LANGUAGES } from '../../../core/words/language.ts';
import { wordsIn } from '../../../core/words/words.ts';
import { HELP_PLOTS, pictureName } from '../../../renderer/help/pictures/help-picture.tsx';
import { TOUR_PUTTS } from '../../../renderer/help/pictures/make-share.ts';
import { WINDOW_PICTURES } from '../../../renderer/help/pictures/window-pictures.tsx';
import { Plot } from '../../../renderer/help/pictures/plot.tsx';

const GUIDE = new URL('../../../renderer/help/guide.md', import.meta.url);
const PAGE = readFileSync(new URL('../../../renderer/help/numbers.md', import.meta.url), 'utf8');

/** Every element of one name below `node`. */
function all(node: ComponentChildren, name: string): VNode<Record<string, unknown>>[] {
  if (Array.isArray(node)) return node.flatMap((child) => all(child as ComponentChildren, name));
  if (typeof node !== 'object' || node === null) return [];
  const element = node as VNode<Record<string, unknown>>;
  const below = all(element.props['children'], name);
  return element.type === name ? [element, ...below] : below;
}

describe.each(Object.entries(HELP_PLOTS))('the picture %s', (name, { data, words }) => {
  const drawn = data();

  it('stands on the page of the numbers', () => {
    expect(PAGE).toContain(`![](picture:${name})`);
    expect(pictureName(`picture:${name}`)).toBe(name);
  });

  it('stays within its axes', () => {
    const { x, y } = drawn;
    for (const [px, py] of [...drawn.lines, ...(drawn.dots === undefined ? [] : [drawn.dots])].flatMap(
      ({ points }) => points,
    )) {
      expect(px).toBeGreaterThanOrEqual(x.from);
      expect(px).toBeLessThanOrEqual(x.to);
      expect(py).toBeGreaterThanOrEqual(y.from);
      expect(py).toBeLessThanOrEqual(y.to);
    }
  });

  it.each(LANGUAGES)('has a text for ears, a caption and a name for each line in %s', (language) => {
    const spoken = wordsIn(language);
    const told = words(spoken);
    const figure = Plot({ data: drawn, words: told, figures: spoken.figures });
    const [picture] = all(figure, 'svg');
    expect(picture!.props['role']).toBe('img');
    expect(String(picture!.props['aria-label']).length).toBeGreaterThan(40);
    expect(all(figure, 'figcaption')).toHaveLength(1);
    // each caption names where its figures come from
    expect(told.caption).toMatch(/(19|20)\d\d/);
    const labels = [...drawn.lines, ...(drawn.dots === undefined ? [] : [drawn.dots])].map(
      ({ label }) => label,
    );
    expect(Object.keys(told.labels).sort()).toEqual([...labels].sort());
  });
});

describe.each(Object.entries(WINDOW_PICTURES))('the picture of the window %s', (name, { width, height }) => {
  const file = new URL(`../../../renderer/help/pictures/${name}.png`, import.meta.url);

  it('stands in the guide, small enough to be packed', () => {
    expect(readFileSync(GUIDE, 'utf8')).toContain(`![](picture:${name})`);
    expect(pictureName(`picture:${name}`)).toBe(name);
    expect(statSync(file).size).toBeLessThan(120_000);
  });

  it('has the room that it takes (width and height of a PNG stand at bytes 16 and 20, W3C PNG 11.2.1)', () => {
    const bytes = readFileSync(file);
    expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([width, height]);
  });
});

describe('an address of an image', () => {
  it('that is none of our pictures shows nothing', () => {
    for (const address of ['https://example.org/a.png', 'picture:', 'picture:toString', 'window.png'])
      expect(pictureName(address)).toBeNull();
  });
});

describe('the tour’s putts', () => {
  it('are those that the putting model is checked against', () => {
    const source = readFileSync(new URL('../../published/putting.test.ts', import.meta.url), 'utf8');
    for (const row of TOUR_PUTTS) {
      const [feet, tries, made] = row;
      expect(source).toMatch(new RegExp(`${feet.toFixed(2)} ${tries} ${made}[;\`]`));
    }
  });
});
