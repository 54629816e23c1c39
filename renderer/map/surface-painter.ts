/** Paints the strokes-to-hole-out surface as one image stretched over the hole. */

import type { StrokesSurface } from '../../core/plan/model.ts';
import { remember } from '../state/remember.ts';
import type { Painter } from './canvas-layer.ts';
import { rampColour, type StrokesScale } from './strokes-ramp.ts';

/** Share of the ground's own colour that the surface covers. */
const COVER = 0.86;
const SHADES = 256;

export const surfacePainter = remember((surface: StrokesSurface, scale: StrokesScale): Painter => {
  const image = surfaceImage(surface, scale);
  const { originX, originY, cellM, columns, rows } = surface;
  return (brush) => {
    brush.metres((context) => {
      context.globalAlpha = COVER;
      context.imageSmoothingEnabled = true;
      context.imageSmoothingQuality = 'high';
      // Rows run north, like the frame's y: no flip is needed.
      context.drawImage(image, originX - cellM / 2, originY - cellM / 2, columns * cellM, rows * cellM);
    });
  };
});

function surfaceImage(surface: StrokesSurface, scale: StrokesScale): OffscreenCanvas {
  const { columns, rows, values } = surface;
  const canvas = new OffscreenCanvas(columns, rows);
  const context = canvas.getContext('2d');
  if (context === null) return canvas;
  const shades = Array.from({ length: SHADES }, (_, i) => rgbOf(rampColour(i / (SHADES - 1))));
  const image = context.createImageData(columns, rows);
  values.forEach((strokes, i) => {
    if (Number.isNaN(strokes)) return;
    const share = (strokes - scale.low) / (scale.high - scale.low);
    const shade = shades[Math.round(Math.min(1, Math.max(0, share)) * (SHADES - 1))]!;
    image.data.set([shade[0], shade[1], shade[2], 255], 4 * i);
  });
  context.putImageData(image, 0, 0);
  return canvas;
}

/** Reads `rgb(r, g, b)`, the form that the ramp gives. */
function rgbOf(colour: string): readonly [number, number, number] {
  const [r, g, b] = (colour.match(/\d+/g) ?? []).map(Number);
  return [r ?? 0, g ?? 0, b ?? 0];
}
