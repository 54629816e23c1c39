/** Sizes of the papers that cards are printed on, upright: ISO 216 for A4 and A6, 8 1/2 by 11 inches for Letter. */

export const PAPER_SIZES = {
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
  a6: { widthMm: 105, heightMm: 148 },
} as const;
