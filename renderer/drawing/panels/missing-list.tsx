/** What is missing, line by line, each with an offer to mend it. */

import { wordsInUnits } from '../../../core/words/lengths.ts';
import { tell } from '../../../core/words/told.ts';
import { useState } from 'preact/hooks';
import { applyFix } from '../../../core/course/completeness.ts';
import type { Missing } from '../../../core/course/missing.ts';
import { setProperties } from '../../../core/course/edits/set-properties.ts';
import { useApp } from '../../state/use-app.ts';
import { mayEdit } from '../drawing-state.ts';
import { asTyped, typedValue } from '../fields.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { useWords } from '../../state/use-words.ts';

export function MissingList({
  missing,
  hole,
  empty,
}: {
  readonly missing: readonly Missing[];
  readonly hole: number | null;
  readonly empty: string;
}) {
  const words = useWords();
  const units = useApp((state) => state.settings.units);
  if (missing.length === 0) return <p class="faint">{empty}</p>;
  return (
    <ul class="plain-list missing-list">
      {missing.map((one, i) => (
        <li key={`${one.code}-${hole ?? 'course'}-${i}`}>
          <p>
            {one.weight === 'stops' && <strong class="stops">{words.drawing.cannotBePlanned} </strong>}
            {tell(one.message, wordsInUnits(words, units))}
          </p>
          <Mending missing={one} />
        </li>
      ))}
    </ul>
  );
}

function Mending({ missing: { fix, features } }: { readonly missing: Missing }) {
  const words = useWords();
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  const units = useApp((state) => state.settings.units);
  const [text, setText] = useState('');
  if (fix === null) return null;
  switch (fix.how) {
    case 'write':
    case 'add':
      return (
        <button
          type="button"
          class="small-button"
          disabled={!editable}
          onClick={() => desk.attempt((document) => applyFix(document, fix))}
        >
          {tell(fix.label, wordsInUnits(words, units))}
        </button>
      );
    case 'draw':
      return (
        <button
          type="button"
          class="small-button"
          disabled={!editable}
          onClick={() => {
            if (fix.hole !== undefined) desk.store.dispatch({ type: 'hole-chosen', hole: fix.hole });
            desk.store.dispatch({ type: 'mode-set', mode: { do: 'draw', kind: fix.kind } });
            desk.stage.current?.element.focus({ preventScroll: true });
          }}
        >
          {tell(fix.label, wordsInUnits(words, units))}
        </button>
      );
    case 'ask': {
      const write = (value: string): void => {
        if (value.trim() === '') return;
        const key = fix.property === 'card_length_m' ? 'card_length_m' : 'handicap';
        desk.attempt((document) =>
          asTyped(
            setProperties(document, features, {
              [key]: typedValue({ key, words: '', numeric: true }, value, units),
            }),
            key === 'handicap' ? { key } : { key, unit: units === 'yards' ? 'yd' : 'm' },
            value,
            units,
          ),
        );
      };
      return (
        <form
          class="act-line"
          onSubmit={(event) => {
            event.preventDefault();
            write(text);
          }}
        >
          <label>
            {tell(fix.label, wordsInUnits(words, units))}{' '}
            {fix.choices === undefined ? (
              <input
                type="text"
                inputMode="decimal"
                class="short-input"
                value={text}
                onInput={(event) => setText(event.currentTarget.value)}
              />
            ) : (
              <select value="" disabled={!editable} onChange={(event) => write(event.currentTarget.value)}>
                <option value="">–</option>
                {fix.choices.map((choice) => (
                  <option key={choice} value={choice}>
                    {choice}
                  </option>
                ))}
              </select>
            )}
          </label>
          {fix.choices === undefined && (
            <button type="submit" class="small-button" disabled={!editable}>
              {words.drawing.write}
            </button>
          )}
        </form>
      );
    }
  }
}
