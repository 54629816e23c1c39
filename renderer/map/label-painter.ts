/** Small texts on the map, on a pale ground of their own; one that would cover an earlier one is left out. */

import type { Spot } from '../../core/plan/model.ts';
import type { Painter } from './canvas-layer.ts';
import type { Palette } from './palette.ts';

export interface MapLabel {
  readonly at: Spot;
  readonly text: string;
  /** Pixels from the spot to the label's middle; x grows right, y down. */
  readonly shift: readonly [number, number];
  readonly tone: 'plain' | 'main' | 'rival';
  /** A dot at the spot itself and a fine line to the label. */
  readonly dot: boolean;
}

const FONT = '600 12px "Segoe UI", "Helvetica Neue", "Liberation Sans", Arial, sans-serif';
const HEIGHT = 18;
const PADDING = 5;

/** Labels in order of weight: what comes first gets its place. */
export function labelPainter(labels: readonly MapLabel[], palette: Palette): Painter {
  return ({ context, place, width, height }) => {
    const taken: Box[] = [];
    context.font = FONT;
    context.textAlign = 'center';
    context.textBaseline = 'middle';
    for (const label of labels) {
      const [x, y] = place(label.at);
      const wide = context.measureText(label.text).width + 2 * PADDING;
      const box = freeBox(x, y, label.shift, wide, taken, width);
      if (box === null || x < 0 || y < 0 || x > width || y > height) continue;
      taken.push(box);
      const ink =
        label.tone === 'main' ? palette.shotA : label.tone === 'rival' ? palette.shotB : palette.labelInk;
      if (label.dot) drawDot(context, x, y, box, ink, palette);
      context.fillStyle = palette.labelHalo;
      context.beginPath();
      context.roundRect(box.left, box.top, box.wide, HEIGHT, 4);
      context.fill();
      context.fillStyle = ink;
      context.fillText(label.text, box.left + box.wide / 2, box.top + HEIGHT / 2 + 0.5);
    }
  };
}

interface Box {
  readonly left: number;
  readonly top: number;
  readonly wide: number;
}

/** The label's place, or the same on the other side; null where both are taken or out of sight. */
function freeBox(
  x: number,
  y: number,
  [dx, dy]: readonly [number, number],
  wide: number,
  taken: readonly Box[],
  width: number,
): Box | null {
  const reach = Math.sign(dx) * (wide / 2);
  for (const side of [1, -1]) {
    const box = { left: x + side * (dx + reach) - wide / 2, top: y + dy - HEIGHT / 2, wide };
    const inSight = box.left > 2 && box.left + wide < width - 2;
    if (inSight && !taken.some((other) => overlap(box, other))) return box;
  }
  return null;
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.left + b.wide + 2 && b.left < a.left + a.wide + 2 && Math.abs(a.top - b.top) < HEIGHT + 1;
}

function drawDot(
  context: CanvasRenderingContext2D,
  x: number,
  y: number,
  box: Box,
  ink: string,
  palette: Palette,
): void {
  const towards = box.left > x ? box.left : box.left + box.wide;
  context.setLineDash([]);
  context.strokeStyle = ink;
  context.lineWidth = 1;
  context.beginPath();
  context.moveTo(x, y);
  context.lineTo(towards, box.top + HEIGHT / 2);
  context.stroke();
  context.beginPath();
  context.arc(x, y, 2.6, 0, 2 * Math.PI);
  context.fillStyle = palette.labelHalo;
  context.fill();
  context.stroke();
}
