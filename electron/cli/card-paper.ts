/** Papers and styles of printed cards. Millimetres; a card unit is what is carried after cutting. */

import type { Words } from '../../core/words/words.ts';
import { PAPER_SIZES } from '../../core/card/paper-sizes.ts';

export type PaperName = 'a4' | 'letter' | 'a6';
export type StyleName = 'plain' | 'ink-saving' | 'large-print';

export const PAPERS: readonly PaperName[] = ['a4', 'letter', 'a6'];
export const STYLES: readonly StyleName[] = ['plain', 'ink-saving', 'large-print'];

/** Points per millimetre. */
export const POINT_PER_MM = 72 / 25.4;

interface Paper {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Card units beside and above each other on a sheet: A4 is four times A6, Letter four quarters of 4 1/4 x 5 1/2 in. */
  readonly across: number;
  readonly down: number;
}

const SIZES: Readonly<Record<PaperName, Paper>> = {
  a4: { ...PAPER_SIZES.a4, across: 2, down: 2 },
  letter: { ...PAPER_SIZES.letter, across: 2, down: 2 },
  a6: { ...PAPER_SIZES.a6, across: 1, down: 1 },
};

/** How a card is laid out on a paper in a style, and the language that it speaks. */
export interface Sheet {
  readonly words: Words;
  readonly paper: PaperName;
  readonly style: StyleName;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly across: number;
  readonly down: number;
  readonly unitWidthMm: number;
  readonly unitHeightMm: number;
  /** Size of print against the pocket card's. */
  readonly print: number;
  /** Picture and words on pages of their own: the pocket size has no room for both in large print. */
  readonly isSplit: boolean;
  /** Areas filled with tints. */
  readonly hasFills: boolean;
}

export function sheetFor(paper: PaperName, style: StyleName, words: Words): Sheet {
  const { widthMm, heightMm, across, down } = SIZES[paper];
  const isLarge = style === 'large-print';
  // Large print takes the whole sheet: a pocket card of twice the size, or two pages of pocket size.
  const [columns, rows] = isLarge ? [1, 1] : [across, down];
  return {
    ...{ words, paper, style, widthMm, heightMm },
    ...{ across: columns, down: rows },
    unitWidthMm: widthMm / columns,
    unitHeightMm: heightMm / rows,
    print: isLarge ? (paper === 'a6' ? 1.6 : 2) : 1,
    isSplit: isLarge && paper === 'a6',
    hasFills: style !== 'ink-saving',
  };
}

/** A box on the page, points from the top left corner. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export function inset(box: Box, by: number): Box {
  return { x: box.x + by, y: box.y + by, width: box.width - 2 * by, height: box.height - 2 * by };
}

/**
 * Text in the characters of the standard PDF fonts (Windows code page 1252): others lose their accents or become a question
 * mark, so that nothing else on the card is spoilt.
 */
export function printable(text: string): string {
  let out = '';
  for (const character of text.normalize('NFC')) {
    if (isInPage1252(character)) out += character;
    else {
      const swapped = SWAPS.get(character) ?? character.normalize('NFKD').replace(/\p{M}/gu, '');
      out += swapped !== '' && Array.from(swapped).every(isInPage1252) ? swapped : '?';
    }
  }
  return out;
}

const SWAPS: ReadonlyMap<string, string> = new Map([
  ['→', '->'],
  ['−', '-'],
  ['≤', '<='],
  ['≥', '>='],
  ['ł', 'l'],
  ['Ł', 'L'],
  ['đ', 'd'],
  ['\t', ' '],
]);

const ABOVE_LATIN1 = new Set('€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ');

function isInPage1252(character: string): boolean {
  const code = character.codePointAt(0)!;
  return (
    (code >= 0x20 && code <= 0x7e) ||
    (code >= 0xa0 && code <= 0xff) ||
    code === 0x0a ||
    ABOVE_LATIN1.has(character)
  );
}
