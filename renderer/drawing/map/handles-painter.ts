/** Paints what is chosen with its handles, what is being drawn, and where the next place would come. */

import type { VertexAddress } from '../../../core/course/edits/shape.ts';
import type { Spot } from '../../../core/plan/model.ts';
import type { Brush, Painter } from '../../map/canvas-layer.ts';
import { middlesOf } from '../hit.ts';
import type { FlatPath, Shape } from '../shapes.ts';
import { pathOf } from './drawn-grounds.ts';
import type { SketchColours } from './sketch-colours.ts';

export interface HandleScene {
  readonly chosen: readonly Shape[];
  /** Whether corners can be taken hold of. */
  readonly handles: boolean;
  readonly corner: VertexAddress | null;
  readonly sketch: readonly Spot[];
  readonly closes: boolean;
  readonly cursor: {
    readonly at: Spot;
    readonly by: 'mouse' | 'keys';
    readonly caught: boolean;
  } | null;
  /** A place that a fault is about. */
  readonly pointedOut: Shape | null;
  /** Outlines of what an import would bring. */
  readonly preview: readonly Shape[];
}

/** Corners nearer to each other than this have no handle for the side between them, screen pixels. */
const LEAST_SIDE_PX = 26;
/** Corners of larger shapes are shown only where they are on screen. */
const EDGE_PX = 12;

export function handlesPainter(scene: HandleScene, colours: SketchColours): Painter {
  return (brush) => {
    for (const shape of scene.preview) outline(brush, shape, colours.line, colours, 1.6);
    if (scene.pointedOut !== null) outline(brush, scene.pointedOut, colours.fault, colours, 5);
    for (const shape of scene.chosen) outline(brush, shape, colours.line, colours, 2.4);
    if (scene.handles) for (const shape of scene.chosen) paintHandles(brush, shape, scene.corner, colours);
    paintSketch(brush, scene, colours);
  };
}

function outline(
  brush: Brush,
  shape: Shape,
  colour: string,
  { casing, wash }: SketchColours,
  width: number,
): void {
  if (shape.type === 'Point') {
    const [x, y] = brush.place({ x: shape.paths[0]!.xy[0]!, y: shape.paths[0]!.xy[1]! });
    for (const [style, line] of [
      [casing, width + 2.4],
      [colour, width],
    ] as const) {
      brush.context.beginPath();
      brush.context.arc(x, y, 13, 0, 2 * Math.PI);
      brush.context.strokeStyle = style;
      brush.context.lineWidth = line;
      brush.context.stroke();
    }
    return;
  }
  brush.metres((context) => {
    const path = pathOf(shape);
    context.lineJoin = 'round';
    if (shape.type !== 'LineString' && shape.kind !== 'boundary') {
      context.fillStyle = wash;
      context.fill(path, 'evenodd');
    }
    context.strokeStyle = casing;
    context.lineWidth = (width + 2.4) / brush.scale;
    context.stroke(path);
    context.strokeStyle = colour;
    context.lineWidth = width / brush.scale;
    context.stroke(path);
  });
}

function paintHandles(
  brush: Brush,
  shape: Shape,
  corner: VertexAddress | null,
  colours: SketchColours,
): void {
  if (shape.type === 'Point') return;
  const { context } = brush;
  for (const path of shape.paths) {
    context.lineWidth = 1.4;
    context.strokeStyle = colours.line;
    context.fillStyle = colours.handle;
    for (const { i, x, y } of middlesOf(path)) {
      const [px, py] = brush.place({ x, y });
      if (!isOnScreen(brush, px, py) || sideLength(path, i) * brush.scale < LEAST_SIDE_PX) continue;
      context.beginPath();
      context.arc(px, py, 3, 0, 2 * Math.PI);
      context.fill();
      context.stroke();
    }
    for (let i = 0; i < path.xy.length / 2; i++) {
      const [px, py] = brush.place({ x: path.xy[2 * i]!, y: path.xy[2 * i + 1]! });
      if (!isOnScreen(brush, px, py)) continue;
      const isChosen =
        corner?.feature === shape.feature.id &&
        (corner.part ?? 0) === path.part &&
        (corner.ring ?? 0) === path.ring &&
        corner.vertex === i;
      const half = isChosen ? 6 : 4;
      context.fillStyle = isChosen ? colours.chosenCorner : colours.handle;
      context.fillRect(px - half, py - half, 2 * half, 2 * half);
      context.strokeRect(px - half, py - half, 2 * half, 2 * half);
    }
  }
}

function isOnScreen({ width, height }: Brush, x: number, y: number): boolean {
  return x > -EDGE_PX && y > -EDGE_PX && x < width + EDGE_PX && y < height + EDGE_PX;
}

function sideLength({ xy }: FlatPath, i: number): number {
  const j = (i + 1) % (xy.length / 2);
  return Math.hypot(xy[2 * j]! - xy[2 * i]!, xy[2 * j + 1]! - xy[2 * i + 1]!);
}

function paintSketch(brush: Brush, scene: HandleScene, colours: SketchColours): void {
  const { context } = brush;
  const { sketch, cursor } = scene;
  const spots = cursor === null ? sketch : [...sketch, cursor.at];
  if (sketch.length > 0) {
    const trace = (): void => {
      context.beginPath();
      spots.forEach((spot, i) => {
        const [x, y] = brush.place(spot);
        if (i === 0) context.moveTo(x, y);
        else context.lineTo(x, y);
      });
      if (scene.closes && spots.length > 2) context.closePath();
    };
    trace();
    if (scene.closes && spots.length > 2) {
      context.fillStyle = colours.wash;
      context.fill();
    }
    for (const [style, width] of [
      [colours.casing, 4.4],
      [colours.line, 2],
    ] as const) {
      trace();
      context.strokeStyle = style;
      context.lineWidth = width;
      context.stroke();
    }
  }
  sketch.forEach((spot, i) => {
    const [x, y] = brush.place(spot);
    // the first corner closes the shape: it is larger than the others
    context.beginPath();
    context.arc(x, y, i === 0 && scene.closes ? 6 : 4, 0, 2 * Math.PI);
    context.fillStyle = colours.handle;
    context.fill();
    context.strokeStyle = colours.line;
    context.lineWidth = 1.8;
    context.stroke();
  });
  if (cursor === null) return;
  const [x, y] = brush.place(cursor.at);
  if (cursor.caught) {
    context.beginPath();
    context.arc(x, y, 8, 0, 2 * Math.PI);
    context.strokeStyle = colours.chosenCorner;
    context.lineWidth = 2.4;
    context.stroke();
  }
  if (cursor.by === 'keys') paintCrossHair(context, x, y, colours);
}

function paintCrossHair(
  context: CanvasRenderingContext2D,
  x: number,
  y: number,
  { casing, line }: SketchColours,
): void {
  for (const [style, width] of [
    [casing, 4.4],
    [line, 2],
  ] as const) {
    context.beginPath();
    for (const [dx, dy] of [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
    ] as const) {
      context.moveTo(x + 4 * dx, y + 4 * dy);
      context.lineTo(x + 18 * dx, y + 18 * dy);
    }
    context.strokeStyle = style;
    context.lineWidth = width;
    context.stroke();
  }
}
