import { describe, expect, it } from 'vitest';
import { makeLocalFrame } from '../../../core/course/local-frame.ts';
import type { Hole } from '../../../core/course/model.ts';
import type { Option, Spot } from '../../../core/plan/model.ts';
import {
  aimWords,
  noAimWords,
  shotPhrase,
  sourceWords,
  troubleList,
} from '../../../renderer/panels/shot-words.ts';
import { english } from '../../../core/words/english/english.ts';

const frame = makeLocalFrame([4, 52]);
const place = (x: number, y: number): readonly [number, number] => frame.toLonLat({ x, y });
/** Straight north, 350 m. */
const hole: Hole = {
  number: 1,
  par: 4,
  line: [place(0, 0), place(0, 350)],
  tees: [],
  positions: [],
  featureIndex: 0,
};
const pin: Spot = { x: 3, y: 352 };

function shotTo(x: number, y: number, from: Spot): Option {
  const carryM = Math.hypot(x - from.x, y - from.y);
  return { aim: { bearing: 0, spot: { x, y }, lonLat: place(x, y) }, carryM } as unknown as Option;
}

function words(x: number, y: number, from: Spot): string {
  return aimWords(shotTo(x, y, from), { hole, frame, from, pin }, 'metres', english).replaceAll(
    '\u202f',
    ' ',
  );
}

describe('an aim in words', () => {
  it('is told from the hole’s line where the shot ends far from the flag', () => {
    expect(words(-8, 200, { x: 0, y: 0 })).toBe('8 m left of the hole’s line');
    expect(words(12, 200, { x: 0, y: 0 })).toBe('12 m right of the hole’s line');
    expect(words(0.2, 200, { x: 0, y: 0 })).toBe('on the hole’s line');
  });

  it('is told from the flag for a shot at the green', () => {
    expect(words(3, 350, { x: 3, y: 200 })).toBe('at the flag');
    expect(words(-2, 345, { x: 3, y: 200 })).toBe('5 m left of the flag');
  });

  it('keeps left and right when play goes south', () => {
    const south: Hole = { ...hole, line: [place(0, 350), place(0, 0)] };
    const from = { x: 0, y: 350 };
    const said = aimWords(
      shotTo(9, 150, from),
      { hole: south, frame, from, pin: { x: 0, y: 0 } },
      'metres',
      english,
    );
    expect(said).toContain('left');
  });
});

describe('a shot in words', () => {
  const option = (change: Partial<Option>): Option =>
    ({ kind: 'shot', club: '7-iron', clubKind: 'iron', swing: 'full', ...change }) as unknown as Option;

  it('names a swing other than the full one', () => {
    expect(shotPhrase(option({}), english)).toBe('7-iron');
    expect(shotPhrase(option({ swing: 'three-quarter' }), english)).toBe('7-iron, three-quarter');
  });

  it('tells of a drop what it costs, and of a putt where it goes', () => {
    const drop = option({ kind: 'relief', relief: 'unplayable-lateral', club: 'Drop', clubKind: 'putter' });
    expect(shotPhrase(drop, english)).toBe('Drop to the side');
    expect(noAimWords(drop, english)).toContain('one penalty stroke');
    expect(noAimWords(option({ club: 'Putter', clubKind: 'putter' }), english)).toBe('at the hole');
    expect(noAimWords(option({}), english)).toBeNull();
  });
});

describe('trouble and source in words', () => {
  it('lists what matters, worst first', () => {
    const trouble = {
      outOfBounds: 0.02,
      penaltyYellow: 0,
      penaltyRed: 0.3,
      bunker: 0.004,
      trees: 0.1,
      longRough: 0,
    };
    expect(troubleList(trouble, false, english).map((entry) => entry.words)).toEqual([
      'red penalty area',
      'against trees or among them',
      'out of bounds',
    ]);
  });

  it('says whose shots a spread comes from', () => {
    expect(sourceWords({ from: 'measured', shots: 34, poorShots: 3 }, english)).toBe(
      'your own 34 measured shots, 3 of them poor strikes',
    );
    expect(sourceWords(null, english)).toBeNull();
  });
});
