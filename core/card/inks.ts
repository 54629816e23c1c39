/** What printed cards have in common whoever lays them out: inks of each kind of ground, and the words of the key. */

import type { DrawnKind } from './model.ts';

export const INK = '#1a1a1a';

export interface GroundInk {
  readonly fill: string | null;
  readonly edge: string;
}

export const GROUND_INKS: Readonly<Record<DrawnKind, GroundInk>> = {
  rough: { fill: null, edge: 'none' },
  'long-rough': { fill: '#eef0dc', edge: '#8f9468' },
  woods: { fill: '#d7e0cf', edge: '#55694a' },
  fairway: { fill: '#e6f2d3', edge: '#7c9a55' },
  path: { fill: '#efece6', edge: '#9b958a' },
  tee: { fill: '#cfe3b4', edge: '#55694a' },
  green: { fill: '#bfe0a0', edge: '#2f5c1d' },
  bunker: { fill: '#fbf0cd', edge: '#8a6d1f' },
  'penalty-yellow': { fill: '#dcebf7', edge: '#7a6200' },
  'penalty-red': { fill: '#dcebf7', edge: '#a3211a' },
  'out-of-bounds': { fill: '#f1f1f1', edge: '#333333' },
};

/** Of the lines that tell the kinds apart in black and white too; kinds without them are told by their edge. */
export const HATCH_INKS = {
  'long-rough': '#8f9468',
  woods: '#7d8f71',
  bunker: '#8a6d1f',
  'penalty-yellow': '#47729c',
  'penalty-red': '#47729c',
  'out-of-bounds': '#9a9a9a',
} as const satisfies Partial<Record<DrawnKind, string>>;

/** The kinds of ground in the key of the picture, in its order. */
export const KEY = [
  ...(['fairway', 'green', 'bunker', 'woods', 'long-rough'] as const),
  ...(['penalty-red', 'penalty-yellow', 'out-of-bounds'] as const),
];
