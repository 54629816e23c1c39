/**
 * A grid of cells to type into: Enter and the arrow keys go from row to row, Tab from cell to cell, and what was copied
 * from a spreadsheet is laid over the cells from the one that has the focus.
 */

import { tell, type Told } from '../../../core/words/told.ts';
import { useRef } from 'preact/hooks';
import { pastedCells } from '../../../core/player/csv/typed-rows.ts';
import { useWords } from '../../state/use-words.ts';

export interface GridColumn {
  readonly name: string;
  /** In letters. */
  readonly width: number;
  readonly choices?: readonly string[];
}

interface Props {
  readonly label: string;
  readonly columns: readonly GridColumn[];
  readonly rows: readonly (readonly string[])[];
  /** Shown faintly in empty cells. */
  readonly hints: readonly (readonly string[])[];
  readonly faults: ReadonlyMap<number, { readonly column: number | null; readonly message: Told }>;
  readonly change: (rows: readonly (readonly string[])[]) => void;
}

/** Blank rows kept at the end. */
const SPARE_ROWS = 4;
const MOST_ROWS = 2000;

export function CellGrid({ label, columns, rows, hints, faults, change }: Props) {
  const words = useWords();
  const table = useRef<HTMLTableElement>(null);
  const shown = Math.min(MOST_ROWS, rows.length + SPARE_ROWS);
  const cellAt = (row: number, column: number): HTMLInputElement | null =>
    table.current?.querySelector<HTMLInputElement>(`[data-cell="${row},${column}"]`) ?? null;
  const move = (row: number, column: number): boolean => {
    const cell = cellAt(row, column);
    if (cell === null) return false;
    cell.focus();
    cell.select();
    return true;
  };
  const put = (row: number, column: number, block: readonly (readonly string[])[]): void => {
    const next = rows.map((cells) => [...cells]);
    block.slice(0, MOST_ROWS - row).forEach((cells, i) => {
      while (next.length <= row + i) next.push(columns.map(() => ''));
      cells.forEach((cell, j) => {
        if (column + j < columns.length) next[row + i]![column + j] = cell;
      });
    });
    change(next);
  };
  const pressed = (event: KeyboardEvent, row: number, column: number): void => {
    const input = event.currentTarget as HTMLInputElement;
    const atStart = input.selectionStart === 0 && input.selectionEnd === 0;
    const atEnd = input.selectionStart === input.value.length;
    const to =
      event.key === 'Enter' || event.key === 'ArrowDown'
        ? [row + (event.shiftKey && event.key === 'Enter' ? -1 : 1), column]
        : event.key === 'ArrowUp'
          ? [row - 1, column]
          : event.key === 'ArrowLeft' && atStart
            ? [row, column - 1]
            : event.key === 'ArrowRight' && atEnd
              ? [row, column + 1]
              : null;
    if (to === null || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    move(to[0]!, to[1]!);
  };
  return (
    <div class="table-scroll" role="region" aria-label={label}>
      <table class="cell-grid" ref={table}>
        <thead>
          <tr>
            <th scope="col">
              <span class="unseen">{words.shots.grid.row}</span>
            </th>
            {columns.map(({ name }) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
            <th scope="col">
              <span class="unseen">{words.shots.grid.wrong}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: shown }, (_, row) => {
            const fault = faults.get(row);
            return (
              <tr key={row}>
                <th scope="row">{row + 1}</th>
                {columns.map(({ name, width, choices }, column) => (
                  <td key={name}>
                    <input
                      type="text"
                      data-cell={`${row},${column}`}
                      aria-label={words.shots.grid.cell({ name, row: row + 1 })}
                      aria-invalid={fault !== undefined && (fault.column ?? column) === column}
                      size={width}
                      autocomplete="off"
                      list={choices === undefined ? undefined : listId(label, name)}
                      value={rows[row]?.[column] ?? ''}
                      placeholder={hints[row]?.[column] ?? ''}
                      onInput={(event) => put(row, column, [[event.currentTarget.value]])}
                      onKeyDown={(event) => pressed(event, row, column)}
                      onPaste={(event) => {
                        const text = event.clipboardData?.getData('text/plain') ?? '';
                        if (!/[\t\r\n]/u.test(text.trim())) return;
                        event.preventDefault();
                        put(row, column, pastedCells(text));
                      }}
                    />
                  </td>
                ))}
                <td class="cell-why" role={fault === undefined ? undefined : 'alert'}>
                  {fault === undefined ? '' : tell(fault.message, words)}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {columns.map(({ name, choices }) =>
        choices === undefined ? null : (
          <datalist key={name} id={listId(label, name)}>
            {choices.map((choice) => (
              <option key={choice} value={choice} />
            ))}
          </datalist>
        ),
      )}
    </div>
  );
}

function listId(label: string, name: string): string {
  return `${label}-${name}`.replace(/[^a-z]/giu, '-');
}
