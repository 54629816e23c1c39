/** Which day the numbers of a room are for, where it is no ordinary one: so that a wind set long ago is not forgotten. */

import { dayWords, isOrdinaryDay } from '../../core/conditions/day-words.ts';
import { currentDay } from '../state/selectors.ts';
import { useApp } from '../state/use-app.ts';
import { useWords } from '../state/use-words.ts';

export function PlannedDay() {
  const words = useWords();
  const day = useApp(currentDay);
  const units = useApp((state) => state.settings.units);
  if (isOrdinaryDay(day)) return null;
  return <p class="planned-day">{words.day.plannedFor({ day: dayWords(day, units, words) })}</p>;
}
