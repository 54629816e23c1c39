/** The day in one line; pressed, it opens what can be changed of it. */

import { useId, useState } from 'preact/hooks';
import { dayWords, isOrdinaryDay } from '../../core/conditions/day-words.ts';
import { currentDay } from '../state/selectors.ts';
import { useApp } from '../state/use-app.ts';
import { DayPanel } from './day-panel.tsx';

export function DayControl() {
  const id = useId();
  const [isOpen, setOpen] = useState(false);
  const day = useApp(currentDay);
  const units = useApp((state) => state.settings.units);
  return (
    <section class="day" aria-label="Day">
      <button
        type="button"
        class={isOrdinaryDay(day) ? 'day-line' : 'day-line own-day'}
        aria-expanded={isOpen}
        aria-controls={id}
        onClick={() => setOpen(!isOpen)}
      >
        <span class="day-name">Day</span>
        <span class="day-words">{dayWords(day, units)}</span>
        <span class="day-open" aria-hidden="true">
          {isOpen ? 'Close' : 'Change'}
        </span>
      </button>
      <div id={id} hidden={!isOpen}>
        {isOpen && <DayPanel />}
      </div>
    </section>
  );
}
