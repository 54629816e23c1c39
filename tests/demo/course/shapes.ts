/** Outlines of greens, bunkers, tees, fairways, streams and paths as closed rings in local metres. */

import { closedCurve, type Measured, measureLine, openCurve, type Point } from './curves.ts';
import type { BunkerDesign, FairwayStation, GreenDesign, TeeDesign } from './design.ts';
import type { planeNoise } from './noise.ts';
import { centroid, exitDistance, scaleAbout, signedArea } from './polygons.ts';

type Noise = ReturnType<typeof planeNoise>;

/** A ring of an own frame (u ahead, v right) set down at `at`, ahead being `direction` turned clockwise. */
function setDown(ring: readonly Point[], at: Point, [dx, dy]: Point, turnDeg: number): Point[] {
  const turn = (turnDeg * Math.PI) / 180;
  const [ax, ay] = [dx * Math.cos(turn) + dy * Math.sin(turn), dy * Math.cos(turn) - dx * Math.sin(turn)];
  return ring.map(([u, v]) => [at[0] + ax * u + ay * v, at[1] + ay * u - ax * v]);
}

function toArea(ring: readonly Point[], areaM2: number): Point[] {
  return scaleAbout(ring, centroid(ring), Math.sqrt(areaM2 / Math.abs(signedArea(ring))));
}

/** Pushes each vertex out or in along the ray from `centre`, by noise of its place. */
function unsteady(ring: readonly Point[], centre: Point, noise: Noise, amplitudeM: number): Point[] {
  return ring.map((p) => {
    const [dx, dy] = [p[0] - centre[0], p[1] - centre[1]];
    const r = Math.hypot(dx, dy);
    const grown = 1 + (noise(p[0], p[1]) * amplitudeM) / r;
    return [centre[0] + dx * grown, centre[1] + dy * grown];
  });
}

/** A bean: discs strung along a bent spine, their size changing from front to back (or left to right). */
export function greenRing(design: GreenDesign, line: Measured, noise: Noise): Point[] {
  const { areaM2, depth, turnDeg, taper, bend } = design;
  const reach = 1.35 * ((depth >= 1 ? depth : 1 / depth) - 1);
  const discs = Array.from({ length: 21 }, (_, k) => {
    const t = k / 10 - 1;
    return { u: t * reach, v: 3.6 * bend * (t * t - 0.33), radius: 1 + taper * t };
  });
  // seen from the middle, the edge is where the ray leaves the last disc; then notches are mown out
  const edges = Array.from({ length: 36 }, (_, k) => {
    const [c, s] = [Math.cos((2 * Math.PI * k) / 36), Math.sin((2 * Math.PI * k) / 36)];
    const exits = discs.map(({ u, v, radius }) => {
      const along = u * c + v * s;
      const square = radius * radius - (u * u + v * v - along * along);
      return square < 0 ? 0 : along + Math.sqrt(square);
    });
    return Math.max(...exits);
  });
  const outline = evened(edges, 3).map((edge, k): Point => {
    const angle = (2 * Math.PI * k) / 36;
    return [edge * Math.cos(angle), edge * Math.sin(angle)];
  });
  const upright = depth >= 1 ? outline : outline.map(([u, v]): Point => [-v, u]);
  const centre = line.at(line.lengthM, 0);
  const placed = setDown(toArea(upright, areaM2), [0, 0], line.direction(line.lengthM), turnDeg);
  const [mx, my] = centroid(placed);
  const centred = placed.map(([x, y]): Point => [x - mx + centre[0], y - my + centre[1]]);
  return closedCurve(unsteady(centred, centre, noise, 0.8), 1.7);
}

/** Running means over three neighbours of a closed row of numbers. */
function evened(values: readonly number[], rounds: number): number[] {
  let row = [...values];
  for (let round = 0; round < rounds; round++) {
    row = row.map((value, k) => {
      const before = row[(k + row.length - 1) % row.length]!;
      const after = row[(k + 1) % row.length]!;
      return 0.25 * before + 0.5 * value + 0.25 * after;
    });
  }
  return row;
}

