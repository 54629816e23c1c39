/**
 * Which hole a feature belongs to: by its `ref`, else by how near it lies to the part of a hole's line where such
 * things are. What lies about as near to two holes is left to the person. Distances: common practice, no source.
 */

import type { FeatureKind } from '../feature-kind.ts';
import { metresPerDegree } from '../degree-lengths.ts';
import { distanceM, polylineLengthM } from '../ellipsoid.ts';
import type { LonLat, Rings } from '../model.ts';
import { distanceToLineM } from '../nearness.ts';
import { isInside } from '../polygon.ts';
import { type Position, positionsOf } from '../positions.ts';
import type { Geometry } from '../schema.ts';
import { polygonsOfGeometry } from '../edits/shape.ts';
import { inEnglish, told, type Told } from '../../words/told.ts';
import type { Assignment, HoleWay, ProposedFeature, Unassigned } from './proposal.ts';

interface Place {
  /** The part of the line that the feature must be near to. */
  readonly part: 'end' | 'first-half' | 'whole';
  readonly withinM: number;
}

/** Kinds that are planned per hole; the others count wherever they lie. */
const PLACES: Readonly<Partial<Record<FeatureKind, Place>>> = {
  green: { part: 'end', withinM: 25 },
  'hole-position': { part: 'end', withinM: 30 },
  tee: { part: 'first-half', withinM: 40 },
  'tee-marker': { part: 'first-half', withinM: 40 },
  fairway: { part: 'whole', withinM: 10 },
  bunker: { part: 'whole', withinM: 60 },
};

/** Corners times line points that are looked at: a course needs a tenth of it, a file made to be slow far more. */
const MOST_LOOKS = 5_000_000;

export interface HoleAssignment {
  readonly features: readonly ProposedFeature[];
  readonly assigned: readonly Assignment[];
  readonly unassigned: readonly Unassigned[];
}

/** Features with a usable `ref` keep it; for the others it is written where one hole is clearly nearest. */
export function assignHoles(
  features: readonly ProposedFeature[],
  context: readonly HoleWay[],
): HoleAssignment {
  const ways = [
    ...context,
    ...features.flatMap(({ kind, geometry, properties }): HoleWay[] =>
      kind === 'hole' && geometry.type === 'LineString'
        ? [
            {
              hole: Number(properties['ref']),
              line: geometry.coordinates.map(([lon, lat]): LonLat => [lon, lat]),
            },
          ]
        : [],
    ),
  ].map(toParts);
  const budget = { looks: MOST_LOOKS };
  const assigned: Assignment[] = [];
  const unassigned: Unassigned[] = [];
  const placed = features.map((feature, index): ProposedFeature => {
    const place = PLACES[feature.kind];
    const ref = feature.properties['ref'];
    if (place === undefined) return feature;
    if (ref !== undefined) {
      assigned.push({ feature: index, hole: Number(ref), by: 'ref' });
      return feature;
    }
    const found = nearestHole(feature.geometry, place, ways, budget);
    if ('entry' in found) {
      unassigned.push({ feature: index, why: inEnglish(found), told: found });
      return feature;
    }
    assigned.push({ feature: index, hole: found.hole, by: 'nearness', distanceM: found.distanceM });
    return { ...feature, properties: { ...feature.properties, ref: String(found.hole) } };
  });
  return { features: placed, assigned, unassigned };
}

interface Parts {
  readonly hole: number;
  readonly line: readonly LonLat[];
  readonly firstHalf: readonly LonLat[];
  readonly box: Box;
}

type Box = readonly [west: number, south: number, east: number, north: number];

function boxOf(points: readonly Position[]): Box {
  let [west, south, east, north] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [lon, lat] of points) {
    west = Math.min(west, lon);
    east = Math.max(east, lon);
    south = Math.min(south, lat);
    north = Math.max(north, lat);
  }
  return [west, south, east, north];
}

