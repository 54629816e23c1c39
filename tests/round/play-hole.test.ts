import { describe, expect, it } from 'vitest';
import { Lie } from '../../core/ground/lies.ts';
import { makePuttingTable } from '../../core/putting/putting.ts';
import { holeLedger, ledgerOfPlays, LEDGER_KINDS, roundLedger } from '../../core/round/ledger.ts';
import { LuckSource, MIDDLING_LUCK } from '../../core/round/luck.ts';
import { decideBy, type PlayedHole, playHole, SHOT_CLASSES } from '../../core/round/play-hole.ts';
import { puttOnce } from '../../core/round/putt-once.ts';
import { costOfChoice, replayHole } from '../../core/round/try-out.ts';
import { shortHole } from './short-hole.ts';

const { play, plan } = shortHole();
const PLAYS = 6000;
const source = new LuckSource('plays', 1);
const played = Array.from({ length: PLAYS }, (_, round) => playHole(play, source.hole(round)));

function meanAndError(values: readonly number[]): { mean: number; standardError: number } {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, standardError: Math.sqrt(squares / (values.length - 1) / values.length) };
}

describe('a hole played by its own plan', () => {
  it('takes on average what the field says', () => {
    const { mean, standardError } = meanAndError(played.map((hole) => hole.score));
    // Playing follows the nearest node, and the field of this test is coarse: 0.03 strokes for both.
    expect(Math.abs(mean - plan.expectedStrokes)).toBeLessThan(3 * standardError + 0.03);
  });

  it('its strokes add up to the score, and gains to the expectation less the score', () => {
    for (const hole of played.slice(0, 500)) {
      const strokes = hole.shots.reduce(
        (sum, shot) => sum + shot.penalty + (shot.kind === 'drop' ? 0 : 1),
        0,
      );
      const gained = hole.shots.reduce((sum, shot) => sum + shot.gained, 0);
      expect(strokes).toBe(hole.score);
      expect(gained).toBeCloseTo(plan.expectedStrokes - hole.score, 9);
      expect(hole.holedOut).toBe(true);
    }
  });

  it('each shot starts where the one before left the ball', () => {
    for (const { shots } of played.slice(0, 500)) {
      shots.forEach((shot, i) => {
        const before = shots[i - 1];
        expect(shot.from).toEqual(before === undefined ? play.prepared.tee : before.next?.spot);
      });
    }
  });

  it('balls lost in water and out of bounds cost their penalty', () => {
    const shots = played.flatMap((hole) => hole.shots);
    const wet = shots.filter((shot) => shot.endLie === 'penaltyRed');
    expect(wet.length).toBeGreaterThan(100);
    for (const shot of wet) expect(shot.penalty).toBe(1);
    for (const shot of shots.filter(({ endLie }) => endLie === 'outOfBounds')) {
      expect(shot.penalty).toBe(1);
      expect(shot.next?.spot).toEqual(shot.from);
      expect(shot.gained).toBeCloseTo(-2, 9);
    }
    for (const shot of shots.filter(({ penalty }) => penalty === 0))
      expect(shot.endLie).not.toMatch(/penalty|Bounds/);
  });

  it('the same seed plays the same round again, another round differs', () => {
    const again = playHole(play, new LuckSource('plays', 1).hole(7));
    expect(again).toEqual(played[7]);
    expect(new Set(played.slice(0, 50).map((hole) => hole.shots[0]!.end.x)).size).toBe(50);
  });
});

describe('trying another choice', () => {
  const wedge = plan.options.find((option) => option.club === 'Wedge')!;
  const spreadIndex = play.prepared.player.spreads.findIndex(({ club }) => club.name === 'Wedge');
  const layUp = { spreadIndex, bearing: wedge.aim.bearing, carryM: wedge.carryM };

  it('costs what the plan says that it costs', () => {
    const cost = costOfChoice(play, play.start(), layUp, 1024)!;
    expect(cost.cost).toBeCloseTo(wedge.lossToBest, 1);
    expect(cost.tooCloseToCall).toBe(false);
    expect(costOfChoice(play, play.start(), play.tee.choice, 256)!.cost).toBe(0);
  });

  it('replays the same luck: the same choice gives the same hole, another one the same deviates', () => {
    const hole = played[3]!;
    const luck = source.hole(3);
    expect(replayHole(play, hole, luck, 1, hole.shots[1]!.decision)).toEqual(hole);
    const other = replayHole(play, hole, luck, 0, { kind: 'swing', choice: layUp });
    expect(other.shots[0]!.club).toBe('Wedge');
    expect(other.shots[0]!.wasPoor).toBe(hole.shots[0]!.wasPoor);
    const kept = replayHole(play, other, luck, 1, other.shots[1]!.decision);
    expect(kept.shots[0]).toEqual(other.shots[0]);
  });

  it('with middling luck a ball ends near where it is aimed', () => {
    const { shots } = playHole(play, () => MIDDLING_LUCK, decideBy(play, []));
    const [tee] = shots;
    expect(Math.hypot(tee!.landing.x - tee!.aim.x, tee!.landing.y - tee!.aim.y)).toBeLessThan(0.5);
    expect(shots.length).toBeLessThanOrEqual(4);
  });

  it('a club that is not played from there is a broken promise', () => {
    const ball = { ...play.start(), lie: Lie.green, onTee: false };
    const swing = { kind: 'swing', choice: { ...layUp, spreadIndex: 99 } } as const;
    expect(() => play.play(ball, swing, MIDDLING_LUCK)).toThrow(/not played from green/);
  });
});

