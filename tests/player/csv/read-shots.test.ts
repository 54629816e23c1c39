/** Reading tables: cells in every dress, rows that are rejected with what to do, and texts that mean harm. */

import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import {
  isFormula,
  readDate,
  readMeasure,
  readNumber,
  USUAL_SIDE_WORDS,
} from '../../../core/player/csv/cells.ts';
import { findClub } from '../../../core/player/csv/club-names.ts';
import { ownMapping, shotsToCsv } from '../../../core/player/csv/export.ts';
import type { ShotMapping } from '../../../core/player/csv/mapping.ts';
import { RowReader } from '../../../core/player/csv/read-row.ts';
import {
  MOST_CSV_ROWS,
  MOST_REJECTED,
  readShots,
  readShotsInSteps,
  type ShotTable,
} from '../../../core/player/csv/read-shots.ts';
import { csvBlocks } from '../../../core/player/csv/rows.ts';
import { sniffCsv } from '../../../core/player/csv/sniff.ts';
import { suggestMapping } from '../../../core/player/csv/suggest.ts';
import { PlayerDocumentSchema, type RecordedShot } from '../../../core/player/format.ts';
import { STANDARD_BAG } from '../../../core/player/presets.ts';
import { inEnglish } from '../../../core/words/told.ts';

const bag = STANDARD_BAG.map((club) => ({ ...club, swings: [...club.swings] }));

const plain: ShotMapping = {
  delimiter: ',',
  decimal: '.',
  skipRows: 1,
  columns: [
    { index: 0, header: 'Club', field: 'club' },
    { index: 1, header: 'Carry', field: 'carry', unit: 'm' },
    { index: 2, header: 'Off line', field: 'offline', unit: 'm', positive: 'right' },
  ],
};

function read(text: string, mapping: ShotMapping = plain): ShotTable {
  const table = readShots(text, mapping, { bag });
  if (!table.ok) throw new Error(table.error.message);
  return table.value;
}

describe('a number', () => {
  it.each([
    ['12.5', '.', 12.5],
    ['-3', '.', -3],
    ['+0.4', '.', 0.4],
    ['.5', '.', 0.5],
    ['1,234.5', '.', 1234.5],
    ['1 234.5', '.', 1234.5],
    ["1'234.5", '.', 1234.5],
    ['\u22124.2', '.', -4.2],
    ['12,5', ',', 12.5],
    ['1.234,5', ',', 1234.5],
    ['1\u00a0234,5', ',', 1234.5],
    ['12,5', '.', null],
    ['12.5', ',', null],
    ['1e5', '.', null],
    ['0x10', '.', null],
    ['', '.', null],
    ['12.5.1', '.', null],
    ['Infinity', '.', null],
    ['1'.repeat(400), '.', null],
  ] as const)('%j with “%s” is %s', (cell, decimal, value) => {
    expect(readNumber(cell, decimal)).toBe(value);
  });

  it.each([
    ['12.3 yd', 12.3, 'yd', null],
    ['12.3L', 12.3, null, -1],
    ['R 4', 4, null, 1],
    ['4 m left', 4, 'm', -1],
    ['-4.5°', -4.5, '°', null],
    ['right 2.0 (ft)', 2, 'ft', 1],
  ] as const)('may have a unit and a side: %s', (cell, value, unit, side) => {
    const found = readMeasure(cell, '.', USUAL_SIDE_WORDS);
    expect(found).toEqual({ ok: true, value: { value, unit, side } });
  });

  it('is never worked out from a formula', () => {
    for (const cell of ['=1+2', '@SUM(A1)', '+A1', '-cmd|x', '=HYPERLINK("x")']) {
      expect(isFormula(cell)).toBe(true);
      const found = readMeasure(cell, '.', USUAL_SIDE_WORDS);
      expect(found.ok ? '' : inEnglish(found.error)).toContain('formula');
    }
    for (const cell of ['-12.5', '+3', '-4 m', '-4°', '+1.5 yd']) expect(isFormula(cell)).toBe(false);
  });
});

describe('a date', () => {
  it.each([
    ['2026-05-07', '', 'iso', '2026-05-07'],
    ['2026-05-07T14:05:09Z', '', 'iso', '2026-05-07T14:05:09Z'],
    ['07.05.2026', '14:05', 'day-first', '2026-05-07T14:05:00'],
    ['5/7/26', '2:05 pm', 'month-first', '2026-05-07T14:05:00'],
    ['5/7/2026 12:05:30 AM', '', 'month-first', '2026-05-07T00:05:30'],
    ['31.02.2026', '', 'day-first', null],
    ['13/13/2026', '', 'month-first', null],
    ['07.05.2026', '', 'iso', null],
    ['2026-05-07', '25:00', 'iso', null],
    ['soon', '', 'day-first', null],
  ] as const)('%s %s read %s', (date, time, order, at) => {
    expect(readDate(date, time, order)).toBe(at);
  });
});

