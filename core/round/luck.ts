/** The luck of a round, stroke by stroke: numbered draws, so that another choice can be replayed with the same luck. */

import { inverseNormal } from '../random/normal.ts';
import type { ShotDraws } from '../random/shot-draws.ts';
import { makeStreamKey, RandomStream, type StreamKey } from '../random/streams.ts';

/** One stroke's luck, in the terms of `ShotDraws`; a putt uses the first two, over slopes the next two for misreading them. */
export interface ShotLuck {
  readonly distanceZ: number;
  readonly directionZ: number;
  readonly rollZ: number;
  readonly gustZ: number;
  readonly poorU: number;
  readonly canopyDepth: number;
}

/** The luck of stroke `stroke` (from 0) of a hole. */
export type HoleLuck = (stroke: number) => ShotLuck;

/** Solid, in the middle of its law, and through every tree. */
export const MIDDLING_LUCK: ShotLuck = {
  distanceZ: 0,
  directionZ: 0,
  rollZ: 0,
  gustZ: 0,
  poorU: 1 - 1e-9,
  canopyDepth: Infinity,
};

/** Same seed, hole and round: the same luck for the same stroke, whatever was chosen before. */
export class LuckSource {
  private readonly key: StreamKey;
  private readonly stream = new RandomStream();

  constructor(seed: string, hole: number) {
    this.key = makeStreamKey(seed, 'play', hole);
  }

  luckOf(round: number, stroke: number): ShotLuck {
    const { stream } = this;
    stream.restart(this.key, round, stroke);
    return {
      distanceZ: inverseNormal(stream.nextUniform()),
      directionZ: inverseNormal(stream.nextUniform()),
      rollZ: inverseNormal(stream.nextUniform()),
      poorU: stream.nextUniform(),
      canopyDepth: -Math.log(stream.nextUniform()),
      gustZ: inverseNormal(stream.nextUniform()),
    };
  }

  hole(round: number): HoleLuck {
    return (stroke) => this.luckOf(round, stroke);
  }
}

/** A batch of one shot, refilled for each. */
export class OneShot {
  readonly draws: ShotDraws = {
    count: 1,
    distanceZ: new Float64Array(1),
    directionZ: new Float64Array(1),
    rollZ: new Float64Array(1),
    gustZ: new Float64Array(1),
    poorU: new Float64Array(1),
    canopyDepth: new Float64Array(1),
  };

  fill(luck: ShotLuck): ShotDraws {
    const { draws } = this;
    draws.distanceZ[0] = luck.distanceZ;
    draws.directionZ[0] = luck.directionZ;
    draws.rollZ[0] = luck.rollZ;
    draws.gustZ[0] = luck.gustZ;
    draws.poorU[0] = luck.poorU;
    draws.canopyDepth[0] = luck.canopyDepth;
    return draws;
  }
}
