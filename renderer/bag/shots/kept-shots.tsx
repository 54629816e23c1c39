/** The shots that the player has, a page at a time: what each counts as; to change, to take out, to give out as a table. */

import { useState } from 'preact/hooks';
import { removeShots } from '../../../core/player/edits/shots.ts';
import type { RecordedShot } from '../../../core/player/format.ts';
import { succeed } from '../../../core/result.ts';
import { Field } from '../../panels/field.tsx';
import { asideText, lengthText } from '../../state/measures.ts';
import { useApp } from '../../state/use-app.ts';
import { isFresh } from '../state/reduce-bag.ts';
import { useBag, useDesk } from '../state/use-bag.ts';
import { MarkedConditions } from './marked-conditions.tsx';
import { ShotForm } from './shot-form.tsx';
import { ShotsAsTable } from './shots-as-table.tsx';
import { countWords, isConverted } from '../work/bag-report.ts';
import { lieName } from '../words.ts';
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
  if (shots.length === 0) return <p class="faint">{words.shots.kept.none}</p>;
  const choose = (place: number, on: boolean): void => {
    const next = new Set(chosen);
    if (on) next.add(place);
    else next.delete(place);
    setChosen(next);
  };
  return (
    <section class="kept-shots" aria-label={words.shots.kept.name}>
      <div class="page-head">
        <h2>{words.shots.kept.inFile({ shots: words.shots.count({ count: shots.length }) })}</h2>
        <div class="bag-row">
          <Field
            name={words.shots.columns.club}
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
                <option value="">{words.shots.kept.all}</option>
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
              const many = words.shots.count({ count: picked.length });
              desk.edit(words.shots.kept.takeOutStep({ shots: many }), (document) =>
                succeed(removeShots(document, new Set(picked))),
              );
              setChosen(new Set());
              setChanging(null);
            }}
          >
            {words.shots.kept.takeOut({
              which:
                picked.length === 0 ? words.shots.kept.marked : words.shots.count({ count: picked.length }),
            })}
          </button>
          <ShotsAsTable shots={club === '' ? shots : shots.filter((shot) => shot.club === club)} />
        </div>
      </div>
      {picked.length > 0 && <MarkedConditions places={picked} />}
      <div class="table-scroll" tabIndex={0} role="region" aria-label={words.shots.kept.rows}>
        <table class="bag-table kept-table">
          <thead>
            <tr>
              <th scope="col">
                <span class="unseen">{words.shots.kept.mark}</span>
              </th>
              <th scope="col">{words.shots.columns.club}</th>
              <th scope="col">{words.shots.columns.swing}</th>
              <th scope="col">{words.shots.columns.carry}</th>
              <th scope="col">{words.shots.columns.offLine}</th>
              <th scope="col">{words.shots.columns.total}</th>
              <th scope="col">{words.shots.columns.lie}</th>
              <th scope="col">{words.shots.kept.when}</th>
              <th scope="col">{words.shots.kept.counts}</th>
              <th scope="col">
                <span class="unseen">{words.shots.kept.change}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {shown.map((place) => {
              const shot = shots[place]!;
              const offlineM =
                shot.offlineM ?? shot.carryM * Math.sin(((shot.directionDeg ?? 0) * Math.PI) / 180);
              const count = counted?.get(place);
              const name = words.shots.kept.shot({ club: shot.club, length: lengthText(shot.carryM, units) });
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
                      aria-label={words.shots.kept.markNamed({ shot: name })}
                      checked={chosen.has(place)}
                      disabled={locked}
                      onChange={(event) => choose(place, event.currentTarget.checked)}
                    />
                  </td>
                  <th scope="row">{shot.club}</th>
                  <td>{words.golf.shortSwings[shot.swing ?? 'full']}</td>
                  <td>{lengthText(shot.carryM, units)}</td>
                  <td>{asideText(offlineM, units, words)}</td>
                  <td>{shot.totalM === undefined ? '' : lengthText(shot.totalM, units)}</td>
                  <td>{shot.lie === undefined ? '' : lieName(shot.lie, words)}</td>
                  <td>{shot.at?.replace('T', ' ') ?? ''}</td>
                  <td
                    class={count === undefined ? 'faint' : isConverted(count) ? 'counted' : 'counted warning'}
                  >
                    {count === undefined
                      ? words.shots.kept.asMeasured
                      : countWords(count, shot, units, words)}
                  </td>
                  <td>
                    <button
                      type="button"
                      class="link-button"
                      disabled={locked}
                      aria-label={words.shots.kept.changeNamed({ shot: name })}
                      onClick={() => setChanging(place)}
                    >
                      {words.shots.kept.changeIt}
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
            {words.shots.kept.later}
          </button>
          <span class="faint">
            {words.shots.kept.pages({
              from: at * ON_A_PAGE + 1,
              to: at * ON_A_PAGE + shown.length,
              total: places.length,
            })}
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
            {words.shots.kept.earlier}
          </button>
        </div>
      )}
    </section>
  );
}
