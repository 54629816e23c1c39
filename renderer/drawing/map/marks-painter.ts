/** Paints what is no ground: lines of play, paths drawn as lines, tee markers, hole positions, ground levels, slope arrows. */

import { PATH_WIDTH_M } from '../../../core/course/defaults.ts';
import { propertiesOf } from '../../../core/course/document.ts';
import { teeColourOf } from '../../../core/course/tee-colour.ts';
import type { Figures } from '../../../core/words/figures.ts';
import { Lie } from '../../../core/ground/lies.ts';
import type { Spot } from '../../../core/plan/model.ts';
import type { Brush, Painter } from '../../map/canvas-layer.ts';
import type { Palette } from '../../map/palette.ts';
import { paintSlopeArrow } from '../../map/slope-arrow.ts';
import type { Shape } from '../shapes.ts';
import { pathOf } from './drawn-grounds.ts';
import type { SketchColours } from './sketch-colours.ts';

/** Below this many pixels in a metre levels and names are left out. */
const DETAIL_SCALE = 0.7;
/** From the start of a line to its number, screen pixels. */
const NUMBER_PX = 20;

/** Whether `marksPainter` paints anything for it. */
export function hasMark({ kind, type }: Shape): boolean {
  switch (kind) {
    case undefined:
    case 'hole':
    case 'tee-marker':
    case 'hole-position':
    case 'ground-level':
    case 'slope-mark':
      return true;
    case 'path':
      return type === 'LineString';
    default:
      return false;
  }
}

export function marksPainter(
  shapes: readonly Shape[],
  palette: Palette,
  colours: SketchColours,
  hole: number | null,
  figures: Figures,
): Painter {
  return (brush) => {
    for (const shape of shapes) {
      if (shape.kind === 'path' && shape.type === 'LineString') paintPath(brush, shape, palette);
      if (shape.kind === undefined) paintUnknown(brush, shape, colours);
      // below the markers, which must be seen
      if (shape.kind === 'ground-level' && brush.scale >= DETAIL_SCALE)
        paintLevel(brush, shape, colours, figures);
    }
    for (const shape of shapes) {
      if (shape.kind === 'hole') paintPlayLine(brush, shape, colours, shape.hole === hole);
    }
    for (const shape of shapes) {
      switch (shape.kind) {
        case 'tee-marker':
          paintTeeMarker(brush, shape, colours);
          break;
        case 'slope-mark':
          if (brush.scale >= DETAIL_SCALE) paintSlopeMark(brush, shape, colours, figures);
          break;
        case 'hole-position':
          paintHolePosition(brush, spotOf(shape), colours);
          break;
        default:
          break;
      }
    }
  };
}

function spotOf({ paths }: Shape): Spot {
  return { x: paths[0]!.xy[0]!, y: paths[0]!.xy[1]! };
}

function paintPath(brush: Brush, shape: Shape, palette: Palette): void {
  brush.metres((context) => {
    context.strokeStyle = palette.ground[Lie.path];
    context.lineWidth = Math.max(PATH_WIDTH_M, 1.5 / brush.scale);
    context.lineJoin = 'round';
    context.stroke(pathOf(shape));
  });
}

function paintUnknown(brush: Brush, shape: Shape, colours: SketchColours): void {
  if (shape.type === 'Point') {
    const [x, y] = brush.place(spotOf(shape));
    brush.context.strokeStyle = colours.ink;
    brush.context.strokeRect(x - 3, y - 3, 6, 6);
    return;
  }
  brush.metres((context) => {
    context.setLineDash([3 / brush.scale, 3 / brush.scale]);
    context.strokeStyle = colours.ink;
    context.lineWidth = 1 / brush.scale;
    context.stroke(pathOf(shape));
  });
}

