/** Shots as a CSV table of our own columns, safe to open in a spreadsheet: no text is taken for a formula there. */

// The declaration is ours, so every project that compiles this file has to be led to it.
// eslint-disable-next-line @typescript-eslint/triple-slash-reference
/// <reference path="./papaparse.d.ts" />
import Papa from 'papaparse';
import { withoutFormulas } from '../../csv-formulas.ts';
import type { RecordedShot } from '../format.ts';
import type { ShotMapping } from './mapping.ts';

const YARD_M = 0.9144;

/**
 * RFC 4180 with a header; lengths in the unit named there, to a tenth of a millimetre, directions in degrees, positive
 * right. Text that begins with =, +, - or @ gets an apostrophe in front (OWASP, CSV Injection), which reading takes
 * off again.
 */
export function shotsToCsv(shots: readonly RecordedShot[], units: 'yards' | 'metres'): string {
  const unit = units === 'yards' ? 'yd' : 'm';
  const metres = units === 'yards' ? YARD_M : 1;
  const plain = (value: number | undefined): string | number => (value === undefined ? '' : tidy(value));
  const length = (value: number | undefined): string | number =>
    value === undefined ? '' : tidy(value / metres);
  return Papa.unparse(
    {
      fields: [
        'Club',
        'Swing',
        `Carry (${unit})`,
        `Total (${unit})`,
        `Intended (${unit})`,
        `Off line (${unit}, right +)`,
        'Direction (deg, right +)',
        'Lie',
        'Wind (m/s)',
        'Wind from (deg, 0 ahead, 90 right)',
        'Temperature (C)',
        'Altitude (m)',
        'Date and time',
      ],
      data: shots.map((shot) => [
        withoutFormulas(shot.club),
        shot.swing ?? 'full',
        length(shot.carryM),
        length(shot.totalM),
        length(shot.intendedM),
        length(shot.offlineM),
        shot.directionDeg === undefined ? '' : tidy(shot.directionDeg),
        withoutFormulas(shot.lie ?? ''),
        plain(shot.windMps),
        plain(shot.windFromDeg),
        plain(shot.temperatureC),
        plain(shot.altitudeM),
        withoutFormulas(shot.at ?? ''),
      ]),
    },
    { newline: '\r\n' },
  );
}

/** Reads what `shotsToCsv` writes. */
export function ownMapping(units: 'yards' | 'metres'): ShotMapping {
  const unit = units === 'yards' ? 'yd' : 'm';
  return {
    delimiter: ',',
    decimal: '.',
    skipRows: 1,
    columns: [
      { index: 0, header: 'Club', field: 'club' },
      { index: 1, header: 'Swing', field: 'swing' },
      { index: 2, header: `Carry (${unit})`, field: 'carry', unit },
      { index: 3, header: `Total (${unit})`, field: 'total', unit },
      { index: 4, header: `Intended (${unit})`, field: 'intended', unit },
      { index: 5, header: `Off line (${unit}, right +)`, field: 'offline', unit, positive: 'right' },
      { index: 6, header: 'Direction (deg, right +)', field: 'direction', unit: 'deg', positive: 'right' },
      { index: 7, header: 'Lie', field: 'lie' },
      { index: 8, header: 'Wind (m/s)', field: 'wind', unit: 'm/s' },
      { index: 9, header: 'Wind from (deg, 0 ahead, 90 right)', field: 'windFrom', unit: 'deg' },
      { index: 10, header: 'Temperature (C)', field: 'temperature', unit: 'C' },
      { index: 11, header: 'Altitude (m)', field: 'altitude', unit: 'm' },
      { index: 12, header: 'Date and time', field: 'date' },
    ],
    dates: 'iso',
  };
}

function tidy(value: number): number {
  return Math.round(value * 1e4) / 1e4;
}
