/** The log of greens played: from how far the first putt was, how many it took, where the first one stopped. */

import { useId, useRef, useState } from 'preact/hooks';
import { addGreen, removeGreen } from '../../../core/player/edits/putting.ts';
import { succeed } from '../../../core/result.ts';
import { useApp } from '../../state/use-app.ts';
import { readTyped } from '../number-field.tsx';
import { useBag, useDesk } from '../state/use-bag.ts';
import { today } from './short-page.tsx';
import { useWords } from '../../state/use-words.ts';

const FOOT_M = 0.3048;
const SHOWN = 8;

export function PuttingLog() {
  const words = useWords();
  const desk = useDesk();
  const units = useApp((state) => state.settings.units);
  const locked = useBag((state) => state.file?.access.may !== 'write');
  const taken = useBag((state) => state.file?.history.present.puttingRecord?.taken ?? NO_GREENS);
  const [distance, setDistance] = useState('');
  const [putts, setPutts] = useState('2');
  const [past, setPast] = useState('');
  const [fault, setFault] = useState<string | null>(null);
  const first = useRef<HTMLInputElement>(null);
  const ids = [useId(), useId(), useId()] as const;
  const [unit, word] = units === 'yards' ? [FOOT_M, 'ft'] : [1, 'm'];
  const shown = taken.slice(-SHOWN);
  const add = (): void => {
    const far = readTyped(distance);
    const stopped = past.trim() === '' ? null : readTyped(past);
    const distanceM = far === null ? 0 : Math.round(far * unit * 1e4) / 1e4;
    if (distanceM < 0.1 || distanceM > 60) {
      setFault(words.shortGame.log.distanceFault({ most: Math.round(60 / unit), unit: word }));
      return;
    }
    if (past.trim() !== '' && (stopped === null || Math.abs(stopped * unit) > 60)) {
      setFault(words.shortGame.log.pastFault);
      return;
    }
    setFault(null);
    const green = {
      distanceM,
      putts: Number(putts),
      pastM: stopped === null ? null : Math.round(stopped * unit * 1e4) / 1e4,
    };
    if (desk.edit(words.shortGame.log.addStep, (document) => succeed(addGreen(document, green, today())))) {
      setDistance('');
      setPast('');
      first.current?.focus();
    }
  };
  return (
    <section class="bag-card" aria-label={words.shortGame.log.name}>
      <h2>{words.shortGame.log.title}</h2>
      <form
        class="bag-row"
        onSubmit={(event) => {
          event.preventDefault();
          add();
        }}
      >
        <span class="bag-field">
          <label for={ids[0]}>{words.shortGame.log.firstFrom({ unit: word })}</label>
          <input
            id={ids[0]}
            ref={first}
            class="count-field"
            type="text"
            inputMode="decimal"
            value={distance}
            disabled={locked}
            onInput={(event) => setDistance(event.currentTarget.value)}
          />
        </span>
        <span class="bag-field">
          <label for={ids[1]}>{words.shortGame.log.putts}</label>
          <select
            id={ids[1]}
            value={putts}
            disabled={locked}
            onChange={(event) => setPutts(event.currentTarget.value)}
          >
            {['1', '2', '3', '4', '5'].map((count) => (
              <option key={count}>{count}</option>
            ))}
          </select>
        </span>
        <span class="bag-field">
          <label for={ids[2]}>{words.shortGame.log.stopped({ unit: word })}</label>
          <input
            id={ids[2]}
            class="count-field"
            type="text"
            inputMode="decimal"
            value={past}
            placeholder={words.shortGame.log.optional}
            disabled={locked || putts === '1'}
            onInput={(event) => setPast(event.currentTarget.value)}
          />
        </span>
        <button type="submit" class="small-button" disabled={locked}>
          {words.shortGame.add}
        </button>
      </form>
      {fault !== null && (
        <p class="field-fault" role="alert">
          {fault}
        </p>
      )}
      <p class="faint small-print">
        {words.shortGame.log.count({ greens: words.shortGame.log.greens({ count: taken.length }) })}
      </p>
      <ul class="bag-records" aria-label={words.shortGame.log.last}>
        {shown.map((green, i) => {
          const place = taken.length - shown.length + i;
          const said = `${words.figures.fixed(green.distanceM / unit, units === 'yards' ? 0 : 1)} ${word}, ${words.shortGame.puttCount({ count: green.putts })}`;
          return (
            <li key={place}>
              {said}
              {green.at !== undefined && <small class="faint"> {green.at}</small>}
              <button
                type="button"
                class="link-button"
                disabled={locked}
                aria-label={words.shortGame.log.takeOut({ green: said })}
                onClick={() =>
                  desk.edit(words.shortGame.log.takeOutStep, (document) =>
                    succeed(removeGreen(document, place)),
                  )
                }
              >
                {words.shortGame.takeOut}
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

const NO_GREENS: readonly {
  readonly distanceM: number;
  readonly putts: number;
  readonly at?: string | undefined;
}[] = [];
