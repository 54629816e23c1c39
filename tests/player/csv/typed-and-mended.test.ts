/** Shots typed, pasted and mended; mappings changed by hand. Nothing is lost on the way, nothing is invented. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withClubName, withField, withPositive, withUnit } from '../../../core/player/csv/change-mapping.ts';
import { mendRows } from '../../../core/player/csv/mend.ts';
import { previewRows } from '../../../core/player/csv/preview.ts';
import { readShots } from '../../../core/player/csv/read-shots.ts';
import { sniffCsv } from '../../../core/player/csv/sniff.ts';
import { suggestMapping } from '../../../core/player/csv/suggest.ts';
import { asInFiles, filledRows, pastedCells, readTypedRows } from '../../../core/player/csv/typed-rows.ts';
import { minimalPlayer } from '../sample-player.ts';
import { inEnglish } from '../../../core/words/told.ts';

const { bag } = minimalPlayer();

function opened(text: string) {
  const shape = sniffCsv(text);
  if (!shape.ok) throw new Error(shape.error.message);
  return { shape: shape.value, mapping: suggestMapping(shape.value, bag).mapping };
}

describe('a swing and a lie in the words of the window', () => {
  it('are read as files have them, and all else as it is typed', () => {
    const said = {
      swing: [
        ['full', 'voll'],
        ['punch', 'Punch'],
      ],
      lie: [['longRough', 'hohes Rough']],
    } as const;
    const row = ['7-iron', 'VOLL', '150', '-4', '160', '', ' hohes Rough ', 'voll'];
    expect(asInFiles([row, ['7-iron', 'half']], said)).toEqual([
      ['7-iron', 'full', '150', '-4', '160', '', 'longRough', 'voll'],
      ['7-iron', 'half'],
    ]);
  });
});

describe('typed shots', () => {
  it('take letters, signs, units, decimal commas; empty clubs repeat the one above', () => {
    const { shots, faults } = readTypedRows(
      [
        ['7i', '', '131,5', '4,2 L', '', '', 'range', '31.5.2026'],
        ['', '', '128', '-3', '135', '', '', ''],
        ['Driver', '', '210 yd', 'R 6', '', '', '', '2026-06-01'],
      ],
      bag,
      'm',
    );
    expect(faults).toEqual([]);
    expect(shots.map(({ shot }) => shot)).toEqual([
      { club: '7-iron', swing: 'full', carryM: 131.5, offlineM: -4.2, lie: 'range', at: '2026-05-31' },
      {
        club: '7-iron',
        swing: 'full',
        carryM: 128,
        offlineM: -3,
        totalM: 135,
        lie: 'range',
        at: '2026-05-31',
      },
      // 210 yd of 0.9144 m: international yard of 1959.
      { club: 'Driver', swing: 'full', carryM: 192.024, offlineM: 6, lie: 'range', at: '2026-06-01' },
    ]);
  });

  it('in paces are lengthened by the pace, whatever their angle', () => {
    const { shots } = readTypedRows([['7-iron', '', '150', '-4', '160', '']], bag, 'pace', 0.85);
    expect(shots[0]?.shot).toMatchObject({ carryM: 127.5, offlineM: -3.4, totalM: 136 });
    expect(
      inEnglish(readTypedRows([['7-iron', '', '499', '0']], bag, 'pace', 1.4).faults[0]!.message),
    ).toContain('paces');
  });

  it('name the row and the cell of what cannot be read, and pass over rows without a reading', () => {
    const { shots, faults } = readTypedRows(
      [
        ['7-iron', '', '', ''],
        ['7-iron', '', 'far', '1'],
        ['Nine', '', '100', '1'],
        ['7-iron', '', '130', ''],
      ],
      bag,
      'yd',
    );
    expect(shots).toEqual([]);
    expect(faults.map(({ row, column }) => [row, column])).toEqual([
      [1, 2],
      [2, 0],
      [3, 3],
    ]);
  });

  it('survive a spreadsheet: what is copied comes back cell by cell', () => {
    const cell = fc.stringMatching(/^[\w .,-]{0,12}$/u);
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 20 }), (rows) => {
        const filled = rows.filter((cells) => cells.some((text) => text.trim() !== ''));
        const text = filled.map((cells) => cells.join('\t')).join('\r\n');
        expect(pastedCells(text)).toEqual(filled);
      }),
      { numRuns: 100 },
    );
    expect(filledRows([['A'], ['', 'half'], ['B']]).map(([club, swing]) => [club, swing])).toEqual([
      ['A', ''],
      ['A', 'half'],
      ['B', 'half'],
    ]);
  });
});

describe('a mapping changed by hand', () => {
  const text = 'what,how far,sideways\n7-iron,130,4\n7-iron,140,-2\n';
  const { shape, mapping } = opened(text);

  it('reads each thing from one column only', () => {
    const first = withField(withField(mapping, shape, 1, 'carry'), shape, 2, 'carry');
    expect(first.columns.filter(({ field }) => field === 'carry').map(({ index }) => index)).toEqual([2]);
    expect(withField(first, shape, 2, null).columns.some(({ index }) => index === 2)).toBe(false);
  });

  it('turns units and sides', () => {
    const whole = [
      [0, 'club'],
      [1, 'carry'],
      [2, 'offline'],
    ] as const;
    const read = whole.reduce((so, [index, field]) => withField(so, shape, index, field), mapping);
    const turned = withPositive(withUnit(read, 1, 'yd'), 2, 'left');
    expect(previewRows(text, turned, bag, 8)[0]?.shot).toMatchObject({ carryM: 118.872, offlineM: -4 });
    const angle = withUnit(read, 2, 'deg');
    expect(previewRows(text, angle, bag, 8)[1]?.shot).toMatchObject({ carryM: 140, directionDeg: -2 });
  });

  it('leads names to clubs and forgets them again', () => {
    const named = withClubName(mapping, 'Old one', '7-iron');
    expect(named.clubNames).toMatchObject({ 'Old one': '7-iron' });
    expect(withClubName(named, 'Old one', null).clubNames).not.toHaveProperty('Old one');
  });
});

describe('rejected rows', () => {
  const text = 'Club,Carry (m),Off line (m)\n7-iron,130,4\n7-iron,far,2\nNine,120,1\n7-iron,141,-3\n';
  const { mapping } = opened(text);
  const read = readShots(text, mapping, { bag });
  if (!read.ok) throw new Error(read.error.message);
  const table = read.value;

  it('join the shots in their place once they are mended', () => {
    expect(table.rejected.map(({ line }) => line)).toEqual([3, 4]);
    const mended = mendRows(table, new Map([[3, ['7-iron', '133', '2']]]), mapping, bag);
    expect(mended.accepted.map(({ line }) => line)).toEqual([2, 3, 5]);
    expect(mended.rejected.map(({ line }) => line)).toEqual([4]);
    expect(mended.rows).toBe(table.rows);
  });

  it('stay, with the new cells and the new reason, where they still cannot be read', () => {
    const mended = mendRows(table, new Map([[4, ['7-iron', '', '1']]]), mapping, bag);
    expect(mended.accepted).toEqual(table.accepted);
    expect(mended.rejected[1]).toMatchObject({
      line: 4,
      cells: ['7-iron', '', '1'],
      code: 'row-too-short',
      column: 1,
    });
  });
});