/** A sand outline about the origin: long axis along v, bays between the lobes. */
function bunkerOutline(design: BunkerDesign, noise: Noise, at: Point): Point[] {
  const count = 8 * design.lobes;
  const phase = (at[0] * 0.37 + at[1] * 0.61) % (2 * Math.PI);
  const root = Math.sqrt(design.stretch);
  const angleOf = (k: number): number => (2 * Math.PI * k) / count;
  const reaches = Array.from({ length: count }, (_, k) => {
    const wave = noise(at[0] + 40 * Math.cos(angleOf(k)), at[1] + 40 * Math.sin(angleOf(k)));
    return 1 + 0.22 * Math.cos(design.lobes * angleOf(k) + phase) + 0.18 * wave;
  });
  const control = evened(reaches, 1).map(
    (r, k): Point => [(r * Math.cos(angleOf(k))) / root, r * Math.sin(angleOf(k)) * root],
  );
  return closedCurve(toArea(control, design.areaM2), 1.1);
}

export function bunkerRing(
  design: BunkerDesign,
  line: Measured,
  green: readonly Point[],
  noise: Noise,
): Point[] {
  if ('at' in design) {
    const at = line.at(...design.at);
    return setDown(bunkerOutline(design, noise, at), at, line.direction(design.at[0]), design.turnDeg + 90);
  }
  const centre = centroid(green);
  const clockwise = (design.clock / 12) * 2 * Math.PI;
  const [dx, dy] = line.direction(line.lengthM);
  const ray: Point = [
    dx * Math.cos(clockwise) + dy * Math.sin(clockwise),
    dy * Math.cos(clockwise) - dx * Math.sin(clockwise),
  ];
  const halfDepth = Math.sqrt(design.areaM2 / Math.PI / design.stretch);
  // start outside and come in until the sand keeps its distance from the nearest edge of the green
  let reach = exitDistance(green, centre, ray) + design.gapM + halfDepth;
  const at = (): Point => [centre[0] + ray[0] * reach, centre[1] + ray[1] * reach];
  const place = (): Point[] => {
    const tangent = tangentAngle(green, at(), ray);
    return setDown(bunkerOutline(design, noise, centre), at(), ray, tangent);
  };
  for (let i = 0; i < 40; i++) {
    const gap = gapBetween(place(), green);
    if (Math.abs(gap - design.gapM) < 0.15) break;
    reach += 0.6 * (design.gapM - gap);
  }
  return place();
}

/** Degrees by which the edge of the green nearest to `at` turns against square to the ray. */
function tangentAngle(green: readonly Point[], at: Point, ray: Point): number {
  let best = Infinity;
  let normal: Point = ray;
  for (const p of green) {
    const d = Math.hypot(at[0] - p[0], at[1] - p[1]);
    if (d < best) {
      best = d;
      normal = [(at[0] - p[0]) / d, (at[1] - p[1]) / d];
    }
  }
  const cross = ray[0] * normal[1] - ray[1] * normal[0];
  const dot = ray[0] * normal[0] + ray[1] * normal[1];
  return (-Math.atan2(cross, dot) * 180) / Math.PI;
}

function gapBetween(a: readonly Point[], b: readonly Point[]): number {
  let best = Infinity;
  for (const p of a) for (const q of b) best = Math.min(best, Math.hypot(p[0] - q[0], p[1] - q[1]));
  return best;
}

/** A tee: a rounded, slightly lopsided platform about its marker, which stands a little behind the middle. */
export function teeRing(design: TeeDesign, line: Measured, noise: Noise): Point[] {
  const [ahead, aside] = design.at;
  const at = line.at(ahead + 1.5, aside);
  const control: Point[] = [];
  for (let k = 0; k < 14; k++) {
    const angle = (2 * Math.PI * k) / 14;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    // between an ellipse and a box: |u|^3 + |v|^3 = 1
    const r = 1 / Math.cbrt(Math.abs(c) ** 3 + Math.abs(s) ** 3);
    control.push([(r * c * design.depthM) / 2, (r * s * design.widthM * (1 + 0.12 * c)) / 2]);
  }
  const turnDeg = 14 * noise(at[0] * 3, at[1] * 3);
  return closedCurve(unsteady(setDown(control, at, line.direction(ahead), turnDeg), at, noise, 0.5), 2);
}

