/** Trunks of trees that stand by themselves, as low shots from nearby meet them. */

/** Metres in the hole's frame. */
export interface Trunk {
  readonly x: number;
  readonly y: number;
  readonly radiusM: number;
  /** A ball higher than this above the trunk's foot is in the crown, or over it. */
  readonly heightM: number;
}

/** Farther away than this a trunk is narrower than any player's aim, and most balls are above it, metres. */
const NEAR_M = 40;
const NONE: readonly never[] = [];

export function trunksNear<T extends Trunk>(trunks: readonly T[], x: number, y: number): readonly T[] {
  if (trunks.length === 0) return NONE;
  return trunks.filter((trunk) => (trunk.x - x) ** 2 + (trunk.y - y) ** 2 < NEAR_M ** 2);
}
