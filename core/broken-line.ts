/** A quantity given at a few points: a published table, or a curve read off one. */

/** Points in rising order of x; at least one. */
export type BrokenLine = readonly (readonly [x: number, y: number])[];

/** Linear between the points; the end values beyond them. */
export function readLine(line: BrokenLine, at: number): number {
  let [lastX, lastY] = line[0]!;
  if (at <= lastX) return lastY;
  for (const [x, y] of line) {
    if (at < x) return lastY + ((at - lastX) / (x - lastX)) * (y - lastY);
    [lastX, lastY] = [x, y];
  }
  return lastY;
}