function paintPlayLine(brush: Brush, shape: Shape, colours: SketchColours, isCurrent: boolean): void {
  brush.metres((context) => {
    const path = pathOf(shape);
    context.lineJoin = 'round';
    context.strokeStyle = colours.casing;
    context.lineWidth = (isCurrent ? 4.5 : 3) / brush.scale;
    context.stroke(path);
    context.strokeStyle = colours.playLine;
    context.lineWidth = (isCurrent ? 2.2 : 1.2) / brush.scale;
    context.setLineDash([8 / brush.scale, 5 / brush.scale]);
    context.stroke(path);
  });
  const [startX, startY] = brush.place(spotOf(shape));
  const { xy } = shape.paths[0]!;
  const [nextX, nextY] = brush.place({ x: xy[2]!, y: xy[3]! });
  const away = Math.max(1, Math.hypot(nextX - startX, nextY - startY));
  // behind the start, so that the tee stays to be seen
  const x = startX - (NUMBER_PX * (nextX - startX)) / away;
  const y = startY - (NUMBER_PX * (nextY - startY)) / away;
  const { context } = brush;
  context.beginPath();
  context.arc(x, y, 10, 0, 2 * Math.PI);
  context.fillStyle = isCurrent ? colours.playLine : colours.casing;
  context.fill();
  context.strokeStyle = colours.playLine;
  context.lineWidth = 1.5;
  context.stroke();
  context.fillStyle = isCurrent ? colours.casing : colours.playLine;
  context.font = '600 12px "Liberation Sans", Arial, sans-serif';
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  context.fillText(String(shape.hole ?? '?'), x, y + 0.5);
}

/** Two dots side by side, as markers stand on a tee. */
function paintTeeMarker({ context, place }: Brush, shape: Shape, colours: SketchColours): void {
  const [x, y] = place(spotOf(shape));
  const own = teeColourOf(propertiesOf(shape.feature));
  for (const dx of [-4, 4]) {
    context.beginPath();
    context.arc(x + dx, y, own === undefined ? 3.2 : 3.6, 0, 2 * Math.PI);
    context.fillStyle = own ?? colours.playLine;
    context.fill();
    // a colour of the course's own may be as light or dark as the ground: its edge is in the other tone
    context.strokeStyle = own === undefined ? colours.casing : colours.playLine;
    context.lineWidth = 1.4;
    context.stroke();
  }
}

function paintHolePosition({ context, place }: Brush, spot: Spot, colours: SketchColours): void {
  const [x, y] = place(spot);
  for (const [style, width] of [
    [colours.casing, 4],
    [colours.playLine, 1.8],
  ] as const) {
    context.beginPath();
    context.moveTo(x, y);
    context.lineTo(x, y - 15);
    context.lineTo(x + 9, y - 12);
    context.lineTo(x, y - 9);
    context.strokeStyle = style;
    context.lineWidth = width;
    context.lineJoin = 'round';
    context.stroke();
  }
  context.beginPath();
  context.arc(x, y, 2.2, 0, 2 * Math.PI);
  context.fillStyle = colours.playLine;
  context.fill();
}

function paintLevel(brush: Brush, shape: Shape, colours: SketchColours, figures: Figures): void {
  const { context } = brush;
  const [x, y] = brush.place(spotOf(shape));
  if (x < -40 || y < -20 || x > brush.width + 40 || y > brush.height + 20) return;
  context.strokeStyle = colours.ink;
  context.lineWidth = 1;
  context.beginPath();
  context.moveTo(x - 3, y);
  context.lineTo(x + 3, y);
  context.moveTo(x, y - 3);
  context.lineTo(x, y + 3);
  context.stroke();
  if (brush.scale < 2 * DETAIL_SCALE) return;
  const height = Number.parseFloat(String(propertiesOf(shape.feature)['ele']));
  if (!Number.isFinite(height)) return;
  context.font = '10px "Liberation Sans", Arial, sans-serif';
  context.textAlign = 'left';
  context.textBaseline = 'middle';
  context.lineWidth = 2.5;
  context.strokeStyle = colours.halo;
  context.strokeText(figures.fixed(height, 1), x + 5, y);
  context.fillStyle = colours.ink;
  context.fillText(figures.fixed(height, 1), x + 5, y);
}

/** An arrow downhill from a dot, with its per cent. */
function paintSlopeMark(brush: Brush, shape: Shape, colours: SketchColours, figures: Figures): void {
  const properties = propertiesOf(shape.feature);
  const percent = Number.parseFloat(String(properties['slope_percent']));
  const downhill = (Number.parseFloat(String(properties['downhill_deg'])) * Math.PI) / 180;
  if (!Number.isFinite(percent) || !Number.isFinite(downhill)) return;
  paintSlopeArrow(
    brush,
    spotOf(shape),
    percent,
    downhill,
    colours,
    brush.scale >= 2 * DETAIL_SCALE ? figures : null,
  );
}
