/** The sheet to take along: paces or tape, thirty shots, and how to go about it. What is seen is what is printed. */

import { useBag } from '../state/use-bag.ts';
import { useWords } from '../../state/use-words.ts';

const ROWS = 30;

export function FieldSheet() {
  const words = useWords();
  const name = useBag((state) => state.file?.history.present.name ?? '');
  return (
    <article class="field-sheet" aria-label={words.shots.sheet.name}>
      <header>
        <h2>{words.shots.sheet.name}</h2>
        <p>
          {words.shots.sheet.head({ name })} <span class="blank" /> {words.shots.sheet.place}{' '}
          <span class="blank" />
        </p>
      </header>
      <ol class="sheet-steps">
        <li>{words.shots.sheet.safety}</li>
        <li>{words.shots.sheet.warmUp}</li>
        <li>
          {words.shots.sheet.measurePace} <span class="blank short" /> {words.shots.sheet.onePace}{' '}
          <span class="blank short" /> m.
        </li>
        <li>{words.shots.sheet.line}</li>
        <li>
          {words.shots.sheet.walk} <em>{words.shots.sheet.cameDown}</em>
          {words.shots.sheet.note}
        </li>
        <li>{words.shots.sheet.atHome}</li>
      </ol>
      <table>
        <thead>
          <tr>
            {[
              words.shots.sheet.number,
              words.shots.columns.club,
              words.shots.columns.swing,
              words.shots.columns.carry,
              words.shots.sheet.offLine,
              words.shots.columns.intended,
              words.shots.sheet.remark,
            ].map((title) => (
              <th key={title} scope="col">
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: ROWS }, (_, row) => (
            <tr key={row}>
              <th scope="row">{row + 1}</th>
              {Array.from({ length: 6 }, (__, column) => (
                <td key={column} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p class="sheet-note">{words.shots.sheet.empty}</p>
    </article>
  );
}
