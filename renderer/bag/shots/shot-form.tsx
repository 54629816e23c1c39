/** A shot of the file to be changed: its readings as text, read as the grid reads them, and what it was hit in. */

import { tell, told, type Told } from '../../../core/words/told.ts';
import type { Words } from '../../../core/words/words.ts';
import { useState } from 'preact/hooks';
import { readTypedRows, TYPED_COLUMNS, type TypedColumn } from '../../../core/player/csv/typed-rows.ts';
import { replaceShot } from '../../../core/player/edits/shots.ts';
import type { RecordedShot } from '../../../core/player/format.ts';
import { refuse, type Result, succeed } from '../../../core/result.ts';
import { Field } from '../../panels/field.tsx';
import { inUnits, type Units } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { useBag, useDesk } from '../state/use-bag.ts';
import { swingChoices } from '../words.ts';
import { type ConditionChange, ConditionFields } from './condition-fields.tsx';
import { useWords } from '../../state/use-words.ts';

interface Props {
  readonly place: number;
  readonly shot: RecordedShot;
  readonly close: () => void;
}

/** Readings that are typed. */
const TYPED: readonly TypedColumn[] = ['carry', 'offline', 'total', 'intended', 'date'];

export function ShotForm({ place, shot, close }: Props) {
  const words = useWords();
  const desk = useDesk();
  const units = useApp((state) => state.settings.units);
  const bag = useBag((state) => state.file?.history.present.bag ?? null);
  const [asOpened] = useState(() => cellsOf(shot, units, words));
  const [cells, setCells] = useState(asOpened);
  const [weather, setWeather] = useState<ConditionChange>(() => conditionsOf(shot));
  const [fault, setFault] = useState<CellFault | null>(null);
  if (bag === null) return null;
  const set = (column: TypedColumn, text: string): void => setCells({ ...cells, [column]: text });
  const take = (): void => {
    const changed = changedShot(shot, { before: asOpened, now: cells }, (row) =>
      readTypedRows([row], bag, units === 'yards' ? 'yd' : 'm'),
    );
    if (!changed.ok) {
      setFault(changed.error);
      return;
    }
    const next = { ...changed.value, ...weather } as RecordedShot;
    for (const [key, value] of Object.entries(weather))
      if (value === undefined) Reflect.deleteProperty(next, key);
    if (
      desk.edit(words.shots.form.step({ club: shot.club }), (document) =>
        succeed(replaceShot(document, place, next)),
      )
    )
      close();
  };
  const choices: readonly (readonly [TypedColumn, readonly (readonly [string, string])[]])[] = [
    ['club', bag.filter(({ kind }) => kind !== 'putter').map(({ name }) => [name, name] as const)],
    ['swing', swingChoices(words)],
  ];
  return (
    <form
      class="shot-form"
      aria-label={words.shots.form.name}
      onSubmit={(event) => {
        event.preventDefault();
        take();
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') close();
      }}
    >
      <div class="bag-row">
        {choices.map(([column, entries]) => (
          <Field
            key={column}
            name={words.shots.columns[column === 'offline' ? 'offLine' : column]}
            control={(id) => (
              <select
                id={id}
                value={cells[column]}
                onChange={(event) => set(column, event.currentTarget.value)}
              >
                {entries.every(([value]) => value !== cells[column]) && (
                  <option value={cells[column]}>{cells[column]}</option>
                )}
                {entries.map(([value, name]) => (
                  <option key={value} value={value}>
                    {name}
                  </option>
                ))}
              </select>
            )}
          />
        ))}
        {TYPED.map((column) => (
          <Field
            key={column}
            name={
              column === 'date'
                ? words.shots.columns.date
                : `${words.shots.columns[column === 'offline' ? 'offLine' : column]}, ${units === 'yards' ? 'yd' : 'm'}`
            }
            control={(id) => (
              <input
                id={id}
                class={column === 'date' ? undefined : 'count-field'}
                type="text"
                autocomplete="off"
                value={cells[column]}
                aria-invalid={fault?.column === TYPED_COLUMNS.indexOf(column)}
                onInput={(event) => set(column, event.currentTarget.value)}
              />
            )}
          />
        ))}
      </div>
      <ConditionFields value={weather} change={(change) => setWeather({ ...weather, ...change })} />
      {fault !== null && (
        <p class="field-fault" role="alert">
          {tell(fault.message, words)}
        </p>
      )}
      <div class="save-row">
        <button type="submit" class="main-button">
          {words.shots.form.change}
        </button>
        <button type="button" class="small-button" onClick={close}>
          {words.shots.form.leave}
        </button>
      </div>
    </form>
  );
}

interface CellFault {
  readonly column: number | null;
  readonly message: Told;
}

type Cells = Readonly<Record<TypedColumn, string>>;

function cellsOf(shot: RecordedShot, units: Units, { figures }: Words): Cells {
  const length = (metres: number | undefined): string =>
    metres === undefined ? '' : figures.short(inUnits(metres, units), 1);
  const offlineM = shot.offlineM ?? shot.carryM * Math.sin(((shot.directionDeg ?? 0) * Math.PI) / 180);
  return {
    club: shot.club,
    swing: shot.swing ?? 'full',
    carry: length(shot.carryM),
    offline: length(offlineM),
    total: length(shot.totalM),
    intended: length(shot.intendedM),
    lie: '',
    date: shot.at?.replace('T', ' ') ?? '',
  };
}

function conditionsOf({ lie, windMps, windFromDeg, temperatureC, altitudeM }: RecordedShot): ConditionChange {
  return { lie, windMps, windFromDeg, temperatureC, altitudeM };
}

/** The shot with what was retyped; a reading whose text was left alone keeps its digits. */
function changedShot(
  shot: RecordedShot,
  { before, now: cells }: { readonly before: Cells; readonly now: Cells },
  read: (row: readonly string[]) => ReturnType<typeof readTypedRows>,
): Result<RecordedShot, CellFault> {
  const { shots, faults } = read(TYPED_COLUMNS.map((column) => cells[column]));
  const typed = shots[0]?.shot;
  if (typed === undefined)
    return refuse(faults[0] ?? { column: null, message: told(({ faults }) => faults.table.noCarry) });
  const next: RecordedShot = { ...shot, club: typed.club };
  const put = <K extends keyof RecordedShot>(key: K, value: RecordedShot[K] | undefined): void => {
    if (value === undefined) Reflect.deleteProperty(next, key);
    else next[key] = value;
  };
  put('swing', typed.swing);
  if (cells.carry !== before.carry) put('carryM', typed.carryM);
  if (cells.offline !== before.offline || (cells.carry !== before.carry && shot.offlineM !== undefined)) {
    put('directionDeg', undefined);
    put('offlineM', typed.offlineM);
    put('directionDeg', typed.directionDeg);
  }
  if (cells.total !== before.total) put('totalM', typed.totalM);
  if (cells.intended !== before.intended) put('intendedM', typed.intendedM);
  if (cells.date !== before.date) put('at', typed.at);
  return succeed(next);
}
