/** Cards on paper, read back with poppler's tools: text, sizes, and the printed scale in the file's own coordinates. */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { cardHole } from '../../core/card/card-hole.ts';
import { drawnLength } from '../../core/card/drawing.ts';
import { LARGEST_GREEN_SCALE, LARGEST_PAGE_IN } from '../../core/card/green-limits.ts';
import type { CardHole } from '../../core/card/model.ts';
import { preparationSheet } from '../../core/card/preparation.ts';
import { GREEN_EDGE_WIDTH, PLAY_LINE_WIDTH, SCALE_BAR_WIDTH } from '../../electron/cli/card-drawing.ts';
import { cardParagraphs } from '../../core/card/paragraphs.ts';
import { PAPERS, POINT_PER_MM, printable, sheetFor, STYLES } from '../../electron/cli/card-paper.ts';
import { cardPdf } from '../../electron/cli/card-pdf.ts';
import { box, disc, flatCourse, wood } from '../plan/synthetic.ts';
import { shortHole } from '../round/short-hole.ts';
import { english } from '../../core/words/english/english.ts';

const folder = mkdtempSync(join(tmpdir(), 'holewright-card-'));
const { play, plan } = shortHole();
const course = flatCourse({
  lengthM: 150,
  par: 3,
  greenRadiusM: 11,
  patches: [
    box('fairway', -15, -130, 15, 15),
    box('penalty-red', -40, -40, -13, 20),
    disc('bunker', 17, -1, 6),
    box('out-of-bounds', -90, 40, 90, 90),
    wood(25, -90, 45, 30, { topM: 12, baseM: 2, densityPerM: 0.15 }),
  ],
});
const first = cardHole(course, play.prepared, play.field, plan, {
  words: english,
  units: 'yards',
  budget: { strokes: 4, words: 'Bogey is your par here.' },
});
const cards: CardHole[] = [first, { ...first, hole: 2, name: 'Łąka → Żuraw', units: 'metres' }];
const preparation = preparationSheet(
  {
    ...{ teeOffMin: 520, durationMin: 255, holes: 2, units: 'yards', clubs: ['Iron'] },
    food: { items: ['melon'], allergies: ['nuts'] },
  },
  english,
);
const extras = { hasGreens: true, reminder: 'Eat: melon. Drink.', wind: 'wind into' };
const overview = {
  course: 'Invented test course',
  player: 'Invented Player',
  tee: 'tee',
  lines: ['9 or fewer: 60 %.'],
};

type Made = Awaited<ReturnType<typeof make>>;
const known = new Map<string, Made>();

/** Each booklet is made once. */
async function made(
  paper: (typeof PAPERS)[number],
  style: (typeof STYLES)[number],
  hasGreens = true,
): Promise<Made> {
  const key = `${paper} ${style} ${hasGreens}`;
  let found = known.get(key);
  if (found === undefined) known.set(key, (found = await make(paper, style, hasGreens)));
  return found;
}

async function make(paper: (typeof PAPERS)[number], style: (typeof STYLES)[number], hasGreens: boolean) {
  const sheet = sheetFor(paper, style, english);
  const booklet = {
    cards,
    overview,
    preparation,
    extrasOf: () => ({ ...extras, hasGreens }),
    madeAt: new Date(0),
  };
  const bytes = await cardPdf(booklet, sheet);
  const file = join(folder, `${paper}-${style}-${hasGreens}.pdf`);
  writeFileSync(file, bytes);
  return { sheet, bytes, file };
}

function tool(name: string, ...args: string[]): string {
  return execFileSync(name, args, { encoding: 'utf8', maxBuffer: 1e8 });
}

/** Strokes of one width on a page, as lists of points in the page's coordinates. */
function strokesOf(file: string, page: number, width: number): [number, number][][] {
  const svg = tool('pdftocairo', '-svg', '-f', String(page), '-l', String(page), file, '-');
  // Some versions round the page to whole points and shrink the drawing with it.
  const shown = Number(/<svg[^>]* width="([\d.]+)/u.exec(svg)![1]);
  const full = Number(/Page size:\s+([\d.]+)/u.exec(tool('pdfinfo', file))![1]) / shown;
  return [...svg.matchAll(/<path[^>]*>/gu)].flatMap(([tag]) => {
    // Attributes, or a style in older versions of the tool.
    const attribute = (name: string) => new RegExp(`[ ;"]${name}(?:="|:)([^";]*)`, 'u').exec(tag)?.[1] ?? '';
    if (Math.abs(Number(attribute('stroke-width')) - width) > 0.005) return [];
    const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = (
      /matrix\(([^)]*)\)/u.exec(attribute('transform'))?.[1] ?? ''
    )
      .split(/[ ,]+/u)
      .filter((part) => part !== '')
      .map(Number);
    const points = [...attribute('d').matchAll(/[ML] (-?[\d.]+) (-?[\d.]+)/gu)].map(
      ([, x, y]): [number, number] => [
        full * (a * Number(x) + c * Number(y) + e),
        full * (b * Number(x) + d * Number(y) + f),
      ],
    );
    return [points];
  });
}

