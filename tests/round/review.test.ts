import { describe, expect, it } from 'vitest';
import { shotsForSpread, spreadChanges } from '../../core/round/feed-spread.ts';
import type { PlannedHoleRecord, PlayedHoleRecord, RoundDocument } from '../../core/round/format.ts';
import { LuckSource } from '../../core/round/luck.ts';
import { decideBy, playHole } from '../../core/round/play-hole.ts';
import { recordOfPlan, recordOfPlay } from '../../core/round/record-play.ts';
import { withPenalty } from '../../core/round/penalties.ts';
import { newRound, parseRound } from '../../core/round/record.ts';
import { reviewHole } from '../../core/round/review-hole.ts';
import { reviewRound, reviewWords } from '../../core/round/review.ts';
import { choiceOf } from '../../core/plan/choices.ts';
import { shortHole } from './short-hole.ts';
import { english } from '../../core/words/english/english.ts';

const { play, plan } = shortHole();
const planned = recordOfPlan(plan, 'tee', 'middle', { budget: 3 })!;
const source = new LuckSource('review', 1);
const layUp = plan.options.find(({ club }) => club === 'Wedge')!;

function played(round: number): PlayedHoleRecord {
  return recordOfPlay(playHole(play, source.hole(round)), play.prepared);
}

function roundOf(
  holes: readonly PlayedHoleRecord[],
  plans: readonly PlannedHoleRecord[],
  more = {},
): RoundDocument {
  return newRound({
    name: 'Desk',
    course: { name: 'Invented test course' },
    player: { name: 'Invented Player' },
    plan: { seed: 'test', holes: [...plans] },
    played: [...holes],
    playedAt: '2026-05-01',
    ...more,
  });
}

describe('a hole played at the desk', () => {
  it('is recorded as a file holds it', () => {
    const records = Array.from({ length: 30 }, (_, i) => ({ ...played(i), hole: i + 1 }));
    const parsed = parseRound(JSON.parse(JSON.stringify(roundOf(records, [planned]))));
    expect(parsed.ok && parsed.value.warnings).toEqual([]);
    for (const { score, shots = [] } of records)
      expect(shots.reduce((sum, { penalty = 0 }) => sum + 1 + penalty, 0)).toBe(score);
  });
});

describe('a review with places', () => {
  const reviews = Array.from({ length: 60 }, (_, i) => reviewHole(played(i), planned, play));

  it('explains every stroke: the parts add up to what was gained', () => {
    for (const { parts, gained, strokes } of reviews) {
      const sum = parts!.choice + parts!.execution + parts!.luck + parts!.putting + parts!.unexplained;
      expect(sum).toBeCloseTo(gained!, 9);
      const known = strokes.reduce((total, stroke) => total + stroke.gained, 0);
      // After a penalty the place of the drop is the next stroke's start; a drop by choice stays unexplained.
      if (strokes.every(({ penalty }) => penalty === 0)) expect(known).toBeCloseTo(gained!, 4);
    }
  });

  it('finds the plan followed, its choices free, and skill and luck even out', () => {
    const mean = (of: 'choice' | 'execution' | 'luck'): number =>
      reviews.reduce((sum, { parts }) => sum + parts![of], 0) / reviews.length;
    for (const { followedPlan } of reviews) expect(followedPlan).toBe(true);
    expect(Math.abs(mean('choice'))).toBeLessThan(0.01);
    // Swings vary by about 0.4 strokes a hole, of which neither part can be more: 3 standard errors over 60 holes.
    expect(Math.abs(mean('execution'))).toBeLessThan((3 * 0.4) / Math.sqrt(60));
    expect(Math.abs(mean('luck'))).toBeLessThan((3 * 0.4) / Math.sqrt(60));
    expect(reviews.some(({ parts }) => parts!.execution < -0.1)).toBe(true);
  });

  it('charges another club to the choice, at what it costs on average', () => {
    const decide = decideBy(play, [{ kind: 'swing', choice: choiceOf(play.prepared, layUp) }]);
    const record = recordOfPlay(playHole(play, source.hole(2), decide), play.prepared);
    const review = reviewHole(record, planned, play);
    expect(review.followedPlan).toBe(false);
    const { split, gained } = review.strokes[0]!;
    expect(split!.choice).toBeCloseTo(-layUp.lossToBest, 1);
    expect(split!.choice).toBeLessThan(-0.3);
    expect(split!.choice + split!.execution + split!.luck).toBeCloseTo(gained, 9);
  });

  it('with putts counted only, takes them together from where the ball reached the green', () => {
    const full = played(1);
    const swings = full.shots!.filter(({ club }) => club !== 'Putter');
    const short = { ...full, shots: swings };
    const a = reviewHole(full, planned, play);
    const b = reviewHole(short, planned, play);
    expect(b.parts!.putting).toBeCloseTo(a.parts!.putting, 4);
    expect(b.gained).toBe(a.gained);
  });

  it('explains a hole whole where the drop after a penalty is given, and nothing of it where it is not', () => {
    const { frame, pin } = play.prepared;
    const [lon, lat] = frame.toLonLat({ x: pin.x, y: pin.y - 5 });
    const [wetLon, wetLat] = frame.toLonLat({ x: pin.x - 20, y: pin.y });
    const wet = withPenalty(
      { club: planned.options[0]!.club, to: [wetLon, wetLat], toLie: 'penaltyRed' },
      'penaltyArea',
    );
    const hole = { hole: 1, par: 3, score: 4, putts: 2, penalties: 1 };
    const told = reviewHole(
      { ...hole, shots: [{ ...wet, drop: [lon, lat], dropLie: 'green' }] },
      planned,
      play,
    );
    expect(told.parts!.unexplained).toBeCloseTo(0, 9);
    expect(told.strokes.map(({ penalty }) => penalty)).toEqual([1, 0]);
    const untold = reviewHole({ ...hole, shots: [wet] }, planned, play);
    expect(untold.parts!.unexplained).toBeCloseTo(untold.gained!, 9);
  });

  it('puts a ball in the water down to how far it strayed and to the water that lay there', () => {
    const tee = reviews.map((review, i) => ({ review, end: played(i).shots![0]!.toLie }));
    const wet = tee.filter(({ end }) => end === 'penaltyRed');
    expect(wet.length).toBeGreaterThan(0);
    for (const { review } of wet) {
      const { split, gained } = review.strokes[0]!;
      expect(split!.execution + split!.luck + split!.choice).toBeCloseTo(gained, 9);
      expect(split!.execution + split!.luck).toBeLessThan(-0.3);
    }
  });
});

