/** The ten-minute test on the practice green: six distances, how many tried, how many holed. */

import { useState } from 'preact/hooks';
import {
  addPuttingTest,
  dayOfLine,
  removePuttingTest,
  TEST_DISTANCES_FT,
} from '../../../core/player/edits/putting.ts';
import { succeed } from '../../../core/result.ts';
import { useBag, useDesk } from '../state/use-bag.ts';
import { CountField, readCount } from './count-field.tsx';
import { today } from './short-page.tsx';
import { useWords } from '../../state/use-words.ts';

/** Tries that are proposed: more where fewer are holed would take longer than ten minutes. */
const PROPOSED: Readonly<Record<number, string>> = { 3: '10', 6: '10', 10: '10', 20: '6', 30: '6', 40: '6' };
const MOST = 500;

export function PuttingTest() {
  const words = useWords();
  const desk = useDesk();
  const locked = useBag((state) => state.file?.access.may !== 'write');
  const holed = useBag((state) => state.file?.history.present.puttingRecord?.holed ?? NO_LINES);
  const [tries, setTries] = useState<Readonly<Record<number, string>>>(PROPOSED);
  const [made, setMade] = useState<Readonly<Record<number, string>>>({});
  const days = new Map<string | undefined, number>();
  for (const line of holed) days.set(dayOfLine(line), (days.get(dayOfLine(line)) ?? 0) + line.tries);
  const lines = TEST_DISTANCES_FT.map((distanceFt) => {
    // A distance whose holed putts are not filled in was not putted.
    const isPutted = (made[distanceFt] ?? '').trim() !== '';
    return {
      distanceFt,
      tries: isPutted ? readCount(tries[distanceFt] ?? '', MOST) : 0,
      made: readCount(made[distanceFt] ?? '', MOST),
    };
  });
  const isReadable = lines.every((line) => line.tries !== null && line.made !== null);
  return (
    <section class="bag-card" aria-label={words.shortGame.test.name}>
      <h2>{words.shortGame.test.name}</h2>
      <p class="faint small-print">{words.shortGame.test.explain}</p>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          const readable = lines.flatMap((line) =>
            line.tries === null || line.made === null
              ? []
              : [{ ...line, tries: line.tries, made: line.made }],
          );
          if (!isReadable) return;
          if (
            desk.edit(words.shortGame.test.addStep, (document) => addPuttingTest(document, readable, today()))
          )
            setMade({});
        }}
      >
        <table class="bag-table test-table">
          <thead>
            <tr>
              <th scope="col">{words.shortGame.from}</th>
              <th scope="col">{words.shortGame.test.tried}</th>
              <th scope="col">{words.shortGame.test.holed}</th>
            </tr>
          </thead>
          <tbody>
            {TEST_DISTANCES_FT.map((feet) => (
              <tr key={feet}>
                <th scope="row">
                  {feet} ft <small class="faint">{words.figures.fixed(feet * 0.3048, 1)} m</small>
                </th>
                <td>
                  <CountField
                    label={words.shortGame.test.triedFrom({ feet })}
                    value={tries[feet] ?? ''}
                    most={MOST}
                    disabled={locked}
                    change={(text) => setTries({ ...tries, [feet]: text })}
                  />
                </td>
                <td>
                  <CountField
                    label={words.shortGame.test.holedFrom({ feet })}
                    value={made[feet] ?? ''}
                    most={MOST}
                    disabled={locked}
                    change={(text) => setMade({ ...made, [feet]: text })}
                  />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
        <button type="submit" class="small-button" disabled={locked || !isReadable}>
          {words.shortGame.test.record}
        </button>
      </form>
      {days.size > 0 && (
        <ul class="bag-records" aria-label={words.shortGame.test.onRecord}>
          {[...days].map(([day, putts]) => (
            <li key={day ?? 'undated'}>
              {day ?? words.shortGame.test.undated}: {words.shortGame.puttCount({ count: putts })}
              <button
                type="button"
                class="link-button"
                disabled={locked}
                aria-label={words.shortGame.test.takeOut({ day: day ?? words.shortGame.test.undated })}
                onClick={() =>
                  desk.edit(words.shortGame.test.takeOutStep, (document) =>
                    succeed(removePuttingTest(document, day)),
                  )
                }
              >
                {words.shortGame.takeOut}
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

const NO_LINES: readonly { readonly tries: number; readonly made: number; readonly distanceM: number }[] = [];
