/** When play begins, how long it lasts, what to eat; and the day of the course, the same as in the plan. */

import { DayControl } from '../../conditions/day-control.tsx';
import { Field } from '../../panels/field.tsx';
import { NumberField } from '../number-field.tsx';
import type { DayWishes } from '../state/round-state.ts';
import { useRound, useRoundDispatch } from '../state/use-round.ts';
import { minutesOf } from './day-plan.ts';

export function DayForm() {
  const day = useRound((state) => state.wishes.day);
  const dispatch = useRoundDispatch();
  const wish = (change: Partial<DayWishes>): void => dispatch({ type: 'day-wished', change });
  const isTime = minutesOf(day.teeOff) !== null;
  return (
    <section class="round-form" aria-label="The day">
      <div class="form-line">
        <Field
          name="Tee-off"
          control={(id) => (
            <input
              id={id}
              class="number-input"
              value={day.teeOff}
              aria-invalid={!isTime}
              title={isTime ? undefined : 'A time such as 08:40'}
              onInput={(event) => wish({ teeOff: event.currentTarget.value })}
            />
          )}
        />
        <NumberField
          name="Minutes for the round"
          value={day.durationMin}
          least={30}
          most={600}
          change={(durationMin) => wish({ durationMin: durationMin ?? 255 })}
        />
        <Tick name="rain likely" checked={day.hasRain} change={(hasRain) => wish({ hasRain })} />
        <Tick name="strong sun" checked={day.hasSun} change={(hasSun) => wish({ hasSun })} />
      </div>
      <div class="form-line">
        <TextField
          name="Your own food, with commas"
          value={day.food}
          change={(food) => wish({ food })}
          hint="suggestions stand in while this is empty"
        />
        <TextField
          name="Allergies, with commas"
          value={day.allergies}
          change={(allergies) => wish({ allergies })}
          hint="e.g. nut, gluten"
        />
      </div>
      <DayControl />
      <p class="faint">
        Small portions at even distances, common practice; no medical advice. With an illness or a diet ask
        somebody who knows it.
      </p>
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
