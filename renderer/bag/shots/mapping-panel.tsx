/** What each column of a table holds, in which unit and with which signs, beside the first rows as they would be read. */

import { speedText } from '../../../core/conditions/day-words.ts';
import { sideSaid } from '../../../core/player/count-shot.ts';
import { withClubName, withField, withPositive, withUnit } from '../../../core/player/csv/change-mapping.ts';
import {
  COLUMN_FIELDS,
  type ColumnField,
  type ColumnRule,
  ruleOf,
  type ShotMapping,
} from '../../../core/player/csv/mapping.ts';
import type { PreviewRow } from '../../../core/player/csv/preview.ts';
import type { PlayerDocument, RecordedShot } from '../../../core/player/format.ts';
import { Field } from '../../panels/field.tsx';
import { asideText, lengthText, type Units } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import type { Intake } from '../state/bag-state.ts';
import { useBag, useDesk } from '../state/use-bag.ts';
import { unknownNames } from '../work/read-table.ts';
import { clubSwing } from '../words.ts';
import { TableConditions } from './table-conditions.tsx';
import { closeIntake, readIntake, setMapping } from './intake-steps.ts';
import type { Words } from '../../../core/words/words.ts';
import { useWords } from '../../state/use-words.ts';

const FIELD_WORDS: Readonly<Record<ColumnField, string>> = {
  club: 'Club',
  swing: 'Swing',
  carry: 'Carry',
  total: 'Total, roll included',
  intended: 'Intended length',
  offline: 'Off line (distance)',
  direction: 'Direction (angle)',
  side: 'Side: left or right',
  lie: 'Lie',
  wind: 'Wind speed',
  windFrom: 'Wind from (0 ahead, 90 right)',
  temperature: 'Temperature',
  altitude: 'Altitude',
  date: 'Date',
  time: 'Time of day',
};
const LENGTH_UNITS = [
  ['m', 'metres'],
  ['yd', 'yards'],
  ['ft', 'feet'],
] as const;
const ANGLE_UNITS = [
  ['deg', 'degrees'],
  ['rad', 'radians'],
] as const;
const WIND_UNITS = [
  ['m/s', 'metres a second'],
  ['km/h', 'kilometres an hour'],
  ['mph', 'miles an hour'],
  ['kn', 'knots'],
] as const;
const HEAT_UNITS = [
  ['C', '°C'],
  ['F', '°F'],
] as const;
const SIDEWAYS_UNITS = [...LENGTH_UNITS, ...ANGLE_UNITS];
type UnitChoices = readonly (readonly [NonNullable<ColumnRule['unit']>, string])[];
/** Fields whose numbers have a unit. */
const UNITS_OF: Readonly<Partial<Record<ColumnField, UnitChoices>>> = {
  carry: LENGTH_UNITS,
  total: LENGTH_UNITS,
  intended: LENGTH_UNITS,
  offline: SIDEWAYS_UNITS,
  direction: SIDEWAYS_UNITS,
  wind: WIND_UNITS,
  temperature: HEAT_UNITS,
  altitude: LENGTH_UNITS,
};
const DELIMITERS = [
  [',', 'comma'],
  [';', 'semicolon'],
  ['\t', 'tab'],
  ['|', 'upright line'],
] as const;

export function MappingPanel({ intake }: { readonly intake: Intake }) {
  const desk = useDesk();
  const document = useBag((state) => state.file?.history.present ?? null);
  const { mapping, table } = intake;
  if (mapping === null || table === null || document === null) return null;
  const change = (next: ShotMapping): void => void setMapping(desk, next);
  const known = table.knownAs;
  return (
    <section class="table-mapping" aria-label="Columns of the table">
      <h2>{intake.name}: what the columns hold</h2>
      {known !== null && (
        <p class="faint">Read as “{known}” was, whose columns have the same names. Check the first rows.</p>
      )}
      {table.doubts.length > 0 && (
        <ul class="bag-doubts" aria-label="To be checked">
          {table.doubts.map((doubt) => (
            <li key={doubt}>{doubt}</li>
          ))}
        </ul>
      )}
      <TableSigns mapping={mapping} document={document} change={change} />
      <TableConditions mapping={mapping} change={change} />
      <PreviewTable intake={intake} mapping={mapping} change={change} />
      <NamesToMatch intake={intake} mapping={mapping} document={document} change={change} />
      {intake.fault !== null && (
        <p class="field-fault" role="alert">
          {intake.fault}
        </p>
      )}
      <div class="save-row">
        <button type="button" class="main-button" onClick={() => void readIntake(desk)}>
          Read the table
        </button>
        <button type="button" class="small-button" onClick={() => closeIntake(desk)}>
          Leave it
        </button>
      </div>
    </section>
  );
}

