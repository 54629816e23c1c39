/**
 * Draws the demo course for looking at: the whole property and each hole, as SVG and PNG.
 * `npx tsx tests/demo/draw-map.ts OUT_FOLDER [course|HOLE ...]`; without a list, everything.
 */

import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Feature, FeatureCollection, Position } from 'geojson';
import { chromium } from 'playwright-core';
import { makeLocalFrame } from '../../core/course/local-frame.ts';
import { ORIGIN } from './course/collection.ts';

const CHROMIUM = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
const CHROMIUM_FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
];

interface View {
  readonly name: string;
  readonly title: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pxPerM: number;
  /** To pixels from longitude and latitude. */
  readonly toPx: (position: Position) => readonly [number, number];
}

/** Painted in this order. */
const LAYERS: readonly (readonly [string, string])[] = [
  ['boundary', 'fill="#8fae62" stroke="#f4f4ee" stroke-width="2" stroke-dasharray="9 6"'],
  ['rough', 'fill="#84aa57"'],
  ['long_rough', 'fill="url(#long)" fill-rule="evenodd"'],
  ['fairway', 'fill="url(#mown)"'],
  ['cartpath', 'fill="#cfc4ad"'],
  ['tee', 'fill="#8cc86a" stroke="#5e9646" stroke-width="1"'],
  ['green', 'fill="#a6dc84" stroke="#6aa552" stroke-width="1.2"'],
  ['bunker', 'fill="#efe3b8" stroke="#b99d5f" stroke-width="1.4"'],
  ['lateral_water_hazard', 'fill="#6aa3c4" stroke="#c0392b" stroke-width="1.3"'],
  ['water_hazard', 'fill="#6aa3c4" stroke="#e0b100" stroke-width="1.3"'],
  [
    'out_of_bounds',
    'fill="#d9cdb0" fill-opacity="0.75" stroke="#ffffff" stroke-width="1.5" stroke-dasharray="4 4"',
  ],
  ['wood', 'fill="url(#canopy)" fill-rule="evenodd" stroke="#2f5a2c" stroke-width="1"'],
];

function kindOf(feature: Feature): string {
  const { golf, natural, holewright_kind: own } = feature.properties ?? {};
  return String(golf ?? natural ?? own);
}

