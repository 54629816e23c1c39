/** How each kind of ground looks on paper: its own edge or hatching, so that black and white tells them apart too. Millimetres. */

import type { DrawnKind } from '../../../core/card/model.ts';

export interface Hatch {
  /** Radians from the horizontal; millimetres between lines. */
  readonly angle: number;
  readonly spacing: number;
  readonly dash?: string;
  readonly width: number;
  readonly colour: string;
}

export interface Tint {
  readonly fill: string | null;
  readonly edge: string;
  readonly edgeWidth: number;
  readonly hatch: Hatch | null;
}

export const INK = '#1a1a1a';

export const TINTS: Readonly<Record<DrawnKind, Tint>> = {
  rough: { fill: null, edge: 'none', edgeWidth: 0, hatch: null },
  'long-rough': {
    ...{ fill: '#eef0dc', edge: '#8f9468', edgeWidth: 0.09 },
    hatch: { angle: -1.2, spacing: 1.8, dash: '0.45 0.9', width: 0.14, colour: '#8f9468' },
  },
  woods: {
    ...{ fill: '#d7e0cf', edge: '#55694a', edgeWidth: 0.14 },
    hatch: { angle: 0.8, spacing: 1.2, width: 0.09, colour: '#7d8f71' },
  },
  fairway: { fill: '#e6f2d3', edge: '#7c9a55', edgeWidth: 0.18, hatch: null },
  path: { fill: '#efece6', edge: '#9b958a', edgeWidth: 0.09, hatch: null },
  tee: { fill: '#cfe3b4', edge: '#55694a', edgeWidth: 0.14, hatch: null },
  green: { fill: '#bfe0a0', edge: '#2f5c1d', edgeWidth: 0.32, hatch: null },
  bunker: {
    ...{ fill: '#fbf0cd', edge: '#8a6d1f', edgeWidth: 0.21 },
    hatch: { angle: 0, spacing: 0.6, dash: '0.15 0.5', width: 0.16, colour: '#8a6d1f' },
  },
  'penalty-yellow': {
    ...{ fill: '#dcebf7', edge: '#7a6200', edgeWidth: 0.28 },
    hatch: { angle: 0, spacing: 0.85, dash: '1.8 0.6', width: 0.12, colour: '#47729c' },
  },
  'penalty-red': {
    ...{ fill: '#dcebf7', edge: '#a3211a', edgeWidth: 0.28 },
    hatch: { angle: 0, spacing: 0.85, width: 0.12, colour: '#47729c' },
  },
  'out-of-bounds': {
    ...{ fill: '#f1f1f1', edge: '#333333', edgeWidth: 0.32 },
    hatch: { angle: -0.8, spacing: 2.1, width: 0.09, colour: '#9a9a9a' },
  },
};

/** What the key of the picture says, in the order of the picture. */
export const KEY: readonly (readonly [DrawnKind, string])[] = [
  ['fairway', 'fairway'],
  ['green', 'green'],
  ['bunker', 'sand'],
  ['woods', 'trees'],
  ['long-rough', 'long rough'],
  ['penalty-red', 'red penalty area'],
  ['penalty-yellow', 'yellow penalty area'],
  ['out-of-bounds', 'out of bounds'],
];