interface SignsProps {
  readonly mapping: ShotMapping;
  readonly document: PlayerDocument;
  readonly change: (mapping: ShotMapping) => void;
}

function TableSigns({ mapping, document, change }: SignsProps) {
  return (
    <div class="bag-row">
      <Field
        name="Decimal sign"
        control={(id) => (
          <select
            id={id}
            value={mapping.decimal}
            onChange={(event) =>
              change({ ...mapping, decimal: event.currentTarget.value === ',' ? ',' : '.' })
            }
          >
            <option value=".">point (12.5)</option>
            <option value=",">comma (12,5)</option>
          </select>
        )}
      />
      <Field
        name="Columns parted by"
        control={(id) => (
          <select
            id={id}
            value={mapping.delimiter}
            onChange={(event) => {
              const found = DELIMITERS.find(([sign]) => sign === event.currentTarget.value);
              if (found !== undefined) change({ ...mapping, delimiter: found[0] });
            }}
          >
            {DELIMITERS.map(([sign, words]) => (
              <option key={sign} value={sign}>
                {words}
              </option>
            ))}
          </select>
        )}
      />
      <Field
        name="Rows above the first shot"
        control={(id) => (
          <input
            id={id}
            type="number"
            min={0}
            max={200}
            value={mapping.skipRows}
            onChange={(event) => {
              const rows = event.currentTarget.valueAsNumber;
              if (Number.isInteger(rows) && rows >= 0 && rows <= 200) change({ ...mapping, skipRows: rows });
            }}
          />
        )}
      />
      {ruleOf(mapping, 'date') !== undefined && (
        <Field
          name="Dates"
          control={(id) => (
            <select
              id={id}
              value={mapping.dates ?? 'iso'}
              onChange={(event) => {
                const order = event.currentTarget.value;
                if (order === 'iso' || order === 'day-first' || order === 'month-first')
                  change({ ...mapping, dates: order });
              }}
            >
              <option value="iso">year first (2026-05-31)</option>
              <option value="day-first">day first (31.5.2026)</option>
              <option value="month-first">month first (5/31/2026)</option>
            </select>
          )}
        />
      )}
      {ruleOf(mapping, 'club') === undefined && (
        <Field
          name="All with the"
          control={(id) => (
            <select
              id={id}
              value={mapping.club ?? ''}
              onChange={(event) => {
                const { value } = event.currentTarget;
                const next = { ...mapping };
                if (value === '') delete next.club;
                else next.club = value;
                change(next);
              }}
            >
              <option value="">– choose a club –</option>
              {document.bag
                .filter(({ kind }) => kind !== 'putter')
                .map(({ name }) => (
                  <option key={name} value={name}>
                    {name}
                  </option>
                ))}
            </select>
          )}
        />
      )}
    </div>
  );
}

interface PreviewProps {
  readonly intake: Intake;
  readonly mapping: ShotMapping;
  readonly change: (mapping: ShotMapping) => void;
}

