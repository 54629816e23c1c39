/** The day of each course as text in the settings, and back. What cannot be read is an ordinary day. */

import { type Conditions, DEFAULT_CONDITIONS, parseConditions } from '../../core/conditions/conditions.ts';
import { isOrdinaryDay } from '../../core/conditions/day-words.ts';
import type { KeptDay } from '../../electron/contract/host.ts';
import { LONGEST_DAY, MOST_KEPT_DAYS } from '../../electron/contract/wire.ts';

/** `course`: its token. */
export function dayFor(course: string, kept: readonly KeptDay[]): Conditions {
  const text = kept.find((day) => day.course === course)?.conditions;
  if (text === undefined) return DEFAULT_CONDITIONS;
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return DEFAULT_CONDITIONS;
  }
  const parsed = parseConditions(data);
  return parsed.ok ? parsed.value : DEFAULT_CONDITIONS;
}

/** The kept days with this one first; an ordinary day needs no keeping, and the oldest go when there are too many. */
export function keepingDay(
  course: string,
  conditions: Conditions,
  kept: readonly KeptDay[],
): readonly KeptDay[] {
  const others = kept.filter((day) => day.course !== course);
  // A wind whose speed is not known yet has its direction all the same.
  if (isOrdinaryDay(conditions) && conditions.wind.fromDeg === DEFAULT_CONDITIONS.wind.fromDeg) return others;
  const text = JSON.stringify(conditions);
  // More digits than any field or dial gives: kept for the window's life only.
  if (text.length > LONGEST_DAY) return others;
  return [{ course, conditions: text }, ...others].slice(0, MOST_KEPT_DAYS);
}