export function fairwayRing(stations: readonly FairwayStation[], line: Measured, noise: Noise): Point[] {
  const measured = stations.map(([s, o, w]) => [s < 0 ? line.lengthM + s : s, o, w] as const);
  const edge = (side: -1 | 1): Point[] =>
    denser(measured).map(([s, o, w]) => {
      const [x, y] = line.at(s, 0);
      // each side wanders by itself
      const wander = 2.4 * noise(x * 1.1 + side * 500, y * 1.1);
      return line.at(s, o + side * (w / 2 + wander));
    });
  const first = measured[0]!;
  const last = measured[measured.length - 1]!;
  const capEnd = line.at(last[0] + last[2] * 0.3, last[1]);
  const capStart = line.at(Math.max(0.1, first[0] - first[2] * 0.38), first[1] + 2 * noise(first[0] * 9, 3));
  return closedCurve([...edge(1), capEnd, ...edge(-1).reverse(), capStart], 5);
}

/** Stations at most 22 m apart, offset and width eased between the given ones. */
function denser(stations: readonly FairwayStation[]): FairwayStation[] {
  const out: FairwayStation[] = [];
  for (let i = 0; i + 1 < stations.length; i++) {
    const [a, b] = [stations[i]!, stations[i + 1]!];
    const steps = Math.max(1, Math.round((b[0] - a[0]) / 22));
    for (let k = 0; k < steps; k++) {
      const t = k / steps;
      const eased = t * t * (3 - 2 * t);
      out.push([a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * eased, a[2] + (b[2] - a[2]) * eased]);
    }
  }
  out.push(stations[stations.length - 1]!);
  return out;
}

/** Both banks of a band of changing width round a smooth centre line; `from` and `to` index the control points. */
export function ribbonRing(
  control: readonly (readonly [number, number, number])[],
  from: number,
  to: number,
  stepM: number,
  wander: (x: number, y: number) => number,
  sway: (x: number, y: number) => number,
): Point[] {
  const centre = openCurve(
    control.map(([x, y]): Point => [x, y]),
    stepM,
  );
  const line = measureLine(centre);
  // stations of the control points on the curve
  const stations: number[] = [];
  let s = 0;
  let next = 0;
  centre.forEach((p, i) => {
    if (i > 0) s += Math.hypot(p[0] - centre[i - 1]![0], p[1] - centre[i - 1]![1]);
    const target = control[next];
    if (target !== undefined && Math.hypot(p[0] - target[0], p[1] - target[1]) < 1e-9) {
      stations.push(s);
      next++;
    }
  });
  const [start, end] = [stations[from]!, stations[to]!];
  const count = Math.max(2, Math.ceil((end - start) / stepM));
  const right: Point[] = [];
  const left: Point[] = [];
  for (let k = 0; k <= count; k++) {
    const at = start + ((end - start) * k) / count;
    let i = from;
    while (i + 1 < to && stations[i + 1]! < at) i++;
    const t = Math.min(1, Math.max(0, (at - stations[i]!) / (stations[i + 1]! - stations[i]!)));
    const width = control[i]![2] + (control[i + 1]![2] - control[i]![2]) * t;
    const [x, y] = line.at(Math.max(at, 1e-6), 0);
    right.push(line.at(Math.max(at, 1e-6), sway(x, y) + width / 2 + wander(x, y)));
    left.push(line.at(Math.max(at, 1e-6), sway(x, y) - width / 2 - wander(x + 300, y)));
  }
  return [...right, ...left.reverse()];
}
