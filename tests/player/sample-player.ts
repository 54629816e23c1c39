/** Small player files for tests. The players are invented. */

import seedrandom from 'seedrandom';
import type { PlayerDocument, RecordedShot } from '../../core/player/format.ts';
import type { MeasuredShot } from '../../core/player/measured-shot.ts';
import type { ShotSpread } from '../../core/player/model.ts';
import { inverseNormal } from '../../core/random/normal.ts';

export function minimalPlayer(): PlayerDocument {
  return {
    holewright: { format: 'player', formatVersion: 1 },
    name: 'Invented Player',
    invented: true,
    hand: 'right',
    handicap: 17,
    group: 'men',
    settings: { units: 'yards', marginStrokes: 0.05 },
    bag: [
      { name: 'Driver', kind: 'driver', loftDeg: 10.5, lengthM: 1.14, swings: ['full'] },
      { name: '7-iron', kind: 'iron', loftDeg: 32, swings: ['full', 'punch'] },
      { name: 'Sand wedge', kind: 'wedge', loftDeg: 56, swings: ['full', 'part'] },
      { name: 'Putter', kind: 'putter', loftDeg: 3, swings: ['full'] },
    ],
    shots: [],
    putting: { directionSdDeg: 1.6, distanceSdShare: 0.14 },
  };
}

export type ShotLawOfTest = Pick<
  ShotSpread,
  'carryMean' | 'carrySd' | 'directionMean' | 'directionSd' | 'correlation' | 'poorShare' | 'poor'
>;

/** Draws from the model's own law: solid strikes bivariate normal, poor ones with theirs. */
export function drawShots(law: ShotLawOfTest, count: number, seed: string): MeasuredShot[] {
  const random = seedrandom(seed);
  const normal = (): number => inverseNormal(random() + 1e-12);
  return Array.from({ length: count }, () => {
    const isPoor = random() < law.poorShare;
    const [u, v] = [normal(), normal()];
    if (isPoor) {
      const carryM = law.carryMean * Math.max(0.05, law.poor.carryShareMean + law.poor.carryShareSd * u);
      return { carryM, direction: law.directionMean + law.poor.directionSd * v };
    }
    const w = law.correlation * u + Math.sqrt(1 - law.correlation ** 2) * v;
    return { carryM: law.carryMean + law.carrySd * u, direction: law.directionMean + law.directionSd * w };
  });
}

/** The same shots as a file records them. */
export function record(club: string, shots: readonly MeasuredShot[]): RecordedShot[] {
  return shots.map(({ carryM, direction }) => ({
    club,
    swing: 'full',
    carryM,
    offlineM: carryM * Math.sin(direction),
    lie: 'range',
  }));
}
