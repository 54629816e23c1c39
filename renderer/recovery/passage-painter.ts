/**
 * Paints how the shot on the map passes the trees: its gap as a hatched wedge with its width, the club's spread as dashes in
 * it, other gaps as thin outlines. Told by shape and dash, not by hue.
 */

import type { Spot } from '../../core/plan/model.ts';
import type { Words } from '../../core/words/words.ts';
import type { Brush, Painter } from '../map/canvas-layer.ts';
import type { MapLabel } from '../map/label-painter.ts';
import type { Palette } from '../map/palette.ts';
import type { Opening, TreePassage } from '../workers/ways-out.ts';
import { degreesText } from './passage-words.ts';

/** Lengths of the wedges on the ground, metres. */
const LONGEST_M = 60;
const OTHERS_M = 22;
const HATCH_PX = 7;
const DEGREE = Math.PI / 180;
/** Wider than this an opening is no gap to be drawn. */
const WIDEST_DEG = 175;

export function passagePainter(passage: TreePassage, ball: Spot, palette: Palette): Painter {
  const { gap, otherGaps, bearing, carryM, spreadDeg } = passage;
  const length = Math.min(LONGEST_M, carryM);
  return (brush) => {
    const { context } = brush;
    context.lineJoin = 'round';
    for (const other of otherGaps)
      if (other.widthDeg < WIDEST_DEG) outline(brush, ball, other, Math.min(OTHERS_M, carryM), palette);
    if (gap !== null && gap.widthDeg < WIDEST_DEG) {
      wedge(brush, ball, gap, length);
      hatch(brush, palette);
      wedge(brush, ball, gap, length);
      cased(context, palette, 1.8, []);
    }
    const half = (spreadDeg * DEGREE) / 2;
    for (const edge of [bearing - half, bearing + half]) {
      context.beginPath();
      context.moveTo(...brush.place(ball));
      context.lineTo(...brush.place(along(ball, edge, length)));
      cased(context, palette, 1.6, [5, 4]);
    }
  };
}

function along({ x, y }: Spot, bearing: number, metres: number): Spot {
  return { x: x + metres * Math.sin(bearing), y: y + metres * Math.cos(bearing) };
}

function wedge({ context, place }: Brush, ball: Spot, { from, to }: Opening, length: number): void {
  context.beginPath();
  context.moveTo(...place(ball));
  const steps = Math.max(2, Math.ceil((to - from) / (3 * DEGREE)));
  for (let k = 0; k <= steps; k++)
    context.lineTo(...place(along(ball, from + ((to - from) * k) / steps, length)));
  context.closePath();
}

function outline(brush: Brush, ball: Spot, gap: Opening, length: number, palette: Palette): void {
  wedge(brush, ball, gap, length);
  cased(brush.context, palette, 1, [1, 4]);
}

/** Fills the traced path with a light wash and slanted lines. */
function hatch({ context, width, height }: Brush, palette: Palette): void {
  context.save();
  context.clip();
  context.globalAlpha = 0.16;
  context.fillStyle = palette.shotA;
  context.fillRect(0, 0, width, height);
  context.globalAlpha = 0.55;
  context.strokeStyle = palette.shotCase;
  context.lineWidth = 1.2;
  context.beginPath();
  for (let x = -height; x < width; x += HATCH_PX) {
    context.moveTo(x, height);
    context.lineTo(x + height, 0);
  }
  context.stroke();
  context.restore();
}

function cased(
  context: CanvasRenderingContext2D,
  palette: Palette,
  width: number,
  dash: readonly number[],
): void {
  context.setLineDash([]);
  context.globalAlpha = 0.85;
  context.strokeStyle = palette.shotCase;
  context.lineWidth = width + 2;
  context.stroke();
  context.globalAlpha = 1;
  context.setLineDash([...dash]);
  context.strokeStyle = palette.shotA;
  context.lineWidth = width;
  context.stroke();
  context.setLineDash([]);
}

/** The gap's width, beside the wedge. */
export function passageLabels({ gap, carryM }: TreePassage, ball: Spot, words: Words): readonly MapLabel[] {
  if (gap === null || gap.widthDeg >= WIDEST_DEG) return [];
  const at = along(ball, gap.to, 0.6 * Math.min(LONGEST_M, carryM));
  return [
    {
      at,
      text: words.trees.gap({ degrees: degreesText(gap.widthDeg) }),
      shift: [10, 0],
      tone: 'plain',
      dot: true,
    },
  ];
}
