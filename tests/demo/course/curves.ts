/** Smooth curves through hand-set control points, in local metres (x east, y north). */

export type Point = readonly [number, number];

export function distanceBetween(a: Point, b: Point): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

export function mixPoints(a: Point, b: Point, t: number): Point {
  return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
}

/** A closed ring (first point not repeated) through all control points; about one vertex every `stepM`. */
export function closedCurve(control: readonly Point[], stepM: number): Point[] {
  const n = control.length;
  const out: Point[] = [];
  for (let i = 0; i < n; i++) {
    const quad = [
      control[(i + n - 1) % n]!,
      control[i]!,
      control[(i + 1) % n]!,
      control[(i + 2) % n]!,
    ] as const;
    appendSpan(out, quad, stepM);
  }
  return out;
}

/** An open curve from the first control point to the last. */
export function openCurve(control: readonly Point[], stepM: number): Point[] {
  const n = control.length;
  const first = control[0]!;
  const last = control[n - 1]!;
  const before: Point = [2 * first[0] - control[1]![0], 2 * first[1] - control[1]![1]];
  const after: Point = [2 * last[0] - control[n - 2]![0], 2 * last[1] - control[n - 2]![1]];
  const padded = [before, ...control, after];
  const out: Point[] = [];
  for (let i = 0; i + 1 < n; i++) {
    appendSpan(out, [padded[i]!, padded[i + 1]!, padded[i + 2]!, padded[i + 3]!], stepM);
  }
  out.push(last);
  return out;
}

/**
 * One span of a centripetal Catmull-Rom spline (Barry & Goldman 1988; the centripetal knots, Yuksel 2011, keep
 * it free of cusps), from its second point up to but without its third.
 */
function appendSpan(
  out: Point[],
  [p0, p1, p2, p3]: readonly [Point, Point, Point, Point],
  stepM: number,
): void {
  const knot = (a: Point, b: Point): number => Math.max(Math.sqrt(distanceBetween(a, b)), 1e-6);
  const t1 = knot(p0, p1);
  const t2 = t1 + knot(p1, p2);
  const t3 = t2 + knot(p2, p3);
  const steps = Math.max(1, Math.ceil(distanceBetween(p1, p2) / stepM));
  for (let i = 0; i < steps; i++) {
    const t = t1 + ((t2 - t1) * i) / steps;
    const a1 = mixPoints(p0, p1, t / t1);
    const a2 = mixPoints(p1, p2, (t - t1) / (t2 - t1));
    const a3 = mixPoints(p2, p3, (t - t2) / (t3 - t2));
    const b1 = mixPoints(a1, a2, t / t2);
    const b2 = mixPoints(a2, a3, (t - t1) / (t3 - t1));
    out.push(mixPoints(b1, b2, (t - t1) / (t2 - t1)));
  }
}

/** Chaikin's corner cutting of a closed ring. */
export function cutCorners(ring: readonly Point[], rounds: number): Point[] {
  let points = [...ring];
  for (let round = 0; round < rounds; round++) {
    points = points.flatMap((p, i) => {
      const next = points[(i + 1) % points.length]!;
      return [mixPoints(p, next, 0.25), mixPoints(p, next, 0.75)];
    });
  }
  return points;
}

/** Chaikin's corner cutting of an open line; its ends stay. */
export function easeLine(line: readonly Point[], rounds: number): Point[] {
  let points = [...line];
  for (let round = 0; round < rounds; round++) {
    const cut: Point[] = [points[0]!];
    for (let i = 0; i + 1 < points.length; i++) {
      const [a, b] = [points[i]!, points[i + 1]!];
      if (i > 0) cut.push(mixPoints(a, b, 0.25));
      if (i + 2 < points.length) cut.push(mixPoints(a, b, 0.75));
    }
    cut.push(points[points.length - 1]!);
    points = cut;
  }
  return points;
}

/** Points of a polyline whose corners are rounded with a parabola that starts `reachM` before each corner. */
export function roundCorners(line: readonly Point[], reachM: number): Point[] {
  const out: Point[] = [line[0]!];
  for (let i = 1; i + 1 < line.length; i++) {
    const [before, corner, after] = [line[i - 1]!, line[i]!, line[i + 1]!];
    const lengthIn = distanceBetween(before, corner);
    const lengthOut = distanceBetween(corner, after);
    const reach = Math.min(reachM, 0.48 * lengthIn, 0.48 * lengthOut);
    const from = mixPoints(corner, before, reach / lengthIn);
    const to = mixPoints(corner, after, reach / lengthOut);
    for (let k = 0; k <= 12; k++) {
      out.push(mixPoints(mixPoints(from, corner, k / 12), mixPoints(corner, to, k / 12), k / 12));
    }
  }
  out.push(line[line.length - 1]!);
  return out;
}

/** A line measured along itself: stations in metres from its start, offsets positive to the right. */
export interface Measured {
  readonly lengthM: number;
  /** Negative stations count back from the end; stations beyond either end go straight on. */
  at(stationM: number, offsetM: number): Point;
  /** Unit vector along the line. */
  direction(stationM: number): Point;
}

export function measureLine(points: readonly Point[]): Measured {
  const starts: number[] = [0];
  for (let i = 1; i < points.length; i++)
    starts.push(starts[i - 1]! + distanceBetween(points[i - 1]!, points[i]!));
  const lengthM = starts[starts.length - 1]!;
  const segmentAt = (s: number): number => {
    let i = 0;
    while (i + 2 < points.length && starts[i + 1]! < s) i++;
    return i;
  };
  const direction = (stationM: number): Point => {
    // the mean of the directions a little before and after, so that offsets do not jump at a vertex
    const [a, b] = [segmentAt(stationM - 6), segmentAt(stationM + 6)].map((i) => {
      const d = distanceBetween(points[i]!, points[i + 1]!);
      return [(points[i + 1]![0] - points[i]![0]) / d, (points[i + 1]![1] - points[i]![1]) / d] as const;
    }) as [Point, Point];
    const norm = Math.hypot(a[0] + b[0], a[1] + b[1]);
    return [(a[0] + b[0]) / norm, (a[1] + b[1]) / norm];
  };
  return {
    lengthM,
    direction,
    at(stationM, offsetM) {
      const s = stationM < 0 ? lengthM + stationM : stationM;
      const i = segmentAt(s);
      const spanM = distanceBetween(points[i]!, points[i + 1]!);
      const [x, y] = mixPoints(points[i]!, points[i + 1]!, (s - starts[i]!) / spanM);
      const [dx, dy] = direction(s);
      return [x + dy * offsetM, y - dx * offsetM];
    },
  };
}
