/** Lie, wind, temperature and altitude from a table: by column, or one value for all of it. */

import { describe, expect, it } from 'vitest';
import { readQuantity, readWindFrom } from '../../../core/player/csv/cells.ts';
import { withConditions } from '../../../core/player/csv/change-mapping.ts';
import { ownMapping, shotsToCsv } from '../../../core/player/csv/export.ts';
import type { ShotMapping } from '../../../core/player/csv/mapping.ts';
import { readShots } from '../../../core/player/csv/read-shots.ts';
import { sniffCsv } from '../../../core/player/csv/sniff.ts';
import { rememberSource } from '../../../core/player/csv/sources.ts';
import { type Suggestion, suggestMapping } from '../../../core/player/csv/suggest.ts';
import type { RecordedShot } from '../../../core/player/format.ts';
import { STANDARD_BAG } from '../../../core/player/presets.ts';
import { minimalPlayer } from '../sample-player.ts';
import { inEnglish } from '../../../core/words/told.ts';

const bag = STANDARD_BAG.map((club) => ({ ...club, swings: [...club.swings] }));

function suggest(text: string): Suggestion {
  const shape = sniffCsv(text);
  if (!shape.ok) throw new Error(shape.error.message);
  return suggestMapping(shape.value, bag);
}

function read(text: string, mapping: ShotMapping = suggest(text).mapping) {
  const table = readShots(text, mapping, { bag });
  if (!table.ok) throw new Error(table.error.message);
  return table.value;
}

describe('columns of weather', () => {
  const text = [
    'Club,Carry (yd),Offline (yd),Lie,Wind Speed (km/h),Wind Direction,Temp (°F),Elevation (ft)',
    '7-iron,137,4 R,Light rough,18,from the left,50,5280',
    '7-iron,140,2 L,,0,,59 F,0 m',
    '7-iron,140,2 L,Sand,10 mph,30,,',
    'Driver,210,1 R,tee,12,sideways,60,0',
    'Driver,210,1 R,tee,breeze,0,60,0',
    'Driver,210,1 R,tee,999,0,60,0',
    'Driver,210,1 R,tee,12,0,600,0',
  ].join('\n');

  it('are found by their names, units and all', () => {
    const { mapping, doubts } = suggest(text);
    const found = mapping.columns.map(({ index, field, unit }) => [index, field, unit]);
    expect(found).toContainEqual([3, 'lie', undefined]);
    expect(found).toContainEqual([4, 'wind', 'km/h']);
    expect(found).toContainEqual([5, 'windFrom', undefined]);
    expect(found).toContainEqual([6, 'temperature', 'F']);
    expect(found).toContainEqual([7, 'altitude', 'ft']);
    expect(doubts.map(inEnglish).join(' ')).toContain(
      'as the player sees it: 0 from ahead, 90 from the right',
    );
  });

  it('are read in metres per second, degrees, Celsius and metres; a cell’s own unit counts more', () => {
    const { accepted, rejected } = read(text);
    expect(accepted[0]!.shot).toMatchObject({
      lie: 'Light rough',
      windMps: 5,
      windFromDeg: 270,
      temperatureC: 10,
      altitudeM: 1609.344,
    });
    expect(accepted[1]!.shot).toMatchObject({ windMps: 0, temperatureC: 15, altitudeM: 0 });
    expect(accepted[2]!.shot).toMatchObject({ windMps: 4.4704, windFromDeg: 30 });
    expect(accepted[2]!.shot.temperatureC).toBeUndefined();
    expect(rejected.map(({ line, code, column }) => [line, code, column])).toEqual([
      [5, 'number-unreadable', 5],
      [6, 'number-unreadable', 4],
      [7, 'out-of-range', 4],
      [8, 'out-of-range', 6],
    ]);
    for (const { message } of rejected) expect(inEnglish(message)).toMatch(/\. .*\.$/u);
  });

  it('without the side of the wind are pointed out', () => {
    const { doubts } = suggest('Club,Carry (m),Offline (m),Wind (m/s)\n7-iron,120,1,4\n');
    expect(doubts.map(inEnglish).join(' ')).toContain('from which side the wind came');
  });

  it('are not mistaken for others, nor others for them', () => {
    const { mapping } = suggest(
      'Club,Carry (m),Offline (m),Tempo,Max height (m),Elevation change (m),Ball temp\n7-iron,120,1,3.1,30,2,20\n',
    );
    const fields = mapping.columns.map(({ field }) => field);
    expect(fields).not.toContain('temperature');
    expect(fields).not.toContain('altitude');
  });

  it.each([
    ['12', 12],
    ['-45', -45],
    ['90°', 90],
    ['headwind', 0],
    ['Into', 0],
    ['tail', 180],
    ['from the right', 90],
    ['L-R', 270],
    ['right to left', 90],
    ['=1', null],
    ['12 m', null],
    ['NW', null],
  ])('a side of the wind: %s', (cell, degrees) => {
    expect(readWindFrom(cell, '.')).toBe(degrees);
  });

  it('numbers have their unit behind them or none', () => {
    expect(readQuantity('4,5 m/s', ',')).toEqual({ value: 4.5, unit: 'm/s' });
    expect(readQuantity('-3°C', '.')).toEqual({ value: -3, unit: '°C' });
    for (const cell of ['=2+3', 'calm', '3 4', '']) expect(readQuantity(cell, '.')).toBeNull();
  });
});

