/** The pictures of a card in a box of the page, to a stated scale, in vectors. Kinds of ground differ by hatching, not by tint alone. */

import { GROUND_INKS, type GroundInk, HATCH_INKS, INK } from '../../core/card/inks.ts';
import type { DrawnArea, DrawnBox, DrawnKind, GreenDrawing, HoleDrawing } from '../../core/card/model.ts';
import type { CardUnits } from '../../core/card/lengths.ts';
import type { Spot } from '../../core/plan/model.ts';
import { type Box, POINT_PER_MM } from './card-paper.ts';

export type Page = PDFKit.PDFDocument;

/** Scales a card may have: 1 to these. */
const HOLE_SCALES = [500, 750, 1000, 1250, 1500, 2000, 2500, 3000, 3500, 4000, 5000, 6000, 7500, 10_000];
const GREEN_SCALES = [500, 600, 750, 1000, 1250, 1500, 2000];

/** The largest scale at which a height and a width of metres fit. Null where none does. */
function fit(
  heightM: number,
  widthM: number,
  box: Box,
  scales: readonly number[],
): { readonly scale: number; readonly pointPerM: number } | null {
  for (const scale of scales) {
    const pointPerM = (1000 * POINT_PER_MM) / scale;
    if (heightM * pointPerM <= box.height && widthM * pointPerM <= box.width) return { scale, pointPerM };
  }
  return null;
}

/** Ground beside the line of play, aim and pattern that must be seen, metres; more is shown where there is room. */
const LEAST_ASIDE_M = 7;

interface Tint extends GroundInk {
  readonly edgeWidth: number;
  readonly hatch: Hatch | null;
}

interface Hatch {
  /** Radians from the horizontal, and points between lines. */
  readonly angle: number;
  readonly spacing: number;
  readonly dash?: readonly [number, number];
  readonly colour: string;
}

/** Line widths by which the checks find these lines in the file: the line of play, the scale bar, the edge of a green. */
export const PLAY_LINE_WIDTH = 0.37;
export const SCALE_BAR_WIDTH = 0.83;
export const GREEN_EDGE_WIDTH = 0.93;

/** Every kind has its own edge or hatching, so that a print in black and white still tells them apart. */
const TINTS: Readonly<Record<DrawnKind, Tint>> = {
  rough: { ...GROUND_INKS.rough, edgeWidth: 0, hatch: null },
  'long-rough': {
    ...GROUND_INKS['long-rough'],
    edgeWidth: 0.25,
    hatch: { angle: 1.2, spacing: 5, dash: [1.2, 2.6], colour: HATCH_INKS['long-rough'] },
  },
  woods: {
    ...GROUND_INKS.woods,
    edgeWidth: 0.4,
    hatch: { angle: -0.8, spacing: 3.4, colour: HATCH_INKS.woods },
  },
  fairway: { ...GROUND_INKS.fairway, edgeWidth: 0.5, hatch: null },
  path: { ...GROUND_INKS.path, edgeWidth: 0.25, hatch: null },
  tee: { ...GROUND_INKS.tee, edgeWidth: 0.4, hatch: null },
  green: { ...GROUND_INKS.green, edgeWidth: GREEN_EDGE_WIDTH, hatch: null },
  bunker: {
    ...GROUND_INKS.bunker,
    edgeWidth: 0.6,
    hatch: { angle: 0, spacing: 1.7, dash: [0.35, 1.5], colour: HATCH_INKS.bunker },
  },
  'penalty-yellow': {
    ...GROUND_INKS['penalty-yellow'],
    edgeWidth: 0.8,
    hatch: { angle: 0, spacing: 2.4, dash: [5, 1.6], colour: HATCH_INKS['penalty-yellow'] },
  },
  'penalty-red': {
    ...GROUND_INKS['penalty-red'],
    edgeWidth: 0.8,
    hatch: { angle: 0, spacing: 2.4, colour: HATCH_INKS['penalty-red'] },
  },
  'out-of-bounds': {
    ...GROUND_INKS['out-of-bounds'],
    edgeWidth: 0.9,
    hatch: { angle: 0.8, spacing: 6, colour: HATCH_INKS['out-of-bounds'] },
  },
};