function lengthOf(points: readonly (readonly [number, number])[]): number {
  const [a, z] = [points[0]!, points.at(-1)!];
  return Math.hypot(z[0] - a[0], z[1] - a[1]);
}

function metresOf(points: readonly (readonly [number, number])[], scale: number): number {
  return (lengthOf(points) / POINT_PER_MM / 1000) * scale;
}

function nearest<T>(things: readonly T[], distance: (thing: T) => number): T {
  return things.reduce((best, thing) => (distance(thing) < distance(best) ? thing : best));
}

/** `50 yd 1:2500` wherever it stands on the page: the length in metres, the scale, and the place of its first word. */
function scaleLabels(file: string, page: number): { stated: number; scale: number; x: number; y: number }[] {
  const html = tool('pdftotext', '-bbox', '-f', String(page), '-l', String(page), file, '-');
  const words = [
    ...html.matchAll(/<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="[\d.]+" yMax="([\d.]+)">([^<]*)</gu),
  ].map(([, x, top, foot, text]) => ({ x: Number(x), y: (Number(top) + Number(foot)) / 2, text: text! }));
  return words.flatMap(({ text }, i) => {
    const scale = /^1:(\d+)$/u.exec(text);
    const [count, unit] = [words[i - 2], words[i - 1]];
    if (scale === null || count === undefined || unit === undefined) return [];
    const stated = Number(count.text) * (unit.text === 'yd' ? 0.9144 : 1);
    return [{ stated, scale: Number(scale[1]), x: count.x, y: count.y }];
  });
}

const GREEN_ACROSS_M = 22;

/** Widths of the outlines of greens on the cards' pages, points. Samples of the key are no greens. */
function greenWidths({ file, sheet }: Made): number[] {
  const units = (1 + cards.length) * (sheet.isSplit ? 2 : 1);
  return Array.from({ length: Math.ceil(units / (sheet.across * sheet.down)) }, (_, i) =>
    strokesOf(file, i + 1, GREEN_EDGE_WIDTH),
  )
    .flat()
    .filter((points) => points.length > 6)
    .map((points) => {
      const xs = points.map(([x]) => x);
      return Math.max(...xs) - Math.min(...xs);
    });
}

/** The page between the lines to cut along, points. */
function carriedPage(file: string): { width: number; height: number } {
  const [width, height] = /Page size:\s+([\d.]+) x ([\d.]+)/u
    .exec(tool('pdfinfo', file))!
    .slice(1)
    .map(Number) as [number, number];
  // One path: from the top to the bottom, then from the left to the right.
  const cut = strokesOf(file, 1, 0.3).find((points) => points.length === 4 && Math.abs(points[0]![1]) < 1);
  return cut === undefined ? { width, height } : { width: cut[0]![0], height: cut[2]![1] };
}

const SIZES = { a4: [210, 297], letter: [215.9, 279.4], a6: [105, 148] } as const;

