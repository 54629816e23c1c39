/** An invented worked-out hole of the small course with every member that one may have. */

import { DEFAULT_CONDITIONS } from '../../../core/conditions/conditions.ts';
import { LIE_NAMES, type LieName } from '../../../core/ground/lies.ts';
import type { Option } from '../../../core/plan/model.ts';
import type { HoleResult } from '../../../renderer/state/app-state.ts';
import type { HoleTask } from '../../../renderer/workers/planner-api.ts';

const endShare = Object.fromEntries(
  LIE_NAMES.map((name) => [name, name === 'green' ? 1 : 0]),
) as unknown as Readonly<Record<LieName, number>>;

function option(change: Partial<Option>): Option {
  return {
    id: '6-iron/full/best',
    kind: 'shot',
    club: '6-iron',
    clubKind: 'iron',
    swing: 'full',
    aim: { bearing: 0.1, lonLat: [4.0001, 52.001], spot: { x: 3.25, y: -1.5 } },
    carryM: 120.5,
    meanStrokes: 3.123456789012345,
    standardError: 0.01,
    lossToBest: 0,
    lossStandardError: 0,
    tooCloseToCall: false,
    scoreOdds: [0, 0.1, 0.2, 0.3, 0.3, 0.1],
    parOdds: { parOrBetter: 0.6, bogey: 0.3, doubleOrWorse: 0.1 },
    trouble: { outOfBounds: 0, penaltyYellow: 0, penaltyRed: 0.1, bunker: 0.2, trees: 0, longRough: 0 },
    leave: { p10M: 2, medianM: 8, p90M: 20 },
    endShare,
    spreadSource: { from: 'measured', shots: 12, poorShots: 1 },
    doubt: { lowStrokes: 3, highStrokes: 3.3, cheapestShare: 0.8 },
    ...change,
  };
}

export function resultOfTask({ key, hole, teeName, position, seed, conditions }: HoleTask): HoleResult {
  return {
    key,
    hole,
    rough: false,
    origin: [4, 52],
    tee: [4, 52],
    pin: [4, 52.0012],
    teeName,
    positionName: String(position),
    lengthM: 134.2,
    conditions: conditions ?? DEFAULT_CONDITIONS,
    convergence: { spacingsM: [16, 8], rmsChange: [0.2], maxChange: [1.5], sweeps: [3, 2] },
    teePlan: {
      hole,
      from: { x: 0, y: -60.125 },
      fromLonLat: [4, 52],
      lie: 'tee',
      distanceToHoleM: 134.2,
      strokesTaken: 0,
      par: 3,
      options: [
        option({}),
        option({
          id: 'half',
          swing: 'half',
          spreadSource: { from: 'derived', fromSwing: 'full', fromClub: 'x' },
        }),
        option({
          id: 'drop',
          kind: 'relief',
          relief: 'penalty-lateral',
          penaltyStrokes: 1,
          spreadSource: null,
          meanStrokes: 3.1875,
          lossToBest: 3.1875 - 3.123456789012345,
        }),
      ],
      recommendation: { optionId: '6-iron/full/best', reason: 'It costs the fewest strokes.' },
      lipBlocks: [{ club: '3-wood', swing: 'full', lipM: 1.2, atM: 8 }],
      expectedStrokes: 3.123456789012345,
      seed,
    },
    teePicture: {
      sample: {
        count: 2,
        landing: Float32Array.of(0.1, 100.7, -3.5, 98.25),
        end: Float32Array.of(0.2, 110.7, -4.5, 101.25),
        lie: Uint8Array.of(2, 3),
      },
      ellipses: [{ share: 0.5, centre: { x: 0, y: 60 }, semiMajorM: 9.5, semiMinorM: 6, majorBearing: 0.4 }],
    },
  };
}

export const oneTask: HoleTask = {
  key: 'as the window names it',
  hole: 1,
  teeName: 'Oak',
  position: 'front',
  conditions: DEFAULT_CONDITIONS,
  seed: 'dew',
  rough: false,
};
