/** The document's features laid out in metres of the map's frame, kept for as long as a feature stays the same. */

import type { LocalFrame } from '../../core/course/local-frame.ts';
import {
  type DocumentFeature,
  type EditableDocument,
  geometryOf,
  holeOf,
  kindOf,
  propertiesOf,
} from '../../core/course/document.ts';
import { TREE_CROWN_RADIUS_M } from '../../core/course/defaults.ts';
import { pathsOf } from '../../core/course/edits/shape.ts';
import type { FeatureKind } from '../../core/course/feature-kind.ts';
import type { GeometryType } from '../../core/course/schema.ts';

/** A ring or line: x, y pairs, a ring without its closing point. */
export interface FlatPath {
  readonly part: number;
  readonly ring: number;
  readonly closed: boolean;
  readonly xy: Float64Array;
}

export interface Box {
  readonly west: number;
  readonly south: number;
  readonly east: number;
  readonly north: number;
}

export interface Shape {
  readonly feature: DocumentFeature;
  readonly kind: FeatureKind | undefined;
  readonly hole: number | undefined;
  readonly type: GeometryType;
  readonly paths: readonly FlatPath[];
  readonly box: Box;
  /** Square metres in the plane; 0 for lines and points. */
  readonly areaM2: number;
  /** Of a tree's crown, metres. */
  readonly crownRadiusM: number;
}

interface Kept {
  readonly frame: LocalFrame;
  readonly shape: Shape | null;
}

const kept = new WeakMap<DocumentFeature, Kept>();

/** Null for a feature whose geometry cannot be read. */
export function shapeOf(feature: DocumentFeature, frame: LocalFrame): Shape | null {
  const known = kept.get(feature);
  if (known?.frame === frame) return known.shape;
  const shape = layOut(feature, frame);
  kept.set(feature, { frame, shape });
  return shape;
}

/** In the order of the document. */
export function shapesOf(document: EditableDocument, frame: LocalFrame): readonly Shape[] {
  const shapes: Shape[] = [];
  for (const feature of document.features) {
    const shape = shapeOf(feature, frame);
    if (shape !== null) shapes.push(shape);
  }
  return shapes;
}

function layOut(feature: DocumentFeature, frame: LocalFrame): Shape | null {
  const geometry = geometryOf(feature);
  if (geometry === undefined) return null;
  let west = Infinity;
  let south = Infinity;
  let east = -Infinity;
  let north = -Infinity;
  let areaM2 = 0;
  const paths: FlatPath[] = [];
  pathsOf(geometry).forEach((rings, part) => {
    rings.forEach(({ points, closed }, ring) => {
      const xy = new Float64Array(2 * points.length);
      points.forEach(([lon, lat], i) => {
        const { x, y } = frame.toSpot([lon, lat]);
        xy[2 * i] = x;
        xy[2 * i + 1] = y;
        west = Math.min(west, x);
        east = Math.max(east, x);
        south = Math.min(south, y);
        north = Math.max(north, y);
      });
      paths.push({ part, ring, closed, xy });
      if (closed) areaM2 += (ring === 0 ? 1 : -1) * ringArea(xy);
    });
  });
  return {
    feature,
    kind: kindOf(feature),
    hole: holeOf(feature),
    type: geometry.type,
    paths,
    box: { west, south, east, north },
    areaM2,
    crownRadiusM: crownRadius(propertiesOf(feature)['diameter_crown']),
  };
}

function crownRadius(diameter: unknown): number {
  const metres = typeof diameter === 'number' ? diameter : Number.parseFloat(String(diameter));
  return metres > 0 && metres <= 200 ? metres / 2 : TREE_CROWN_RADIUS_M;
}

function ringArea(xy: Float64Array): number {
  let twice = 0;
  const count = xy.length / 2;
  for (let i = 0; i < count; i++) {
    const j = (i + 1) % count;
    twice += xy[2 * i]! * xy[2 * j + 1]! - xy[2 * j]! * xy[2 * i + 1]!;
  }
  return Math.abs(twice) / 2;
}

/** The least box that holds all; null for none. */
export function boxAround(shapes: readonly Shape[]): Box | null {
  if (shapes.length === 0) return null;
  return shapes.reduce<Box>(
    (box, { box: other }) => ({
      west: Math.min(box.west, other.west),
      south: Math.min(box.south, other.south),
      east: Math.max(box.east, other.east),
      north: Math.max(box.north, other.north),
    }),
    { west: Infinity, south: Infinity, east: -Infinity, north: -Infinity },
  );
}
