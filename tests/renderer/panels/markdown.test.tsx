import { readFileSync } from 'node:fs';
import type { ComponentChildren, VNode } from 'preact';
import { describe, expect, it } from 'vitest';
import { Markdown } from '../../../renderer/panels/markdown.tsx';

const BLOCKS = ['h2', 'h3', 'h4', 'p', 'li', 'th', 'td'];

/** Elements by name and all text, in order, without a document. */
function flatten(node: ComponentChildren, seen: { names: string[]; text: string }): typeof seen {
  if (Array.isArray(node)) for (const child of node) flatten(child as ComponentChildren, seen);
  else if (typeof node === 'string' || typeof node === 'number') seen.text += String(node);
  else if (typeof node === 'object' && node !== null) {
    const { type, props } = node as VNode;
    if (typeof type === 'string') seen.names.push(type);
    flatten(props.children, seen);
    if (BLOCKS.includes(String(type))) seen.text += '\n';
  }
  return seen;
}

const draw = (text: string): { names: string[]; text: string } =>
  flatten(Markdown({ text }), { names: [], text: '' });

describe('help pages', () => {
  it('have marks where the part of each room but the first begins; no other markup is taken as such', () => {
    const guide = readFileSync(new URL('../../../renderer/help/guide.md', import.meta.url), 'utf8');
    const marks = [...guide.matchAll(/^<!-- room: ([a-z]+) -->$/gmu)].map(([, room]) => room);
    expect(marks.sort()).toEqual(['course', 'player', 'round']);
    const drawn = draw('a\n\n<!-- room: round -->\n\n## b\n\n<!-- <b>c</b> -->\n');
    expect(drawn.names).toEqual(['article', 'p', 'span', 'h3']);
    expect(drawn.text).toContain('<b>c</b>');
    expect(drawn.text).not.toContain('room: round');
  });

  it('become headings, lists, tables and emphasis', () => {
    const { names } = draw('# A\n\nb **c** *d* `e`\n\n1. f\n2. g\n\n| h | i |\n| - | - |\n| j | k |\n');
    expect(names).toEqual(
      expect.arrayContaining(['h2', 'p', 'strong', 'em', 'code', 'ol', 'li', 'table', 'th', 'td']),
    );
  });

  it('show raw HTML as text and make no element of it', () => {
    const { names, text } = draw('<script>alert(1)</script>\n\nsee <img src=x onerror=alert(1)> here\n');
    expect(names).not.toContain('script');
    expect(names).not.toContain('img');
    expect(text).toContain('<script>alert(1)</script>');
    expect(text).toContain('<img src=x onerror=alert(1)>');
  });

  it('lead nowhere outside', () => {
    const { names, text } = draw('[a page](javascript:alert(1)) and ![picture](http://example.org/p.png)');
    expect(names).not.toContain('a');
    expect(names).not.toContain('img');
    expect(text).toContain('a page');
  });

  it('show signs as they are written', () => {
    expect(draw('5 < 6 & "7" \\* 8').text.trim()).toBe('5 < 6 & "7" * 8');
  });

  it.each(['guide', 'numbers', 'limits'])('draw the page %s in full', (name) => {
    const source = readFileSync(new URL(`../../../renderer/help/${name}.md`, import.meta.url), 'utf8');
    const { names, text } = draw(source);
    expect(names[1]).toBe('h2');
    const words = (from: string): string[] => from.match(/[A-Za-z]{4,}/g) ?? [];
    const pictures = /^!\[\]\(picture:[\w-]+\)$/gmu;
    const marks = /^<!-- room: [a-z]+ -->$/gmu;
    expect(words(text)).toEqual(words(source.replaceAll(pictures, '').replaceAll(marks, '')));
  });
});
