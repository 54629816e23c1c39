/** Holes of a played round, each held against the day that the round keeps. */

import { describe, expect, it } from 'vitest';
import { type Conditions, DEFAULT_CONDITIONS } from '../../../core/conditions/conditions.ts';
import { newRound } from '../../../core/round/record.ts';
import type { HoleReview } from '../../../core/round/review-hole.ts';
import { HoleReviews } from '../../../renderer/round/effects/review-holes.ts';
import type { RoundHoles } from '../../../renderer/round/state/planned-holes.ts';
import type { PlannerPool } from '../../../renderer/workers/planner-pool.ts';

const WINDY: Conditions = { ...DEFAULT_CONDITIONS, wind: { speedMps: 7, fromDeg: 90, gustSdMps: 0 } };
const shots = [{ club: '7-iron' }];
const LOOKED = { hole: 1, par: 3, score: 4, gained: 0.5, strokes: [], parts: null } as unknown as HoleReview;

function round(day?: Conditions) {
  const played = [1, 2].map((hole) => ({ hole, par: 3, score: 4, shots }));
  return newRound({
    ...{ name: 'x', course: { name: 'c' }, player: { name: 'p' }, played },
    ...(day === undefined ? {} : { day }),
  });
}

/** Two holes that are worked out for an ordinary day. */
const HOLES = {
  ready: [1, 2].map((hole) => ({ hole, result: { key: `key ${hole}`, conditions: DEFAULT_CONDITIONS } })),
} as unknown as RoundHoles;

function desks(answer: () => HoleReview | null = () => LOOKED) {
  const asked: Conditions[] = [];
  let stops = 0;
  const desk = {
    reviewHole: (_key: string, _played: unknown, _planned: unknown, _seed: string, day: Conditions) => {
      asked.push(day);
      return Promise.resolve(answer());
    },
    cancelReviews: () => {
      stops += 1;
      return Promise.resolve();
    },
  };
  const pool = { workers: 2, deskOf: () => desk } as unknown as PlannerPool;
  return { reviews: new HoleReviews(pool), asked, stops: () => stops };
}

describe('the review of a round', () => {
  it('asks for the day of the round, for an ordinary one where none is kept, and tells how far it is', async () => {
    const { reviews, asked } = desks();
    const told: string[] = [];
    await reviews.review(round(WINDY), HOLES, true, 2, (done, total) => told.push(`${done} of ${total}`));
    expect(asked).toEqual([WINDY, WINDY]);
    expect(told).toEqual(['1 of 2', '2 of 2']);
    await reviews.review(round(), HOLES, true, 2);
    expect(asked.slice(2)).toEqual([DEFAULT_CONDITIONS, DEFAULT_CONDITIONS]);
  });

  it('asks once for what was typed, and anew under another day', async () => {
    const { reviews, asked } = desks();
    const typed = round(WINDY);
    await reviews.review(typed, HOLES, true, 2);
    await reviews.review(typed, HOLES, true, 2);
    expect(asked).toHaveLength(2);
    await reviews.review({ ...typed, day: DEFAULT_CONDITIONS }, HOLES, true, 2);
    expect(asked).toHaveLength(4);
  });

  it('once stopped compares that day by totals, not the day that the holes are worked out for, until it goes on', async () => {
    const { reviews, asked, stops } = desks();
    const typed = round(WINDY);
    reviews.stop(typed);
    expect(stops()).toBe(2);
    expect((await reviews.review(typed, HOLES, true, 2)).gained).toBeNull();
    expect(asked).toHaveLength(0);
    await reviews.review(round(), HOLES, true, 2);
    expect(asked).toHaveLength(2);
    reviews.goOn();
    expect((await reviews.review(typed, HOLES, true, 2)).holes).toEqual([LOOKED, LOOKED]);
    expect(asked).toHaveLength(4);
  });

  it('asks again what came back without an answer', async () => {
    let answer: HoleReview | null = null;
    const { reviews, asked } = desks(() => answer);
    const typed = round(WINDY);
    await reviews.review(typed, HOLES, true, 2);
    answer = LOOKED;
    expect((await reviews.review(typed, HOLES, true, 2)).holes).toEqual([LOOKED, LOOKED]);
    expect(asked).toHaveLength(4);
  });
});
