/** Paints shots: sampled balls, spread ellipses, the line and its aim. Two shots differ in hue, dash and shape. */

import type { LocalFrame } from '../../core/course/local-frame.ts';
import { curveShareOf } from '../../core/flight/curve-share.ts';
import { Lie } from '../../core/ground/lies.ts';
import type { ShotSample, Spot, SpreadEllipse } from '../../core/plan/model.ts';
import type { Brush, Painter } from './canvas-layer.ts';
import type { Palette } from './palette.ts';
import type { DrawnShot, ShotPart } from './shot-scene.ts';

interface ShotStyle {
  readonly colour: string;
  readonly casing: string;
  readonly dash: readonly number[];
  readonly square: boolean;
  readonly palette: Palette;
}

export function shotPainter(
  shots: readonly DrawnShot[],
  frame: LocalFrame,
  pin: Spot | null,
  palette: Palette,
  showBalls: boolean,
): Painter {
  return (brush) => {
    const { context } = brush;
    context.lineCap = 'round';
    context.lineJoin = 'round';
    const full = shots.filter((shot) => shot.part !== 'ghost');
    for (const shot of full) {
      const style = styleOf(shot.part, palette);
      for (const ellipse of shot.ellipses) fillEllipse(brush, ellipse, style);
    }
    if (showBalls) {
      for (const shot of full)
        if (shot.sample !== null) paintBalls(brush, shot.sample, styleOf(shot.part, palette));
    }
    for (const shot of full) {
      const style = styleOf(shot.part, palette);
      for (const ellipse of shot.ellipses) strokeEllipse(brush, ellipse, style);
    }
    const comparing = full.length > 1;
    for (const shot of shots) paintLine(brush, frame, shot, pin, palette, comparing);
  };
}

function styleOf(part: ShotPart, palette: Palette): ShotStyle {
  const rival = part === 'rival';
  return {
    colour: rival ? palette.shotB : palette.shotA,
    casing: palette.shotCase,
    dash: rival ? [7, 5] : [],
    square: rival,
    palette,
  };
}

function tracedEllipse(brush: Brush, { centre, semiMajorM, semiMinorM, majorBearing }: SpreadEllipse): void {
  const { context } = brush;
  // A circle in the ellipse's own axes, placed point by point: right for any turn of the sheet.
  context.beginPath();
  for (let k = 0; k <= 72; k++) {
    const angle = (k * Math.PI) / 36;
    const along = semiMajorM * Math.cos(angle);
    const across = semiMinorM * Math.sin(angle);
    context.lineTo(
      ...brush.place({
        x: centre.x + along * Math.sin(majorBearing) + across * Math.cos(majorBearing),
        y: centre.y + along * Math.cos(majorBearing) - across * Math.sin(majorBearing),
      }),
    );
  }
}

function fillEllipse(brush: Brush, ellipse: SpreadEllipse, style: ShotStyle): void {
  const { context } = brush;
  tracedEllipse(brush, ellipse);
  context.globalAlpha = ellipse.share <= 0.5 ? 0.18 : 0.12;
  context.fillStyle = style.colour;
  context.fill();
  context.globalAlpha = 1;
}

function strokeEllipse(brush: Brush, ellipse: SpreadEllipse, style: ShotStyle): void {
  const { context } = brush;
  tracedEllipse(brush, ellipse);
  const inner = ellipse.share <= 0.5;
  context.setLineDash([]);
  context.globalAlpha = 0.75;
  context.strokeStyle = style.casing;
  context.lineWidth = inner ? 4 : 3;
  context.stroke();
  context.globalAlpha = 1;
  context.setLineDash([...style.dash]);
  context.strokeStyle = style.colour;
  context.lineWidth = inner ? 2 : 1.4;
  context.stroke();
  context.setLineDash([]);
}

/** Balls that cost a stroke or lie badly get a cross, the others a dot (or a small square for the rival). */
function paintBalls(brush: Brush, sample: ShotSample, style: ShotStyle): void {
  const { context } = brush;
  const radius = Math.min(3, Math.max(1.6, brush.scale * 0.9));
  const good = new Path2D();
  const bad = new Path2D();
  for (let i = 0; i < sample.count; i++) {
    const [x, y] = brush.place({ x: sample.end[2 * i]!, y: sample.end[2 * i + 1]! });
    if (isCostly(sample.lie[i]!)) addCross(bad, x, y, radius + 1);
    else if (style.square) good.rect(x - radius, y - radius, 2 * radius, 2 * radius);
    else {
      good.moveTo(x + radius, y);
      good.arc(x, y, radius, 0, 2 * Math.PI);
    }
  }
  context.setLineDash([]);
  context.globalAlpha = 0.85;
  context.fillStyle = style.palette.ballFill;
  context.fill(good);
  context.strokeStyle = style.colour;
  context.lineWidth = 1.1;
  context.stroke(good);
  context.globalAlpha = 1;
  context.strokeStyle = style.casing;
  context.lineWidth = 3.4;
  context.stroke(bad);
  context.strokeStyle = style.palette.troubleMark;
  context.lineWidth = 1.7;
  context.stroke(bad);
}

