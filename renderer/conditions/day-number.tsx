/** A number of the day in the unit of the person; what is typed stays until it is taken, and says what it does not take. */

import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { useWords } from '../state/use-words.ts';

export interface Unit {
  readonly words: string;
  /** Of the inner unit per one of this. */
  readonly size: number;
  /** What is added after dividing by `size`; Fahrenheit alone does not begin at zero. */
  readonly start?: number;
}

interface Props {
  readonly name: string;
  readonly unit: Unit;
  /** In the inner unit, as its range. */
  readonly value: number;
  readonly range: { readonly least: number; readonly most: number };
  readonly step: number;
  readonly decimals: number;
  /** One focus gives one mark: what is changed meanwhile is one step. */
  readonly take: (value: number, mark: string) => void;
}

let focusCount = 0;

export function DayNumber({ name, unit, value, range, step, decimals, take }: Props) {
  const words = useWords();
  const id = useId();
  const mark = useRef('');
  const [typed, setTyped] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const toShown = (inner: number): number => inner / unit.size + (unit.start ?? 0);
  const shown = Number(toShown(value).toFixed(decimals));
  // Rounded inwards, so that the limits told are taken.
  const grain = 10 ** decimals;
  const least = Math.ceil(toShown(range.least) * grain - 1e-9) / grain;
  const most = Math.floor(toShown(range.most) * grain + 1e-9) / grain;
  useEffect(() => {
    setTyped(null);
    setFault(null);
  }, [value, unit.words]);
  return (
    <span class="day-number">
      <label for={id}>{name}</label>
      <span class="day-number-entry">
        <input
          id={id}
          type="number"
          min={least}
          max={most}
          step={step}
          value={typed ?? String(shown)}
          aria-invalid={fault !== null}
          aria-describedby={fault === null ? undefined : `${id}-fault`}
          onFocus={() => {
            focusCount += 1;
            mark.current = `${name} ${focusCount}`;
          }}
          onInput={(event) => setTyped(event.currentTarget.value)}
          onChange={(event) => {
            const number = event.currentTarget.valueAsNumber;
            if (!(number >= least && number <= most)) {
              setFault(
                words.day.numberFromTo({
                  least: words.figures.short(least, decimals),
                  most: words.figures.short(most, decimals),
                }),
              );
              return;
            }
            setFault(null);
            if (number === shown) setTyped(null);
            else take((number - (unit.start ?? 0)) * unit.size, mark.current);
          }}
        />
        <span class="day-unit">{unit.words}</span>
      </span>
      {fault !== null && (
        <span class="field-fault" id={`${id}-fault`} role="alert">
          {fault}
        </span>
      )}
    </span>
  );
}