/** Roughly how far two boxes lie apart, metres; 0 where they overlap. */
function gapM(a: Box, b: Box): number {
  const { eastM, northM } = metresPerDegree(a[1]);
  const x = Math.max(0, a[0] - b[2], b[0] - a[2]) * eastM;
  const y = Math.max(0, a[1] - b[3], b[1] - a[3]) * northM;
  return Math.hypot(x, y);
}

function toParts({ hole, line }: HoleWay): Parts {
  return { hole, line, firstHalf: firstHalfOf(line), box: boxOf(line) };
}

function firstHalfOf(line: readonly LonLat[]): LonLat[] {
  let leftM = polylineLengthM(line) / 2;
  const half: LonLat[] = line.slice(0, 1);
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1]!, line[i]!];
    const sideM = distanceM(a, b);
    if (sideM >= leftM) {
      const share = sideM === 0 ? 0 : leftM / sideM;
      half.push([a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share]);
      break;
    }
    leftM -= sideM;
    half.push(b);
  }
  return half;
}

/** The hole, or why there is none. */
function nearestHole(
  geometry: Geometry,
  { part, withinM }: Place,
  ways: readonly Parts[],
  budget: { looks: number },
): { readonly hole: number; readonly distanceM: number } | Told {
  if (ways.length === 0) return told(({ courseImport }) => courseImport.why.noLines);
  const corners = positionsOf(geometry);
  const box = boxOf(corners);
  // farther away it is neither the nearest nor as near as the nearest
  const reachM = 1.25 * withinM + 5;
  const ranked: { hole: number; line: readonly LonLat[]; distanceM: number }[] = [];
  for (const { hole, line, firstHalf, box: lineBox } of ways) {
    if (gapM(box, lineBox) > reachM) continue;
    budget.looks -= corners.length * line.length;
    if (budget.looks < 0) return told(({ courseImport }) => courseImport.why.manyLines);
    const wanted = part === 'end' ? line.slice(-1) : part === 'first-half' ? firstHalf : line;
    ranked.push({ hole, line, distanceM: distanceToLineM(geometry, wanted) });
  }
  ranked.sort((a, b) => a.distanceM - b.distanceM);
  const [best] = ranked;
  if (best === undefined || best.distanceM > withinM) {
    return told(({ courseImport }) => courseImport.why.noneNear[part], { metres: withinM });
  }
  const second = ranked.find(({ hole }) => hole !== best.hole);
  if (second === undefined || second.distanceM >= 1.25 * best.distanceM + 5) return best;
  if (part === 'end' && best.distanceM === 0 && second.distanceM === 0) {
    return told(({ courseImport }) => courseImport.why.bothEnd, { first: best.hole, second: second.hole });
  }
  if (best.distanceM === 0 && second.distanceM === 0) {
    const [most, next] = [best, second]
      .map((way) => ({ ...way, insideM: lengthInsideM(geometry, way.line) }))
      .sort((a, b) => b.insideM - a.insideM);
    if (most!.insideM >= 2 * next!.insideM) return most!;
  }
  return told(({ courseImport }) => courseImport.why.asNear, {
    first: best.hole,
    near: Math.round(best.distanceM),
    second: second.hole,
    far: Math.round(second.distanceM),
  });
}

const STEP_M = 5;

/** How much of a line runs through an area, to a few metres. */
function lengthInsideM(geometry: Geometry, line: readonly LonLat[]): number {
  const polygons: readonly Rings[] = polygonsOfGeometry(geometry);
  let inside = 0;
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1]!, line[i]!];
    const sideM = distanceM(a, b);
    const steps = Math.min(1000, Math.ceil(sideM / STEP_M));
    for (let step = 0; step < steps; step++) {
      const share = (step + 0.5) / steps;
      const at: LonLat = [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
      if (polygons.some((rings) => isInside(at, { rings }))) inside += sideM / steps;
    }
  }
  return inside;
}
