/** Shots typed in or pasted from a spreadsheet. */

import type { Told } from '../../../core/words/told.ts';
import { useMemo, useState } from 'preact/hooks';
import {
  asInFiles,
  filledRows,
  isIdle,
  readTypedRows,
  REPEATED,
  TYPED_COLUMNS,
  type TypedColumn,
  type TypedUnit,
} from '../../../core/player/csv/typed-rows.ts';
import { addShots } from '../../../core/player/edits/shots.ts';
import { Field } from '../../panels/field.tsx';
import { useApp } from '../../state/use-app.ts';
import { NumberField } from '../number-field.tsx';
import { useBag, useDesk } from '../state/use-bag.ts';
import { LIES_TO_CHOOSE } from '../../../core/player/in-play.ts';
import { SWINGS } from '../../../core/player/model.ts';
import { lieName } from '../words.ts';
import { CellGrid, type GridColumn } from './cell-grid.tsx';
import { type ConditionChange, ConditionFields } from './condition-fields.tsx';
import { useWords } from '../../state/use-words.ts';

const NO_FAULTS: ReadonlyMap<number, { readonly column: number | null; readonly message: Told }> = new Map();

export function TypedShots() {
  const words = useWords();
  const desk = useDesk();
  const units = useApp((state) => state.settings.units);
  const rows = useBag((state) => state.typed);
  const bag = useBag((state) => state.file?.history.present.bag ?? null);
  const [unit, setUnit] = useState<TypedUnit>(units === 'yards' ? 'yd' : 'm');
  const [paceM, setPaceM] = useState(0.9);
  const [faults, setFaults] = useState(NO_FAULTS);
  const [weather, setWeather] = useState<ConditionChange>({});
  const hints = useMemo(
    () =>
      filledRows([...rows, []]).map((cells, row) =>
        cells.map((cell, i) =>
          REPEATED.has(TYPED_COLUMNS[i]!) && (rows[row]?.[i] ?? '') === '' ? cell : '',
        ),
      ),
    [rows],
  );
  if (bag === null) return null;
  const swings = SWINGS.map((swing) => [swing, words.golf.shortSwings[swing]] as const);
  const lies = ['range', ...LIES_TO_CHOOSE].map((lie) => [lie, lieName(lie, words)] as const);
  const names: Readonly<Record<TypedColumn, GridColumn>> = {
    club: {
      name: words.shots.columns.club,
      width: 14,
      choices: bag.filter(({ kind }) => kind !== 'putter').map(({ name }) => name),
    },
    swing: { name: words.shots.columns.swing, width: 11, choices: swings.map(([, said]) => said) },
    carry: { name: words.shots.columns.carry, width: 7 },
    offline: { name: words.shots.columns.offLine, width: 8 },
    total: { name: words.shots.columns.total, width: 7 },
    intended: { name: words.shots.columns.intended, width: 8 },
    lie: { name: words.shots.columns.lie, width: 9, choices: lies.map(([, said]) => said) },
    date: { name: words.shots.columns.date, width: 11 },
  };
  const filled = rows.filter((cells) => !isIdle(cells)).length;
  const take = (): void => {
    const read = readTypedRows(asInFiles(rows, { swing: swings, lie: lies }), bag, unit, paceM);
    const bad = new Set(read.faults.map(({ row }) => row));
    if (read.shots.length > 0) {
      const many = words.shots.count({ count: read.shots.length });
      const given = Object.fromEntries(Object.entries(weather).filter(([, one]) => one !== undefined));
      const taken = desk.edit(words.shots.typed.addStep({ shots: many }), (document) =>
        addShots(
          document,
          read.shots.map(({ shot }) => ({ ...given, ...shot })),
        ),
      );
      if (!taken) return;
      desk.store.dispatch({ type: 'said', words: words.shots.added({ shots: many }) });
    }
    // Rows that could not be read stay, with what they repeated written out, for their neighbours above are gone.
    const whole = filledRows(rows);
    const left = [...bad].sort((a, b) => a - b);
    desk.store.dispatch({ type: 'typed', rows: left.map((row) => whole[row]!) });
    setFaults(
      new Map(
        left.map((row, i) => {
          const { column, message } = read.faults.find((fault) => fault.row === row)!;
          return [i, { column, message }];
        }),
      ),
    );
  };
  return (
    <section class="typed-shots" aria-label={words.shots.typed.name}>
      <div class="page-head">
        <h2>{words.shots.typed.title}</h2>
        <div class="bag-row">
          <Field
            name={words.shots.typed.lengthsIn}
            control={(id) => (
              <select
                id={id}
                value={unit}
                onChange={(event) => {
                  const { value } = event.currentTarget;
                  if (value === 'yd' || value === 'm' || value === 'pace') setUnit(value);
                }}
              >
                <option value="yd">{words.shots.units.yards}</option>
                <option value="m">{words.shots.units.metres}</option>
                <option value="pace">{words.shots.units.paces}</option>
              </select>
            )}
          />
          {unit === 'pace' && (
            <NumberField
              name={words.shots.typed.onePace}
              unit="m"
              value={paceM}
              least={0.4}
              most={1.5}
              decimals={3}
              take={setPaceM}
            />
          )}
        </div>
      </div>
      <p class="faint small-print">{words.shots.typed.explain}</p>
      <details class="all-shots">
        <summary>{words.shots.conditions.title}</summary>
        <ConditionFields
          value={weather}
          withoutLie
          change={(change) => setWeather({ ...weather, ...change })}
        />
      </details>
      <CellGrid
        label={words.shots.typed.toAdd}
        columns={TYPED_COLUMNS.map((column) => names[column])}
        rows={rows}
        hints={hints}
        faults={faults}
        change={(next) => {
          setFaults(NO_FAULTS);
          desk.store.dispatch({ type: 'typed', rows: next });
        }}
      />
      <div class="save-row">
        <button type="button" class="main-button" disabled={filled === 0} onClick={take}>
          {words.shots.add({ shots: words.shots.count({ count: filled }) })}
        </button>
        {rows.length > 0 && (
          <button
            type="button"
            class="small-button"
            onClick={() => {
              setFaults(NO_FAULTS);
              desk.store.dispatch({ type: 'typed', rows: [] });
            }}
          >
            {words.shots.typed.empty}
          </button>
        )}
      </div>
    </section>
  );
}
