/** Paints the strokes-to-hole-out surface as one image stretched over the hole. */

import { Lie, type LieCode } from '../../core/ground/lies.ts';
import type { Spot, StrokesSurface } from '../../core/plan/model.ts';
import { remember } from '../state/remember.ts';
import type { Brush, Painter } from './canvas-layer.ts';
import type { GroundPaths } from './ground-paths.ts';
import { rampColour, type StrokesScale } from './strokes-ramp.ts';

/** Share of the ground's own colour that the surface covers. */
const COVER = 0.88;
const SHADES = 256;
/** The surface is shown this far beside the hole's line, metres. */
const BESIDE_LINE_M = 78;
/** Grounds whose outline stays to be seen on the surface. */
const OUTLINED: readonly LieCode[] = [
  Lie.fairway,
  Lie.green,
  Lie.bunker,
  Lie.woods,
  Lie.penaltyRed,
  Lie.penaltyYellow,
];

export const surfacePainter = remember(
  (surface: StrokesSurface, scale: StrokesScale, paths: GroundPaths, corridor: readonly Spot[]): Painter => {
    const image = surfaceImage(surface, scale);
    const { originX, originY, cellM, columns, rows } = surface;
    return (brush) => {
      brush.metres((context) => {
        context.globalAlpha = COVER;
        context.imageSmoothingEnabled = true;
        context.imageSmoothingQuality = 'high';
        // Rows run north, like the frame's y: no flip is needed.
        context.drawImage(image, originX - cellM / 2, originY - cellM / 2, columns * cellM, rows * cellM);
        context.globalAlpha = 1;
        context.lineWidth = 1.1 / brush.scale;
        context.strokeStyle = 'rgba(255, 255, 255, 0.6)';
        for (const { lie, path } of paths.grounds) if (OUTLINED.includes(lie)) context.stroke(path);
      });
      keepCorridor(brush, corridor);
    };
  },
);

/** Cuts away what lies far from the hole. */
function keepCorridor({ context, place, scale }: Brush, corridor: readonly Spot[]): void {
  context.globalCompositeOperation = 'destination-in';
  context.lineCap = 'round';
  context.lineJoin = 'round';
  context.lineWidth = 2 * BESIDE_LINE_M * scale;
  context.strokeStyle = '#000000';
  context.beginPath();
  for (const spot of corridor) context.lineTo(...place(spot));
  context.stroke();
  context.globalCompositeOperation = 'source-over';
}

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
