/** What each column of a table holds, in which unit and with which signs, beside the first rows as they would be read. */

import { tell } from '../../../core/words/told.ts';
import { speedText } from '../../../core/conditions/day-words.ts';
import { windSide } from '../../../core/player/count-shot.ts';
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
import { clubSwing, lieName } from '../words.ts';
import { TableConditions } from './table-conditions.tsx';
import { closeIntake, readIntake, setMapping } from './intake-steps.ts';
import type { Words } from '../../../core/words/words.ts';
import { useWords } from '../../state/use-words.ts';

type Unit = NonNullable<ColumnRule['unit']>;
const LENGTH_UNITS: readonly Unit[] = ['m', 'yd', 'ft'];
const SIDEWAYS_UNITS: readonly Unit[] = [...LENGTH_UNITS, 'deg', 'rad'];
const WIND_UNITS: readonly Unit[] = ['m/s', 'km/h', 'mph', 'kn'];
const HEAT_UNITS: readonly Unit[] = ['C', 'F'];

/** Fields whose numbers have a unit. */
const UNITS_OF: Readonly<Partial<Record<ColumnField, readonly Unit[]>>> = {
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
  ['|', 'line'],
] as const;

function unitName(unit: Unit, { shots }: Words): string {
  const { unitNames } = shots.mapping;
  switch (unit) {
    case 'C':
    case 'F':
      return `°${unit}`;
    case 'm/s':
      return unitNames.mps;
    case 'km/h':
      return unitNames.kmh;
    default:
      return unitNames[unit];
  }
}