describe('putts drawn one by one', () => {
  it('drop as often, and take as many, as the putting table says', () => {
    const skill = { directionSd: 0.026, distanceSdShare: 0.1 };
    const table = makePuttingTable(skill);
    const putts = new LuckSource('putts', 1);
    const pin = { x: 3, y: 4 };
    for (const distance of [1.5, 6, 15]) {
      const counts: number[] = [];
      let holed = 0;
      for (let round = 0; round < 6000; round++) {
        let spot: { x: number; y: number } | null = { x: pin.x, y: pin.y - distance };
        let count = 0;
        while (spot !== null && count < 10) {
          const luck = putts.luckOf(round, count++);
          spot = puttOnce(spot, pin, skill, luck.distanceZ, luck.directionZ);
        }
        if (count === 1) holed++;
        counts.push(count);
      }
      const chance = table.chanceToHole(distance);
      expect(Math.abs(holed / 6000 - chance)).toBeLessThan(3.5 * Math.sqrt((chance * (1 - chance)) / 6000));
      const { mean, standardError } = meanAndError(counts);
      expect(Math.abs(mean - table.expectedPutts(distance))).toBeLessThan(3.5 * standardError + 0.002);
    }
  });

  it('a miss passes on the side of its error', () => {
    const skill = { directionSd: 0.03, distanceSdShare: 0.1 };
    const left = puttOnce({ x: 0, y: 0 }, { x: 0, y: 10 }, skill, 0, -2)!;
    expect(left.x).toBeLessThan(0);
    expect(left.y).toBeGreaterThan(10);
    expect(puttOnce({ x: 0, y: 0 }, { x: 0, y: 10 }, skill, 0, 0)).toBeNull();
  });
});

describe('the ledger', () => {
  const expectation = {
    fromTee: plan.expectedStrokes + 0.2,
    from: (spot: { x: number; y: number }, lie: number) =>
      play.field.valueAt(spot.x, spot.y, lie) + (lie === Lie.green ? 0 : 0.2),
  };
  const ledger = ledgerOfPlays(1, 3, played, expectation);

  it('of strokes adds up to the score; a par 3 has no tee shots of that kind', () => {
    const total = LEDGER_KINDS.reduce((sum, kind) => sum + ledger.strokes[kind].mean, 0);
    expect(total).toBeCloseTo(ledger.score.mean, 9);
    expect(ledger.strokes.tee.mean).toBe(0);
    expect(ledger.strokes.approach.mean).toBeGreaterThanOrEqual(1);
  });

  it('of gains adds up to the expectation less the score', () => {
    const own = LEDGER_KINDS.reduce((sum, kind) => sum + ledger.gainedOnPlan[kind].mean, 0);
    expect(own).toBeCloseTo(plan.expectedStrokes - ledger.score.mean, 9);
    const peer = SHOT_CLASSES.reduce((sum, kind) => sum + ledger.gainedOnPeer![kind].mean, 0);
    expect(peer).toBeCloseTo(expectation.fromTee - ledger.score.mean, 9);
  });

  it('gives a peer who is 0.2 worse until on the green that loss to the shots that reach it', () => {
    // The putts' expectation is the same for both: nothing is gained on the green beyond the own luck.
    expect(ledger.gainedOnPeer!.putt.mean).toBeCloseTo(ledger.gainedOnPlan.putt.mean, 9);
    const gains = ledger.gainedOnPeer!.approach.mean + ledger.gainedOnPeer!.short.mean;
    const own = ['approach', 'short', 'penalty'] as const;
    expect(gains - own.reduce((sum, kind) => sum + ledger.gainedOnPlan[kind].mean, 0)).toBeCloseTo(0.2, 9);
  });

  it('each kind of stroke gains nothing on the own plan on average, but for the coarse field', () => {
    for (const kind of ['short', 'putt'] as const) {
      const { mean, standardError } = ledger.gainedOnPlan[kind];
      expect(Math.abs(mean)).toBeLessThan(3.5 * standardError + 0.01);
    }
  });

  it('of a round is the sum of its holes; shares of the spread sum to 1', () => {
    const round = roundLedger([ledger, ledger]);
    expect(round.score.mean).toBeCloseTo(2 * ledger.score.mean, 9);
    expect(round.score.sd).toBeCloseTo(Math.SQRT2 * ledger.score.sd, 9);
    expect(round.lines.reduce((sum, line) => sum + line.shareOfSpread, 0)).toBeCloseTo(1, 9);
    const uncorrelated = LEDGER_KINDS.reduce((sum, kind) => sum + ledger.gainedOnPlan[kind].sd ** 2, 0);
    // Gains of consecutive strokes are uncorrelated but for a penalty and the stroke that it belongs to.
    expect(uncorrelated / ledger.score.sd ** 2).toBeGreaterThan(0.85);
    expect(uncorrelated / ledger.score.sd ** 2).toBeLessThan(1.15);
  });

  it('made by seed is the ledger of those plays', () => {
    const made: PlayedHole[] = played.slice(0, 300);
    expect(holeLedger(play, 300, 'plays', expectation)).toEqual(ledgerOfPlays(1, 3, made, expectation));
  });
});
