/** What came of reading a table: shots to take, rows that could not be read and can be mended, shots known already. */

import { tell } from '../../../core/words/told.ts';
import type { Words } from '../../../core/words/words.ts';
import { useState } from 'preact/hooks';
import type { RejectedRow, ShotTable } from '../../../core/player/csv/read-shots.ts';
import type { ShotMapping } from '../../../core/player/csv/mapping.ts';
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
    <section class="read-panel" aria-label={words.shots.read.name}>
      <h2>
        {words.shots.read.title({ name: intake.name, rows: words.shots.read.rows({ count: table.rows }) })}
      </h2>
      <div role="status">
        <ul class="bag-tally">
          <li>
            <strong>{words.shots.count({ count: table.accepted.length })}</strong>{' '}
            {words.shots.read.toAdd({
              first:
                table.accepted[0] === undefined
                  ? ''
                  : words.shots.read.first({ shot: shotText(table.accepted[0].shot, units, words) }),
            })}
          </li>
          <li class={rejected > 0 ? 'warning' : undefined}>
            <strong>{words.shots.read.rows({ count: rejected })}</strong> {words.shots.read.unreadable}
          </li>
          <li>
            <strong>{words.shots.count({ count: table.duplicates.length })}</strong>{' '}
            {words.shots.read.known({
              lines: table.duplicates.length > 0 ? words.shots.read.lines({ lines: firstLines(table) }) : '',
            })}
          </li>
        </ul>
      </div>
      {table.endedEarly !== undefined && <p class="warning">{tell(table.endedEarly, words)}</p>}
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
          {words.shots.read.addThose}
        </label>
      )}
      {table.rejected.length > 0 && <RejectedRows key={intake.name} table={table} mapping={mapping} />}
      <div class="save-row">
        <button
          type="button"
          class="main-button"
          disabled={count === 0}
          onClick={() => takeIntake(desk, words)}
        >
          {words.shots.add({ shots: words.shots.count({ count }) })}
        </button>
        <button type="button" class="small-button" onClick={() => void setMapping(desk, mapping)}>
          {words.shots.read.back}
        </button>
        <button type="button" class="small-button" onClick={() => closeIntake(desk)}>
          {words.shots.leave}
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
  const words = useWords();
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
      <h3>{words.shots.read.mend}</h3>
      <div class="table-scroll" tabIndex={0} role="region" aria-label={words.shots.read.faulty}>
        <table class="bag-table">
          <thead>
            <tr>
              <th scope="col">{words.shots.read.line}</th>
              {rules.map((rule) => (
                <th key={rule.index} scope="col">
                  {rule.header || rule.field}
                </th>
              ))}
              <th scope="col">{words.shots.grid.wrong}</th>
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
                        aria-label={words.shots.read.cell({
                          name: rule.header || rule.field,
                          line: row.line,
                        })}
                        aria-invalid={row.column === rule.index && !edited.has(row.line)}
                        value={(cells[rule.index] ?? '').slice(0, 60)}
                        onInput={(event) => change(row, rule.index, event.currentTarget.value)}
                      />
                    </td>
                  ))}
                  <td class="cell-why">{tell(row.message, words)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      {table.rejected.length + table.furtherRejected > shown.length && (
        <p class="faint">
          {words.shots.read.more({
            count: table.rejected.length + table.furtherRejected - shown.length,
            reasons: reasons(table, words),
          })}
        </p>
      )}
      <button type="submit" class="small-button" disabled={edited.size === 0}>
        {words.shots.read.again}
      </button>
    </form>
  );
}

/** The commonest reasons with their counts. */
function reasons({ rejected }: ShotTable, words: Words): string {
  const counts = new Map<string, number>();
  for (const { message } of rejected) {
    const text = tell(message, words);
    counts.set(text, (counts.get(text) ?? 0) + 1);
  }
  return [...counts]
    .sort((a, b) => b[1] - a[1])
    .slice(0, 3)
    .map(([message, count]) => `${count} × ${message}`)
    .join(' ');
}
