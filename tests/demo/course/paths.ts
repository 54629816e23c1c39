/** Buggy paths: the drawn line is pushed off tees, greens, fairways and sand until it passes beside them. */

import { distanceBetween, easeLine, measureLine, type Point } from './curves.ts';
import { distanceField, type Grid, markRing, valueAt } from './fields.ts';

const KEEP_OFF_M = 8;
const STEP_M = 7;

/** Lines of points about 7 m apart through the first and last point of each of `drawn`. */
export function routePaths(
  grid: Grid,
  drawn: readonly (readonly Point[])[],
  play: readonly (readonly Point[])[],
): Point[][] {
  const mask = new Uint8Array(grid.columns * grid.rows);
  for (const ring of play) markRing(grid, mask, ring);
  const outside = distanceField(grid, mask);
  const inside = distanceField(
    grid,
    mask.map((m) => 1 - m),
  );
  const clear = outside.map((d, i) => d - inside[i]!);
  return drawn.map((line) => relax(grid, clear, spaced(easeLine(line, 3))));
}

function spaced(line: readonly Point[]): Point[] {
  const measured = measureLine(line);
  const count = Math.max(2, Math.round(measured.lengthM / STEP_M));
  return Array.from({ length: count + 1 }, (_, k) =>
    measured.at(Math.max(1e-9, (measured.lengthM * k) / count), 0),
  );
}

/** Alternately pushes points up the slope of the clearance and evens out the line. */
function relax(grid: Grid, clear: Float64Array, line: Point[]): Point[] {
  let points = line;
  for (let round = 0; round < 160; round++) {
    points = points.map((p, i) => {
      if (i === 0 || i === points.length - 1) return p;
      const [before, after] = [points[i - 1]!, points[i + 1]!];
      let [x, y] = [
        p[0] + 0.35 * ((before[0] + after[0]) / 2 - p[0]),
        p[1] + 0.35 * ((before[1] + after[1]) / 2 - p[1]),
      ];
      const here = valueAt(grid, clear, [x, y]);
      if (here < KEEP_OFF_M) {
        const slopeX = valueAt(grid, clear, [x + 3, y]) - valueAt(grid, clear, [x - 3, y]);
        const slopeY = valueAt(grid, clear, [x, y + 3]) - valueAt(grid, clear, [x, y - 3]);
        const steep = Math.hypot(slopeX, slopeY);
        if (steep > 1e-6) {
          const push = Math.min(1.5, KEEP_OFF_M - here);
          x += (push * slopeX) / steep;
          y += (push * slopeY) / steep;
        }
      }
      return [x, y];
    });
    if (round % 20 === 19) points = spaced(points);
  }
  return points.filter((p, i) => i === 0 || distanceBetween(p, points[i - 1]!) > 0.5);
}
