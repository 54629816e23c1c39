import { describe, expect, it } from 'vitest';
import { type Conditions, DEFAULT_CONDITIONS, parseConditions } from '../../core/conditions/conditions.ts';
import {
  compassPoint,
  dayKey,
  dayParts,
  dayWords,
  isOrdinaryDay,
  speedText,
  temperatureText,
} from '../../core/conditions/day-words.ts';
import { english } from '../../core/words/english/english.ts';

const day = (change: Partial<Conditions>): Conditions => ({ ...DEFAULT_CONDITIONS, ...change });
const west = day({ wind: { speedMps: 5, fromDeg: 270, gustSdMps: 0 } });

describe('a day in words', () => {
  it('tells only what is not as on an ordinary day', () => {
    expect(dayParts(DEFAULT_CONDITIONS, 'metres', english)).toEqual([]);
    expect(dayWords(DEFAULT_CONDITIONS, 'metres', english)).toMatch(/^An ordinary day: still air, 15 °C/);
    const cold = { ...west, temperatureC: 12, firmness: 'soft' } as const;
    expect(dayWords(cold, 'metres', english)).toBe('Wind 5 m/s from the west, 12 °C, soft ground');
    expect(dayWords(cold, 'yards', english)).toBe('Wind 11 mph from the west, 54 °F (12 °C), soft ground');
  });

  it('leaves nothing out that changes the day', () => {
    const changes: readonly Partial<Conditions>[] = [
      { wind: { speedMps: 1, fromDeg: 0, gustSdMps: 0 } },
      { wind: { speedMps: 0, fromDeg: 0, gustSdMps: 2 } },
      { temperatureC: 30 },
      { altitudeM: 1600 },
      { pressureHpa: 985 },
      { humidity: 0.9 },
      { firmness: 'firm' },
      { greenSpeedFt: 12 },
      { season: 'bare' },
      { rules: { strokeAndDistanceAlternative: true, preferredLies: false } },
      { rules: { strokeAndDistanceAlternative: false, preferredLies: true } },
    ];
    for (const change of changes) {
      expect(isOrdinaryDay(day(change))).toBe(false);
      expect(dayParts(day(change), 'metres', english)).toHaveLength(1);
    }
    expect(new Set(changes.map((change) => dayKey(day(change)))).size).toBe(changes.length);
  });

  it('is the same day whatever the direction of no wind, and a whole turn further', () => {
    expect(isOrdinaryDay(day({ wind: { speedMps: 0, fromDeg: 90, gustSdMps: 0 } }))).toBe(true);
    const turned = day({ wind: { speedMps: 5, fromDeg: -90, gustSdMps: 0 } });
    expect(dayKey(turned)).toBe(dayKey(west));
    expect(dayWords(turned, 'metres', english)).toBe(dayWords(west, 'metres', english));
  });

  it('comes through text and back with the same key', () => {
    const parsed = parseConditions(JSON.parse(JSON.stringify(west)));
    expect(parsed.ok && dayKey(parsed.value)).toBe(dayKey(west));
  });
});

// 1 mph = 0.44704 m/s exactly, 0 °C = 32 °F, 100 °C = 212 °F (definitions: NIST Special Publication 811, appendix B).
describe('units of the weather', () => {
  it('are miles per hour and Fahrenheit beside yards', () => {
    expect(speedText(10 * 0.44704, 'yards', english)).toBe('10 mph');
    expect(speedText(2.5, 'metres', english)).toBe('2.5 m/s');
    expect(temperatureText(0, 'yards')).toBe('32 °F (0 °C)');
    expect(temperatureText(-40, 'yards')).toBe('-40 °F (-40 °C)');
  });

  it('name the compass by its nearest sixteenth', () => {
    expect([0, 11, 12, 45, 247.5, 349, -90, 359.9].map((degrees) => compassPoint(degrees, english))).toEqual([
      'north',
      'north',
      'north-north-east',
      'north-east',
      'west-south-west',
      'north',
      'west',
      'north',
    ]);
  });
});
