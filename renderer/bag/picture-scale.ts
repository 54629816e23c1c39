/** Round steps for the grids of pictures. */

/** The step of 1, 2 or 5 times a power of ten that parts `span` into about `parts`. */
export function niceStep(span: number, parts: number): number {
  const rough = span / parts;
  const power = 10 ** Math.floor(Math.log10(rough));
  const times = [1, 2, 5, 10].find((candidate) => candidate * power >= rough) ?? 10;
  return times * power;
}
