/** Bags with a club or two: whatever is in them is played, and what they lack is told. */

import { describe, expect, it } from 'vitest';
import { Lie, type LieCode } from '../../core/ground/lies.ts';
import { OPEN_FAN, sensibleChoices } from '../../core/plan/choices.ts';
import { planFromSpot } from '../../core/plan/options.ts';
import { solveNow } from '../../core/plan/solve.ts';
import { lieEffectsFor } from '../../core/player/lie-effects.ts';
import { playedAllTheSame } from '../../core/player/last-resort.ts';
import type { PlayerModel } from '../../core/player/model.ts';
import { parsePlayer } from '../../core/player/parse.ts';
import { deriveSwing } from '../../core/player/part-swing.ts';
import { STANDARD_BAG } from '../../core/player/presets.ts';
import { faultText } from '../../core/words/told.ts';
import { wordsIn } from '../../core/words/words.ts';
import { COARSE, flatGround, fourClubs, mustPrepare, ordinaryBook, statedPlayer } from './synthetic.ts';

const DRIVER = { name: 'Driver', kind: 'driver', loftDeg: 10.5, swings: ['full'] };
const IRON = { name: '7-iron', kind: 'iron', loftDeg: 33, swings: ['full'] };
const PUTTER = { name: 'Putter', kind: 'putter', loftDeg: 3, swings: ['full'] };
const BAGS = [
  ['a driver', [DRIVER]],
  ['a driver and a putter', [DRIVER, PUTTER]],
  ['a 7-iron and a putter', [IRON, PUTTER]],
] as const;

function read(bag: readonly object[]): ReturnType<typeof parsePlayer> {
  const holewright = { format: 'player', formatVersion: 1 };
  return parsePlayer({ holewright, name: 'Invented', invented: true, handicap: 18, bag });
}

function playerWith(bag: readonly object[]): PlayerModel {
  const player = read(bag);
  if (!player.ok) throw new Error(player.error[0]!.message);
  return player.value;
}

describe.each(BAGS)('a bag of %s', (_, bag) => {
  const player = playerWith(bag);

  it.each([
    [3, 133],
    [4, 360],
  ])('has a finite plan on a par %d of %d m, the same for the same seed', (par, lengthM) => {
    const plan = () => {
      const prepared = mustPrepare({ lengthM, par }, player);
      const field = solveNow(prepared, { ...COARSE, spacingsM: [40, 20] });
      return planFromSpot(prepared, field, prepared.tee, { samples: 256 });
    };
    const first = plan();
    expect(first.options.length).toBeGreaterThan(0);
    expect(first.expectedStrokes).toBeGreaterThan(2);
    expect(first.expectedStrokes).toBeLessThan(30);
    expect(first.options.some(({ id }) => id === first.recommendation.optionId)).toBe(true);
    expect(first.recommendation.reason).not.toContain('ut of bounds');
    expect(JSON.stringify(first)).not.toContain('null,"standardError');
    if (par === 3) expect(plan()).toEqual(first);
  });

  it('is played from every lie that a ball is played from', () => {
    const book = ordinaryBook(player);
    const ground = flatGround({ lengthM: 133 });
    const lies: readonly LieCode[] = [Lie.fairway, Lie.rough, Lie.longRough, Lie.bunker, Lie.woods];
    for (const lie of lies)
      for (const y of [-133, -60, -15])
        expect(sensibleChoices(book, ground, { x: 0, y }, lie, { x: 0, y: 0 }, OPEN_FAN)).not.toEqual([]);
  });

  it('is told that it has nothing for short shots, in both languages', () => {
    const notes = player.warnings.filter(({ code }) => code === 'no-short-shot');
    expect(notes).toHaveLength(1);
    const club = bag[0].name;
    expect(notes[0]!.where).toBe('bag');
    expect(faultText(notes[0]!, wordsIn('en')).message).toMatch(
      new RegExp(`^The shortest shot in the bag is ${club}, which carries \\d+ m .* Allow part swings`),
    );
    expect(faultText(notes[0]!, wordsIn('de')).message).toMatch(
      new RegExp(`^Der kürzeste Schlag im Bag ist ${club} mit \\d+ m .* Teilschwünge .* zulassen`),
    );
  });
});

describe('where no swing is sensible', () => {
  const [wood, iron] = fourClubs();
  const player = statedPlayer({ spreads: [wood!, iron!, deriveSwing(iron!, 'half')] });
  const from = (y: number) =>
    sensibleChoices(
      ordinaryBook(player),
      flatGround({ lengthM: 200 }),
      { x: 0, y },
      Lie.fairway,
      { x: 0, y: 0 },
      OPEN_FAN,
    );

  it('the shortest is kept, and it alone', () => {
    const choices = from(-20);
    expect(new Set(choices.map(({ spreadIndex }) => player.spreads[spreadIndex]!.swing))).toEqual(
      new Set(['half']),
    );
    expect(choices.every(({ carryM }) => carryM === player.spreads.at(-1)!.carryMean)).toBe(true);
  });

  it('nothing is added where one is', () => {
    const clubs = new Set(from(-140).map(({ spreadIndex }) => player.spreads[spreadIndex]!.swing));
    expect(clubs).toEqual(new Set(['full', 'half']));
  });

  it('a part swing that is too short is played in full before a hole is flown past', () => {
    const [, , wedge, part] = fourClubs();
    const shortPart = { ...part!, carryMean: 40 };
    const bag = statedPlayer({ spreads: [wedge!, shortPart] });
    const choices = sensibleChoices(
      ordinaryBook(bag),
      flatGround({ lengthM: 200 }),
      { x: 0, y: -62 },
      Lie.fairway,
      { x: 0, y: 0 },
      OPEN_FAN,
    );
    const carries = new Set(choices.map(({ carryM }) => carryM));
    expect(carries).toEqual(new Set([90, 40]));
  });
});

describe('a bag with a club for every lie', () => {
  it('is played as before, and has no note', () => {
    const effects = lieEffectsFor(18);
    expect(playedAllTheSame(STANDARD_BAG, effects)).toBe(effects);
    const wedge = { name: 'SW', kind: 'wedge', loftDeg: 56, swings: ['full', 'part'] };
    const { warnings } = playerWith([DRIVER, IRON, wedge, PUTTER]);
    expect(warnings.map(({ code }) => code)).not.toContain('no-short-shot');
  });

  it('a club that others stand in for stays in the bag', () => {
    const effects = playedAllTheSame([DRIVER, IRON] as never, lieEffectsFor(18));
    expect(effects(DRIVER as never, 'full', 'rough').playable).toBe(false);
    const alone = playedAllTheSame([DRIVER] as never, lieEffectsFor(18));
    expect(alone(DRIVER as never, 'full', 'rough').playable).toBe(true);
    expect(alone(DRIVER as never, 'full', 'rough').poorShareAdded).toBeGreaterThan(0.25);
    expect(alone(DRIVER as never, 'full', 'green').playable).toBe(false);
  });
});

it('a bag of nothing but a putter is refused with what to do', () => {
  const player = read([PUTTER]);
  expect(player.ok ? null : player.error.map(({ code, message }) => ({ code, message }))).toEqual([
    { code: 'no-clubs', message: 'The bag holds no club but a putter. Add the clubs that are played.' },
  ]);
});