export interface DrawnHole {
  /** 3000 for 1:3000. */
  readonly scale: number;
}

export interface DrawWishes {
  readonly hasFills: boolean;
  readonly units: CardUnits;
  /** Size of print against the pocket card's. */
  readonly print: number;
  /** Greens may be shown on this page; otherwise the flag alone says where the hole is. */
  readonly hasGreens: boolean;
}

/** Draws the hole in the box; null where it fits at no scale. */
export function drawHole(page: Page, drawing: HoleDrawing, box: Box, wishes: DrawWishes): DrawnHole | null {
  const { box: ground } = drawing;
  const reach = reachOf(drawing);
  const width = reach.right - reach.left + 2 * LEAST_ASIDE_M;
  const { print } = wishes;
  // Room for the flag above the hole.
  const below = { ...box, y: box.y + 5 * print, height: box.height - 5 * print };
  const fitted = fit(ground.top - ground.bottom, width, below, HOLE_SCALES);
  if (fitted === null) return null;
  const { pointPerM, scale } = fitted;
  const place = placer((reach.left + reach.right) / 2, ground, below, pointPerM);
  page.save();
  page.rect(box.x, box.y, box.width, box.height).clip();
  for (const area of drawing.areas)
    if (wishes.hasGreens || area.kind !== 'green') drawArea(page, area, place, box, wishes.hasFills, print);
  page.lineWidth(0.3).undash();
  for (const { at, radiusM } of drawing.trees) {
    const [x, y] = place(at);
    const radius = Math.max(1, radiusM * pointPerM);
    if (wishes.hasFills) page.circle(x, y, radius).fillAndStroke('#c3d0b8', '#55694a');
    else page.circle(x, y, radius).stroke('#55694a');
  }
  // The line of play, thin and dashed, from the tee used to the hole.
  polyline(page, drawing.line.map(place));
  page.lineWidth(PLAY_LINE_WIDTH).dash(2, { space: 2.4 }).stroke('#6b6b6b').undash();
  for (const { share, outline } of drawing.ellipses) {
    polyline(page, outline.map(place));
    page.closePath().lineWidth(share <= 0.5 ? 1 : 0.6);
    if (share > 0.5) page.dash(3, { space: 1.6 });
    page.stroke(INK).undash();
  }
  if (drawing.aim !== null) {
    const [ax, ay] = place(drawing.aim);
    polyline(page, [place(drawing.tee), [ax, ay]]);
    page.lineWidth(1.1).stroke(INK);
    const arm = 3.2 * print;
    page
      .circle(ax, ay, arm * 0.62)
      .lineWidth(0.9)
      .fillAndStroke('#ffffff', INK);
    page
      .moveTo(ax - arm, ay)
      .lineTo(ax + arm, ay)
      .moveTo(ax, ay - arm)
      .lineTo(ax, ay + arm);
    page.lineWidth(0.6).stroke(INK);
  }
  const [tx, ty] = place(drawing.tee);
  page
    .rect(tx - 1.8 * print, ty - 1.8 * print, 3.6 * print, 3.6 * print)
    .lineWidth(0.6)
    .fillAndStroke('#ffffff', INK);
  drawFlag(page, place(drawing.pin), print);
  drawMarks(page, drawing, place, box, print);
  page.restore();
  page.rect(box.x, box.y, box.width, box.height).lineWidth(0.4).stroke('#8a8a8a');
  return { scale };
}

