/** Wind, temperature and altitude of a row: from its own cells, else from what was said of the whole table. */

import { type Result, refuse, succeed } from '../../result.ts';
import type { ShotWeather } from '../still-air.ts';
import {
  celsiusOf,
  heatUnitOf,
  lengthUnitOf,
  metresOf,
  metresPerSecondOf,
  readQuantity,
  readWindFrom,
  speedUnitOf,
} from './cells.ts';
import type { ColumnField, ColumnRule, ShotMapping } from './mapping.ts';
import type { RowFault } from './read-row.ts';
import { told, type Told } from '../../words/told.ts';

type Rules = Readonly<Partial<Record<ColumnField, ColumnRule>>>;

/** How a number of each kind is brought to its unit in the player file; null where its unit does not fit. */
const KINDS = {
  wind: {
    unit: 'm/s',
    range: [0, 80],
    convert: (value: number, word: string): number | null => {
      const unit = speedUnitOf(word);
      return unit === undefined ? null : metresPerSecondOf(value, unit);
    },
  },
  temperature: {
    unit: 'C',
    range: [-60, 70],
    convert: (value: number, word: string): number | null => {
      const unit = heatUnitOf(word);
      return unit === undefined ? null : celsiusOf(value, unit);
    },
  },
  altitude: {
    unit: 'm',
    range: [-500, 9000],
    convert: (value: number, word: string): number | null => {
      const unit = lengthUnitOf(word);
      return unit === undefined ? null : metresOf(value, unit);
    },
  },
} as const;

export function readWeather(
  cells: readonly string[],
  mapping: ShotMapping,
  rules: Rules,
): Result<ShotWeather, RowFault> {
  const { conditions, decimal } = mapping;
  const cellOf = (field: ColumnField): string => {
    const rule = rules[field];
    return rule === undefined ? '' : (cells[rule.index] ?? '').trim();
  };
  const fault = (code: RowFault['code'], field: ColumnField, message: Told): Result<never, RowFault> => {
    const column = rules[field]?.index;
    return refuse({ code, message, ...(column === undefined ? {} : { column }) });
  };
  /** Undefined where no column or nothing in the cell. */
  const numberOf = (field: keyof typeof KINDS): Result<number | undefined, RowFault> => {
    const written = cellOf(field);
    if (isNothing(written)) return succeed(undefined);
    const { unit, range, convert } = KINDS[field];
    const quantity = readQuantity(written, decimal);
    const value =
      quantity === null ? null : convert(quantity.value, quantity.unit || (rules[field]?.unit ?? unit));
    const shown = `“${written.slice(0, 24)}”`;
    if (value === null)
      return fault(
        'number-unreadable',
        field,
        told(({ faults }) => faults.table.noQuantity, {
          cell: shown,
          quantity: told(({ faults }) => faults.table.quantities[field]),
        }),
      );
    if (value >= range[0] && value <= range[1]) return succeed(value);
    return fault(
      'out-of-range',
      field,
      told(({ faults }) => faults.table.beyond, {
        cell: shown,
        quantity: told(({ faults }) => faults.table.quantities[field]),
      }),
    );
  };
  const windMps = numberOf('wind');
  if (!windMps.ok) return windMps;
  const temperatureC = numberOf('temperature');
  if (!temperatureC.ok) return temperatureC;
  const altitudeM = numberOf('altitude');
  if (!altitudeM.ok) return altitudeM;
  const from = cellOf('windFrom');
  const windFromDeg = isNothing(from) ? undefined : readWindFrom(from, decimal);
  if (windFromDeg === null || Math.abs(windFromDeg ?? 0) > 360)
    return fault(
      'number-unreadable',
      'windFrom',
      told(({ faults }) => faults.table.noWindSide, { cell: from.slice(0, 24) }),
    );
  const found: ShotWeather = {
    windMps: windMps.value ?? conditions?.windMps,
    windFromDeg: windFromDeg ?? conditions?.windFromDeg,
    temperatureC: temperatureC.value ?? conditions?.temperatureC,
    altitudeM: altitudeM.value ?? conditions?.altitudeM,
  };
  return succeed(
    Object.fromEntries(
      Object.entries(found).flatMap(([key, value]: [string, number | undefined]) =>
        value === undefined ? [] : [[key, tidyNumber(value)]],
      ),
    ),
  );
}

/** What devices write where they measured nothing. */
export function isNothing(cell: string): boolean {
  return cell === '' || /^(?:-+|n\/?a|null|nan|none)$/iu.test(cell);
}

/** To a tenth of a millimetre: what conversion adds behind that is noise. */
export function tidyNumber(value: number): number {
  return Math.round(value * 1e4) / 1e4 + 0;
}
