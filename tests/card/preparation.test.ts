import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clock } from '../../core/card/clock.ts';
import { greenSpeedToday, levelRoll } from '../../core/card/green-speed.ts';
import { type PreparationWishes, preparationSheet } from '../../core/card/preparation.ts';
import { windOnHole } from '../../core/card/wind-words.ts';
import { english } from '../../core/words/english/english.ts';

const wishes: PreparationWishes = {
  teeOffMin: 8 * 60 + 40,
  durationMin: 255,
  holes: 18,
  units: 'yards',
  clubs: ['Driver', '7-iron', 'Putter'],
  penaltyBalls: 1.4,
  food: { items: [], allergies: [] },
};

describe('the preparation sheet', () => {
  it('keeps its times by the tee-off', () => {
    const sheet = preparationSheet(wishes, english);
    expect(sheet.teeOff).toBe('08:40');
    expect(sheet.finish).toBe('12:55');
    expect(sheet.timetable.at(-1)).toEqual({ at: 520, clock: '08:40', words: 'Tee off.' });
    const times = sheet.timetable.map(({ at }) => at);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(sheet.timetable.find(({ words }) => words.startsWith('Gentle warm-up'))!.clock).toBe('08:10');
    expect(clock(-20)).toBe('23:40');
    expect(clock(24 * 60 + 5)).toBe('00:05');
  });

  it('spreads food evenly over the round, whatever its length', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 420 }),
        fc.constantFrom(9, 18),
        fc.integer({ min: 0, max: 1439 }),
        (durationMin, holes, teeOffMin) => {
          const { food } = preparationSheet({ ...wishes, durationMin, holes, teeOffMin }, english);
          const at = food.stops.map(({ hole }) => hole);
          expect(new Set(at).size).toBe(at.length);
          expect(at).toEqual([...at].sort((a, b) => a - b));
          for (const hole of at) {
            expect(hole).toBeGreaterThan(1);
            expect(hole).toBeLessThanOrEqual(holes);
          }
          // An hour between stops at most, and one hole's rounding.
          const perHole = durationMin / holes;
          at.forEach((hole, i) =>
            expect((hole - (at[i - 1] ?? 1)) * perHole).toBeLessThan(56 + 1.01 * perHole),
          );
          if (durationMin >= 120) expect(at.length).toBeGreaterThan(0);
          expect(food.reminders.map(({ hole }) => hole)).toEqual(at);
        },
      ),
    );
  });

  it('takes the own list, and says where it names an allergy', () => {
    const { food } = preparationSheet(
      {
        ...wishes,
        food: { items: ['peanut bar', 'melon'], allergies: ['Peanut', ' '] },
      },
      english,
    );
    expect(new Set(food.stops.map((stop) => stop.food))).toEqual(new Set(['peanut bar', 'melon']));
    expect(food.warnings[0]).toBe('“peanut bar” is on your list, and “peanut” is among your allergies.');
    expect(food.warnings[1]).toMatch(/Check every item yourself/);
    expect(food.allergies).toEqual(['peanut']);
  });

  it('suggests nothing at all with an allergy, whatever it is called', () => {
    const foods = (allergies: string[]) =>
      preparationSheet({ ...wishes, durationMin: 400, food: { items: [], allergies } }, english).food;
    expect(foods([]).stops.map(({ food }) => food)).toContain('a handful of nuts');
    expect(foods([' ']).warnings).toEqual([]);
    for (const allergy of ['nuts', 'almonds', 'Nuss', 'gluten', 'kiwi']) {
      const { stops, warnings } = foods([allergy]);
      expect(new Set(stops.map(({ food }) => food))).toEqual(new Set(['food of your own']));
      expect(warnings).toEqual([english.prepare.checkEveryItem]);
    }
  });

  it('counts clubs against the Rule, and packs for the weather', () => {
    expect(preparationSheet(wishes, english).bagWarning).toBeNull();
    const many = Array.from({ length: 16 }, (_, i) => `club ${i}`);
    expect(preparationSheet({ ...wishes, clubs: many }, english).bagWarning).toMatch(
      /16 clubs.*allows 14.*Take 2 out/,
    );
    const dry = preparationSheet(wishes, english).bag.join('; ');
    const wet = preparationSheet({ ...wishes, rain: true }, english).bag.join('; ');
    expect(dry).not.toMatch(/umbrella/);
    expect(wet).toMatch(/umbrella/);
    expect(preparationSheet({ ...wishes, temperatureC: 31 }, english).food.waterL).toBeGreaterThan(
      preparationSheet(wishes, english).food.waterL,
    );
  });

  it('warms up for ten minutes and gives its cautions', () => {
    const sheet = preparationSheet(wishes, english);
    expect(sheet.warmUp.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(10);
    const cautions = sheet.cautions.join(' ');
    for (const word of ['hurts', 'physiotherapist', 'Thunder', 'out of reach', 'shade', 'Local rules'])
      expect(cautions).toContain(word);
    const routine = sheet.greenRoutine;
    expect(routine[0]).toMatch(/fringe/);
    expect(routine[2]).toMatch(/Lag putts/);
    expect(routine.at(-1)).toMatch(/Short ones last/);
  });

  it('refuses times that are none', () => {
    expect(() => preparationSheet({ ...wishes, teeOffMin: 1500 }, english)).toThrow(/minute 1500/);
    expect(() => preparationSheet({ ...wishes, durationMin: 5 }, english)).toThrow(/5 minutes/);
  });
});

describe('green speed from a roll-out', () => {
  it('takes the slope out: 14 up and 9 down are 10 ft 11 in (Brede, example seen)', () => {
    expect(levelRoll(14, 9)).toBeCloseTo(10 + 11 / 12, 1);
    expect(levelRoll(10, 10)).toBe(10);
  });

  it('is in proportion to the known stroke', () => {
    expect(greenSpeedToday(6, 6, { rollM: 5, greenSpeedFt: 9 })).toBeCloseTo(10.8, 12);
    expect(() => greenSpeedToday(0, 6, { rollM: 5, greenSpeedFt: 9 })).toThrow(/rolls: 0/);
  });
});

describe('wind on a hole', () => {
  it.each([
    [0, 0, 'into'],
    [0, 180, 'behind'],
    [0, 270, 'across, from the left'],
    [90, 45, 'into, from the left'],
    [180, 300, 'behind, from the right'],
    [350, 5, 'into'],
  ])('towards %i°, wind from %i°: %s', (bearing, from, words) => {
    expect(windOnHole((bearing * Math.PI) / 180, from, english)).toBe(words);
  });
});
