/** The shots that the player has, a page at a time: what each counts as; to change, to take out, to give out as a table. */

import { useState } from 'preact/hooks';
import { removeShots } from '../../../core/player/edits/shots.ts';
import type { RecordedShot } from '../../../core/player/format.ts';
import { succeed } from '../../../core/result.ts';
import { Field } from '../../panels/field.tsx';
import { asideText, countText, lengthText } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { isFresh } from '../state/reduce-bag.ts';
import { useBag, useDesk } from '../state/use-bag.ts';
import { MarkedConditions } from './marked-conditions.tsx';
import { ShotForm } from './shot-form.tsx';
import { ShotsAsTable } from './shots-as-table.tsx';
import { useWords } from '../../state/use-words.ts';

const ON_A_PAGE = 50;
const NO_SHOTS: readonly RecordedShot[] = [];

export function KeptShots() {
  const words = useWords();
  const desk = useDesk();
  const units = useApp((state) => state.settings.units);
  const shots = useBag((state) => state.file?.history.present.shots ?? NO_SHOTS);
  const locked = useBag((state) => state.file?.access.may !== 'write');
  const [club, setClub] = useState('');
  const [page, setPage] = useState(0);
  const [chosen, setChosen] = useState<ReadonlySet<number>>(new Set());
  const [changing, setChanging] = useState<number | null>(null);
  // Of another content it would speak of other shots.
  const counted = useBag(({ file }) =>
    file !== null && isFresh(file) ? (file.estimate.report?.counted ?? null) : null,
  );
  const counts = new Map<string, number>();
  for (const shot of shots) counts.set(shot.club, (counts.get(shot.club) ?? 0) + 1);
  // The latest first: what was just added is what one wants to see.
  const places = shots.flatMap((shot, i) => (club === '' || shot.club === club ? [i] : [])).reverse();
  const pages = Math.max(1, Math.ceil(places.length / ON_A_PAGE));
  const at = Math.min(page, pages - 1);
  const shown = places.slice(at * ON_A_PAGE, (at + 1) * ON_A_PAGE);
  const picked = [...chosen].filter((place) => place < shots.length);
  if (shots.length === 0) return <p class="faint">No shots yet. Choose a table, or type some in above.</p>;
  const choose = (place: number, on: boolean): void => {
    const next = new Set(chosen);
    if (on) next.add(place);
    else next.delete(place);
    setChosen(next);
  };
  return (
    <section class="kept-shots" aria-label="Shots of the player">
      <div class="page-head">
        <h2>{countText(shots.length, 'shot', 'shots')} in the file</h2>
        <div class="bag-row">
          <Field
            name="Club"
            control={(id) => (
              <select
                id={id}
                value={club}
                onChange={(event) => {
                  setClub(event.currentTarget.value);
                  setPage(0);
                  setChosen(new Set());
                  setChanging(null);
                }}
              >
                <option value="">all</option>
                {[...counts].map(([name, count]) => (
                  <option key={name} value={name}>
                    {name} ({count})
                  </option>
                ))}
              </select>
            )}
          />
          <button
            type="button"
            class="small-button"
            disabled={locked || picked.length === 0}
            onClick={() => {
              const words = countText(picked.length, 'shot', 'shots');
              desk.edit(`take out ${words}`, (document) => succeed(removeShots(document, new Set(picked))));
              setChosen(new Set());
              setChanging(null);
            }}
          >
            Take out {picked.length === 0 ? 'the marked ones' : countText(picked.length, 'shot', 'shots')}
          </button>
          <ShotsAsTable shots={club === '' ? shots : shots.filter((shot) => shot.club === club)} />
        </div>
      </div>
      {picked.length > 0 && <MarkedConditions places={picked} />}
      <div class="table-scroll" tabIndex={0} role="region" aria-label="Shots, one a row">
        <table class="bag-table kept-table">
          <thead>
            <tr>
              <th scope="col">
                <span class="unseen">Marked</span>
              </th>
              <th scope="col">Club</th>
              <th scope="col">Swing</th>
              <th scope="col">Carry</th>
              <th scope="col">Off line</th>
              <th scope="col">Total</th>
              <th scope="col">Lie</th>
              <th scope="col">When</th>
              <th scope="col">Counts</th>
              <th scope="col">
                <span class="unseen">Change</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {shown.map((place) => {
              const shot = shots[place]!;
              const offlineM =
                shot.offlineM ?? shot.carryM * Math.sin(((shot.directionDeg ?? 0) * Math.PI) / 180);
              const count = counted?.get(place);
              const name = `the ${shot.club} of ${lengthText(shot.carryM, units)}`;
              if (place === changing)
                return (
                  <tr key={place} class="shot-changing">
                    <td colSpan={10}>
                      <ShotForm place={place} shot={shot} close={() => setChanging(null)} />
                    </td>
                  </tr>
                );
              return (
                <tr key={place}>
                  <td>
                    <input
                      type="checkbox"
                      aria-label={`Mark ${name}`}
                      checked={chosen.has(place)}
                      disabled={locked}
                      onChange={(event) => choose(place, event.currentTarget.checked)}
                    />
                  </td>
                  <th scope="row">{shot.club}</th>
                  <td>{shot.swing ?? 'full'}</td>
                  <td>{lengthText(shot.carryM, units)}</td>
                  <td>{asideText(offlineM, units, words)}</td>
                  <td>{shot.totalM === undefined ? '' : lengthText(shot.totalM, units)}</td>
                  <td>{shot.lie ?? ''}</td>
                  <td>{shot.at?.replace('T', ' ') ?? ''}</td>
                  <td
                    class={
                      count?.as === 'converted'
                        ? 'counted'
                        : count === undefined
                          ? 'faint'
                          : 'counted warning'
                    }
                  >
                    {count === undefined ? 'as measured' : count.words[units]}
                  </td>
                  <td>
                    <button
                      type="button"
                      class="link-button"
                      disabled={locked}
                      aria-label={`Change ${name}`}
                      onClick={() => setChanging(place)}
                    >
                      change
                    </button>
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      {pages > 1 && (
        <div class="save-row">
          <button
            type="button"
            class="small-button"
            disabled={at === 0}
            onClick={() => {
              setPage(at - 1);
              setChanging(null);
            }}
          >
            Later ones
          </button>
          <span class="faint">
            {at * ON_A_PAGE + 1} to {at * ON_A_PAGE + shown.length} of {places.length}
          </span>
          <button
            type="button"
            class="small-button"
            disabled={at >= pages - 1}
            onClick={() => {
              setPage(at + 1);
              setChanging(null);
            }}
          >
            Earlier ones
          </button>
        </div>
      )}
    </section>
  );
}
