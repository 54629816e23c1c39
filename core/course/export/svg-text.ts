/** Text and numbers as they may stand in SVG (XML 1.0, fifth edition, 2.2 and 2.4). */

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Escaped for text and for attributes alike; characters that XML cannot hold are left out. */
export function escapeXml(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '')
    .replace(/[&<>"']/g, (char) => ESCAPES[char]!);
}

/** To a hundredth, without trailing noughts and without a negative nought. */
export function shortNumber(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}
