/** Places spaced evenly along a line. */

import { distanceM } from '../ellipsoid.ts';
import type { LonLat } from '../model.ts';

/** Places every `spacingM` along a line, half a spacing from its start; undefined for more than `most`. */
export function alongLine(points: readonly LonLat[], spacingM: number, most: number): LonLat[] | undefined {
  const places: LonLat[] = [];
  let nextM = spacingM / 2;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!];
    const sideM = distanceM(a, b);
    for (; nextM <= sideM; nextM += spacingM) {
      if (places.length >= most) return undefined;
      const share = nextM / sideM;
      places.push([a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share]);
    }
    nextM -= sideM;
  }
  return places;
}
