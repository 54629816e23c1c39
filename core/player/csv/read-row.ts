/** One row of a table as a shot, or the cell that stands in the way. A mended row is read the same way. */

import { type Result, refuse, succeed } from '../../result.ts';
import type { BagClub, RecordedShot } from '../format.ts';
import { type Swing, SWINGS } from '../model.ts';
import {
  angleUnitOf,
  degreesOf,
  isFormula,
  lengthUnitOf,
  type Measure,
  metresOf,
  readDate,
  readMeasure,
  readSide,
  type SideWords,
  USUAL_SIDE_WORDS,
} from './cells.ts';
import { findClub } from './club-names.ts';
import { COLUMN_FIELDS, type ColumnField, type ColumnRule, ruleOf, type ShotMapping } from './mapping.ts';
import { isNothing, readWeather, tidyNumber } from './read-weather.ts';
import type { CsvRow } from './rows.ts';
import { findSwing } from './swing-names.ts';
import { told, type Told } from '../../words/told.ts';

export interface RowFault {
  readonly code:
    | 'row-broken'
    | 'row-too-short'
    | 'club-missing'
    | 'club-unknown'
    | 'swing-unknown'
    | 'number-unreadable'
    | 'unit-unfitting'
    | 'out-of-range'
    | 'side-unreadable'
    | 'date-unreadable';
  readonly message: Told;
  readonly column?: number;
}

const MOST_DISTANCE_M = 500;

export class RowReader {
  private readonly rules: Readonly<Partial<Record<ColumnField, ColumnRule>>>;
  private readonly words: SideWords;
  /** Names seen so far and what they mean; undefined: not in the bag. */
  private readonly names = new Map<string, string | undefined>();

  constructor(
    private readonly mapping: ShotMapping,
    private readonly bag?: readonly BagClub[],
  ) {
    this.rules = Object.fromEntries(
      COLUMN_FIELDS.flatMap((field) => {
        const rule = ruleOf(mapping, field);
        return rule === undefined ? [] : [[field, rule]];
      }),
    );
    const small = (given: readonly string[] | undefined, usual: readonly string[]): readonly string[] =>
      given?.map((word) => word.toLowerCase()) ?? usual;
    this.words = {
      left: small(mapping.leftWords, USUAL_SIDE_WORDS.left),
      right: small(mapping.rightWords, USUAL_SIDE_WORDS.right),
    };
  }

  read(row: Pick<CsvRow, 'cells' | 'broken'>): Result<RecordedShot, RowFault> {
    const { cells } = row;
    if (row.broken === 'quote')
      return refuse({
        code: 'row-broken',
        message: told(({ faults }) => faults.table.quote),
      });
    if (row.broken === 'too-long')
      return refuse({ code: 'row-broken', message: told(({ faults }) => faults.table.rowTooLong) });
    const club = this.readClub(cells);
    if (!club.ok) return club;
    const swing = this.readSwing(cells);
    if (!swing.ok) return swing;
    const carry = this.readLength(cells, 'carry');
    if (!carry.ok) return carry;
    if (carry.value === undefined)
      return this.fault(
        'row-too-short',
        'carry',
        told(({ faults }) => faults.table.noCarry),
      );
    const sideways = this.readSideways(cells, carry.value);
    if (!sideways.ok) return sideways;
    const total = this.readLength(cells, 'total');
    if (!total.ok) return total;
    const intended = this.readLength(cells, 'intended');
    if (!intended.ok) return intended;
    const at = this.readAt(cells);
    if (!at.ok) return at;
    const weather = readWeather(cells, this.mapping, this.rules);
    if (!weather.ok) return weather;
    const lie = unquoted(this.cell(cells, 'lie')).slice(0, 40) || (this.mapping.conditions?.lie ?? '');
    return succeed({
      club: club.value,
      swing: swing.value,
      carryM: tidyNumber(carry.value),
      ...sideways.value,
      ...(total.value === undefined ? {} : { totalM: tidyNumber(total.value) }),
      ...(intended.value === undefined ? {} : { intendedM: tidyNumber(intended.value) }),
      ...(lie === '' ? {} : { lie }),
      ...weather.value,
      ...(at.value === null ? {} : { at: at.value }),
    });
  }

  private cell(cells: readonly string[], field: ColumnField): string {
    const rule = this.rules[field];
    return rule === undefined ? '' : (cells[rule.index] ?? '').trim();
  }

  private fault(code: RowFault['code'], field: ColumnField, message: Told): Result<never, RowFault> {
    const column = this.rules[field]?.index;
    return refuse({ code, message, ...(column === undefined ? {} : { column }) });
  }

  private readClub(cells: readonly string[]): Result<string, RowFault> {
    const written = unquoted(this.cell(cells, 'club')) || (this.mapping.club ?? '');
    if (written === '')
      return this.fault(
        'club-missing',
        'club',
        told(({ faults }) => faults.table.noClub),
      );
    if (!this.names.has(written)) this.names.set(written, this.clubNamed(written));
    const club = this.names.get(written);
    if (club !== undefined) return succeed(club);
    const shown = written.length > 40 ? `${written.slice(0, 40)}…` : written;
    return this.fault(
      'club-unknown',
      'club',
      told(({ faults }) => faults.table.unknownClub, { club: shown }),
    );
  }

  private clubNamed(written: string): string | undefined {
    const { clubNames } = this.mapping;
    const named =
      clubNames !== undefined && Object.hasOwn(clubNames, written) ? clubNames[written] : undefined;
    if (this.bag === undefined) return (named ?? written).slice(0, 60);
    const wanted = named ?? written;
    return (this.bag.find((club) => club.name === wanted) ?? findClub(wanted, this.bag))?.name;
  }