function isCostly(lie: number): boolean {
  return lie === Lie.outOfBounds || lie === Lie.penaltyRed || lie === Lie.penaltyYellow;
}

function addCross(path: Path2D, x: number, y: number, arm: number): void {
  path.moveTo(x - arm, y - arm);
  path.lineTo(x + arm, y + arm);
  path.moveTo(x - arm, y + arm);
  path.lineTo(x + arm, y - arm);
}

function paintLine(
  brush: Brush,
  frame: LocalFrame,
  shot: DrawnShot,
  pin: Spot | null,
  palette: Palette,
  comparing: boolean,
): void {
  const way = wayOf(shot, frame).map((spot) => brush.place(spot));
  const aim = way.at(-1)!;
  const style = styleOf(shot.part, palette);
  if (shot.part === 'ghost') {
    casedLine(brush.context, way, style.colour, style.casing, 1.4, [1, 5]);
    ringAt(brush.context, aim, style, 5);
    return;
  }
  casedLine(brush.context, way, style.colour, style.casing, 2.6, style.dash);
  const isSwing = shot.option === null || (shot.option.kind === 'shot' && shot.option.clubKind !== 'putter');
  if (pin !== null && isSwing && !comparing) dottedLine(brush.context, aim, brush.place(pin), style.colour);
  if (shot.part === 'rival') diamondAt(brush.context, aim, style, 8);
  else if (comparing) ringAt(brush.context, aim, style, 7);
}

const CURVE_STEPS = 24;

/** From the ball to the aim; a shot that is bent on purpose on a parabola, which is near enough to see what it goes round. */
function wayOf({ from, aim, option }: DrawnShot, frame: LocalFrame): readonly Spot[] {
  const [start, end] = [frame.toSpot(from), frame.toSpot(aim)];
  const curve = option === null ? 0 : curveShareOf(option.swing);
  if (curve === 0) return [start, end];
  const [dx, dy] = [end.x - start.x, end.y - start.y];
  return Array.from({ length: CURVE_STEPS + 1 }, (_, k) => {
    const share = k / CURVE_STEPS;
    const right = curve * (share * share - share);
    return { x: start.x + share * dx + right * dy, y: start.y + share * dy - right * dx };
  });
}

type Point = readonly [number, number];

function casedLine(
  context: CanvasRenderingContext2D,
  points: readonly Point[],
  colour: string,
  casing: string,
  width: number,
  dash: readonly number[],
): void {
  context.beginPath();
  for (const point of points) context.lineTo(...point);
  context.setLineDash([]);
  context.strokeStyle = casing;
  context.globalAlpha = 0.85;
  context.lineWidth = width + 2.6;
  context.stroke();
  context.globalAlpha = 1;
  context.setLineDash([...dash]);
  context.strokeStyle = colour;
  context.lineWidth = width;
  context.stroke();
  context.setLineDash([]);
}

/** What the shot leaves, lightly. */
function dottedLine(context: CanvasRenderingContext2D, from: Point, to: Point, colour: string): void {
  context.beginPath();
  context.moveTo(...from);
  context.lineTo(...to);
  context.setLineDash([0.1, 6]);
  context.strokeStyle = colour;
  context.lineWidth = 2.2;
  context.stroke();
  context.setLineDash([]);
}

function ringAt(context: CanvasRenderingContext2D, [x, y]: Point, style: ShotStyle, radius: number): void {
  context.beginPath();
  context.arc(x, y, radius, 0, 2 * Math.PI);
  context.fillStyle = style.casing;
  context.fill();
  context.strokeStyle = style.colour;
  context.lineWidth = 1.6;
  context.stroke();
}

function diamondAt(context: CanvasRenderingContext2D, [x, y]: Point, style: ShotStyle, arm: number): void {
  context.beginPath();
  context.moveTo(x, y - arm);
  context.lineTo(x + arm, y);
  context.lineTo(x, y + arm);
  context.lineTo(x - arm, y);
  context.closePath();
  context.fillStyle = style.casing;
  context.fill();
  context.strokeStyle = style.colour;
  context.lineWidth = 2.4;
  context.stroke();
}
