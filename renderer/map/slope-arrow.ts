/** Paints a slope arrow: it lies where the green was read and points to where the ground falls, the longer the steeper. */

import type { Figures } from '../../core/words/figures.ts';
import type { LocalFrame } from '../../core/course/local-frame.ts';
import type { SlopeMark } from '../../core/course/model.ts';
import type { Spot } from '../../core/plan/model.ts';
import type { Brush, Painter } from './canvas-layer.ts';
import type { Palette } from './palette.ts';

/** Length of an arrow on the screen, pixels: so long, and longer the steeper. */
const ARROW_PX = 12;
const ARROW_PX_PER_PERCENT = 4;
const LONGEST_ARROW_PX = 44;
const ARROW_HEAD_PX = 5;
/** Below so many pixels in a metre the arrows of a whole green would lie on each other. */
const LEAST_SCALE = 2.5;
const NAMED_SCALE = 6;

export function slopeArrows(
  marks: readonly SlopeMark[],
  frame: LocalFrame,
  palette: Palette,
  figures: Figures,
): Painter {
  const colours = { ink: palette.labelInk, halo: palette.labelHalo };
  return (brush) => {
    if (brush.scale < LEAST_SCALE) return;
    for (const { at, slopeShare, downhill } of marks)
      paintSlopeArrow(
        brush,
        frame.toSpot(at),
        100 * slopeShare,
        downhill,
        colours,
        brush.scale >= NAMED_SCALE ? figures : null,
      );
  };
}

/** `downhill` in radians clockwise from north; with its per cent beside it, written by `figures`, where these are given. */
export function paintSlopeArrow(
  brush: Brush,
  spot: Spot,
  percent: number,
  downhill: number,
  colours: { readonly ink: string; readonly halo: string },
  figures: Figures | null,
): void {
  const { context } = brush;
  const [x, y] = brush.place(spot);
  if (x < -60 || y < -60 || x > brush.width + 60 || y > brush.height + 60) return;
  // the map may be turned: two places tell how the compass lies on the screen
  const [aheadX, aheadY] = brush.place({
    x: spot.x + Math.sin(downhill),
    y: spot.y + Math.cos(downhill),
  });
  const away = Math.max(1e-6, Math.hypot(aheadX - x, aheadY - y));
  const [ux, uy] = [(aheadX - x) / away, (aheadY - y) / away];
  const length = Math.min(LONGEST_ARROW_PX, ARROW_PX + ARROW_PX_PER_PERCENT * percent);
  const [tipX, tipY] = [x + ux * length, y + uy * length];
  for (const [style, width] of [
    [colours.halo, 4.5],
    [colours.ink, 1.8],
  ] as const) {
    context.strokeStyle = style;
    context.lineWidth = width;
    context.lineJoin = 'round';
    context.beginPath();
    context.moveTo(x, y);
    context.lineTo(tipX, tipY);
    context.moveTo(tipX - ARROW_HEAD_PX * (ux - uy), tipY - ARROW_HEAD_PX * (uy + ux));
    context.lineTo(tipX, tipY);
    context.lineTo(tipX - ARROW_HEAD_PX * (ux + uy), tipY - ARROW_HEAD_PX * (uy - ux));
    context.stroke();
  }
  context.beginPath();
  context.arc(x, y, 2.6, 0, 2 * Math.PI);
  context.fillStyle = colours.ink;
  context.fill();
  if (figures === null) return;
  const words = `${figures.short(percent, 1)} %`;
  context.font = '10px "Liberation Sans", Arial, sans-serif';
  context.textAlign = ux > 0.3 ? 'right' : 'left';
  context.textBaseline = 'middle';
  context.lineWidth = 2.5;
  context.strokeStyle = colours.halo;
  const textX = x + (ux > 0.3 ? -6 : 6);
  const textY = y - uy * 6;
  context.strokeText(words, textX, textY);
  context.fillStyle = colours.ink;
  context.fillText(words, textX, textY);
}