describe('one value for the whole table', () => {
  const plain = 'Club,Carry (m),Offline (m),Wind (m/s)\n7-iron,120,1,\n7-iron,121,2,3\n';
  const mapping = withConditions(suggest(plain).mapping, {
    lie: 'fairway',
    windMps: 6,
    windFromDeg: 180,
    temperatureC: 8,
    altitudeM: 640,
  });

  it('goes to every shot whose row says nothing else', () => {
    const { accepted } = read(plain, mapping);
    expect(accepted[0]!.shot).toMatchObject({
      ...{ lie: 'fairway', windMps: 6, windFromDeg: 180, temperatureC: 8, altitudeM: 640 },
    });
    expect(accepted[1]!.shot).toMatchObject({ windMps: 3, windFromDeg: 180 });
  });

  it('is forgotten for the next table of the device as far as it is weather, kept as far as it is the place', () => {
    const shape = sniffCsv(plain);
    if (!shape.ok) throw new Error(shape.error.message);
    const remembered = rememberSource({ ...minimalPlayer(), bag }, 'device', shape.value, mapping);
    expect(remembered.settings?.sources?.[0]?.mapping.conditions).toEqual({ lie: 'fairway', altitudeM: 640 });
    const weatherOnly = withConditions(suggest(plain).mapping, { windMps: 6 });
    const bare = rememberSource({ ...minimalPlayer(), bag }, 'device', shape.value, weatherOnly);
    expect('conditions' in bare.settings!.sources![0]!.mapping).toBe(false);
  });

  it('can be taken back', () => {
    const back = withConditions(mapping, {
      ...{ lie: undefined, windMps: undefined, windFromDeg: undefined },
      ...{ temperatureC: undefined, altitudeM: undefined },
    });
    expect('conditions' in back).toBe(false);
  });
});

describe('export', () => {
  it('holds the weather, and is found out by its own header', () => {
    const shot: RecordedShot = {
      ...{ club: '7-iron', swing: 'full', carryM: 125.5, offlineM: -3, lie: 'rough' },
      ...{ windMps: 4.5, windFromDeg: 270, temperatureC: -2, altitudeM: 800, at: '2026-05-01' },
    };
    const text = shotsToCsv([shot], 'metres');
    expect(read(text, ownMapping('metres')).accepted[0]!.shot).toEqual(shot);
    expect(read(text).accepted[0]!.shot).toEqual(shot);
  });
});
