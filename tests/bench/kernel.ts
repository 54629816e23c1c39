/** Shots a second: by the batch, one by one, and as a plain script would, with each ball's end tested against polygons. */

import type { ShotLaw } from '../../core/flight/shot-law.ts';
import { lieAt } from '../../core/ground/hole-ground.ts';
import { Lie } from '../../core/ground/lies.ts';
import type { Spot } from '../../core/plan/model.ts';
import type { PreparedHole } from '../../core/plan/prepare.ts';
import { ShotResolver } from '../../core/plan/resolve-shot.ts';
import { BATCH_SHOTS } from '../../core/plan/batch-shots.ts';
import { ShotBatch } from '../../core/plan/shot-batch.ts';
import { ShotDrawer } from '../../core/random/shot-draws.ts';
import { demoHole } from './demo-hole.ts';
import { cpuSeconds, type Figure } from './measure.ts';
import { lieByPolygons } from './polygon-lies.ts';

export interface Stand {
  readonly spot: Spot;
  readonly law: ShotLaw;
  readonly bearing: number;
}

/** Along the hole and a little aside of it, the longest full swing that does not carry the hole. */
export function stands({ playLine, pin, player, book, ground }: PreparedHole): Stand[] {
  const found: Stand[] = [];
  for (let k = 0; k < 40; k++) {
    const along = (playLine.length - 1) * ((k % 20) / 20);
    const from = playLine[Math.floor(along)]!;
    const to = playLine[Math.floor(along) + 1]!;
    const share = along - Math.floor(along);
    const spot = {
      x: from.x + share * (to.x - from.x) + ((7 * k) % 31) - 15,
      y: from.y + share * (to.y - from.y),
    };
    const distance = Math.hypot(pin.x - spot.x, pin.y - spot.y);
    const lie = lieAt(ground, spot.x, spot.y);
    if (lie >= Lie.penaltyYellow) continue;
    const [law] = player.spreads
      .flatMap((spread, index) => (spread.swing === 'full' ? [book.lawOf(index, lie, 0)] : []))
      .filter((full) => full !== null && full.carryMean < 1.1 * distance)
      .sort((a, b) => b!.carryMean - a!.carryMean);
    if (law === undefined || law === null) continue;
    const bearing = Math.atan2(pin.x - spot.x, pin.y - spot.y) + 0.1 * ((k % 7) - 3);
    found.push({ spot, law, bearing });
  }
  return found;
}

export function benchKernel(holeNumber: number): Figure[] {
  const { course, prepared } = demoHole(holeNumber);
  const from = stands(prepared);
  const draws = new ShotDrawer(BATCH_SHOTS).redraw(prepared.key, 99);
  const batch = new ShotBatch(prepared.ground);
  const single = new ShotResolver(prepared.ground);
  const turns = 40;
  let checksum = 0;
  const byBatch = cpuSeconds(() => {
    for (let turn = 0; turn < turns; turn++) {
      for (const { spot, law, bearing } of from) {
        batch.play(spot.x, spot.y, law, bearing, draws, 0, BATCH_SHOTS);
        checksum += batch.shots.endX[turn]!;
      }
    }
  }, 10);
  const oneByOne = cpuSeconds(() => {
    for (let turn = 0; turn < turns; turn++) {
      for (const { spot, law, bearing } of from) {
        for (let i = 0; i < BATCH_SHOTS; i++) single.resolve(spot.x, spot.y, law, bearing, draws, i);
        checksum += single.endX;
      }
    }
  }, 5);
  const byPolygons = lieByPolygons(course, prepared);
  let same = 0;
  let shots = 0;
  // The plain script draws and flies as this program does, but looks up where the ball ends in the polygons.
  const plain = cpuSeconds(() => {
    for (const { spot, law, bearing } of from) {
      for (let i = 0; i < BATCH_SHOTS; i++) {
        single.resolve(spot.x, spot.y, law, bearing, draws, i);
        if (byPolygons(single.endX, single.endY) === single.endLie) same++;
        shots++;
      }
    }
  }, 1);
  const count = from.length * BATCH_SHOTS;
  if (!Number.isFinite(checksum)) throw new Error('Shots ended nowhere.');
  return [
    {
      name: 'shots a second and core, by the batch',
      value: (turns * count) / byBatch,
      unit: '1/s',
      target: '20 M',
    },
    { name: 'shots a second and core, one by one', value: (turns * count) / oneByOne, unit: '1/s' },
    { name: 'shots a second with polygons', value: count / plain, unit: '1/s' },
    { name: 'batch over polygons', value: (turns * plain) / byBatch, unit: 'times', target: 'hundreds' },
    { name: 'ends with the same lie by both', value: same / shots, unit: 'share' },
  ];
}
