/** What lies under the pointer: a handle of what is chosen, else the feature that a person would mean. */

import type { VertexAddress } from '../../core/course/edits/shape.ts';
import type { Spot } from '../../core/plan/model.ts';
import type { FlatPath, Shape } from './shapes.ts';

export type Handle =
  | { readonly on: 'corner'; readonly address: VertexAddress }
  /** Half way along a side; `address` is the corner before it. */
  | { readonly on: 'side'; readonly address: VertexAddress; readonly at: Spot };

/** The nearest corner within reach, else the nearest middle of a side. */
export function handleAt(shapes: readonly Shape[], at: Spot, reachM: number): Handle | null {
  let best: Handle | null = null;
  let least = reachM * reachM;
  for (const shape of shapes) {
    for (const path of shape.paths) {
      const count = path.xy.length / 2;
      for (let i = 0; i < count; i++) {
        const square = squareTo(at, path.xy[2 * i]!, path.xy[2 * i + 1]!);
        if (square > least) continue;
        least = square;
        best = { on: 'corner', address: addressOf(shape, path, i) };
      }
    }
  }
  if (best !== null) return best;
  for (const shape of shapes) {
    for (const path of shape.paths) {
      for (const { i, x, y } of middlesOf(path)) {
        const square = squareTo(at, x, y);
        if (square > least) continue;
        least = square;
        best = { on: 'side', address: addressOf(shape, path, i), at: { x, y } };
      }
    }
  }
  return best;
}

/** The middle of each side, with the index of the corner before it. */
export function middlesOf({ xy, closed }: FlatPath): { i: number; x: number; y: number }[] {
  const count = xy.length / 2;
  const sides = closed ? count : count - 1;
  return Array.from({ length: Math.max(0, sides) }, (_, i) => {
    const j = (i + 1) % count;
    return { i, x: (xy[2 * i]! + xy[2 * j]!) / 2, y: (xy[2 * i + 1]! + xy[2 * j + 1]!) / 2 };
  });
}

function addressOf(shape: Shape, { part, ring }: FlatPath, vertex: number): VertexAddress {
  return { feature: shape.feature.id, part, ring, vertex };
}

/**
 * Points win over lines, lines over areas, and of areas the smallest that holds the place: the bunker in the
 * fairway, not the fairway around it. The inside of the course edge is not taken hold of, only its line.
 */
export function featureAt(shapes: readonly Shape[], at: Spot, reachM: number): Shape | null {
  let best: Shape | null = null;
  let bestRank = Infinity;
  let bestSize = Infinity;
  for (const shape of shapes) {
    const { box } = shape;
    const margin = Math.max(reachM, shape.kind === 'tree' ? shape.crownRadiusM : 0);
    if (at.x < box.west - margin || at.x > box.east + margin) continue;
    if (at.y < box.south - margin || at.y > box.north + margin) continue;
    const found = rankAt(shape, at, reachM);
    if (found === null) continue;
    if (found.rank < bestRank || (found.rank === bestRank && found.size <= bestSize)) {
      best = shape;
      bestRank = found.rank;
      bestSize = found.size;
    }
  }
  return best;
}

function rankAt(
  shape: Shape,
  at: Spot,
  reachM: number,
): { readonly rank: number; readonly size: number } | null {
  if (shape.type === 'Point') {
    const distance = Math.sqrt(squareTo(at, shape.paths[0]!.xy[0]!, shape.paths[0]!.xy[1]!));
    if (distance <= reachM) return { rank: 0, size: distance };
    return shape.kind === 'tree' && distance <= shape.crownRadiusM ? { rank: 2, size: distance } : null;
  }
  const distance = distanceToPaths(shape.paths, at);
  if (shape.type === 'LineString') return distance <= reachM ? { rank: 1, size: distance } : null;
  if (shape.kind === 'boundary') return distance <= reachM ? { rank: 1, size: distance } : null;
  if (!isInsidePaths(shape.paths, at) && distance > reachM / 2) return null;
  return { rank: 3, size: shape.areaM2 };
}

/** By the even-odd rule, so that holes are outside. */
export function isInsidePaths(paths: readonly FlatPath[], { x, y }: Spot): boolean {
  let inside = false;
  for (const { xy, closed } of paths) {
    if (!closed) continue;
    const count = xy.length / 2;
    for (let i = 0, j = count - 1; i < count; j = i++) {
      const yi = xy[2 * i + 1]!;
      const yj = xy[2 * j + 1]!;
      if (yi > y === yj > y) continue;
      if (x < ((xy[2 * j]! - xy[2 * i]!) * (y - yi)) / (yj - yi) + xy[2 * i]!) inside = !inside;
    }
  }
  return inside;
}

function distanceToPaths(paths: readonly FlatPath[], at: Spot): number {
  let least = Infinity;
  for (const { xy, closed } of paths) {
    const count = xy.length / 2;
    for (let i = 0; i < (closed ? count : count - 1); i++) {
      const j = (i + 1) % count;
      least = Math.min(least, squareToSide(at, xy[2 * i]!, xy[2 * i + 1]!, xy[2 * j]!, xy[2 * j + 1]!));
    }
  }
  return Math.sqrt(least);
}

function squareToSide({ x, y }: Spot, ax: number, ay: number, bx: number, by: number): number {
  const dx = bx - ax;
  const dy = by - ay;
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / square));
  return squareTo({ x, y }, ax + share * dx, ay + share * dy);
}

function squareTo({ x, y }: Spot, ax: number, ay: number): number {
  return (x - ax) ** 2 + (y - ay) ** 2;
}
