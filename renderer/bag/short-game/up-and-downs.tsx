/** Up-and-downs from chips, pitches and bunkers: how often tried, how often saved, and the chance with its interval. */

import { useState } from 'preact/hooks';
import { addUpAndDown, removeUpAndDowns } from '../../../core/player/edits/putting.ts';
import type { ShortGameKind } from '../../../core/player/short-game.ts';
import { succeed } from '../../../core/result.ts';
import { useBag, useDesk } from '../state/use-bag.ts';
import { CountField, readCount } from './count-field.tsx';
import { today } from './short-page.tsx';

const KINDS: readonly (readonly [ShortGameKind, string])[] = [
  ['chip', 'Chip'],
  ['pitch', 'Pitch'],
  ['bunker', 'Bunker by the green'],
];
const MOST = 10_000;

export function UpAndDowns() {
  const desk = useDesk();
  const locked = useBag((state) => state.file?.access.may !== 'write');
  const chances = useBag((state) => state.file?.estimate.report?.upAndDowns ?? null);
  const [tries, setTries] = useState<Readonly<Record<string, string>>>({});
  const [saves, setSaves] = useState<Readonly<Record<string, string>>>({});
  const percent = (share: number): string => (100 * share).toFixed(0);
  return (
    <section class="bag-card" aria-label="Up and downs">
      <h2>Up and down</h2>
      <table class="bag-table test-table">
        <thead>
          <tr>
            <th scope="col">From a</th>
            <th scope="col">On record</th>
            <th scope="col">Chance, %</th>
            <th scope="col">Tried</th>
            <th scope="col">Saved</th>
            <th scope="col">
              <span class="unseen">Add</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {KINDS.map(([kind, words]) => {
            const known = chances?.find((chance) => chance.kind === kind);
            const tried = readCount(tries[kind] ?? '', MOST);
            const saved = readCount(saves[kind] ?? '', MOST);
            return (
              <tr key={kind}>
                <th scope="row">{words}</th>
                <td>
                  {known === undefined ? (
                    '–'
                  ) : (
                    <>
                      {known.saved} of {known.tries}{' '}
                      <button
                        type="button"
                        class="link-button"
                        disabled={locked}
                        aria-label={`Take out the record from a ${kind}`}
                        onClick={() =>
                          desk.edit(`take out up-and-downs from a ${kind}`, (document) =>
                            succeed(removeUpAndDowns(document, kind)),
                          )
                        }
                      >
                        take out
                      </button>
                    </>
                  )}
                </td>
                <td class="number">
                  {known === undefined ? (
                    '–'
                  ) : (
                    <>
                      <strong>{percent(known.mean)}</strong>
                      <small>
                        {percent(known.low)} to {percent(known.high)}
                      </small>
                    </>
                  )}
                </td>
                <td>
                  <CountField
                    label={`Tried from a ${kind}`}
                    value={tries[kind] ?? ''}
                    most={MOST}
                    disabled={locked}
                    change={(text) => setTries({ ...tries, [kind]: text })}
                  />
                </td>
                <td>
                  <CountField
                    label={`Saved from a ${kind}`}
                    value={saves[kind] ?? ''}
                    most={MOST}
                    disabled={locked}
                    change={(text) => setSaves({ ...saves, [kind]: text })}
                  />
                </td>
                <td>
                  <button
                    type="button"
                    class="small-button"
                    aria-label={`Add up-and-downs from a ${kind}`}
                    disabled={locked || tried === null || saved === null}
                    onClick={() => {
                      if (tried === null || saved === null) return;
                      const record = { kind, tries: tried, saved };
                      if (
                        !desk.edit(`add up-and-downs from a ${kind}`, (document) =>
                          addUpAndDown(document, record, today()),
                        )
                      )
                        return;
                      setTries({ ...tries, [kind]: '' });
                      setSaves({ ...saves, [kind]: '' });
                    }}
                  >
                    Add
                  </button>
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