describe('names of clubs', () => {
  it.each([
    ['7i', '7-iron'],
    ['Iron 7', '7-iron'],
    ['7', '7-iron'],
    ['iron_7', '7-iron'],
    ['DR', 'Driver'],
    ['1 Wood', 'Driver'],
    ['W3', '3-wood'],
    ['4H', '4-hybrid'],
    ['pw', 'Pitching wedge'],
    ['SW', 'Sand wedge'],
    ['56°', 'Sand wedge'],
    ['60 deg', 'Lob wedge'],
    ['Average', undefined],
    ['99', undefined],
    ['3-iron', undefined],
  ] as const)('%s is %s', (name, club) => {
    expect(findClub(name, bag)?.name).toBe(club);
  });
});

describe('rows', () => {
  it('end in one place each, with line, cell and what to do', () => {
    const table = read(
      [
        'Club,Carry,Off line',
        '7-iron,125.5,-3.2',
        'Mashie,125.5,-3.2',
        ',125.5,1',
        '7-iron,far,1',
        '7-iron,,1',
        '7-iron,125.5,',
        '7-iron,1255,1',
        '7-iron,20,25',
        '7-iron,"12',
        '7-iron,125.5,-3.2',
        '',
        '7-iron,126,4 L',
      ].join('\n'),
    );
    expect(table.accepted.map(({ line }) => line)).toEqual([2, 13]);
    expect(table.accepted[1]!.shot).toEqual({ club: '7-iron', swing: 'full', carryM: 126, offlineM: -4 });
    expect(table.rejected.map(({ line, code, column }) => [line, code, column])).toEqual([
      [3, 'club-unknown', 0],
      [4, 'club-missing', 0],
      [5, 'number-unreadable', 1],
      [6, 'row-too-short', 1],
      [7, 'row-too-short', 2],
      [8, 'out-of-range', 1],
      [9, 'out-of-range', 2],
      [10, 'row-broken', undefined],
    ]);
    for (const { message } of table.rejected) expect(inEnglish(message)).toMatch(/\. .*\.$/u);
    expect(table.duplicates).toMatchObject([{ line: 11, ofLine: 2 }]);
    expect(table.rows).toBe(11);
  });

  it('can be mended: the mended cells are read like any other row', () => {
    const [bad] = read('Club,Carry,Off line\n7-iron,12x,1').rejected;
    const mended = bad!.cells.map((cell, i) => (i === bad!.column ? '121' : cell));
    expect(new RowReader(plain, bag).read({ cells: mended })).toMatchObject({
      ok: true,
      value: { carryM: 121 },
    });
  });

  it('of offline in degrees, of feet and of the left counted positive come out in metres and degrees', () => {
    const mapping: ShotMapping = {
      ...plain,
      columns: [
        { index: 0, header: '', field: 'club' },
        { index: 1, header: '', field: 'carry', unit: 'ft' },
        { index: 2, header: '', field: 'direction', unit: 'rad', positive: 'left' },
      ],
    };
    const { shot } = read('a,b,c\n7-iron,400,0.1', mapping).accepted[0]!;
    expect(shot.carryM).toBeCloseTo(121.92, 4);
    expect(shot.directionDeg).toBeCloseTo(-5.7296, 3);
  });

  it('are numbered by line also after a cell of several lines and lone carriage returns', () => {
    const table = read('Club,Carry,Off line\r7-iron,120,1\r"7-\niron",121,1\r7-iron,122,1\r');
    expect(table.accepted.map(({ line }) => line)).toEqual([2, 3, 5]);
    expect(table.rejected).toEqual([]);
  });

  it('are counted twice only where a running number tells them apart', () => {
    const withNumber: ShotMapping = {
      ...plain,
      columns: plain.columns.map((rule) => ({ ...rule, index: rule.index + 1 })),
    };
    const table = read('No,Club,Carry,Off line\n1,7-iron,120,1\n2,7-iron,120,1\n2,7-iron,120,1', withNumber);
    expect(table.accepted).toHaveLength(2);
    expect(table.duplicates).toHaveLength(1);
  });
});

