/** The doubt about a player's shots, carried to the options: against arithmetic on a plain field. */

import { describe, expect, it } from 'vitest';
import type { PlayerModel } from '../../core/player/model.ts';
import { numbersOf, type SpreadPosterior } from '../../core/player/posterior.ts';
import { planFromSpot } from '../../core/plan/options.ts';
import { inverseNormal } from '../../core/random/normal.ts';
import { runShare } from '../../core/flight/shot-law.ts';
import { LawBook } from '../../core/plan/choices.ts';
import { Lie } from '../../core/ground/lies.ts';
import { box, givenField, mustPrepare, stated, statedPlayer, ordinaryBook } from './synthetic.ts';

const LENGTH_M = 400;
/** Every metre nearer saves a hundredth of a stroke. */
const STROKES_PER_M = 0.01;
const BAGS = 60;
const fairway = [box('fairway', -70, -LENGTH_M - 60, 70, 60)];
const known = stated({ club: 'Known', carryM: 142, carrySd: 0, directionSd: 0 });
const doubtful = stated({ club: 'Doubtful', carryM: 140, carrySd: 0, directionSd: 0 });
/** As many carries as bags are drawn, so that each is drawn once: a normal law with a standard deviation of 5 m. */
const carries = Array.from({ length: BAGS }, (_, i) => 140 + 5 * inverseNormal((i + 0.5) / BAGS));

function entryOf(spread: typeof known, means: readonly number[]): SpreadPosterior {
  const rows = means.map((carryMean) => numbersOf({ ...spread, carryMean }));
  const { club, swing } = spread;
  return {
    club,
    swing,
    shots: 5,
    effectiveShots: 5,
    poorShots: 0,
    strays: 0,
    draws: Float64Array.from(rows.flat()),
  };
}

function player(doubt: readonly number[]): PlayerModel {
  const base = statedPlayer({ spreads: [known, doubtful] });
  const entries = base.spreads.map((spread) =>
    spread.club.name === 'Known'
      ? entryOf(
          known,
          doubt.map(() => 142),
        )
      : entryOf(doubtful, doubt),
  );
  return { ...base, posterior: () => ({ entries, drawCount: doubt.length }) };
}

function planned(model: PlayerModel, withDoubt = true) {
  const prepared = mustPrepare({ lengthM: LENGTH_M, patches: fairway }, model);
  const field = givenField(prepared.ground, ({ x, y }) => 2 + STROKES_PER_M * Math.hypot(x, y));
  return planFromSpot(prepared, field, prepared.tee, { samples: 256, withDoubt }).options;
}

describe('the doubt about a player’s shots', () => {
  const options = planned(player(carries));
  const of = (club: string) => options.find((option) => option.club === club)!.doubt!;

  it('is nothing for a club that is known', () => {
    const option = options.find(({ club }) => club === 'Known')!;
    expect(of('Known').lowStrokes).toBeCloseTo(option.meanStrokes, 6);
    expect(of('Known').highStrokes).toBeCloseTo(option.meanStrokes, 6);
  });

  it('is that of the carry, run included, where strokes are a matter of distance', () => {
    const option = options.find(({ club }) => club === 'Doubtful')!;
    const perMetre =
      STROKES_PER_M *
      (1 + runShare(ordinaryBook(statedPlayer({ spreads: [doubtful] })).lawOf(0, Lie.tee, 0)!));
    // The 5 % and 95 % quantiles of the sixty carries lie 2.95 steps from either end.
    const at = (step: number): number => carries[step]! + 0.05 * (carries[step - 1]! - carries[step]!);
    const longest = 2 * 140 - at(3);
    expect(of('Doubtful').lowStrokes).toBeCloseTo(option.meanStrokes - perMetre * (longest - 140), 3);
    expect(of('Doubtful').highStrokes).toBeCloseTo(option.meanStrokes + perMetre * (longest - 140), 3);
  });

  it('makes a club the cheapest as often as it is the longer', () => {
    // Its lower flight runs a little more or less for its length: what counts is where the ball ends.
    const { player: both, flights } = ordinaryBook(statedPlayer({ spreads: [known, doubtful] }));
    const share = (club: string): number => {
      const index = both.spreads.findIndex((spread) => spread.club.name === club);
      return runShare(new LawBook(both, flights).lawOf(index, Lie.tee, 0)!);
    };
    const longer =
      carries.filter((carry) => carry * (1 + share('Doubtful')) > 142 * (1 + share('Known'))).length / BAGS;
    expect(longer).toBeGreaterThan(0.2);
    expect(of('Doubtful').cheapestShare).toBeCloseTo(longer, 9);
    expect(of('Known').cheapestShare).toBeCloseTo(1 - longer, 9);
  });

  it('is wider where less is known, and left out where it is not asked for or there is no posterior', () => {
    const wider = planned(player(carries.map((carry) => 140 + 2 * (carry - 140)))).find(
      ({ club }) => club === 'Doubtful',
    )!.doubt!;
    const width = ({ lowStrokes, highStrokes }: typeof wider): number => highStrokes - lowStrokes;
    expect(width(wider)).toBeCloseTo(2 * width(of('Doubtful')), 3);
    expect(planned(player(carries), false).some((option) => 'doubt' in option)).toBe(false);
    const plain = statedPlayer({ spreads: [known, doubtful] });
    expect(planned(plain).some((option) => 'doubt' in option)).toBe(false);
  });
});
