/** A number to be typed, told when it is whole and in range; empty means “whatever follows from the rest”. */

import { useEffect, useState } from 'preact/hooks';
import { Field } from '../panels/field.tsx';
import { useWords } from '../state/use-words.ts';

interface Props {
  readonly name: string;
  readonly value: number | null;
  /** Shown where nothing is typed. */
  readonly usual?: string;
  readonly least: number;
  readonly most: number;
  readonly step?: number;
  readonly change: (value: number | null) => void;
}

export function NumberField({ name, value, usual, least, most, step = 1, change }: Props) {
  const words = useWords();
  const [text, setText] = useState(value === null ? '' : String(value));
  useEffect(() => setText(value === null ? '' : String(value)), [value]);
  const number = Number(text.replace(',', '.'));
  const isEmpty = text.trim() === '';
  const isGood = isEmpty || (number >= least && number <= most && isStep(number, step));
  return (
    <Field
      name={name}
      control={(id) => (
        <input
          id={id}
          class="number-input"
          inputMode="decimal"
          value={text}
          placeholder={usual ?? ''}
          aria-invalid={!isGood}
          title={
            isGood
              ? undefined
              : words.round.fromTo({
                  least: words.figures.short(least, 2),
                  most: words.figures.short(most, 2),
                })
          }
          onInput={(event) => {
            const typed = event.currentTarget.value;
            setText(typed);
            const next = Number(typed.replace(',', '.'));
            if (typed.trim() === '') change(null);
            else if (next >= least && next <= most && isStep(next, step)) change(next);
          }}
        />
      )}
    />
  );
}

function isStep(value: number, step: number): boolean {
  return Math.abs(value / step - Math.round(value / step)) < 1e-6;
}
