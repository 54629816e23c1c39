/** Shots typed in or pasted from a spreadsheet. */

import { useMemo, useState } from 'preact/hooks';
import {
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
import { countText } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { NumberField } from '../number-field.tsx';
import { useBag, useDesk } from '../state/use-bag.ts';
import { LIE_WORDS, SWING_WORDS } from '../words.ts';
import { CellGrid, type GridColumn } from './cell-grid.tsx';
import { type ConditionChange, ConditionFields } from './condition-fields.tsx';

const NO_FAULTS: ReadonlyMap<number, { readonly column: number | null; readonly message: string }> =
  new Map();

export function TypedShots() {
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
  const names: Readonly<Record<TypedColumn, GridColumn>> = {
    club: {
      name: 'Club',
      width: 14,
      choices: bag.filter(({ kind }) => kind !== 'putter').map(({ name }) => name),
    },
    swing: { name: 'Swing', width: 11, choices: SWING_WORDS.map(([swing]) => swing) },
    carry: { name: 'Carry', width: 7 },
    offline: { name: 'Off line', width: 8 },
    total: { name: 'Total', width: 7 },
    intended: { name: 'Intended', width: 8 },
    lie: { name: 'Lie', width: 9, choices: ['range', ...Object.keys(LIE_WORDS)] },
    date: { name: 'Date', width: 11 },
  };
  const filled = rows.filter((cells) => !isIdle(cells)).length;
  const take = (): void => {
    const read = readTypedRows(rows, bag, unit, paceM);
    const bad = new Set(read.faults.map(({ row }) => row));
    if (read.shots.length > 0) {
      const words = countText(read.shots.length, 'shot', 'shots');
      const given = Object.fromEntries(Object.entries(weather).filter(([, one]) => one !== undefined));
      const taken = desk.edit(`add ${words}`, (document) =>
        addShots(
          document,
          read.shots.map(({ shot }) => ({ ...given, ...shot })),
        ),
      );
      if (!taken) return;
      desk.store.dispatch({ type: 'said', words: `${words} added.` });
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
    <section class="typed-shots" aria-label="Type shots in">
      <div class="page-head">
        <h2>Type them in</h2>
        <div class="bag-row">
          <Field
            name="Lengths in"
            control={(id) => (
              <select
                id={id}
                value={unit}
                onChange={(event) => {
                  const { value } = event.currentTarget;
                  if (value === 'yd' || value === 'm' || value === 'pace') setUnit(value);
                }}
              >
                <option value="yd">yards</option>
                <option value="m">metres</option>
                <option value="pace">paces</option>
              </select>
            )}
          />
          {unit === 'pace' && (
            <NumberField
              name="One pace is"
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
      <p class="faint small-print">
        Off line: 4 R or 4 L, or a number with minus for left. An empty club, swing, lie or date repeats the
        one above. Rows copied from a spreadsheet can be pasted into any cell.
      </p>
      <details class="all-shots">
        <summary>In what weather they were hit</summary>
        <ConditionFields
          value={weather}
          withoutLie
          change={(change) => setWeather({ ...weather, ...change })}
        />
      </details>
      <CellGrid
        label="Shots to add"
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
          Add {countText(filled, 'shot', 'shots')}
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
            Empty the grid
          </button>
        )}
      </div>
    </section>
  );
}
