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
  readonly message: string;
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
        message: 'A quotation mark is not closed. Close it, or take it out.',
      });
    if (row.broken === 'too-long')
      return refuse({ code: 'row-broken', message: 'The row is far too long for a shot. Take it out.' });
    const club = this.readClub(cells);
    if (!club.ok) return club;
    const swing = this.readSwing(cells);
    if (!swing.ok) return swing;
    const carry = this.readLength(cells, 'carry');
    if (!carry.ok) return carry;
    if (carry.value === undefined)
      return this.fault('row-too-short', 'carry', 'The carry is missing. Type it, or leave the row out.');
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

  private fault(code: RowFault['code'], field: ColumnField, message: string): Result<never, RowFault> {
    const column = this.rules[field]?.index;
    return refuse({ code, message, ...(column === undefined ? {} : { column }) });
  }

  private readClub(cells: readonly string[]): Result<string, RowFault> {
    const written = unquoted(this.cell(cells, 'club')) || (this.mapping.club ?? '');
    if (written === '')
      return this.fault('club-missing', 'club', 'The club is missing. Type it, or leave the row out.');
    if (!this.names.has(written)) this.names.set(written, this.clubNamed(written));
    const club = this.names.get(written);
    if (club !== undefined) return succeed(club);
    const shown = written.length > 40 ? `${written.slice(0, 40)}…` : written;
    return this.fault(
      'club-unknown',
      'club',
      `“${shown}” is not in the bag. Say which club it is, or add it to the bag.`,
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
    return this.fault('swing-unknown', 'swing', `“${shown}” is no swing that is known. Say which one it is.`);
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
        'It is an angle where a length is needed. Choose another column or unit.',
      );
    const metres = metresOf(measure.value.value, unit);
    if (!(metres >= 0 && metres <= MOST_DISTANCE_M))
      return this.fault(
        'out-of-range',
        field,
        `${Math.round(metres)} m is no distance of a golf shot. Check the number and the unit.`,
      );
    return succeed(metres);
  }

  private readNumber(cells: readonly string[], field: ColumnField): Result<Measure | undefined, RowFault> {
    const written = this.cell(cells, field);
    if (isNothing(written)) return succeed(undefined);
    const measure = readMeasure(written, this.mapping.decimal, this.words);
    if (measure.ok) return measure;
    return this.fault('number-unreadable', field, `${nameOf(field)}: ${measure.error}`);
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
        'How far left or right it went is missing. Type it, or leave the row out.',
      );
    const side = readSide(this.cell(cells, 'side'), this.words);
    if (side === null)
      return this.fault(
        'side-unreadable',
        'side',
        `“${this.cell(cells, 'side').slice(0, 24)}” is neither left nor right. Type one of them.`,
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
          `${Math.round(degrees)}° is behind the player. Check the number and the unit.`,
        );
      return succeed({ directionDeg: tidyNumber(degrees) });
    }
    const metres = metresOf(signed, unit ?? 'm');
    if (Math.abs(metres) > Math.max(carryM, 0.5))
      return this.fault(
        'out-of-range',
        field,
        `${Math.round(metres)} m off line is more than the ball carried. Check the number and the unit.`,
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
      `“${date.slice(0, 24)}” is no date in the order that was chosen. Choose another order, or mend it.`,
    );
  }
}

/** An apostrophe before a sign is how spreadsheets are told that a cell is text. */
function unquoted(cell: string): string {
  return /^'[=+\-@]/u.test(cell) ? cell.slice(1) : cell;
}

function nameOf(field: ColumnField): string {
  const names: Partial<Record<ColumnField, string>> = {
    carry: 'Carry',
    total: 'Total',
    intended: 'Intended length',
    offline: 'Off line',
    direction: 'Direction',
  };
  return names[field] ?? field;
}