/** Draws the green in the box at 1:480 or smaller; null where it does not fit. */
export function drawGreen(page: Page, drawing: GreenDrawing, box: Box, wishes: DrawWishes): DrawnHole | null {
  const { box: ground } = drawing;
  const fitted = fit(ground.top - ground.bottom, ground.right - ground.left, box, GREEN_SCALES);
  if (fitted === null) return null;
  const { pointPerM, scale } = fitted;
  const place = placer(0, ground, box, pointPerM);
  page.save();
  page.rect(box.x, box.y, box.width, box.height).clip();
  for (const area of drawing.areas) drawArea(page, area, place, box, wishes.hasFills, wishes.print);
  drawFlag(page, place(drawing.pin), wishes.print);
  page.restore();
  page.rect(box.x, box.y, box.width, box.height).lineWidth(0.4).stroke('#8a8a8a');
  return { scale };
}

/** A bar of a round length, its words beside it; returns the width used. */
export function drawScaleBar(page: Page, x: number, y: number, scale: number, wishes: DrawWishes): number {
  const unitM = wishes.units === 'yards' ? 0.9144 : 1;
  const pointPerUnit = (unitM * 1000 * POINT_PER_MM) / scale;
  const length = [200, 100, 50, 20, 10, 5].find((count) => count * pointPerUnit < 62 * wishes.print) ?? 5;
  const width = length * pointPerUnit;
  page
    .moveTo(x, y)
    .lineTo(x + width, y)
    .lineWidth(SCALE_BAR_WIDTH)
    .stroke(INK);
  for (const at of [x, x + width])
    page
      .moveTo(at, y - 1.6)
      .lineTo(at, y + 1.6)
      .lineWidth(0.5)
      .stroke(INK);
  const size = 5 * wishes.print;
  page.font('Helvetica').fontSize(size).fillColor(INK);
  const words = `${length} ${wishes.units === 'yards' ? 'yd' : 'm'}   1:${scale}`;
  page.text(words, x + width + 3, y - size * 0.4, { lineBreak: false });
  return width + 3 + page.widthOfString(words);
}

/** A small sample of a kind of ground, for the key. */
export function drawSample(page: Page, kind: DrawnKind, box: Box, hasFills: boolean): void {
  const ring = [
    { x: box.x, y: box.y },
    { x: box.x + box.width, y: box.y },
    { x: box.x + box.width, y: box.y + box.height },
    { x: box.x, y: box.y + box.height },
    { x: box.x, y: box.y },
  ];
  drawArea(page, { kind, rings: [ring] }, ({ x, y }) => [x, y], box, hasFills, 1);
}

type Place = (spot: Spot) => [number, number];

/** Metres of the drawing to points of the page; `middleX` comes to the middle of the box. */
function placer(middleX: number, drawn: DrawnBox, box: Box, pointPerM: number): Place {
  const spare = box.height - (drawn.top - drawn.bottom) * pointPerM;
  const foot = box.y + box.height - spare / 2;
  return ({ x, y }) => [
    box.x + box.width / 2 + (x - middleX) * pointPerM,
    foot - (y - drawn.bottom) * pointPerM,
  ];
}

/** How far the line of play, the aim and the pattern reach to the left and to the right. */
function reachOf({ line, aim, ellipses }: HoleDrawing): { readonly left: number; readonly right: number } {
  const all = [...line, ...(aim === null ? [] : [aim]), ...ellipses.flatMap(({ outline }) => outline)];
  const xs = all.map(({ x }) => x);
  return { left: Math.min(...xs), right: Math.max(...xs) };
}

function drawArea(
  page: Page,
  { kind, rings }: DrawnArea,
  place: Place,
  box: Box,
  hasFills: boolean,
  print: number,
): void {
  const tint = TINTS[kind];
  const outlines = rings.map((ring) => thinned(ring.map(place)));
  const trace = (): void => {
    for (const outline of outlines) {
      polyline(page, outline);
      page.closePath();
    }
  };
  if (hasFills && tint.fill !== null) {
    trace();
    page.fill(tint.fill, 'even-odd');
  } else if (!hasFills && kind !== 'rough') {
    // What lies under it must not show through.
    trace();
    page.fill('#ffffff', 'even-odd');
  }
  if (tint.hatch !== null) {
    page.save();
    trace();
    page.clip('even-odd');
    hatch(page, outlines[0]!, box, tint.hatch, print);
    page.restore();
  }
  if (tint.edgeWidth > 0) {
    trace();
    page.lineWidth(tint.edgeWidth).stroke(tint.edge);
  }
}

