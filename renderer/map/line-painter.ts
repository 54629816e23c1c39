/** Paints the holes' lines of play: all of them over the whole course, one faintly under its shots. */

import type { LocalFrame } from '../../core/course/local-frame.ts';
import type { Hole } from '../../core/course/model.ts';
import type { Brush, Painter } from './canvas-layer.ts';
import type { Palette } from './palette.ts';

export function courseLines(holes: readonly Hole[], frame: LocalFrame, palette: Palette): Painter {
  return (brush) => {
    for (const hole of holes) strokeHole(brush, hole, frame, palette, 1.6, 0.85);
    for (const hole of holes) paintEnd(brush, hole, frame, palette);
  };
}

export function holeLine(hole: Hole, frame: LocalFrame, palette: Palette): Painter {
  return (brush) => strokeHole(brush, hole, frame, palette, 1, 0.45);
}

function strokeHole(
  brush: Brush,
  hole: Hole,
  frame: LocalFrame,
  palette: Palette,
  width: number,
  alpha: number,
): void {
  const { context } = brush;
  context.beginPath();
  for (const place of hole.line) context.lineTo(...brush.place(frame.toSpot(place)));
  context.setLineDash([4, 4]);
  context.globalAlpha = alpha;
  context.strokeStyle = palette.playLine;
  context.lineWidth = width;
  context.stroke();
  context.globalAlpha = 1;
  context.setLineDash([]);
}

/** A small flag where the line ends. */
function paintEnd(brush: Brush, hole: Hole, frame: LocalFrame, palette: Palette): void {
  const end = hole.line.at(-1);
  if (end === undefined) return;
  const { context } = brush;
  const [x, y] = brush.place(frame.toSpot(end));
  context.beginPath();
  context.moveTo(x, y);
  context.lineTo(x, y - 11);
  context.strokeStyle = palette.playLine;
  context.lineWidth = 1.4;
  context.stroke();
  context.beginPath();
  context.moveTo(x, y - 11);
  context.lineTo(x + 7, y - 8.5);
  context.lineTo(x, y - 6);
  context.closePath();
  context.fillStyle = palette.shotB;
  context.fill();
}
