/** What came of reading a table: shots to take, rows that could not be read and can be mended, shots known already. */

import { useState } from 'preact/hooks';
import type { RejectedRow, ShotTable } from '../../../core/player/csv/read-shots.ts';
import type { ShotMapping } from '../../../core/player/csv/mapping.ts';
import { countText } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import type { Intake } from '../state/bag-state.ts';
import { useDesk } from '../state/use-bag.ts';
import { closeIntake, mendIntake, setMapping, shotsToTake, takeIntake } from './intake-steps.ts';
import { shotText } from './mapping-panel.tsx';
import { useWords } from '../../state/use-words.ts';

/** Rows that are shown at a time; the reasons of the rest are counted. */
const SHOWN_ROWS = 40;

export function ReadPanel({ intake, table }: { readonly intake: Intake; readonly table: ShotTable }) {
  const words = useWords();
  const desk = useDesk();
  const units = useApp((state) => state.settings.units);
  const { mapping } = intake;
  const count = shotsToTake(intake);
  const rejected = table.rejected.length + table.furtherRejected;
  if (mapping === null) return null;
  return (
    <section class="read-panel" aria-label="What was read">
      <h2>
        {intake.name}: {countText(table.rows, 'row', 'rows')} read
      </h2>
      <div role="status">
        <ul class="bag-tally">
          <li>
            <strong>{countText(table.accepted.length, 'shot', 'shots')}</strong> to add
            {table.accepted[0] !== undefined &&
              `, the first one: ${shotText(table.accepted[0].shot, units, words)}`}
          </li>
          <li class={rejected > 0 ? 'warning' : undefined}>
            <strong>{countText(rejected, 'row', 'rows')}</strong> could not be read
          </li>
          <li>
            <strong>{countText(table.duplicates.length, 'shot', 'shots')}</strong> known already, or twice in
            the table
            {table.duplicates.length > 0 && ` (lines ${firstLines(table)})`}
          </li>
        </ul>
      </div>
      {table.endedEarly !== undefined && <p class="warning">{table.endedEarly}</p>}
      {table.duplicates.length > 0 && (
        <label class="switch">
          <input
            type="checkbox"
            checked={intake.withDuplicates}
            onChange={(event) =>
              desk.store.dispatch({
                type: 'intake',
                intake: { ...intake, withDuplicates: event.currentTarget.checked },
              })
            }
          />
          Add those as well: they are other shots with the same numbers
        </label>
      )}
      {table.rejected.length > 0 && <RejectedRows key={intake.name} table={table} mapping={mapping} />}
      <div class="save-row">
        <button type="button" class="main-button" disabled={count === 0} onClick={() => takeIntake(desk)}>
          Add {countText(count, 'shot', 'shots')}
        </button>
        <button type="button" class="small-button" onClick={() => void setMapping(desk, mapping)}>
          Back to the columns
        </button>
        <button type="button" class="small-button" onClick={() => closeIntake(desk)}>
          Leave it
        </button>
      </div>
    </section>
  );
}

function firstLines({ duplicates }: ShotTable): string {
  const lines = duplicates.slice(0, 6).map(({ line }) => line);
  return `${lines.join(', ')}${duplicates.length > lines.length ? ', …' : ''}`;
}

function RejectedRows({ table, mapping }: { readonly table: ShotTable; readonly mapping: ShotMapping }) {
  const desk = useDesk();
  const [edited, setEdited] = useState<ReadonlyMap<number, readonly string[]>>(new Map());
  const rules = [...mapping.columns].sort((a, b) => a.index - b.index);
  const shown = table.rejected.slice(0, SHOWN_ROWS);
  const change = (row: RejectedRow, index: number, text: string): void => {
    const cells = [...(edited.get(row.line) ?? row.cells)];
    while (cells.length <= index) cells.push('');
    cells[index] = text;
    setEdited(new Map(edited).set(row.line, cells));
  };
  return (
    <form
      class="rejected-rows"
      onSubmit={(event) => {
        event.preventDefault();
        mendIntake(desk, edited);
        setEdited(new Map());
      }}
    >
      <h3>Rows to mend or to leave out</h3>
      <div class="table-scroll" tabIndex={0} role="region" aria-label="Rows that could not be read">
        <table class="bag-table">
          <thead>
            <tr>
              <th scope="col">Line</th>
              {rules.map((rule) => (
                <th key={rule.index} scope="col">
                  {rule.header || rule.field}
                </th>
              ))}
              <th scope="col">What is wrong</th>
            </tr>
          </thead>
          <tbody>
            {shown.map((row) => {
              const cells = edited.get(row.line) ?? row.cells;
              return (
                <tr key={row.line}>
                  <th scope="row">{row.line}</th>
                  {rules.map((rule) => (
                    <td key={rule.index}>
                      <input
                        type="text"
                        aria-label={`${rule.header || rule.field}, line ${row.line}`}
                        aria-invalid={row.column === rule.index && !edited.has(row.line)}
                        value={(cells[rule.index] ?? '').slice(0, 60)}
                        onInput={(event) => change(row, rule.index, event.currentTarget.value)}
                      />
                    </td>
                  ))}
                  <td class="cell-why">{row.message}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      {table.rejected.length + table.furtherRejected > shown.length && (
        <p class="faint">
          and {table.rejected.length + table.furtherRejected - shown.length} more: {reasons(table)}
        </p>
      )}
      <button type="submit" class="small-button" disabled={edited.size === 0}>
        Read the mended rows again
      </button>
    </form>
  );
}

/** The commonest reasons with their counts. */
function reasons({ rejected }: ShotTable): string {
  const counts = new Map<string, number>();
  for (const { message } of rejected) counts.set(message, (counts.get(message) ?? 0) + 1);
  return [...counts]
    .sort((a, b) => b[1] - a[1])
    .slice(0, 3)
    .map(([message, count]) => `${count} × ${message}`)
    .join(' ');
}
