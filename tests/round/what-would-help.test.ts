import { describe, expect, it } from 'vitest';
import { meanOf, type ScoreDistribution, tilted } from '../../core/round/distribution.ts';
import { IMPROVEMENTS, improvementOf, type Setup, whatWouldHelp } from '../../core/round/what-would-help.ts';
import { box, flatCourse, fourClubs, statedPlayer } from '../plan/synthetic.ts';
import { eighteenHoles } from './scores.ts';

const { holes } = eighteenHoles();
const setup: Setup = {
  player: statedPlayer({ spreads: fourClubs() }),
  course: flatCourse({
    lengthM: 300,
    patches: [
      box('penalty-red', -50, -100, -20, 0),
      box('out-of-bounds', 40, -300, 80, 50),
      box('bunker', 12, -10, 20, 10),
    ],
  }),
};

/** A stand-in for solving: each improvement shifts every hole by a known rate. */
const RATE: Readonly<Record<string, number>> = {
  'tighter-driver': -0.05,
  'better-pace': -0.1,
  'longer-driver': 0.02,
};
function solveWith(asked: string[]) {
  return (_: Setup, id: string | null): Promise<readonly ScoreDistribution[]> => {
    asked.push(id ?? 'as is');
    return Promise.resolve(holes.map((hole) => tilted(hole, RATE[id ?? ''] ?? 0)));
  };
}

describe('what would help most', () => {
  it('ranks by the change in the odds, against the player as is', async () => {
    const asked: string[] = [];
    const steps: string[] = [];
    const report = await whatWouldHelp(setup, 88, solveWith(asked), {
      onProgress: (done, total) => steps.push(`${done}/${total}`),
    });
    expect(asked).toEqual(['as is', ...IMPROVEMENTS.map(({ id }) => id)]);
    expect(steps.at(-1)).toBe(`${IMPROVEMENTS.length}/${IMPROVEMENTS.length}`);
    expect(report.lines.slice(0, 2).map(({ id }) => id)).toEqual(['better-pace', 'tighter-driver']);
    expect(report.lines.at(-1)!.id).toBe('longer-driver');
    expect(report.lines.at(-1)!.gain).toBeLessThan(0);
    const saved = holes.reduce((sum, hole) => sum + meanOf(hole) - meanOf(tilted(hole, -0.1)), 0);
    expect(report.lines[0]!.saved).toBeCloseTo(saved, 6);
    expect(report.wasCancelled).toBe(false);
  });

  it('moves the odds of the full plan by what is saved on a coarse grid that plays worse', async () => {
    // two strokes worse over the round, as a coarse grid may be
    const coarse = holes.map((hole) => tilted(hole, 0.11));
    const solve = (_: Setup, id: string | null) =>
      Promise.resolve(coarse.map((hole) => tilted(hole, RATE[id ?? ''] ?? 0)));
    const full = await whatWouldHelp(setup, 88, solveWith([]));
    const report = await whatWouldHelp(setup, 88, solve, { planned: holes });
    expect(report.chance).toBe(full.chance);
    expect(report.expected).toBe(full.expected);
    const [pace] = report.lines;
    expect(pace!.id).toBe('better-pace');
    // close to what solving it in full would have told
    expect(Math.abs(pace!.gain - full.lines[0]!.gain)).toBeLessThan(0.02);
    expect(report.lines.find(({ id }) => id === 'tighter-wedges')!.gain).toBeCloseTo(0, 9);
  });

  it('does not solve again what is known, and stops when told to', async () => {
    const asked: string[] = [];
    const report = await whatWouldHelp(setup, 88, solveWith(asked), {
      known: holes,
      isCancelled: () => asked.length >= 2,
    });
    expect(asked).toEqual(IMPROVEMENTS.slice(0, 2).map(({ id }) => id));
    expect(report.lines).toHaveLength(2);
    expect(report.wasCancelled).toBe(true);
  });
});

describe('an improvement', () => {
  it('changes the clubs that it names and nothing else', () => {
    const isWood = (name: string) => name === 'Wood';
    const asDriver: Setup = {
      ...setup,
      player: {
        ...setup.player,
        spreads: setup.player.spreads.map((spread) =>
          isWood(spread.club.name) ? { ...spread, club: { ...spread.club, kind: 'driver' } } : spread,
        ),
      },
    };
    const { player } = improvementOf('tighter-driver').change(asDriver);
    player.spreads.forEach((spread, i) => {
      const before = asDriver.player.spreads[i]!;
      if (isWood(spread.club.name)) {
        expect(spread.directionSd).toBeCloseTo(0.9 * before.directionSd, 12);
        expect(spread.carrySd).toBeCloseTo(0.9 * before.carrySd, 12);
        expect(spread.carryMean).toBe(before.carryMean);
      } else expect(spread).toEqual(before);
    });
    const far = improvementOf('longer-driver').change(asDriver).player.spreads[0]!;
    expect(far.carryMean).toBe(asDriver.player.spreads[0]!.carryMean + 10);
    expect(far.carrySd / far.carryMean).toBeCloseTo(
      asDriver.player.spreads[0]!.carrySd / asDriver.player.spreads[0]!.carryMean,
      12,
    );
  });

  it('without penalty balls turns water into rough and takes the boundary away; sand stays', () => {
    const { course, player } = improvementOf('no-penalty-balls').change(setup);
    expect(course.areas.map(({ kind }) => kind)).toEqual(['green', 'tee', 'rough', 'bunker']);
    expect(player).toBe(setup.player);
    expect(setup.course.areas).toHaveLength(5);
  });

  it('each changes something', () => {
    for (const { change, id } of IMPROVEMENTS) {
      if (id === 'tighter-driver' || id === 'longer-driver') continue;
      const after = change(setup);
      expect(JSON.stringify([after.player, after.course]), id).not.toBe(
        JSON.stringify([setup.player, setup.course]),
      );
    }
  });
});
