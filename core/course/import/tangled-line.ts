/** Whether a line crosses itself so often that giving it a width would take minutes, as turf's buffer does then. */

import type { Position } from '../positions.ts';

/** Longer lines are not looked at: no path or stream of one course needs as many points. */
export const MOST_LINE_POINTS = 5000;
const MOST_CROSSINGS = 50;

export function isTangled(line: readonly Position[]): boolean {
  if (line.length > MOST_LINE_POINTS) return true;
  const sides = line.slice(1).map((to, index) => ({ from: line[index]!, to, index }));
  const west = ({ from, to }: (typeof sides)[number]) => Math.min(from[0], to[0]);
  sides.sort((a, b) => west(a) - west(b));
  let crossings = 0;
  for (let i = 0; i < sides.length; i++) {
    const s = sides[i]!;
    const east = Math.max(s.from[0], s.to[0]);
    for (let j = i + 1; j < sides.length && west(sides[j]!) <= east; j++) {
      const t = sides[j]!;
      if (Math.abs(s.index - t.index) < 2 || !meet(s.from, s.to, t.from, t.to)) continue;
      crossings++;
      if (crossings > MOST_CROSSINGS) return true;
    }
  }
  return false;
}

function meet(a: Position, b: Position, c: Position, d: Position): boolean {
  return side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0;
}

function side(a: Position, b: Position, p: Position): number {
  return Math.sign((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]));
}
