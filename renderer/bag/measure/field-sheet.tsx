/** The sheet to take along: paces or tape, thirty shots, and how to go about it. What is seen is what is printed. */

import { useBag } from '../state/use-bag.ts';

const ROWS = 30;

export function FieldSheet() {
  const name = useBag((state) => state.file?.history.present.name ?? '');
  return (
    <article class="field-sheet" aria-label="Field sheet">
      <header>
        <h2>Field sheet</h2>
        <p>
          {name} · date <span class="blank" /> · place <span class="blank" />
        </p>
      </header>
      <ol class="sheet-steps">
        <li>
          Only on an empty field where you may play, never on a range in use: nobody in front of you, nobody
          beside the line. Shout a warning if a ball may reach somebody. Leave when you hear thunder.
        </li>
        <li>Warm up gently with short swings first; stop if it hurts.</li>
        <li>
          Measure your pace: walk 20 paces along a tape. Twenty of my paces are <span class="blank short" />{' '}
          m; divided by 20, one pace is <span class="blank short" /> m.
        </li>
        <li>
          Lay down a line of aim with two clubs or a cord towards a mark. Hit ten balls with one club. Leave
          no ball out: the bad ones count as well.
        </li>
        <li>
          Walk the line. Where each ball <em>came down</em>, note the paces along the line, then the paces
          from the line to the left (L) or right (R).
        </li>
        <li>At home: “Shots”, lengths in paces, type the rows in as they stand here.</li>
      </ol>
      <table>
        <thead>
          <tr>
            {['No.', 'Club', 'Swing', 'Carry', 'Off line, L / R', 'Intended', 'Remark'].map((title) => (
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
      <p class="sheet-note">
        An empty club or swing means the one above. “Intended” is for part swings only: the length you wanted.
      </p>
    </article>
  );
}
