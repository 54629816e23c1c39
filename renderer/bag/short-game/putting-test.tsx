/** The ten-minute test on the practice green: six distances, how many tried, how many holed. */

import { useState } from 'preact/hooks';
import {
  addPuttingTest,
  dayOfLine,
  removePuttingTest,
  TEST_DISTANCES_FT,
} from '../../../core/player/edits/putting.ts';
import { succeed } from '../../../core/result.ts';
import { countText } from '../../state/measures.ts';
import { useBag, useDesk } from '../state/use-bag.ts';
import { CountField, readCount } from './count-field.tsx';
import { today } from './short-page.tsx';

/** Tries that are proposed: more where fewer are holed would take longer than ten minutes. */
const PROPOSED: Readonly<Record<number, string>> = { 3: '10', 6: '10', 10: '10', 20: '6', 30: '6', 40: '6' };
const MOST = 500;

export function PuttingTest() {
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
    <section class="bag-card" aria-label="Ten-minute test">
      <h2>Ten-minute test</h2>
      <p class="faint small-print">
        On a level part of the practice green, from another side of the hole each time, one putt per try. Fill
        in what you did; distances without a number under “holed” are left out.
      </p>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          const readable = lines.flatMap((line) =>
            line.tries === null || line.made === null
              ? []
              : [{ ...line, tries: line.tries, made: line.made }],
          );
          if (!isReadable) return;
          if (desk.edit('add a putting test', (document) => addPuttingTest(document, readable, today())))
            setMade({});
        }}
      >
        <table class="bag-table test-table">
          <thead>
            <tr>
              <th scope="col">From</th>
              <th scope="col">Tried</th>
              <th scope="col">Holed</th>
            </tr>
          </thead>
          <tbody>
            {TEST_DISTANCES_FT.map((feet) => (
              <tr key={feet}>
                <th scope="row">
                  {feet} ft <small class="faint">{(feet * 0.3048).toFixed(1)} m</small>
                </th>
                <td>
                  <CountField
                    label={`Tried from ${feet} ft`}
                    value={tries[feet] ?? ''}
                    most={MOST}
                    disabled={locked}
                    change={(text) => setTries({ ...tries, [feet]: text })}
                  />
                </td>
                <td>
                  <CountField
                    label={`Holed from ${feet} ft`}
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
          Record this test
        </button>
      </form>
      {days.size > 0 && (
        <ul class="bag-records" aria-label="Tests on record">
          {[...days].map(([day, putts]) => (
            <li key={day ?? 'undated'}>
              {day ?? 'without a date'}: {countText(putts, 'putt', 'putts')}
              <button
                type="button"
                class="link-button"
                disabled={locked}
                aria-label={`Take out the test ${day ?? 'without a date'}`}
                onClick={() =>
                  desk.edit('take out a putting test', (document) =>
                    succeed(removePuttingTest(document, day)),
                  )
                }
              >
                take out
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

const NO_LINES: readonly { readonly tries: number; readonly made: number; readonly distanceM: number }[] = [];