  private readSwing(cells: readonly string[]): Result<Swing, RowFault> {
    const written = unquoted(this.cell(cells, 'swing'));
    if (written === '') return succeed('full');
    const { swingNames } = this.mapping;
    const named =
      swingNames !== undefined && Object.hasOwn(swingNames, written) ? swingNames[written] : undefined;
    const known =
      named ??
      SWINGS.find((swing) => swing === written.toLowerCase()) ??
      (written.length > 60 ? undefined : findSwing(written));
    if (known !== undefined) return succeed(known);
    const shown = written.length > 40 ? `${written.slice(0, 40)}…` : written;
    return this.fault(
      'swing-unknown',
      'swing',
      told(({ faults }) => faults.table.unknownSwing, { swing: shown }),
    );
  }

  /** Metres; undefined where no column or nothing in the cell. */
  private readLength(
    cells: readonly string[],
    field: 'carry' | 'total' | 'intended',
  ): Result<number | undefined, RowFault> {
    const measure = this.readNumber(cells, field);
    if (!measure.ok || measure.value === undefined) return measure as Result<undefined, RowFault>;
    const unit = lengthUnitOf(measure.value.unit ?? this.rules[field]!.unit ?? 'm');
    if (unit === undefined)
      return this.fault(
        'unit-unfitting',
        field,
        told(({ faults }) => faults.table.angle),
      );
    const metres = metresOf(measure.value.value, unit);
    if (!(metres >= 0 && metres <= MOST_DISTANCE_M))
      return this.fault(
        'out-of-range',
        field,
        told(({ faults }) => faults.table.noDistance, { metres: Math.round(metres) }),
      );
    return succeed(metres);
  }

  private readNumber(cells: readonly string[], field: ColumnField): Result<Measure | undefined, RowFault> {
    const written = this.cell(cells, field);
    if (isNothing(written)) return succeed(undefined);
    const measure = readMeasure(written, this.mapping.decimal, this.words);
    if (measure.ok) return measure;
    return this.fault(
      'number-unreadable',
      field,
      told(({ faults }) => faults.table.inField, { field: nameOf(field), message: measure.error }),
    );
  }

  /** Offline in metres or direction in degrees, positive right. */
  private readSideways(
    cells: readonly string[],
    carryM: number,
  ): Result<{ readonly offlineM: number } | { readonly directionDeg: number }, RowFault> {
    const offline = this.readNumber(cells, 'offline');
    if (!offline.ok) return offline;
    const field = offline.value === undefined ? 'direction' : 'offline';
    const measure = offline.value === undefined ? this.readNumber(cells, 'direction') : offline;
    if (!measure.ok) return measure;
    if (measure.value === undefined)
      return this.fault(
        'row-too-short',
        this.rules.offline === undefined ? 'direction' : 'offline',
        told(({ faults }) => faults.table.noSideways),
      );
    const side = readSide(this.cell(cells, 'side'), this.words);
    if (side === null)
      return this.fault(
        'side-unreadable',
        'side',
        told(({ faults }) => faults.table.noSide, { cell: this.cell(cells, 'side').slice(0, 24) }),
      );
    const { value, unit: word } = measure.value;
    const letter = measure.value.side ?? (this.rules.side === undefined || side === 0 ? null : side);
    const sign = this.rules[field]!.positive === 'left' ? -1 : 1;
    const signed = letter === null ? sign * value : letter * Math.abs(value);
    const written = word ?? this.rules[field]!.unit;
    const unit = written === undefined ? undefined : (lengthUnitOf(written) ?? angleUnitOf(written));
    if (unit === 'deg' || unit === 'rad' || (unit === undefined && field === 'direction')) {
      const degrees = degreesOf(signed, unit ?? 'deg');
      if (Math.abs(degrees) > 90)
        return this.fault(
          'out-of-range',
          field,
          told(({ faults }) => faults.table.behind, { degrees: Math.round(degrees) }),
        );
      return succeed({ directionDeg: tidyNumber(degrees) });
    }
    const metres = metresOf(signed, unit ?? 'm');
    if (Math.abs(metres) > Math.max(carryM, 0.5))
      return this.fault(
        'out-of-range',
        field,
        told(({ faults }) => faults.table.fartherThanCarry, { metres: Math.round(metres) }),
      );
    return succeed({ offlineM: tidyNumber(metres) });
  }

  private readAt(cells: readonly string[]): Result<string | null, RowFault> {
    const date = this.cell(cells, 'date');
    if (date === '') return succeed(null);
    const at = isFormula(date) ? null : readDate(date, this.cell(cells, 'time'), this.mapping.dates ?? 'iso');
    if (at !== null) return succeed(at);
    return this.fault(
      'date-unreadable',
      'date',
      told(({ faults }) => faults.table.noDate, { cell: date.slice(0, 24) }),
    );
  }
}

/** An apostrophe before a sign is how spreadsheets are told that a cell is text. */
function unquoted(cell: string): string {
  return /^'[=+\-@]/u.test(cell) ? cell.slice(1) : cell;
}

function nameOf(field: ColumnField): string | Told {
  switch (field) {
    case 'carry':
    case 'total':
    case 'intended':
    case 'offline':
    case 'direction':
      return told(({ faults }) => faults.table.fields[field]);
    default:
      return field;
  }
}