function PreviewTable({ intake, mapping, change }: PreviewProps) {
  const words = useWords();
  const units = useApp((state) => state.settings.units);
  const { shape } = intake.table!;
  const width = Math.max(shape.header.length, ...intake.preview.map(({ cells }) => cells.length));
  const header = (index: number): string => shape.header[index] ?? `column ${index + 1}`;
  return (
    <div class="table-scroll" tabIndex={0} role="region" aria-label="First rows of the table">
      <table class="bag-table table-preview">
        <thead>
          <tr>
            <th scope="col">As it is read</th>
            {Array.from({ length: width }, (_, index) => {
              const rule = mapping.columns.find((known) => known.index === index);
              return (
                <th key={index} scope="col" class={rule === undefined ? undefined : 'is-read'}>
                  <span class="column-name">{header(index)}</span>
                  <select
                    aria-label={`${header(index)} holds`}
                    value={rule?.field ?? ''}
                    onChange={(event) => {
                      const field =
                        COLUMN_FIELDS.find((known) => known === event.currentTarget.value) ?? null;
                      change(withField(mapping, shape, index, field));
                    }}
                  >
                    <option value="">not read</option>
                    {COLUMN_FIELDS.map((field) => (
                      <option key={field} value={field}>
                        {FIELD_WORDS[field]}
                      </option>
                    ))}
                  </select>
                  {rule !== undefined && (
                    <RuleSigns rule={rule} name={header(index)} mapping={mapping} change={change} />
                  )}
                </th>
              );
            })}
          </tr>
        </thead>
        <tbody>
          {intake.preview.map((row) => (
            <tr key={row.line}>
              <th scope="row" class={row.shot === null ? 'warning' : undefined}>
                {previewText(row, units, words)}
              </th>
              {Array.from({ length: width }, (_, index) => (
                <td key={index} class={row.column === index ? 'at-fault' : undefined}>
                  {row.cells[index] ?? ''}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function RuleSigns({
  rule,
  name,
  mapping,
  change,
}: {
  readonly rule: ColumnRule;
  readonly name: string;
  readonly mapping: ShotMapping;
  readonly change: (mapping: ShotMapping) => void;
}) {
  const isSideways = rule.field === 'offline' || rule.field === 'direction';
  const units = UNITS_OF[rule.field];
  if (units === undefined) return null;
  return (
    <>
      <select
        aria-label={`Unit of ${name}`}
        value={rule.unit ?? (rule.field === 'direction' ? 'deg' : units[0]![0])}
        onChange={(event) => {
          const unit = units.find(([known]) => known === event.currentTarget.value)?.[0];
          if (unit !== undefined) change(withUnit(mapping, rule.index, unit));
        }}
      >
        {units.map(([unit, words]) => (
          <option key={unit} value={unit}>
            {words}
          </option>
        ))}
      </select>
      {isSideways && (
        <select
          aria-label={`Sign of ${name}`}
          value={rule.positive ?? 'right'}
          onChange={(event) =>
            change(withPositive(mapping, rule.index, event.currentTarget.value === 'left' ? 'left' : 'right'))
          }
        >
          <option value="right">plus is right</option>
          <option value="left">plus is left</option>
        </select>
      )}
    </>
  );
}

function previewText(row: PreviewRow, units: Units, words: Words): string {
  return row.shot === null ? (row.fault ?? '') : shotText(row.shot, units, words);
}

/** `7-iron 137 yd, 4 yd right`, and what it was hit in where that is said. */
export function shotText(shot: RecordedShot, units: Units, words: Words): string {
  const offlineM = shot.offlineM ?? shot.carryM * Math.sin(((shot.directionDeg ?? 0) * Math.PI) / 180);
  const { lie, windMps, windFromDeg, temperatureC } = shot;
  const more = [
    ...(lie === undefined ? [] : [lie]),
    ...(windMps === undefined || windMps === 0
      ? []
      : [`${speedText(windMps, units, words)}${sideSaid(windFromDeg)}`]),
    ...(temperatureC === undefined ? [] : [`${Math.round(temperatureC)} °C`]),
  ];
  return [
    `${clubSwing(shot.club, shot.swing ?? 'full')} ${lengthText(shot.carryM, units)}`,
    asideText(offlineM, units, words),
    ...more,
  ].join(', ');
}

function NamesToMatch({ intake, mapping, document, change }: SignsProps & { readonly intake: Intake }) {
  const unknown = unknownNames(intake.names, mapping, document);
  const said = Object.keys(mapping.clubNames ?? {}).filter((name) => intake.names.includes(name));
  const shown = [...new Set([...unknown, ...said])];
  if (shown.length === 0) return null;
  return (
    <fieldset class="bag-names">
      <legend>
        <h3>Names of clubs</h3>
      </legend>
      {shown.map((name) => (
        <Field
          key={name}
          name={`“${name}” is`}
          control={(id) => (
            <select
              id={id}
              class={unknown.includes(name) ? 'is-open' : undefined}
              value={mapping.clubNames?.[name] ?? ''}
              onChange={(event) => {
                const { value } = event.currentTarget;
                change(withClubName(mapping, name, value === '' ? null : value));
              }}
            >
              <option value="">not in the bag: left out</option>
              {document.bag
                .filter(({ kind }) => kind !== 'putter')
                .map((club) => (
                  <option key={club.name} value={club.name}>
                    {club.name}
                  </option>
                ))}
            </select>
          )}
        />
      ))}
    </fieldset>
  );
}
