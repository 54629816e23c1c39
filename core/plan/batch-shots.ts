/** The shots of a batch as one array per quantity, entry k for shot k: each step of playing reads and writes these. */

/** Shots at a time. */
export const BATCH_SHOTS = 128;

export const BY_TREE = 1;
export const BY_LIP = 2;

export class BatchShots {
  /** Direction of flight, east and north, and as a turn from the aim, radians. */
  readonly ux = new Float64Array(BATCH_SHOTS);
  readonly uy = new Float64Array(BATCH_SHOTS);
  readonly turn = new Float64Array(BATCH_SHOTS);
  /** Carry on level ground, and to the ground that is there, metres. */
  readonly level = new Float64Array(BATCH_SHOTS);
  readonly carry = new Float64Array(BATCH_SHOTS);
  /** 1 for a poor strike. */
  readonly poor = new Uint8Array(BATCH_SHOTS);
  /** 0 for a ball that flew, else what stopped it: `BY_TREE`, `BY_LIP`. */
  readonly stopped = new Uint8Array(BATCH_SHOTS);
  /** Where each shot came to rest or was lost, metres, inside the raster; its `Lie` code. */
  readonly endX = new Float64Array(BATCH_SHOTS);
  readonly endY = new Float64Array(BATCH_SHOTS);
  readonly endLie = new Uint8Array(BATCH_SHOTS);
}