describe('limits', () => {
  it('say where reading ended: too many rows, too many shots', () => {
    const row = (i: number): string => `Mashie,${i},1`;
    const many = `h,h,h\n${Array.from({ length: MOST_CSV_ROWS + 50 }, (_, i) => row(i)).join('\n')}`;
    const table = read(many);
    expect(table.rows).toBe(MOST_CSV_ROWS);
    expect(table.rejected).toHaveLength(MOST_REJECTED);
    expect(table.rejected.length + table.furtherRejected).toBe(MOST_CSV_ROWS);
    expect(table.endedEarly && inEnglish(table.endedEarly)).toContain(`line ${MOST_CSV_ROWS + 2}`);
    const shots = `h,h,h\n${Array.from({ length: 20_100 }, (_, i) => `7-iron,${(100 + i / 1000).toFixed(3)},1`).join('\n')}`;
    const full = read(shots);
    expect(full.accepted).toHaveLength(20_000);
    expect(full.endedEarly && inEnglish(full.endedEarly)).toContain('20000 shots at most; line 20002');
  });

  it('refuse a mapping without carry, direction or club by name', () => {
    for (const [drop, code] of [
      ['carry', 'mapping-without-carry'],
      ['offline', 'mapping-without-direction'],
      ['club', 'mapping-without-club'],
    ] as const) {
      const mapping = { ...plain, columns: plain.columns.filter(({ field }) => field !== drop) };
      expect(readShots('a\nb', mapping)).toMatchObject({ ok: false, error: { code } });
    }
  });

  it('tell progress, and can be left at any block', () => {
    const text = `h,h,h\n${Array.from({ length: 20_000 }, (_, i) => `7-iron,${100 + (i % 50)}.${i},1`).join('\n')}`;
    const steps = readShotsInSteps(text, plain, { bag });
    const seen: number[] = [];
    for (let step = steps.next(); step.done !== true; step = steps.next()) seen.push(step.value.done);
    expect(seen.length).toBeGreaterThan(3);
    expect(seen).toEqual([...seen].sort((a, b) => a - b));
    expect(seen.at(-1)).toBe(text.length);
  });
});

describe('hostile texts', () => {
  const million = 1_000_000;

  /** Answers at all, with what it made of the text; slow ways would never come back from the sizes below. */
  function survive(text: string): ReturnType<typeof readShots> | null {
    const shape = sniffCsv(text);
    return shape.ok ? readShots(text, suggestMapping(shape.value, bag).mapping, { bag }) : null;
  }

  it.each([
    ['a hundred megabytes of one letter', 'a'.repeat(100 * million)],
    ['a hundred megabytes of quotation marks', `a,b\n${'"'.repeat(100 * million)}`],
    [
      'a hundred megabytes in a quotation that never closes',
      `Club,Carry (m),Offline (m)\n7-iron,120,1\n"${'x,y\n'.repeat(25 * million)}`,
    ],
    ['a hundred megabytes of delimiters', ','.repeat(100 * million)],
    ['a hundred megabytes of empty lines', `a,b\n${'\r\n'.repeat(50 * million)}`],
  ])('%s', (_, text) => {
    survive(text);
  });

  it('of UTF-16, of zeros, of no table and of nothing are refused with what to do', () => {
    const utf16 = 'Club,Carry\n7-iron,120\n'.replace(/[^]/gu, '$&\0');
    expect(sniffCsv(utf16)).toMatchObject({ ok: false, error: { code: 'csv-utf16' } });
    expect(sniffCsv('\0'.repeat(1000))).toMatchObject({ ok: false, error: { code: 'csv-utf16' } });
    for (const text of ['', '\ufeff', 'hello', 'hello\nworld\n'])
      expect(sniffCsv(text)).toMatchObject({ ok: false, error: { code: 'csv-no-table' } });
    expect(sniffCsv('x'.repeat(106 * million))).toMatchObject({ ok: false, error: { code: 'csv-too-long' } });
  });

  it('of letters in a wrong encoding are read with a warning', () => {
    const shape = sniffCsv('Schl\ufffdger;Carry (m);Offline (m)\nDriver;180,5;3,2\n');
    expect(shape.ok && shape.value.warning && inEnglish(shape.value.warning)).toContain('UTF-8');
  });

  it('keep the good rows around a quotation that never closes', () => {
    const table = read('Club,Carry,Off line\n7-iron,120,1\n"7-iron,121,1\n7-iron,122,1\n7-iron,123,1');
    expect(table.accepted.map(({ shot }) => shot.carryM)).toEqual([120, 122, 123]);
    expect(table.rejected).toMatchObject([{ line: 3, code: 'row-broken' }]);
  });

  it('do not reach the prototype of a table of names', () => {
    const table = read('Club,Carry,Off line\n__proto__,120,1\nconstructor,120,1\ntoString,120,1', {
      ...plain,
      clubNames: {},
      swingNames: {},
    });
    expect(table.accepted).toEqual([]);
    expect(table.rejected.map(({ code }) => code)).toEqual(['club-unknown', 'club-unknown', 'club-unknown']);
  });

  it('of any characters lose no row: accepted, rejected, repeated and skipped ones add up', () => {
    const cell = fc.oneof(
      fc
        .array(fc.constantFrom(...Array.from('ab",;\n\r\t \'0123456789.-+=@LR°\u0000\ufeff\ufffd')), {
          maxLength: 12,
        })
        .map((letters) => letters.join('')),
      fc.double({ min: -300, max: 300, noNaN: true }).map(String),
      fc.constantFrom('7-iron', 'Driver', '', 'null', '12,5', '3 L', '=A1'),
    );
    const table = fc.array(fc.array(cell, { minLength: 1, maxLength: 6 }), { maxLength: 12 });
    fc.assert(
      fc.property(
        table,
        fc.constantFrom(',', ';', '\t', '|'),
        fc.constantFrom('\n', '\r\n', '\r'),
        (rows, delimiter, end) => {
          const text = rows.map((cells) => cells.join(delimiter)).join(end);
          const shape = sniffCsv(text);
          if (!shape.ok) {
            expect(shape.error.message).toMatch(/\.$/u);
            return;
          }
          const { mapping } = suggestMapping(shape.value, bag);
          const columns: ShotMapping['columns'] = [
            ...mapping.columns.filter(({ field }) => field === 'swing' || field === 'date'),
            ...plain.columns,
            { index: 3, header: '', field: 'wind', unit: 'm/s' },
            { index: 4, header: '', field: 'windFrom' },
            { index: 5, header: '', field: 'temperature', unit: 'F' },
          ];
          const found = readShots(text, { ...mapping, columns }, { bag });
          if (!found.ok) throw new Error(found.error.message);
          const { accepted, rejected, duplicates, furtherRejected, rows: count } = found.value;
          expect(accepted.length + rejected.length + duplicates.length + furtherRejected).toBe(count);
          let all = 0;
          for (const block of csvBlocks(text, mapping.delimiter)) all += block.rows.length;
          expect(count).toBe(Math.max(0, all - mapping.skipRows));
          for (const { shot } of accepted) {
            expect(bag.some((club) => club.name === shot.club)).toBe(true);
            expect(shot.carryM >= 0 && shot.carryM <= 500).toBe(true);
            expect(Number.isFinite(shot.offlineM ?? shot.directionDeg)).toBe(true);
            expect(v.is(PlayerDocumentSchema.entries.shots, [shot])).toBe(true);
          }
        },
      ),
      { numRuns: 400 },
    );
  });
});

