/**
 * One hole as a drawing to scale, in SVG text of its own: fit to be printed, put into a document, or opened in a
 * browser. Kinds differ in outline and hatching as well as in colour.
 */

import { type Fault, type Result, refuse, succeed } from '../../result.ts';
import { english } from '../../words/english/english.ts';
import { told, toldFault } from '../../words/told.ts';
import type { Words } from '../../words/words.ts';
import { PAINTING_ORDER } from '../../ground/lies.ts';
import type { Spot } from '../../plan/model.ts';
import { featuresOfHole } from '../hole-features.ts';
import { makeLocalFrame } from '../local-frame.ts';
import type { AreaKind, Course, LonLat, Rings } from '../model.ts';
import { escapeXml, shortNumber } from './svg-text.ts';

export interface HoleSvgOptions {
  /** 1:scale; 2000 puts 2 m into a millimetre. */
  readonly scale?: number;
  /** Ground shown round the line of play, its tees and its green, metres. */
  readonly marginM?: number;
  /** `line` turns the drawing so that the hole is played upwards. */
  readonly up?: 'line' | 'north';
  readonly unit?: 'metres' | 'yards';
  /** The language of title, description and labels; English where none is given. */
  readonly words?: Words;
}

const YARD_M = 0.9144;
/** Side of the largest drawing, millimetres: larger ones are a slip of the scale. */
const MOST_SIDE_MM = 5000;

interface Style {
  readonly fill: string;
  readonly stroke: string;
  /** Dashes of the outline. */
  readonly dash?: string;
  readonly hatch?: string;
}

const STYLES: Readonly<Record<AreaKind, Style>> = {
  rough: { fill: '#c9d6ae', stroke: '#9fb07c' },
  'long-rough': { fill: '#b3bd8a', stroke: '#7d8a56', dash: '1.2 0.8' },
  woods: { fill: '#7f9c7a', stroke: '#3f5f3c', hatch: 'woods' },
  fairway: { fill: '#dcebc4', stroke: '#8aa869' },
  path: { fill: '#d8d2c8', stroke: '#9a9286' },
  tee: { fill: '#e9f2dd', stroke: '#57743c' },
  green: { fill: '#f4faec', stroke: '#2f5d1f' },
  bunker: { fill: '#f3e7c4', stroke: '#a98c45' },
  'penalty-yellow': { fill: '#bcd4de', stroke: '#9a7a00', dash: '2 1' },
  'penalty-red': { fill: '#bcd4de', stroke: '#9b1c1c', dash: '0.6 0.6' },
  'out-of-bounds': { fill: '#ececec', stroke: '#444444', hatch: 'out' },
  boundary: { fill: 'none', stroke: '#444444', dash: '3 1 0.6 1' },
};

const ORDER: readonly AreaKind[] = [...PAINTING_ORDER.map(([kind]) => kind), 'boundary'];

/** Millimetres on the paper: x to the right, y downwards. */
type ToPaper = (at: LonLat) => readonly [number, number];

