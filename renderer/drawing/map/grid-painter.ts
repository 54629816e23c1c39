/** A plain grid of round lengths over the map, for drawing without any picture. */

import type { Painter } from '../../map/canvas-layer.ts';
import type { SketchColours } from './sketch-colours.ts';

const ROUND_M = [1, 5, 10, 20, 50, 100, 200, 500, 1000];
/** Lines closer than this would hide the map, screen pixels. */
const LEAST_GAP_PX = 40;

export function gridPainter(colours: SketchColours, unitM: number): Painter {
  return ({ context, width, height, scale, originX, originY }) => {
    const step = ROUND_M.find((length) => length * unitM * scale >= LEAST_GAP_PX) ?? ROUND_M.at(-1)!;
    const gap = step * unitM * scale;
    context.strokeStyle = colours.ink;
    context.lineWidth = 1;
    for (const [origin, length, across] of [
      [originX, width, true],
      [originY, height, false],
    ] as const) {
      const first = Math.ceil(-origin / gap);
      for (let i = first; origin + i * gap <= length; i++) {
        const at = Math.round(origin + i * gap) + 0.5;
        context.globalAlpha = i % 5 === 0 ? 0.38 : 0.16;
        context.beginPath();
        if (across) {
          context.moveTo(at, 0);
          context.lineTo(at, height);
        } else {
          context.moveTo(0, at);
          context.lineTo(width, at);
        }
        context.stroke();
      }
    }
    context.globalAlpha = 1;
  };
}
