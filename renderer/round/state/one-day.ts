/** Weather of a round's own, from before rounds and plans shared one day, goes into that day; what differs is told. */

import type { Conditions } from '../../../core/conditions/conditions.ts';
import { DEFAULT_CONDITIONS } from '../../../core/conditions/conditions.ts';
import { compassPoint } from '../../../core/conditions/day-words.ts';
import { DAY_RANGES } from '../../../core/conditions/ranges.ts';
import type { Words } from '../../../core/words/words.ts';
import type { OwnWeather } from './kept-wishes.ts';

export interface OneDay {
  readonly conditions: Conditions;
  /** What could not be taken over as it was; empty where all was. */
  readonly notes: readonly string[];
}

/** What the plan's day says already stays; what it leaves as on an ordinary day is taken from the round. */
export function oneDay(plan: Conditions, own: OwnWeather, words: Words): OneDay {
  const usual = DEFAULT_CONDITIONS;
  const notes: string[] = [];
  let conditions = plan;
  const { temperatureC, windFromDeg, greenSpeedFt } = own;
  const { told } = { told: words.day.oneDay };
  if (temperatureC !== null && temperatureC !== plan.temperatureC) {
    if (plan.temperatureC === usual.temperatureC) conditions = { ...conditions, temperatureC };
    else notes.push(told.temperature({ own: temperatureC, plan: plan.temperatureC }));
  }
  if (greenSpeedFt !== null && greenSpeedFt !== plan.greenSpeedFt) {
    const { least, most } = DAY_RANGES.greenSpeedFt;
    const isTaken = plan.greenSpeedFt === usual.greenSpeedFt && greenSpeedFt >= least && greenSpeedFt <= most;
    if (isTaken) conditions = { ...conditions, greenSpeedFt };
    else notes.push(told.greenSpeed({ own: greenSpeedFt, plan: plan.greenSpeedFt }));
  }
  if (windFromDeg !== null && windFromDeg !== plan.wind.fromDeg) {
    const point = compassPoint(windFromDeg, words);
    // It had a direction and no speed: the knob of the dial is turned there, and a speed is asked for.
    if (plan.wind.speedMps === 0)
      conditions = { ...conditions, wind: { ...plan.wind, fromDeg: windFromDeg } };
    notes.push(plan.wind.speedMps === 0 ? told.windWithoutSpeed({ point }) : told.wind({ point }));
  }
  return { conditions, notes };
}
