/** What can be said of a day: wind, air, ground, season, and the local rules that the committee has made. */

import { M_PER_FOOT } from '../../core/words/lengths.ts';
import { DEFAULT_CONDITIONS, type Firmness, type Season } from '../../core/conditions/conditions.ts';
import {
  compassPoint,
  isOrdinaryDay,
  MPS_PER_MPH,
  speedText,
  temperatureText,
  wholeTurn,
} from '../../core/conditions/day-words.ts';
import { DAY_RANGES } from '../../core/conditions/ranges.ts';
import { windOnHole } from '../../core/card/wind-words.ts';
import { Choice } from '../panels/choice.tsx';
import type { Units } from '../state/measures.ts';
import { useApp } from '../state/use-app.ts';
import { DayNumber, type Unit } from './day-number.tsx';
import { shownHoleBearing } from './hole-bearing.ts';
import { LocalRules } from './local-rules.tsx';
import { type DayTools, useDay } from './use-day.ts';
import { WindDial } from './wind-dial.tsx';
import { useWords } from '../state/use-words.ts';

const FIRMNESS: readonly Firmness[] = ['soft', 'medium', 'firm'];
const SEASON: readonly Season[] = ['leaf', 'bare'];

const SPEED: Readonly<Record<Units, Unit>> = {
  metres: { words: 'm/s', size: 1 },
  yards: { words: 'mph', size: MPS_PER_MPH },
};
const HEIGHT: Readonly<Record<Units, Unit>> = {
  metres: { words: 'm', size: 1 },
  yards: { words: 'ft', size: M_PER_FOOT },
};
const WARMTH: Readonly<Record<Units, Unit>> = {
  metres: { words: '°C', size: 1 },
  yards: { words: '°F', size: 1 / 1.8, start: 32 },
};
const DEGREES: Unit = { words: '°', size: 1 };
const FEET: Unit = { words: 'ft', size: 1 };

export function DayPanel() {
  const words = useWords();
  const tools = useDay();
  const { day, take } = tools;
  const units = useApp((state) => state.settings.units);
  return (
    <div class="day-panel">
      <Wind tools={tools} units={units} />
      <div class="day-fields">
        <DayNumber
          name={words.day.temperature}
          unit={WARMTH[units]}
          value={day.temperatureC}
          range={DAY_RANGES.temperatureC}
          step={1}
          decimals={0}
          take={(temperatureC, mark) =>
            take(
              { temperatureC },
              words.day.steps.temperature({ value: temperatureText(temperatureC, units) }),
              mark,
            )
          }
        />
        <DayNumber
          name={words.day.height}
          unit={HEIGHT[units]}
          value={day.altitudeM}
          range={DAY_RANGES.altitudeM}
          step={units === 'yards' ? 100 : 50}
          decimals={0}
          take={(altitudeM, mark) => take({ altitudeM }, words.day.steps.height, mark)}
        />
        <DayNumber
          name={words.day.greenSpeed}
          unit={FEET}
          value={day.greenSpeedFt}
          range={DAY_RANGES.greenSpeedFt}
          step={0.5}
          decimals={1}
          take={(greenSpeedFt, mark) =>
            take(
              { greenSpeedFt },
              words.day.steps.greenSpeed({ feet: words.figures.short(greenSpeedFt, 1) }),
              mark,
            )
          }
        />
      </div>
      <div class="day-choices">
        <span class="day-choice">
          <span class="field-name">{words.day.ground}</span>
          <Choice
            label={words.day.firmnessOfGround}
            name="firmness"
            value={day.firmness}
            entries={FIRMNESS.map((each) => [each, words.day.firmness[each]])}
            choose={(firmness) => take({ firmness }, words.day.parts.ground[firmness])}
          />
        </span>
        <span class="day-choice">
          <span class="field-name">{words.day.trees}</span>
          <Choice
            label={words.day.trees}
            name="season"
            value={day.season}
            entries={SEASON.map((each) => [each, words.day.seasons[each]])}
            choose={(season) =>
              take({ season }, season === 'bare' ? words.day.steps.bare : words.day.steps.leaf)
            }
          />
        </span>
      </div>
      <LocalRules tools={tools} />
      <p class="day-foot">
        <button
          type="button"
          class="small-button"
          disabled={isOrdinaryDay(day)}
          onClick={() => take(ordinary(), words.day.steps.ordinary)}
        >
          {words.day.backToOrdinary}
        </button>
        <span class="faint">{words.day.forEveryHole}</span>
      </p>
    </div>
  );
}

/** Also without the members that an ordinary day does not have. */
function ordinary(): Parameters<DayTools['take']>[0] {
  return { pressureHpa: undefined, ...DEFAULT_CONDITIONS };
}

function Wind({ tools, units }: { readonly tools: DayTools; readonly units: Units }) {
  const words = useWords();
  const { day, take, tryOut, drop } = tools;
  const { wind } = day;
  const holeDeg = useApp(shownHoleBearing);
  const isStill = wind.speedMps === 0 && wind.gustSdMps === 0;
  const turn = (fromDeg: number, mark?: string): void =>
    take(
      { wind: { ...wind, fromDeg } },
      words.day.steps.windFrom({ point: compassPoint(fromDeg, words) }),
      mark,
    );
  return (
    <div class="day-wind">
      <WindDial
        fromDeg={wind.fromDeg}
        isStill={isStill}
        holeDeg={holeDeg}
        tryOut={(fromDeg) => tryOut({ wind: { ...wind, fromDeg } })}
        take={turn}
        drop={drop}
      />
      <div class="day-fields">
        <DayNumber
          name={words.day.wind}
          unit={SPEED[units]}
          value={wind.speedMps}
          range={DAY_RANGES.windMps}
          step={1}
          decimals={1}
          take={(speedMps, mark) =>
            take(
              { wind: { ...wind, speedMps } },
              words.day.steps.wind({ speed: speedText(speedMps, units, words) }),
              mark,
            )
          }
        />
        <DayNumber
          name={words.day.comesFrom}
          unit={DEGREES}
          value={wholeTurn(wind.fromDeg)}
          range={{ least: 0, most: 360 }}
          step={5}
          decimals={0}
          take={(fromDeg, mark) => turn(wholeTurn(fromDeg), mark)}
        />
        <DayNumber
          name={words.day.gusts}
          unit={SPEED[units]}
          value={wind.gustSdMps}
          range={DAY_RANGES.gustSdMps}
          step={0.5}
          decimals={1}
          take={(gustSdMps, mark) =>
            take(
              { wind: { ...wind, gustSdMps } },
              words.day.steps.gusts({ speed: speedText(gustSdMps, units, words) }),
              mark,
            )
          }
        />
        <p class="faint day-note">
          {wind.speedMps === 0
            ? words.day.giveASpeed
            : words.day.windNote({
                from: compassPoint(wind.fromDeg, words),
                here:
                  holeDeg === null
                    ? ''
                    : words.day.onThisHole({
                        wind: windOnHole((holeDeg * Math.PI) / 180, wind.fromDeg, words),
                      }),
              })}
        </p>
      </div>
    </div>
  );
}
