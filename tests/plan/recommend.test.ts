/** Which of the equal options is recommended, and the sentence that says why. */

import { describe, expect, it } from 'vitest';
import type { Option } from '../../core/plan/model.ts';
import { nameOf, noShotFault, provisionalWords, reasonWords, recommend } from '../../core/plan/recommend.ts';
import { english } from '../../core/words/english/english.ts';
import { wordsIn } from '../../core/words/words.ts';

const recommendOf = (options: readonly Option[]) => recommend({ options, lie: 'tee' });

interface Sketch {
  readonly club: string;
  readonly mean: number;
  readonly loss?: number;
  readonly equal?: boolean;
  readonly double: number;
  readonly swing?: Option['swing'];
  readonly relief?: Option['relief'];
}

function option(sketch: Sketch): Option {
  return {
    id: `${sketch.club}/${sketch.swing ?? 'full'}`,
    kind: sketch.relief === undefined ? 'shot' : 'relief',
    ...(sketch.relief === undefined ? {} : { relief: sketch.relief }),
    club: sketch.club,
    clubKind: 'iron',
    swing: sketch.swing ?? 'full',
    aim: { bearing: 0, spot: { x: 0, y: 0 }, lonLat: [0, 0] },
    carryM: 100,
    meanStrokes: sketch.mean,
    standardError: 0.01,
    lossToBest: sketch.loss ?? 0,
    lossStandardError: 0.012,
    tooCloseToCall: sketch.equal ?? false,
    scoreOdds: [0, 1],
    parOdds: { parOrBetter: 1 - sketch.double, bogey: 0, doubleOrWorse: sketch.double },
    trouble: { outOfBounds: 0, penaltyYellow: 0, penaltyRed: 0, bunker: 0, trees: 0, longRough: 0 },
    leave: { p10M: 1, medianM: 2, p90M: 3 },
    endShare: {} as Option['endShare'],
    spreadSource: null,
  };
}

const driver = option({ club: 'Driver', mean: 4.2, double: 0.2 });

describe('a second ball', () => {
  it('is advised where a shot often ends out of bounds, and not for a drop', () => {
    const out = (share: number): Option => ({
      ...driver,
      trouble: { ...driver.trouble, outOfBounds: share },
    });
    const rules = { strokeAndDistanceAlternative: false };
    expect(provisionalWords(out(0.01), rules, english)).toBeNull();
    expect(provisionalWords(out(0.08), { strokeAndDistanceAlternative: true }, english)).toMatch(/may not/);
    expect(provisionalWords(out(0.08), rules, english)).toMatch(/^8 % of these shots .* provisional .*18\.3/);
    expect(provisionalWords({ ...out(0.08), kind: 'relief' }, rules, english)).toBeNull();
  });
});

describe('the recommendation', () => {
  it('does not gamble where a double bogey is as good as sure', () => {
    const sure = option({ club: 'Iron', mean: 6.1, double: 1 });
    const gamble = option({ club: 'Hybrid', mean: 6.13, loss: 0.03, equal: true, double: 0.97 });
    expect(recommendOf([sure, gamble]).optionId).toBe(sure.id);
  });

  it('is the best where nothing is equal to it, with what it saves', () => {
    const iron = option({ club: 'Iron', mean: 4.45, loss: 0.25, double: 0.02 });
    const { optionId, reason } = recommendOf([driver, iron]);
    expect(optionId).toBe(driver.id);
    expect(reason).toContain('0.25 strokes');
    expect(reason).toContain('0.01');
    expect(reason).toContain('the Iron');
  });

  it('is the safest of those too close to call, with both chances', () => {
    const wood = option({ club: 'Wood', mean: 4.21, loss: 0.01, equal: true, double: 0.17 });
    const iron = option({ club: 'Iron', mean: 4.23, loss: 0.03, equal: true, double: 0.11 });
    const wedge = option({ club: 'Wedge', mean: 4.5, loss: 0.3, double: 0.01 });
    const { optionId, reason } = recommendOf([driver, wood, iron, wedge]);
    expect(optionId).toBe(iron.id);
    expect(reason).toContain('0.03 strokes');
    expect(reason).toContain('the Driver');
    expect(reason).toContain('20 %');
    expect(reason).toContain('11 %');
  });

  it('does not give strokes away for less than one double bogey in a hundred', () => {
    const close = option({ club: 'Wood', mean: 4.22, loss: 0.02, equal: true, double: 0.195 });
    const { optionId, reason } = recommendOf([driver, close]);
    expect(optionId).toBe(driver.id);
    expect(reason).toContain('the Wood');
    expect(reason).toContain('too close to call');
  });

  it('is relief where that is the safest equal', () => {
    const drop = option({
      club: 'Drop',
      mean: 4.24,
      loss: 0.04,
      equal: true,
      double: 0.05,
      relief: 'unplayable-lateral',
    });
    expect(recommendOf([driver, drop]).optionId).toBe(drop.id);
  });

  it('needs no comparison for an only option, and says what to do where there is none', () => {
    expect(recommendOf([driver])).toEqual({ optionId: driver.id, reason: 'The only option from here.' });
    const out = recommend({ options: [], lie: 'outOfBounds' });
    expect(out.optionId).toBe('');
    expect(out.reason).toMatch(/play again .* one penalty stroke/);
    for (const lie of ['tee', 'rough'] as const) {
      const none = recommend({ options: [], lie });
      expect(none.optionId).toBe('');
      expect(none.reason).toMatch(/^No club of the bag .* allow part swings/);
      expect(noShotFault({ options: [], lie, hole: 4 })).toMatchObject({ code: 'no-shot', where: 'hole 4' });
      expect(reasonWords({ options: [], lie }, wordsIn('de'))).toMatch(
        /^Kein Schläger im Bag .* Teilschwünge/,
      );
    }
  });

  it('is one sentence', () => {
    const equal = option({ club: 'Wood', mean: 4.21, loss: 0.01, equal: true, double: 0.1 });
    for (const options of [[driver], [driver, equal], []]) {
      const { reason } = recommendOf(options);
      expect(reason.endsWith('.')).toBe(true);
      expect(reason).not.toMatch(/[.!?] [A-Z]/);
    }
  });
});

describe('the name of an option in a sentence', () => {
  it('is the club, its swing where not full, or the drop', () => {
    expect(nameOf(driver, english)).toBe('the Driver');
    expect(nameOf(option({ club: 'Iron', mean: 4, double: 0, swing: 'punch' }), english)).toBe(
      'the Iron punch',
    );
    expect(nameOf(option({ club: 'Drop', mean: 4, double: 0, relief: 'penalty-lateral' }), english)).toBe(
      'a lateral drop',
    );
    expect(
      nameOf(option({ club: 'Drop', mean: 4, double: 0, relief: 'unplayable-back-on-line' }), english),
    ).toBe('a drop back on the line');
  });
});
