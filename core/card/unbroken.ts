/** Keeps a number and its unit on one line of a narrow card. */

const NO_BREAK_SPACE = '\u00a0';

export function unbroken(text: string): string {
  return text.replaceAll(/(?<=\d) (?=(?:%|yd|m|ft)(?![\p{L}\d]))/gu, NO_BREAK_SPACE);
}
