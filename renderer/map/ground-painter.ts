/** Paints the plain ground: grass, sand, water, trees, the edges that the Rules care about. */

import type { Spot } from '../../core/plan/model.ts';
import { Lie, type LieCode } from '../../core/ground/lies.ts';
import type { Brush, Painter } from './canvas-layer.ts';
import type { GroundPaths } from './ground-paths.ts';
import type { Palette } from './palette.ts';

/** Half width of the ground that belongs to a hole and is shown in full colour, metres. */
const CORRIDOR_M = 70;
/** Below this many pixels in a metre texture is left out. */
const TEXTURE_SCALE = 0.55;

export function groundPainter(
  paths: GroundPaths,
  palette: Palette,
  corridor: readonly Spot[] | null,
): Painter {
  return (brush) => {
    paintOutside(brush, paths, palette);
    brush.metres((context) => {
      for (const { lie, path } of paths.grounds) {
        if (lie === Lie.outOfBounds) continue;
        context.fillStyle = palette.ground[lie];
        context.fill(path, 'nonzero');
        paintEdge(context, lie, path, palette, 1 / brush.scale);
        if (lie === Lie.woods) paintCrowns(context, paths, palette, brush.scale);
      }
    });
    paintStakes(brush, paths, palette);
    if (corridor !== null) veilOutside(brush, corridor, palette);
  };
}

/** Out of bounds first, hatched; then the inside of the course as rough. */
function paintOutside(brush: Brush, paths: GroundPaths, palette: Palette): void {
  const { context, width, height } = brush;
  const { boundary } = paths;
  context.fillStyle = palette.ground[boundary === null ? Lie.rough : Lie.outOfBounds];
  context.fillRect(0, 0, width, height);
  if (boundary === null) return;
  hatch(brush, palette, null);
  brush.metres((metres) => {
    metres.fillStyle = palette.ground[Lie.rough];
    metres.fill(boundary, 'nonzero');
  });
}

const HATCH_GAP_PX = 9;

/** Slanting lines over the screen or over a path, fixed to the ground so that they move with it. */
function hatch(brush: Brush, palette: Palette, within: Path2D | null): void {
  const { context, width, height } = brush;
  context.save();
  if (within !== null) {
    // A clip set in metres stays when the context goes back to pixels.
    const pixels = context.getTransform();
    const { a, b, c, d, e, f } = metresTransform(brush);
    context.setTransform(a, b, c, d, e, f);
    context.clip(within, 'nonzero');
    context.setTransform(pixels);
    context.fillStyle = palette.ground[Lie.outOfBounds];
    context.fillRect(0, 0, width, height);
  }
  context.beginPath();
  const shift = (brush.originX + brush.originY) % HATCH_GAP_PX;
  for (let at = shift - HATCH_GAP_PX; at < width + height; at += HATCH_GAP_PX) {
    context.moveTo(at, 0);
    context.lineTo(at - height, height);
  }
  context.strokeStyle = palette.outHatch;
  context.lineWidth = 1;
  context.stroke();
  context.restore();
}

function metresTransform(brush: Brush): DOMMatrix {
  let transform = new DOMMatrix();
  brush.metres((context) => {
    transform = context.getTransform();
  });
  return transform;
}

function paintEdge(
  context: CanvasRenderingContext2D,
  lie: LieCode,
  path: Path2D,
  palette: Palette,
  pixel: number,
): void {
  const edge = lie === Lie.green ? palette.greenEdge : lie === Lie.bunker ? palette.bunkerEdge : null;
  if (edge === null) return;
  context.strokeStyle = edge;
  context.lineWidth = 1.2 * pixel;
  context.stroke(path);
}

function paintCrowns(
  context: CanvasRenderingContext2D,
  paths: GroundPaths,
  palette: Palette,
  scale: number,
): void {
  if (scale >= TEXTURE_SCALE) {
    context.fillStyle = palette.crownDark;
    context.fill(paths.woodsDark);
    context.fillStyle = palette.crownLight;
    context.fill(paths.woodsLight);
  }
}

/** Screen pixels of a stake line's unit, in metres: thinner where the whole course is on screen. */
function stakePixel(scale: number): number {
  return Math.min(1, Math.max(0.5, scale / 0.8)) / scale;
}

/** Trees above the grass, then the edges of penalty areas and of the course. */
function paintStakes(brush: Brush, paths: GroundPaths, palette: Palette): void {
  const pixel = stakePixel(brush.scale);
  brush.metres((context) => {
    context.fillStyle = palette.crownDark;
    context.fill(paths.trees);
    context.strokeStyle = palette.crownEdge;
    context.lineWidth = 0.8 * pixel;
    context.stroke(paths.trees);
    for (const { lie, path } of paths.grounds) {
      if (lie === Lie.penaltyYellow)
        stakeLine(context, path, palette.stakeYellow, palette.stakeCase, pixel, [5, 4]);
      if (lie === Lie.penaltyRed) stakeLine(context, path, palette.stakeRed, palette.stakeCase, pixel, []);
    }
  });
  const out = paths.grounds.find((ground) => ground.lie === Lie.outOfBounds);
  if (out !== undefined) hatch(brush, palette, out.path);
  brush.metres((context) => {
    if (out !== undefined) stakeLine(context, out.path, palette.stakeWhite, palette.stakeCase, pixel, [2, 5]);
    if (paths.boundary !== null) {
      stakeLine(context, paths.boundary, palette.stakeWhite, palette.stakeCase, pixel, [2, 5]);
    }
  });
}

function stakeLine(
  context: CanvasRenderingContext2D,
  path: Path2D,
  colour: string,
  casing: string,
  pixel: number,
  dash: readonly number[],
): void {
  context.lineCap = 'butt';
  context.setLineDash([]);
  context.strokeStyle = casing;
  context.lineWidth = 3 * pixel;
  context.globalAlpha = 0.55;
  context.stroke(path);
  context.globalAlpha = 1;
  context.setLineDash(dash.map((length) => length * pixel));
  context.strokeStyle = colour;
  context.lineWidth = 1.8 * pixel;
  context.stroke(path);
  context.setLineDash([]);
}

/** Fades what lies away from the hole's line, softly at the edge. */
function veilOutside(brush: Brush, corridor: readonly Spot[], palette: Palette): void {
  const { context, width, height, scale } = brush;
  const veil = new OffscreenCanvas(Math.max(1, width), Math.max(1, height));
  const cloth = veil.getContext('2d');
  if (cloth === null) return;
  cloth.fillStyle = palette.veil;
  cloth.fillRect(0, 0, width, height);
  cloth.globalCompositeOperation = 'destination-out';
  cloth.lineCap = 'round';
  cloth.lineJoin = 'round';
  cloth.beginPath();
  for (const spot of corridor) cloth.lineTo(...brush.place(spot));
  for (const [reach, strength] of SOFT_EDGE) {
    cloth.strokeStyle = `rgba(0, 0, 0, ${strength})`;
    cloth.lineWidth = 2 * (CORRIDOR_M + reach) * scale;
    cloth.stroke();
  }
  context.drawImage(veil, 0, 0);
}

/** From far out inwards: metres beyond the corridor, and how much of what is left of the veil is lifted there. */
const SOFT_EDGE: readonly (readonly [number, number])[] = [
  ...Array.from({ length: 12 }, (_, i) => [24 - 2 * i, 0.13 + 0.02 * i] as const),
  [0, 1],
];
