/** The day in one line; pressed, it opens what can be changed of it. */

import { useId, useState } from 'preact/hooks';
import { dayWords, isOrdinaryDay } from '../../core/conditions/day-words.ts';
import { currentDay } from '../state/selectors.ts';
import { useApp } from '../state/use-app.ts';
import { DayPanel } from './day-panel.tsx';
import { useWords } from '../state/use-words.ts';

export function DayControl() {
  const words = useWords();
  const id = useId();
  const [isOpen, setOpen] = useState(false);
  const day = useApp(currentDay);
  const units = useApp((state) => state.settings.units);
  return (
    <section class="day" aria-label={words.day.day}>
      <button
        type="button"
        class={isOrdinaryDay(day) ? 'day-line' : 'day-line own-day'}
        aria-expanded={isOpen}
        aria-controls={id}
        onClick={() => setOpen(!isOpen)}
      >
        <span class="day-name">{words.day.day}</span>
        <span class="day-words">{dayWords(day, units, words)}</span>
        <span class="day-open" aria-hidden="true">
          {isOpen ? words.day.close : words.day.change}
        </span>
      </button>
      <div id={id} hidden={!isOpen}>
        {isOpen && <DayPanel />}
      </div>
    </section>
  );
}