describe('a review of totals', () => {
  const bare = { hole: 1, par: 3, score: 5, teeClub: 'Wedge', putts: 2 };

  it('needs no places: the other club is known, the rest is not explained', () => {
    const review = reviewHole(bare, planned, null);
    expect(review.parts!.choice).toBeCloseTo(-layUp.lossToBest, 6);
    expect(review.parts!.unexplained).toBeCloseTo(review.gained! - review.parts!.choice, 12);
    expect(review.budget).toBe(3);
  });

  it('says how usual the round is, and that without a plan there is nothing to compare', () => {
    const review = reviewRound(roundOf([bare], [planned]));
    const chance = plan.options[0]!.scoreOdds.slice(0, 6).reduce((sum, odds) => sum + odds, 0);
    expect(review.shareAsLow).toBeCloseTo(chance, 2);
    expect(review).toMatchObject({ score: 5, par: 3, followed: { count: 0, of: 1 } });
    expect(reviewWords(review, english).join(' ')).toMatch(
      /5 against 3\.\d expected: 1\.\d strokes lost.*0 of 1 tees/,
    );
    const none = reviewRound(roundOf([bare], []));
    expect(none.gained).toBeNull();
    expect(reviewWords(none, english)[0]).toMatch(/no plan for these holes/);
  });
});

describe('shots for the spread', () => {
  const { frame } = play.prepared;
  const frameOf = () => frame;
  const records = Array.from({ length: 30 }, (_, i) => ({ ...played(i), hole: i + 1 }));
  const { player } = play.prepared;

  it('are given only with consent', () => {
    expect(shotsForSpread(roundOf(records, []), player, frameOf, english)).toEqual({
      shots: [],
      leftOut: [],
      consented: false,
    });
  });

  it('are the full swings from good lies, with carry worked back and the reasons of the others', () => {
    const { shots, leftOut } = shotsForSpread(
      roundOf(records, [], { feedsSpread: true }),
      player,
      frameOf,
      english,
    );
    const total = records.reduce((sum, { shots: all }) => sum + all!.length, 0);
    expect(shots.length + leftOut.length).toBe(total);
    expect(shots.length).toBeGreaterThanOrEqual(25);
    const iron = shots.filter(({ club }) => club === 'Iron');
    const carry = iron.reduce((sum, { carryM }) => sum + carryM, 0) / iron.length;
    // 140 m, spread 8 m and a twentieth of poor strikes at 0.6: the mean of these tee shots within 3 standard errors.
    expect(Math.abs(carry - 137.5)).toBeLessThan((3 * 15) / Math.sqrt(iron.length));
    expect(Math.max(...iron.map(({ directionDeg }) => Math.abs(directionDeg!)))).toBeLessThan(30);
    expect(iron[0]!.at).toBe('2026-05-01');
    expect(new Set(leftOut.map(({ reason }) => reason))).toContain('putts are kept apart');
    for (const { reason } of leftOut) expect(reason).not.toBe('');
  });

  it('and what they change in the bag is said', () => {
    const measured = (shots: number, carryMean: number) => ({
      ...player,
      spreads: player.spreads.map((spread) =>
        spread.club.name === 'Iron'
          ? { ...spread, carryMean, source: { from: 'measured' as const, shots, poorShots: 1 } }
          : spread,
      ),
    });
    const changes = spreadChanges(measured(30, 140), measured(42, 137), 'metres', english);
    expect(changes).toHaveLength(1);
    expect(changes[0]!.words).toMatch(/Iron full: 12 more shots \(42 in all\); carry 140\.0 → 137\.0 m/);
  });
});
