/** Finds what a point being drawn should catch on: the nearest corner, else the nearest side, within reach. */

import { metresPerDegree } from '../degree-lengths.ts';
import type { EditableDocument, FeatureId } from '../document.ts';
import { geometryOf } from '../document.ts';
import type { LonLat } from '../model.ts';
import { roundLonLat } from '../positions.ts';
import { pathsOf } from './shape.ts';

export interface Snap {
  readonly kind: 'vertex' | 'edge';
  /** For a vertex exactly the coordinates that the file has there; on an edge the nearest place, to 8 decimals. */
  readonly at: LonLat;
  readonly feature: FeatureId;
  readonly distanceM: number;
}

/** What can be caught on, laid out flat for looking up at every move of the mouse. Made once for a document. */
export interface SnapIndex {
  /** Longitude and latitude of each side's two ends; a point is a side without length. */
  readonly sides: Float64Array;
  /** The feature that side `i` belongs to. */
  readonly owners: readonly FeatureId[];
}

/** Leaves out the features that are themselves being moved or drawn. */
export function makeSnapIndex(
  document: EditableDocument,
  without: ReadonlySet<FeatureId> = new Set(),
): SnapIndex {
  const numbers: number[] = [];
  const owners: FeatureId[] = [];
  for (const feature of document.features) {
    if (without.has(feature.id)) continue;
    const geometry = geometryOf(feature);
    if (geometry === undefined) continue;
    for (const { points, closed } of pathsOf(geometry).flat()) {
      const sides = Math.max(1, closed ? points.length : points.length - 1);
      for (let i = 0; i < sides; i++) {
        const a = points[i]!;
        const b = points[(i + 1) % points.length]!;
        numbers.push(a[0], a[1], b[0], b[1]);
        owners.push(feature.id);
      }
    }
  }
  return { sides: Float64Array.from(numbers), owners };
}

/** Null where nothing lies within `toleranceM` metres. A corner within reach wins over a nearer side. */
export function snap(index: SnapIndex, at: LonLat, toleranceM: number): Snap | null {
  const [lon, lat] = at;
  const { eastM, northM } = metresPerDegree(lat);
  const { sides, owners } = index;
  let corner = -1;
  let cornerSquare = toleranceM * toleranceM;
  let side = -1;
  let sideSquare = cornerSquare;
  let sideShare = 0;
  for (let i = 0; i < owners.length; i++) {
    const ax = (sides[4 * i]! - lon) * eastM;
    const ay = (sides[4 * i + 1]! - lat) * northM;
    const bx = (sides[4 * i + 2]! - lon) * eastM;
    const by = (sides[4 * i + 3]! - lat) * northM;
    const aSquare = ax * ax + ay * ay;
    if (aSquare <= cornerSquare && (corner < 0 || aSquare < cornerSquare)) {
      corner = 2 * i;
      cornerSquare = aSquare;
    }
    const bSquare = bx * bx + by * by;
    if (bSquare <= cornerSquare && (corner < 0 || bSquare < cornerSquare)) {
      corner = 2 * i + 1;
      cornerSquare = bSquare;
    }
    const dx = bx - ax;
    const dy = by - ay;
    const lengthSquare = dx * dx + dy * dy;
    if (lengthSquare === 0) continue;
    const share = Math.min(1, Math.max(0, -(ax * dx + ay * dy) / lengthSquare));
    const square = (ax + share * dx) ** 2 + (ay + share * dy) ** 2;
    if (square <= sideSquare && (side < 0 || square < sideSquare)) {
      side = i;
      sideSquare = square;
      sideShare = share;
    }
  }
  if (corner >= 0) {
    const vertex: LonLat = [sides[2 * corner]!, sides[2 * corner + 1]!];
    return { kind: 'vertex', at: vertex, feature: owners[corner >> 1]!, distanceM: Math.sqrt(cornerSquare) };
  }
  if (side < 0) return null;
  const [ax, ay, bx, by] = sides.subarray(4 * side, 4 * side + 4) as unknown as [
    number,
    number,
    number,
    number,
  ];
  const nearest = roundLonLat([ax + (bx - ax) * sideShare, ay + (by - ay) * sideShare]);
  return { kind: 'edge', at: nearest, feature: owners[side]!, distanceM: Math.sqrt(sideSquare) };
}