/** Refuses a hole that the course does not have, and a scale that gives no sensible drawing. */
export function holeSvg(
  course: Course,
  holeNumber: number,
  options: HoleSvgOptions = {},
): Result<string, Fault> {
  const { scale = 2000, marginM = 25, up = 'line', unit = 'metres', words = english } = options;
  const { drawing } = words.courseReading;
  const where = told(({ features }) => features.whereOnlyHole, { hole: holeNumber });
  const found = featuresOfHole(course, holeNumber);
  if (found === undefined) {
    const message = told(({ courseReading }) => courseReading.drawing.noHole);
    return refuse(toldFault({ severity: 'error', code: 'no-such-hole', where, message }));
  }
  const { hole, green, teeAreas } = found;
  const start = hole.line[0]!;
  const frame = makeLocalFrame(start);
  const turn = up === 'north' ? 0 : directionOf(hole.line.map((at) => frame.toSpot(at)));
  const turned = (at: LonLat): Spot => {
    const { x, y } = frame.toSpot(at);
    return { x: x * Math.cos(turn) - y * Math.sin(turn), y: x * Math.sin(turn) + y * Math.cos(turn) };
  };
  const shown = [
    ...hole.line,
    ...hole.tees.map(({ at }) => at),
    ...hole.positions.map(({ at }) => at),
    ...(green?.rings[0] ?? []),
    ...teeAreas.flatMap(({ rings }) => rings[0] ?? []),
  ].map(turned);
  const west = Math.min(...shown.map(({ x }) => x)) - marginM;
  const east = Math.max(...shown.map(({ x }) => x)) + marginM;
  const south = Math.min(...shown.map(({ y }) => y)) - marginM;
  const north = Math.max(...shown.map(({ y }) => y)) + marginM;
  const mm = (metres: number) => (metres * 1000) / scale;
  const [width, height] = [mm(east - west), mm(north - south)];
  if (!(scale > 0 && marginM >= 0 && width <= MOST_SIDE_MM && height <= MOST_SIDE_MM)) {
    const message = told(({ courseReading }) => courseReading.drawing.tooLarge, {
      scale,
      width: Math.round(width),
      height: Math.round(height),
      most: MOST_SIDE_MM,
    });
    return refuse(toldFault({ severity: 'error', code: 'bad-scale', where, message }));
  }
  const toPaper: ToPaper = (at) => {
    const { x, y } = turned(at);
    return [mm(x - west), mm(north - y)];
  };
  const inFrame = (rings: Rings) => {
    const points = (rings[0] ?? []).map(toPaper);
    const xs = points.map(([x]) => x);
    const ys = points.map(([, y]) => y);
    return (
      Math.max(...xs) >= 0 && Math.min(...xs) <= width && Math.max(...ys) >= 0 && Math.min(...ys) <= height
    );
  };

  const { number, name, par } = hole;
  const title =
    name === undefined
      ? drawing.title({ hole: number, par })
      : drawing.titleNamed({ hole: number, name, par });
  const desc = (up === 'line' ? drawing.playedUpwards : drawing.northUp)({ course: course.name, scale });
  const id = `hole-${hole.number}`;
  const areas = ORDER.flatMap((kind) =>
    course.areas
      .filter((area) => area.kind === kind && inFrame(area.rings))
      .map((area) => areaPath(kind, area.rings, area.name, toPaper, id, words)),
  );
  const trees = course.trees.flatMap(({ at, crownRadiusM }) => {
    const [x, y] = toPaper(at);
    const radius = mm(crownRadiusM);
    const outside = x < -radius || y < -radius || x > width + radius || y > height + radius;
    return outside
      ? []
      : [
          `<circle class="tree" cx="${shortNumber(x)}" cy="${shortNumber(y)}" r="${shortNumber(radius)}" fill="#6f8f69" stroke="#3f5f3c" stroke-width="0.2"/>`,
        ];
  });
  const marks = [
    ...hole.tees.map(({ at, name }) => mark('tee-marker', toPaper(at), name)),
    ...hole.positions.map(({ at, name }) => mark('hole-position', toPaper(at), name)),
  ];
  const size = `${shortNumber(width)} ${shortNumber(height)}`;
  return succeed(
    [
      `<svg xmlns="http://www.w3.org/2000/svg" width="${shortNumber(width)}mm" height="${shortNumber(height)}mm" viewBox="0 0 ${size}" role="img" aria-labelledby="${id}-title ${id}-desc">`,
      `<title id="${id}-title">${escapeXml(title)}</title>`,
      `<desc id="${id}-desc">${escapeXml(desc)}</desc>`,
      `<defs><clipPath id="${id}-frame"><rect width="${shortNumber(width)}" height="${shortNumber(height)}"/></clipPath>${hatches(id)}</defs>`,
      `<g clip-path="url(#${id}-frame)" stroke-linejoin="round" font-family="sans-serif" font-size="2.6">`,
      `<rect class="ground" width="${shortNumber(width)}" height="${shortNumber(height)}" fill="#c9d6ae"/>`,
      ...areas,
      ...trees,
      `<path class="line-of-play" d="M${hole.line.map((at) => pair(toPaper(at))).join('L')}" fill="none" stroke="#222222" stroke-width="0.3" stroke-dasharray="2 1.4"/>`,
      ...marks,
      scaleBar(width, height, mm, unit),
      northArrow(width, turn),
      '</g>',
      '</svg>',
      '',
    ].join('\n'),
  );
}

