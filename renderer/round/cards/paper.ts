/** Papers and styles of printed cards in millimetres; a unit is what is carried after cutting or folding. */

import { PAPER_SIZES } from '../../../core/card/paper-sizes.ts';
import type { PaperKind, PaperWishes } from '../state/round-state.ts';

export interface PaperLayout {
  readonly kind: PaperKind;
  /** Names the page rule of the style sheet. */
  readonly page: 'a4' | 'letter' | 'a6';
  readonly widthMm: number;
  readonly heightMm: number;
  readonly across: number;
  readonly down: number;
  readonly unitWidthMm: number;
  readonly unitHeightMm: number;
  readonly isBooklet: boolean;
  /** Size of print against the pocket card's. */
  readonly print: number;
  /** Picture and words on units of their own: the pocket size has no room for both in large print. */
  readonly isSplit: boolean;
  /** Areas filled with tints. */
  readonly hasFills: boolean;
}

export const PAPERS: readonly PaperKind[] = ['a4', 'letter', 'a6', 'booklet-a4', 'booklet-letter'];

export function layoutOf({ kind, style }: Pick<PaperWishes, 'kind' | 'style'>): PaperLayout {
  const page = kind === 'booklet-a4' ? 'a4' : kind === 'booklet-letter' ? 'letter' : kind;
  const isBooklet = kind !== page;
  const { widthMm, heightMm } = PAPER_SIZES[page];
  const isLarge = style === 'large-print';
  // Large print takes the whole sheet: a pocket card of twice the size, or two units of pocket size.
  const isPocket = isBooklet || page === 'a6';
  const [across, down] = page === 'a6' || (isLarge && !isPocket) ? [1, 1] : [2, 2];
  return {
    ...{ kind, page, widthMm, heightMm, across, down, isBooklet },
    unitWidthMm: widthMm / across,
    unitHeightMm: heightMm / down,
    print: isLarge ? (isPocket ? 1.6 : 2) : 1,
    isSplit: isLarge && isPocket,
    hasFills: style !== 'ink-saving',
  };
}

/** The units of one side of paper by index, row after row; null stays empty. */
export type SheetSide = readonly (number | null)[];

/** Which unit goes where, side after side. For a booklet two sides are one sheet, printed on both, turned on the long edge. */
export function placeUnits(count: number, layout: PaperLayout): readonly SheetSide[] {
  if (layout.isBooklet) return bookletSides(count);
  const perSide = layout.across * layout.down;
  return Array.from({ length: Math.ceil(count / perSide) }, (_, side) =>
    Array.from({ length: perSide }, (_unused, k) => {
      const unit = side * perSide + k;
      return unit < count ? unit : null;
    }),
  );
}

/**
 * A leaf is half a sheet, folded once into four pages; leaves lie in each other, so the outermost holds the first and the
 * last pages. Two leaves share a sheet, one above the other, to be cut apart.
 */
function bookletSides(count: number): readonly SheetSide[] {
  const pages = 4 * Math.ceil(count / 4);
  const at = (page: number): number | null => (page < count ? page : null);
  const leaves = Array.from({ length: pages / 4 }, (_, leaf) => ({
    front: [at(pages - 1 - 2 * leaf), at(2 * leaf)],
    back: [at(2 * leaf + 1), at(pages - 2 - 2 * leaf)],
  }));
  const none = { front: [null, null], back: [null, null] };
  return Array.from({ length: Math.ceil(leaves.length / 2) }, (_, sheet) => {
    const above = leaves[2 * sheet] ?? none;
    const below = leaves[2 * sheet + 1] ?? none;
    return [
      [...above.front, ...below.front],
      [...above.back, ...below.back],
    ];
  }).flat();
}
