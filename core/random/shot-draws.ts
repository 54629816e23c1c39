/**
 * The random part of a batch of shots, drawn before any club or aim is known: the same draws serve every option
 * at a spot (common random numbers), so that options differ by their own merits and not by luck.
 */

import { inverseNormal } from './normal.ts';
import { sobolPoints } from './sobol.ts';
import { mixWords, RandomStream, type StreamKey } from './streams.ts';

/** One entry per shot in each array. */
export interface ShotDraws {
  readonly count: number;
  /** Standard normals: strike length, direction, roll, gust. */
  readonly distanceZ: Float64Array;
  readonly directionZ: Float64Array;
  readonly rollZ: Float64Array;
  readonly gustZ: Float64Array;
  /** Uniforms on (0, 1): poor strike or not. */
  readonly poorU: Float64Array;
  /** Optical depth of canopy that this ball would get through: -ln(uniform). */
  readonly canopyDepth: Float64Array;
}

/** Makes and refills draws; holds only the fixed point set and its buffers. */
export class ShotDrawer {
  readonly draws: ShotDraws;
  private readonly points: readonly Uint32Array[];
  private readonly stream = new RandomStream();

  /**
   * `count` shots a batch; a power of two keeps the point set balanced. In `groups` of equal size with shifts of their own,
   * whose means are independent of each other.
   */
  constructor(
    count: number,
    private readonly groups = 1,
  ) {
    this.points = sobolPoints(count / groups, 6);
    this.draws = {
      count,
      distanceZ: new Float64Array(count),
      directionZ: new Float64Array(count),
      rollZ: new Float64Array(count),
      gustZ: new Float64Array(count),
      poorU: new Float64Array(count),
      canopyDepth: new Float64Array(count),
    };
  }

  /**
   * Refills `draws` for one state: Sobol' points with a random digital shift (Owen 1995; each coordinate of each
   * point is uniform, and different labels give independent shifts).
   */
  redraw(key: StreamKey, label1: number, label2 = 0, label3 = 0): ShotDraws {
    this.stream.restart(key, label1, label2, label3);
    const size = this.draws.count / this.groups;
    for (let group = 0; group < this.groups; group++) this.fill(group * size, size);
    return this.draws;
  }

  private fill(first: number, size: number): void {
    const { stream, points, draws } = this;
    const shift0 = stream.nextUint32();
    const shift1 = stream.nextUint32();
    const shift2 = stream.nextUint32();
    const shift3 = stream.nextUint32();
    const shift4 = stream.nextUint32();
    const shift5 = stream.nextUint32();
    const [p0, p1, p2, p3, p4, p5] = points as readonly [
      Uint32Array,
      Uint32Array,
      Uint32Array,
      Uint32Array,
      Uint32Array,
      Uint32Array,
    ];
    for (let k = 0; k < size; k++) {
      const i = first + k;
      draws.distanceZ[i] = inverseNormal(toUnit(p0[k]! ^ shift0));
      draws.directionZ[i] = inverseNormal(toUnit(p1[k]! ^ shift1));
      draws.rollZ[i] = inverseNormal(toUnit(p4[k]! ^ shift4));
      draws.gustZ[i] = inverseNormal(toUnit(p5[k]! ^ shift5));
      draws.poorU[i] = toUnit(p2[k]! ^ shift2);
      draws.canopyDepth[i] = -Math.log(toUnit(p3[k]! ^ shift3));
    }
  }
}

function toUnit(word: number): number {
  return ((word >>> 0) + 0.5) / 4294967296;
}

/**
 * A fixed number of ready-made draws that many states share out among themselves: a state picks by hashing its labels,
 * so neighbours rarely draw alike, and the same state always draws the same.
 */
export class DrawPool {
  private readonly sets: readonly ShotDraws[];

  /** `size` sets of `count` shots, each in `groups`; `purpose` tells pools of the same key apart. */
  constructor(key: StreamKey, count: number, size: number, purpose: number, groups = 1) {
    this.sets = Array.from({ length: size }, (_, i) => new ShotDrawer(count, groups).redraw(key, i, purpose));
  }

  drawsOf(label1: number, label2: number): ShotDraws {
    return this.sets[mixWords(label1, label2) % this.sets.length]!;
  }
}
