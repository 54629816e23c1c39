/** A few cases of each reader; `npm run fuzz -- --cases N` does as many as are wanted. */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { withoutFormulas } from '../../core/csv-formulas.ts';
import { pictureSize } from '../../renderer/drawing/background/picture-size.ts';
import { demandCleanPrototypes, demandNoFormulas, demandPlainSvg } from './guards.ts';
import { diceOf } from './mutate.ts';
import { READERS, runCase, seedOf } from './readers.ts';
import * as samples from './samples.ts';

const CASES = 6;

/** Good files, by reader: were they not read, their spoilt sisters would try nothing but the first lines. */
const GOOD: Readonly<Record<string, readonly (string | Uint8Array)[]>> = {
  course: samples.COURSES,
  player: samples.PLAYERS,
  round: samples.ROUNDS,
  'shared-plan': samples.SHARED,
  csv: samples.SHOT_TABLES,
  'osm-xml': samples.OSM_XML_SAMPLES,
  'osm-json': samples.OSM_JSON_SAMPLES,
  gpx: samples.GPX_SAMPLES,
  geojson: samples.GEOJSON_SAMPLES,
  geotiff: samples.GEOTIFFS,
  pmtiles: samples.PMTILES,
  picture: samples.PICTURES,
  'kept-plan': samples.KEPT_PLANS,
};

describe.each(READERS)('the reader of $name files', (reader) => {
  it('reads good ones', async () => {
    const good = reader.name === 'mbtiles' ? await samples.mbtilesSamples() : (GOOD[reader.name] ?? []);
    for (const file of good) expect(await reader.read(file, diceOf('good'))).toBe(true);
  });

  it(`reads or refuses ${CASES} spoilt ones`, async () => {
    for (let number = 0; number < CASES; number++) {
      const seed = seedOf('unit', reader.name, number);
      await runCase(reader, seed).catch((error: unknown) => {
        throw new Error(`${seed}: npm run fuzz -- --reader ${reader.name} --seed unit --case ${number}`, {
          cause: error,
        });
      });
    }
  });
});

describe('the guards', () => {
  it('notice a changed prototype, a formula in a cell, and markup in a drawing', () => {
    Object.assign(Object.prototype, { polluted: 'yes' });
    expect(demandCleanPrototypes).toThrow('prototype');
    expect(demandCleanPrototypes).not.toThrow();
    for (const cell of ['=1+1', 'x;=1+1', '"x\t=1"', '＝1+1', ' @SUM(A1)', '-1+2'])
      expect(() => demandNoFormulas(`a,${cell},b\r\n`), cell).toThrow('works out');
    for (const cell of ['-1.5', 'a-b', '', withoutFormulas('x;=1+1'), withoutFormulas('=1+1')])
      demandNoFormulas(`a,${cell},b\r\n`);
    expect(() => demandPlainSvg('<svg><script/></svg>')).toThrow('script');
    expect(() => demandPlainSvg('<svg onload="x"/>')).toThrow('onload');
    demandPlainSvg('<svg><text>&lt;b&gt;</text></svg>');
  });
});

describe('names in the window', () => {
  it('never pass through a parser of markup: no such call stands in the renderer', () => {
    const root = join(import.meta.dirname, '..', '..', 'renderer');
    const sources = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((name) =>
      /\.tsx?$/u.test(name),
    );
    expect(sources.length).toBeGreaterThan(100);
    const parsing =
      /innerHTML|outerHTML|insertAdjacentHTML|dangerouslySetInnerHTML|document\.write|createContextualFragment|DOMParser|srcdoc|bindTooltip|bindPopup/u;
    expect(sources.filter((name) => parsing.test(readFileSync(join(root, name), 'utf8')))).toEqual([]);
  });
});

it('the size of a picture is read from its head', () => {
  const sizes = samples.PICTURES.map((bytes) => pictureSize(bytes));
  expect(sizes).toEqual([
    { width: 16, height: 8 },
    { width: 16, height: 8 },
    { width: 16, height: 8 },
    { width: 16, height: 8 },
  ]);
});