export function MappingPanel({ intake }: { readonly intake: Intake }) {
  const words = useWords();
  const desk = useDesk();
  const document = useBag((state) => state.file?.history.present ?? null);
  const { mapping, table } = intake;
  if (mapping === null || table === null || document === null) return null;
  const change = (next: ShotMapping): void => void setMapping(desk, next);
  const known = table.knownAs;
  return (
    <section class="table-mapping" aria-label={words.shots.mapping.columns}>
      <h2>{words.shots.mapping.title({ name: intake.name })}</h2>
      {known !== null && <p class="faint">{words.shots.mapping.known({ name: known })}</p>}
      {table.doubts.length > 0 && (
        <ul class="bag-doubts" aria-label={words.shots.mapping.toCheck}>
          {table.doubts.map((doubt, i) => (
            <li key={i}>{tell(doubt, words)}</li>
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
        <button type="button" class="main-button" onClick={() => void readIntake(desk, words)}>
          {words.shots.mapping.read}
        </button>
        <button type="button" class="small-button" onClick={() => closeIntake(desk)}>
          {words.shots.leave}
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
  const words = useWords();
  return (
    <div class="bag-row">
      <Field
        name={words.shots.mapping.decimal}
        control={(id) => (
          <select
            id={id}
            value={mapping.decimal}
            onChange={(event) =>
              change({ ...mapping, decimal: event.currentTarget.value === ',' ? ',' : '.' })
            }
          >
            <option value=".">{words.shots.mapping.point}</option>
            <option value=",">{words.shots.mapping.comma}</option>
          </select>
        )}
      />
      <Field
        name={words.shots.mapping.parted}
        control={(id) => (
          <select
            id={id}
            value={mapping.delimiter}
            onChange={(event) => {
              const found = DELIMITERS.find(([sign]) => sign === event.currentTarget.value);
              if (found !== undefined) change({ ...mapping, delimiter: found[0] });
            }}
          >
            {DELIMITERS.map(([sign, name]) => (
              <option key={sign} value={sign}>
                {words.shots.mapping.delimiters[name]}
              </option>
            ))}
          </select>
        )}
      />
      <Field
        name={words.shots.mapping.rowsAbove}
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
          name={words.shots.mapping.dates}
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
              <option value="iso">{words.shots.mapping.yearFirst}</option>
              <option value="day-first">{words.shots.mapping.dayFirst}</option>
              <option value="month-first">{words.shots.mapping.monthFirst}</option>
            </select>
          )}
        />
      )}
      {ruleOf(mapping, 'club') === undefined && (
        <Field
          name={words.shots.mapping.allWith}
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
              <option value="">{words.shots.chooseClub}</option>
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
  const header = (index: number): string =>
    shape.header[index] ?? words.shots.mapping.column({ number: index + 1 });
  return (
    <div class="table-scroll" tabIndex={0} role="region" aria-label={words.shots.mapping.firstRows}>
      <table class="bag-table table-preview">
        <thead>
          <tr>
            <th scope="col">{words.shots.mapping.asRead}</th>
            {Array.from({ length: width }, (_, index) => {
              const rule = mapping.columns.find((known) => known.index === index);
              return (
                <th key={index} scope="col" class={rule === undefined ? undefined : 'is-read'}>
                  <span class="column-name">{header(index)}</span>
                  <select
                    aria-label={words.shots.mapping.holds({ column: header(index) })}
                    value={rule?.field ?? ''}
                    onChange={(event) => {
                      const field =
                        COLUMN_FIELDS.find((known) => known === event.currentTarget.value) ?? null;
                      change(withField(mapping, shape, index, field));
                    }}
                  >
                    <option value="">{words.shots.mapping.notRead}</option>
                    {COLUMN_FIELDS.map((field) => (
                      <option key={field} value={field}>
                        {words.shots.mapping.fields[field]}
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
  const words = useWords();
  const isSideways = rule.field === 'offline' || rule.field === 'direction';
  const units = UNITS_OF[rule.field];
  if (units === undefined) return null;
  return (
    <>
      <select
        aria-label={words.shots.mapping.unitOf({ column: name })}
        value={rule.unit ?? (rule.field === 'direction' ? 'deg' : units[0]!)}
        onChange={(event) => {
          const unit = units.find((known) => known === event.currentTarget.value);
          if (unit !== undefined) change(withUnit(mapping, rule.index, unit));
        }}
      >
        {units.map((unit) => (
          <option key={unit} value={unit}>
            {unitName(unit, words)}
          </option>
        ))}
      </select>
      {isSideways && (
        <select
          aria-label={words.shots.mapping.signOf({ column: name })}
          value={rule.positive ?? 'right'}
          onChange={(event) =>
            change(withPositive(mapping, rule.index, event.currentTarget.value === 'left' ? 'left' : 'right'))
          }
        >
          <option value="right">{words.shots.mapping.plusRight}</option>
          <option value="left">{words.shots.mapping.plusLeft}</option>
        </select>
      )}
    </>
  );
}

function previewText(row: PreviewRow, units: Units, words: Words): string {
  return row.shot === null
    ? row.fault === null
      ? ''
      : tell(row.fault, words)
    : shotText(row.shot, units, words);
}

/** `7-iron 137 yd, 4 yd right`, and what it was hit in where that is said. */
export function shotText(shot: RecordedShot, units: Units, words: Words): string {
  const offlineM = shot.offlineM ?? shot.carryM * Math.sin(((shot.directionDeg ?? 0) * Math.PI) / 180);
  const { lie, windMps, windFromDeg, temperatureC } = shot;
  const more = [
    ...(lie === undefined ? [] : [lieName(lie, words)]),
    ...(windMps === undefined || windMps === 0
      ? []
      : [
          `${speedText(windMps, units, words)}${windFromDeg === undefined ? '' : ` ${windSide(windFromDeg, words)}`}`,
        ]),
    ...(temperatureC === undefined ? [] : [`${Math.round(temperatureC)} °C`]),
  ];
  return [
    `${clubSwing(shot.club, shot.swing ?? 'full', words)} ${lengthText(shot.carryM, units)}`,
    asideText(offlineM, units, words),
    ...more,
  ].join(', ');
}

function NamesToMatch({ intake, mapping, document, change }: SignsProps & { readonly intake: Intake }) {
  const words = useWords();
  const unknown = unknownNames(intake.names, mapping, document);
  const said = Object.keys(mapping.clubNames ?? {}).filter((name) => intake.names.includes(name));
  const shown = [...new Set([...unknown, ...said])];
  if (shown.length === 0) return null;
  return (
    <fieldset class="bag-names">
      <legend>
        <h3>{words.shots.mapping.names}</h3>
      </legend>
      {shown.map((name) => (
        <Field
          key={name}
          name={words.shots.mapping.nameIs({ name })}
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
              <option value="">{words.shots.mapping.notInBag}</option>
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
