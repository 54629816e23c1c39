/** A field for a number that takes a decimal comma as well as a point, and says at once what it does not take. */

import { useId, useState } from 'preact/hooks';
import { MINUS, NARROW_GAP } from '../../core/words/figures.ts';
import { useWords } from '../state/use-words.ts';

interface Props {
  readonly name: string;
  /** Null shows an empty field. */
  readonly value: number | null;
  readonly unit?: string;
  readonly least: number;
  readonly most: number;
  readonly decimals: number;
  /** Only where an empty field has a meaning. */
  readonly clear?: () => void;
  readonly take: (value: number) => void;
  readonly disabled?: boolean;
  readonly placeholder?: string;
}

export function NumberField(props: Props) {
  const words = useWords();
  const { name, value, unit, least, most, decimals, clear, take, disabled, placeholder } = props;
  const id = useId();
  const [isRefused, setRefused] = useState(false);
  // What is being typed stays when something else draws the field anew meanwhile.
  const [typing, setTyping] = useState<string | null>(null);
  const shown = value === null ? '' : words.figures.short(value, decimals);
  const fault = isRefused ? words.player.numberFault({ name, least, most }) : null;
  return (
    <span class="bag-field">
      <label for={id}>{name}</label>
      <span class="bag-number">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          value={typing ?? shown}
          placeholder={placeholder ?? ''}
          disabled={disabled ?? false}
          aria-invalid={fault !== null}
          aria-describedby={fault === null ? undefined : `${id}-fault`}
          onInput={(event) => setTyping(event.currentTarget.value)}
          onBlur={() => setTyping(null)}
          onChange={(event) => {
            setTyping(null);
            const text = event.currentTarget.value.trim();
            if (text === '' && clear !== undefined) {
              setRefused(false);
              clear();
              return;
            }
            const typed = readTyped(text);
            if (typed === null || typed < least || typed > most) {
              setRefused(true);
              return;
            }
            setRefused(false);
            take(typed);
          }}
        />
        {unit !== undefined && <span class="bag-unit">{unit}</span>}
      </span>
      {fault !== null && (
        <span class="field-fault" id={`${id}-fault`} role="alert">
          {fault}
        </span>
      )}
    </span>
  );
}

/** `12,5` and `12.5` alike; null where it is no number. */
export function readTyped(text: string): number | null {
  // Thousands stand apart by that gap where the program writes them.
  const plain = text.trim().replaceAll(NARROW_GAP, '').replace(',', '.').replace(MINUS, '-');
  if (!/^[+-]?(?:\d+\.?\d*|\.\d+)$/u.test(plain)) return null;
  return Number(plain);
}