describe.each(PAPERS.flatMap((paper) => STYLES.map((style) => [paper, style] as const)))(
  'cards on %s, %s',
  (paper, style) => {
    it('hold their text, on pages of that size', async () => {
      const { file, sheet } = await made(paper, style);
      const text = tool('pdftotext', '-layout', file, '-').replaceAll(/\s+/gu, ' ');
      for (const words of [
        'Invented test course',
        'Par 3',
        'play for 4',
        '9 or fewer',
        'score',
        'putts',
        'Take care',
        '08:40',
      ])
        expect(text).toContain(words);
      // Each page's own text, so that columns do not mix.
      const plain = tool('pdftotext', file, '-').replaceAll(/\s+/gu, ' ');
      for (const { text: words } of cardParagraphs(first, extras, english).slice(0, 5))
        expect(plain).toContain(printable(words));
      const info = tool('pdfinfo', file);
      const [width, height] = /Page size:\s+([\d.]+) x ([\d.]+)/u.exec(info)!.slice(1).map(Number) as [
        number,
        number,
      ];
      expect(width / POINT_PER_MM).toBeCloseTo(SIZES[paper][0], 1);
      expect(height / POINT_PER_MM).toBeCloseTo(SIZES[paper][1], 1);
      expect(info).toMatch(/Title:\s+Strategy cards, Invented test course/);
      const perSheet = sheet.across * sheet.down;
      const units = (1 + cards.length) * (sheet.isSplit ? 2 : 1);
      const pages = Number(/Pages:\s+(\d+)/u.exec(info)![1]);
      expect(pages).toBeGreaterThan(Math.ceil(units / perSheet));
    });

    it('are printed to the scale that they state, to 0.5 %', async () => {
      const { file, sheet } = await made(paper, style);
      const page = sheet.across > 1 ? 1 : sheet.isSplit ? 3 : 2;
      const line = strokesOf(file, page, PLAY_LINE_WIDTH)[0]!;
      const bars = strokesOf(file, page, SCALE_BAR_WIDTH);
      const labels = scaleLabels(file, page);
      expect(bars.length).toBe(labels.length);
      // Every bar is as long as it says.
      for (const { stated, scale, x, y } of labels) {
        const bar = nearest(bars, (points) => Math.hypot(points.at(-1)![0] - x, points[0]![1] - y));
        expect(Math.abs(metresOf(bar, scale) / stated - 1)).toBeLessThan(0.005);
      }
      // The line from tee to hole by the scale beneath it.
      const foot = line.reduce((low, point) => (point[1] > low[1] ? point : low));
      const beneath = labels.filter(({ x, y }) => y > foot[1] && x < foot[0] + 45 * sheet.print);
      const { scale } = nearest(beneath, ({ y }) => y - foot[1]);
      expect(Math.abs(metresOf(line, scale) / drawnLength(first.drawing) - 1)).toBeLessThan(0.005);
    });

    it('keep the limits of Rule 4.3a on pictures of greens', async () => {
      const { file, sheet } = await made(paper, style);
      const text = tool('pdftotext', file, '-').replaceAll(/\s+/gu, ' ');
      const scales = [...text.matchAll(/\b1:(\d+)/gu)].map((match) => Number(match[1]));
      for (const scale of scales) expect(scale).toBeGreaterThanOrEqual(LARGEST_GREEN_SCALE);
      const isSmall = Math.min(sheet.unitWidthMm, sheet.unitHeightMm) <= 108;
      expect(text.includes('local rule forbids')).toBe(isSmall);
      expect(text.includes('Not drawn: with a green on it')).toBe(!isSmall);
      // As measured in the file: the greens' own outlines, and the page that is carried once it is cut.
      const widths = greenWidths(await made(paper, style));
      if (!isSmall) expect(widths).toEqual([]);
      else {
        // Every card shows its green twice, on the hole and alone.
        expect(widths).toHaveLength(2 * cards.length);
        for (const width of widths)
          expect((GREEN_ACROSS_M * 1000) / (width / POINT_PER_MM)).toBeGreaterThan(
            0.99 * LARGEST_GREEN_SCALE,
          );
        const { width, height } = carriedPage(file);
        expect(Math.abs(width - sheet.unitWidthMm * POINT_PER_MM)).toBeLessThan(1);
        expect(Math.abs(height - sheet.unitHeightMm * POINT_PER_MM)).toBeLessThan(1);
        expect(Math.min(width, height) / 72).toBeLessThanOrEqual(LARGEST_PAGE_IN.width + 0.01);
        expect(Math.max(width, height) / 72).toBeLessThanOrEqual(LARGEST_PAGE_IN.height + 0.01);
      }
      expect(greenWidths(await made(paper, style, false))).toEqual([]);
      const without = tool('pdftotext', (await made(paper, style, false)).file, '-');
      expect(without).not.toMatch(/local rule forbids|Not drawn/);
    });
  },
);

describe('the file', () => {
  it('is the same for the same booklet', async () => {
    const [a, b] = [await make('a6', 'plain', true), await make('a6', 'plain', true)];
    expect(Buffer.compare(a.bytes, b.bytes)).toBe(0);
  });

  it('in ink-saving style has no tinted areas', async () => {
    const fills = async (style: 'plain' | 'ink-saving') => {
      const svg = tool('pdftocairo', '-svg', '-f', '2', '-l', '2', (await made('a6', style)).file, '-');
      const colours = [...svg.matchAll(/[ ;"]fill(?:="|:)rgb\(([^)]*)\)/gu)].map((match) => match[1]!);
      return colours.filter((colour) => new Set(colour.split(/, */u)).size > 1).length;
    };
    expect(await fills('plain')).toBeGreaterThan(5);
    expect(await fills('ink-saving')).toBe(0);
  });

  it('spells what the standard fonts lack without spoiling the rest', () => {
    expect(printable('Łąka → Żuraw’s “7” – ½')).toBe('Laka -> Zuraw’s “7” – ½');
    expect(printable('球场 5')).toBe('?? 5');
    expect(printable('a\tb\u0000c')).toBe('a b?c');
  });

  it('says first what is needed most, and leaves out last', () => {
    const labels = cardParagraphs(first, extras, english).map(({ label }) => label);
    expect(labels.slice(0, 3)).toEqual(['Play', 'Aim', 'Miss']);
    expect(labels.at(-1)).toBe('Why');
    expect(labels).toContain('Remember');
    expect(
      cardParagraphs(
        { ...first, runOut: null, carries: [] },
        { ...extras, reminder: null, wind: null },
        english,
      ).map(({ label }) => label),
    ).not.toContain('Remember');
  });
});
