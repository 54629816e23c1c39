/** The things that can be drawn: what each is called on its button, how it is drawn, which key takes it up. */

import type { FeatureKind } from '../../core/course/feature-kind.ts';

/** An arrow is two places, where it stands and whither it points; the file keeps a point and a direction. */
export type DrawnAs = 'area' | 'line' | 'point' | 'arrow';

export interface KindCard {
  readonly kind: FeatureKind;
  /** Pressed while the map has the focus. */
  readonly key: string;
  readonly drawnAs: DrawnAs;
  /** Whether it belongs to the hole that is being worked on. */
  readonly ofHole: boolean;
}

/** In the order in which a hole is mapped. */
export const KIND_CARDS: readonly KindCard[] = [
  { kind: 'hole', key: 'l', drawnAs: 'line', ofHole: true },
  { kind: 'fairway', key: 'f', drawnAs: 'area', ofHole: true },
  { kind: 'green', key: 'g', drawnAs: 'area', ofHole: true },
  { kind: 'hole-position', key: 'h', drawnAs: 'point', ofHole: true },
  { kind: 'tee', key: 't', drawnAs: 'area', ofHole: true },
  { kind: 'tee-marker', key: 'm', drawnAs: 'point', ofHole: true },
  { kind: 'bunker', key: 'b', drawnAs: 'area', ofHole: true },
  { kind: 'path', key: 'p', drawnAs: 'line', ofHole: false },
  { kind: 'rough', key: 'r', drawnAs: 'area', ofHole: false },
  { kind: 'long-rough', key: 'n', drawnAs: 'area', ofHole: false },
  { kind: 'woods', key: 'w', drawnAs: 'area', ofHole: false },
  { kind: 'tree', key: 'e', drawnAs: 'point', ofHole: false },
  { kind: 'penalty-red', key: 'd', drawnAs: 'area', ofHole: false },
  { kind: 'penalty-yellow', key: 'y', drawnAs: 'area', ofHole: false },
  { kind: 'out-of-bounds', key: 'o', drawnAs: 'area', ofHole: false },
  { kind: 'boundary', key: 'u', drawnAs: 'area', ofHole: false },
  { kind: 'slope-mark', key: 'a', drawnAs: 'arrow', ofHole: false },
  { kind: 'ground-level', key: 'v', drawnAs: 'point', ofHole: false },
];

const BY_KIND = new Map(KIND_CARDS.map((card) => [card.kind, card]));
const BY_KEY = new Map(KIND_CARDS.map((card) => [card.key, card]));

export function cardOf(kind: FeatureKind): KindCard {
  const card = BY_KIND.get(kind);
  if (card === undefined) throw new Error(`no button draws the kind ${kind}`);
  return card;
}

export function cardOfKey(key: string): KindCard | undefined {
  return BY_KEY.get(key.toLowerCase());
}

/** Fewest places that make the thing. */
export function fewestPlaces(drawnAs: DrawnAs): number {
  return drawnAs === 'area' ? 3 : drawnAs === 'point' ? 1 : 2;
}
