/** When play begins, how long it lasts, what to eat; and the day of the course, the same as in the plan. */

import { DayControl } from '../../conditions/day-control.tsx';
import { Field } from '../../panels/field.tsx';
import { NumberField } from '../number-field.tsx';
import type { DayWishes } from '../state/round-state.ts';
import { useRound, useRoundDispatch } from '../state/use-round.ts';
import { minutesOf } from './day-plan.ts';
import { useWords } from '../../state/use-words.ts';

export function DayForm() {
  const words = useWords();
  const day = useRound((state) => state.wishes.day);
  const dispatch = useRoundDispatch();
  const wish = (change: Partial<DayWishes>): void => dispatch({ type: 'day-wished', change });
  const isTime = minutesOf(day.teeOff) !== null;
  return (
    <section class="round-form" aria-label={words.prepare.theDay}>
      <div class="form-line">
        <Field
          name={words.prepare.teeOff}
          control={(id) => (
            <input
              id={id}
              class="number-input"
              value={day.teeOff}
              aria-invalid={!isTime}
              title={isTime ? undefined : words.prepare.timeSuchAs}
              onInput={(event) => wish({ teeOff: event.currentTarget.value })}
            />
          )}
        />
        <NumberField
          name={words.prepare.minutes}
          value={day.durationMin}
          least={30}
          most={600}
          change={(durationMin) => wish({ durationMin: durationMin ?? 255 })}
        />
        <Tick name={words.prepare.rain} checked={day.hasRain} change={(hasRain) => wish({ hasRain })} />
        <Tick name={words.prepare.sun} checked={day.hasSun} change={(hasSun) => wish({ hasSun })} />
      </div>
      <div class="form-line">
        <TextField
          name={words.prepare.food}
          value={day.food}
          change={(food) => wish({ food })}
          hint={words.prepare.foodHint}
        />
        <TextField
          name={words.prepare.allergies}
          value={day.allergies}
          change={(allergies) => wish({ allergies })}
          hint={words.prepare.allergiesHint}
        />
      </div>
      <DayControl />
      <p class="faint">{words.prepare.note}</p>
    </section>
  );
}

interface TextProps {
  readonly name: string;
  readonly value: string;
  readonly hint: string;
  readonly change: (value: string) => void;
}

function TextField({ name, value, hint, change }: TextProps) {
  return (
    <Field
      name={name}
      control={(id) => (
        <input
          id={id}
          class="text-input"
          value={value}
          maxLength={300}
          placeholder={hint}
          onInput={(event) => change(event.currentTarget.value)}
        />
      )}
    />
  );
}

interface TickProps {
  readonly name: string;
  readonly checked: boolean;
  readonly change: (checked: boolean) => void;
}

function Tick({ name, checked, change }: TickProps) {
  return (
    <label class="switch">
      <input type="checkbox" checked={checked} onChange={(event) => change(event.currentTarget.checked)} />
      {name}
    </label>
  );
}