describe('export', () => {
  const anyShot: fc.Arbitrary<RecordedShot> = fc.record(
    {
      club: fc.constantFrom('7-iron', '=HYPERLINK("http://x","y")', '+1', '@SUM(1)', '-2', 'a "b", c'),
      swing: fc.constantFrom('full', 'punch', 'half'),
      carryM: fc.integer({ min: 10, max: 3000 }).map((value) => value / 10),
      offlineM: fc.integer({ min: -90, max: 90 }).map((value) => value / 10),
      totalM: fc.integer({ min: 10, max: 3000 }).map((value) => value / 10),
      lie: fc.constantFrom('range', 'fairway', '=1+1', '-x'),
      at: fc.constantFrom('2026-05-01', '2026-05-01T10:00:00'),
    },
    { requiredKeys: ['club', 'swing', 'carryM', 'offlineM'] },
  );

  it('comes back the same, and no cell of text begins like a formula', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(anyShot, { maxLength: 15, selector: (shot) => JSON.stringify(shot) }),
        (shots) => {
          // Off line may not exceed the carry.
          const real = shots.filter((shot) => Math.abs(shot.offlineM!) <= shot.carryM);
          const text = shotsToCsv(real, 'metres');
          const table = readShots(text, ownMapping('metres'));
          if (!table.ok) throw new Error(table.error.message);
          expect(table.value.rejected).toEqual([]);
          expect(table.value.accepted.map(({ shot }) => shot)).toEqual(real);
          for (const block of csvBlocks(text, ','))
            for (const { cells } of block.rows)
              for (const cell of cells)
                if (!/^-?[\d.]+$/u.test(cell)) expect(cell).not.toMatch(/^[=+\-@\t\r]/u);
        },
      ),
    );
  });

  it('in yards is found out by its own header', () => {
    const shots: RecordedShot[] = [{ club: '7-iron', swing: 'full', carryM: 125.4321, offlineM: -3.2 }];
    const text = shotsToCsv(
      [...shots, { club: 'Driver', swing: 'full', carryM: 190, directionDeg: 2 }],
      'yards',
    );
    const shape = sniffCsv(text);
    if (!shape.ok) throw new Error(shape.error.message);
    const table = readShots(text, suggestMapping(shape.value, bag).mapping, { bag });
    if (!table.ok) throw new Error(table.error.message);
    expect(table.value.accepted[0]!.shot.carryM).toBeCloseTo(125.4321, 3);
    expect(table.value.accepted[0]!.shot.offlineM).toBeCloseTo(-3.2, 3);
    expect(table.value.accepted[1]!.shot.directionDeg).toBe(2);
  });
});