/** By how much the drawing turns counter-clockwise so that the hole, from first to last point, is played upwards; radians. */
function directionOf(line: readonly Spot[]): number {
  const [from, to] = [line[0]!, line.at(-1)!];
  return Math.atan2(to.x - from.x, to.y - from.y);
}

function areaPath(
  kind: AreaKind,
  rings: Rings,
  name: string | undefined,
  toPaper: ToPaper,
  id: string,
  { courseReading, features }: Words,
): string {
  const { fill, stroke, dash, hatch } = STYLES[kind];
  const path = rings
    .map(
      (ring) =>
        `M${ring
          .slice(0, -1)
          .map((at) => pair(toPaper(at)))
          .join('L')}Z`,
    )
    .join('');
  const dashes = dash === undefined ? '' : ` stroke-dasharray="${dash}"`;
  const called = features.kinds[kind];
  const label = name === undefined ? called : courseReading.drawing.area({ kind: called, name });
  const shape = `<path class="${kind}" d="${path}" fill="${fill}" fill-rule="evenodd" stroke="${stroke}" stroke-width="0.3"${dashes}><title>${escapeXml(label)}</title></path>`;
  return hatch === undefined
    ? shape
    : `${shape}<path d="${path}" fill="url(#${id}-${hatch})" fill-rule="evenodd"/>`;
}

function hatches(id: string): string {
  const stripes = (name: string, path: string, colour: string) =>
    `<pattern id="${id}-${name}" width="3" height="3" patternUnits="userSpaceOnUse"><path d="${path}" fill="none" stroke="${colour}" stroke-width="0.25"/></pattern>`;
  return stripes('woods', 'M0.8 2.2L1.5 0.8L2.2 2.2', '#3f5f3c') + stripes('out', 'M0 3L3 0', '#8a8a8a');
}

function mark(kind: 'tee-marker' | 'hole-position', [x, y]: readonly [number, number], name: string): string {
  const at = `${shortNumber(x)} ${shortNumber(y)}`;
  const shape =
    kind === 'tee-marker'
      ? `<path d="M${at}m-0.8 0.8h1.6v-1.6h-1.6z" fill="#222222"/>`
      : `<path d="M${at}v-3.2l2 0.9l-2 0.9" fill="none" stroke="#222222" stroke-width="0.35"/>`;
  const label = `<text x="${shortNumber(x + 1.6)}" y="${shortNumber(y + 1)}" fill="#111111" stroke="#ffffff" stroke-width="0.6" paint-order="stroke">${escapeXml(name)}</text>`;
  return `<g class="${kind}">${shape}${label}</g>`;
}

function scaleBar(
  width: number,
  height: number,
  mm: (metres: number) => number,
  unit: 'metres' | 'yards',
): string {
  const unitM = unit === 'yards' ? YARD_M : 1;
  // the longest round length that takes up to a third of the width
  const lengths = [10, 20, 25, 50, 100, 200, 250, 500];
  const length = lengths.findLast((each) => mm(each * unitM) <= width / 3) ?? 10;
  const long = mm(length * unitM);
  const [x, y] = [2, height - 2];
  return `<g class="scale-bar" data-metres="${shortNumber(length * unitM)}"><path d="M${shortNumber(x)} ${shortNumber(y)}h${shortNumber(long)}" stroke="#111111" stroke-width="0.6"/><text x="${shortNumber(x)}" y="${shortNumber(y - 1)}" fill="#111111">${length} ${unit === 'yards' ? 'yd' : 'm'}</text></g>`;
}

function northArrow(width: number, turn: number): string {
  const degrees = shortNumber((-turn * 180) / Math.PI);
  return `<g class="north" transform="translate(${shortNumber(width - 5)} 6) rotate(${degrees})"><path d="M0 -4L1.4 2L0 1L-1.4 2Z" fill="#111111"/><text y="-4.4" text-anchor="middle" fill="#111111">N</text></g>`;
}

function pair([x, y]: readonly [number, number]): string {
  return `${shortNumber(x)} ${shortNumber(y)}`;
}
