/** Up-and-downs from chips, pitches and bunkers: how often tried, how often saved, and the chance with its interval. */

import { useState } from 'preact/hooks';
import { addUpAndDown, removeUpAndDowns } from '../../../core/player/edits/putting.ts';
import type { ShortGameKind } from '../../../core/player/short-game.ts';
import { succeed } from '../../../core/result.ts';
import { useBag, useDesk } from '../state/use-bag.ts';
import { CountField, readCount } from './count-field.tsx';
import { today } from './short-page.tsx';
import { useWords } from '../../state/use-words.ts';

const KINDS: readonly ShortGameKind[] = ['chip', 'pitch', 'bunker'];
const MOST = 10_000;

export function UpAndDowns() {
  const words = useWords();
  const desk = useDesk();
  const locked = useBag((state) => state.file?.access.may !== 'write');
  const chances = useBag((state) => state.file?.estimate.report?.upAndDowns ?? null);
  const [tries, setTries] = useState<Readonly<Record<string, string>>>({});
  const [saves, setSaves] = useState<Readonly<Record<string, string>>>({});
  const percent = (share: number): string => words.figures.fixed(100 * share, 0);
  return (
    <section class="bag-card" aria-label={words.shortGame.saves.name}>
      <h2>{words.shortGame.saves.title}</h2>
      <table class="bag-table test-table">
        <thead>
          <tr>
            <th scope="col">{words.shortGame.saves.fromA}</th>
            <th scope="col">{words.shortGame.saves.onRecord}</th>
            <th scope="col">{words.shortGame.saves.chance}</th>
            <th scope="col">{words.shortGame.test.tried}</th>
            <th scope="col">{words.shortGame.saves.saved}</th>
            <th scope="col">
              <span class="unseen">{words.shortGame.add}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {KINDS.map((kind) => {
            const known = chances?.find((chance) => chance.kind === kind);
            const tried = readCount(tries[kind] ?? '', MOST);
            const saved = readCount(saves[kind] ?? '', MOST);
            return (
              <tr key={kind}>
                <th scope="row">{words.shortGame.saves.kinds[kind]}</th>
                <td>
                  {known === undefined ? (
                    '–'
                  ) : (
                    <>
                      {words.shortGame.saves.of({ saved: known.saved, tries: known.tries })}{' '}
                      <button
                        type="button"
                        class="link-button"
                        disabled={locked}
                        aria-label={words.shortGame.saves.takeOut({
                          kind: words.shortGame.saves.small[kind],
                        })}
                        onClick={() =>
                          desk.edit(
                            words.shortGame.saves.takeOutStep({ kind: words.shortGame.saves.small[kind] }),
                            (document) => succeed(removeUpAndDowns(document, kind)),
                          )
                        }
                      >
                        {words.shortGame.takeOut}
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
                        {words.player.range({ low: percent(known.low), high: percent(known.high) })}
                      </small>
                    </>
                  )}
                </td>
                <td>
                  <CountField
                    label={words.shortGame.saves.triedFrom({ kind: words.shortGame.saves.small[kind] })}
                    value={tries[kind] ?? ''}
                    most={MOST}
                    disabled={locked}
                    change={(text) => setTries({ ...tries, [kind]: text })}
                  />
                </td>
                <td>
                  <CountField
                    label={words.shortGame.saves.savedFrom({ kind: words.shortGame.saves.small[kind] })}
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
                    aria-label={words.shortGame.saves.add({ kind: words.shortGame.saves.small[kind] })}
                    disabled={locked || tried === null || saved === null}
                    onClick={() => {
                      if (tried === null || saved === null) return;
                      const record = { kind, tries: tried, saved };
                      if (
                        !desk.edit(
                          words.shortGame.saves.addStep({ kind: words.shortGame.saves.small[kind] }),
                          (document) => addUpAndDown(document, record, today()),
                        )
                      )
                        return;
                      setTries({ ...tries, [kind]: '' });
                      setSaves({ ...saves, [kind]: '' });
                    }}
                  >
                    {words.shortGame.add}
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