function drawView(features: readonly Feature[], view: View): string {
  const ring = (points: readonly Position[]): string =>
    `M${points
      .map((p) =>
        view
          .toPx(p)
          .map((v) => v.toFixed(1))
          .join(' '),
      )
      .join('L')}Z`;
  const parts: string[] = [];
  for (const [kind, style] of LAYERS) {
    for (const feature of features) {
      if (kindOf(feature) !== kind || feature.geometry.type !== 'Polygon') continue;
      parts.push(`<path d="${feature.geometry.coordinates.map(ring).join('')}" ${style}/>`);
    }
  }
  const labels: string[] = [];
  for (const feature of features) {
    const { geometry, properties } = feature;
    if (geometry.type === 'Point') {
      const [x, y] = view.toPx(geometry.coordinates);
      if (kindOf(feature) === 'tree') {
        const r = ((Number(properties?.['diameter_crown']) || 6) / 2) * view.pxPerM;
        parts.push(
          `<circle cx="${x + r * 0.25}" cy="${y + r * 0.3}" r="${r}" fill="#2b3d1f" fill-opacity="0.25"/>`,
        );
        parts.push(
          `<circle cx="${x}" cy="${y}" r="${r}" fill="#3f7438" stroke="#2c5527" stroke-width="0.8"/>`,
        );
        parts.push(
          `<circle cx="${x - r * 0.25}" cy="${y - r * 0.25}" r="${r * 0.5}" fill="#5a9150" fill-opacity="0.7"/>`,
        );
      }
      if (kindOf(feature) === 'hole_position') labels.push(`<circle cx="${x}" cy="${y}" r="2" fill="#a11"/>`);
      if (kindOf(feature) === 'tee_marker') labels.push(`<circle cx="${x}" cy="${y}" r="1.8" fill="#222"/>`);
    }
    if (geometry.type === 'LineString' && kindOf(feature) === 'hole') {
      const points = geometry.coordinates.map(view.toPx);
      labels.push(
        `<polyline points="${points.join(' ')}" fill="none" stroke="#fff" stroke-opacity="0.55" stroke-width="1.2" stroke-dasharray="5 5"/>`,
      );
      const [x, y] = points[0]!;
      labels.push(
        `<circle cx="${x}" cy="${y}" r="10" fill="#fff"/><text x="${x}" y="${y + 4}" font-size="12" text-anchor="middle" font-family="sans-serif">${properties?.['ref']}</text>`,
      );
    }
  }
  const scaleBar = `<g transform="translate(20 ${view.heightPx - 24})"><rect width="${100 * view.pxPerM}" height="5" fill="#222"/><text y="-5" font-size="12" font-family="sans-serif">100 m</text></g>`;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${view.widthPx}" height="${view.heightPx}" viewBox="0 0 ${view.widthPx} ${view.heightPx}">
<defs>
<pattern id="mown" width="16" height="16" patternUnits="userSpaceOnUse" patternTransform="rotate(35)"><rect width="16" height="16" fill="#9cc66e"/><rect width="8" height="16" fill="#94bf66"/></pattern>
<pattern id="long" width="9" height="9" patternUnits="userSpaceOnUse"><rect width="9" height="9" fill="#a3a25c"/><path d="M2 7l1-4M6 5l-1-4" stroke="#87853f" stroke-width="1"/></pattern>
<pattern id="canopy" width="17" height="15" patternUnits="userSpaceOnUse"><rect width="17" height="15" fill="#3c6b37"/><circle cx="4" cy="4" r="4" fill="#4a7f44"/><circle cx="12" cy="9" r="4.6" fill="#457740"/><circle cx="3" cy="12" r="2.4" fill="#528a4b"/></pattern>
</defs>
<rect width="100%" height="100%" fill="#c9cbb2"/>
${parts.join('\n')}
${labels.join('\n')}
${scaleBar}<text x="20" y="26" font-size="17" font-family="sans-serif">${view.title}</text></svg>`;
}

function viewOf(
  name: string,
  title: string,
  around: readonly Position[],
  upRadians: number,
  pxPerM: number,
  marginM: number,
): View {
  const frame = makeLocalFrame(ORIGIN);
  const turned = ([lon, lat]: Position): readonly [number, number] => {
    const { x, y } = frame.toSpot([lon!, lat!]);
    return [
      x * Math.cos(upRadians) - y * Math.sin(upRadians),
      x * Math.sin(upRadians) + y * Math.cos(upRadians),
    ];
  };
  const xs = around.map((p) => turned(p)[0]);
  const ys = around.map((p) => turned(p)[1]);
  const west = Math.min(...xs) - marginM;
  const north = Math.max(...ys) + marginM;
  return {
    name,
    title,
    pxPerM,
    widthPx: Math.round((Math.max(...xs) + marginM - west) * pxPerM),
    heightPx: Math.round((north - Math.min(...ys) + marginM) * pxPerM),
    toPx: (p) => [(turned(p)[0] - west) * pxPerM, (north - turned(p)[1]) * pxPerM],
  };
}

function viewsOf(collection: FeatureCollection): View[] {
  const holes = collection.features.flatMap((feature) =>
    kindOf(feature) === 'hole' && feature.geometry.type === 'LineString'
      ? [{ properties: feature.properties ?? {}, line: feature.geometry.coordinates }]
      : [],
  );
  const whole = viewOf(
    'course',
    'Whole course (invented)',
    holes.flatMap((h) => h.line),
    0,
    1.25,
    110,
  );
  const frame = makeLocalFrame(ORIGIN);
  return [
    whole,
    ...holes.map(({ properties, line }) => {
      const spots = line.map(([lon, lat]) => frame.toSpot([lon!, lat!]));
      const [tee, green] = [spots[0]!, spots[spots.length - 1]!];
      const bearing = Math.atan2(green.x - tee.x, green.y - tee.y);
      const title = `${properties['ref']} ${properties['name']}, par ${properties['par']}, index ${properties['handicap']}`;
      return viewOf(`hole-${properties['ref']}`, title, line, bearing, line.length > 3 ? 2 : 2.6, 62);
    }),
  ];
}

async function main(): Promise<void> {
  const [out = 'out/demo-map', ...wanted] = process.argv.slice(2);
  mkdirSync(out, { recursive: true });
  const file = new URL('../../maps/demo-course.geojson', import.meta.url);
  const collection = JSON.parse(readFileSync(file, 'utf8')) as FeatureCollection;
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: CHROMIUM_FLAGS });
  try {
    for (const view of viewsOf(collection)) {
      if (wanted.length > 0 && !wanted.some((w) => view.name === w || view.name === `hole-${w}`)) continue;
      const svg = drawView(collection.features, view);
      writeFileSync(path.join(out, `${view.name}.svg`), svg);
      const page = await browser.newPage({ viewport: { width: view.widthPx, height: view.heightPx } });
      await page.setContent(`<style>body{margin:0}</style>${svg}`);
      await page.screenshot({ path: path.join(out, `${view.name}.png`) });
      await page.close();
      console.log(`${view.name}: ${view.widthPx} x ${view.heightPx}`);
    }
  } finally {
    await browser.close();
  }
}

await main();