function hatch(
  page: Page,
  outline: readonly [number, number][],
  box: Box,
  { angle, spacing, dash, colour }: Hatch,
  print: number,
): void {
  // Only what is both in the outline and in the picture.
  const xs = outline.map(([x]) => Math.min(box.x + box.width, Math.max(box.x, x)));
  const ys = outline.map(([, y]) => Math.min(box.y + box.height, Math.max(box.y, y)));
  const middle = [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2] as const;
  const reach = Math.hypot(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)) / 2;
  const [ux, uy] = [Math.cos(angle), Math.sin(angle)];
  const step = spacing * Math.sqrt(print);
  // Lines pass through a fixed grid of the page, so that neighbours of one kind join up.
  const offset = (-middle[0] * uy + middle[1] * ux) % step;
  for (let across = -reach - offset; across <= reach; across += step) {
    const [x, y] = [middle[0] - uy * across, middle[1] + ux * across];
    page.moveTo(x - ux * reach, y - uy * reach).lineTo(x + ux * reach, y + uy * reach);
  }
  if (dash !== undefined) page.dash(dash[0], { space: dash[1] });
  page
    .lineWidth(dash === undefined ? 0.25 : 0.4)
    .stroke(colour)
    .undash();
}

/** Corners nearer than this to the one before are no corners on paper, points. */
const LEAST_STEP = 0.35;

function thinned(points: readonly [number, number][]): [number, number][] {
  const kept: [number, number][] = [];
  for (const point of points) {
    const last = kept.at(-1);
    if (last === undefined || Math.hypot(point[0] - last[0], point[1] - last[1]) >= LEAST_STEP)
      kept.push(point);
  }
  return kept;
}

function polyline(page: Page, points: readonly (readonly [number, number])[]): void {
  points.forEach(([x, y], i) => (i === 0 ? page.moveTo(x, y) : page.lineTo(x, y)));
}

function drawFlag(page: Page, [x, y]: readonly [number, number], print: number): void {
  const height = 8 * print;
  page
    .moveTo(x, y)
    .lineTo(x, y - height)
    .lineWidth(0.7)
    .stroke(INK);
  page
    .moveTo(x, y - height)
    .lineTo(x + 5 * print, y - height + 1.9 * print)
    .lineTo(x, y - height + 3.8 * print)
    .closePath()
    .fill(INK);
  page.circle(x, y, 0.9 * print).fill(INK);
}

/** Distances beside their places, pushed apart where they would cover each other. */
function drawMarks(page: Page, drawing: HoleDrawing, place: Place, box: Box, print: number): void {
  const size = 5.4 * print;
  page.font('Helvetica-Bold').fontSize(size);
  const taken: Box[] = [];
  for (const { at, text } of drawing.marks) {
    const [x, y] = place(at);
    const width = page.widthOfString(text) + 1.6;
    const height = size + 0.8;
    const toRight = x + 3 + width < box.x + box.width;
    let label: Box = { x: toRight ? x + 2.6 : x - 2.6 - width, y: y - height / 2, width, height };
    for (let tries = 0; tries < 6 && taken.some((other) => overlaps(other, label)); tries++)
      label = { ...label, y: label.y - height * 0.6 };
    taken.push(label);
    page
      .circle(x, y, 1.1 * print)
      .lineWidth(0.5)
      .fillAndStroke('#ffffff', INK);
    page.rect(label.x, label.y, label.width, label.height).fillOpacity(0.82).fill('#ffffff').fillOpacity(1);
    page.fillColor(INK).text(text, label.x + 0.8, label.y + 0.9, { lineBreak: false });
  }
}

function overlaps(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}
