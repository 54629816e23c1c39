/** How each kind of ground looks on paper: its own edge or hatching, so that black and white tells them apart too. Millimetres. */

import { GROUND_INKS, type GroundInk, HATCH_INKS } from '../../../core/card/inks.ts';
import type { DrawnKind } from '../../../core/card/model.ts';

export interface Hatch {
  /** Radians from the horizontal; millimetres between lines. */
  readonly angle: number;
  readonly spacing: number;
  readonly dash?: string;
  readonly width: number;
  readonly colour: string;
}

export interface Tint extends GroundInk {
  readonly edgeWidth: number;
  readonly hatch: Hatch | null;
}

export const TINTS: Readonly<Record<DrawnKind, Tint>> = {
  rough: { ...GROUND_INKS.rough, edgeWidth: 0, hatch: null },
  'long-rough': {
    ...GROUND_INKS['long-rough'],
    edgeWidth: 0.09,
    hatch: { angle: -1.2, spacing: 1.8, dash: '0.45 0.9', width: 0.14, colour: HATCH_INKS['long-rough'] },
  },
  woods: {
    ...GROUND_INKS.woods,
    edgeWidth: 0.14,
    hatch: { angle: 0.8, spacing: 1.2, width: 0.09, colour: HATCH_INKS.woods },
  },
  fairway: { ...GROUND_INKS.fairway, edgeWidth: 0.18, hatch: null },
  path: { ...GROUND_INKS.path, edgeWidth: 0.09, hatch: null },
  tee: { ...GROUND_INKS.tee, edgeWidth: 0.14, hatch: null },
  green: { ...GROUND_INKS.green, edgeWidth: 0.32, hatch: null },
  bunker: {
    ...GROUND_INKS.bunker,
    edgeWidth: 0.21,
    hatch: { angle: 0, spacing: 0.6, dash: '0.15 0.5', width: 0.16, colour: HATCH_INKS.bunker },
  },
  'penalty-yellow': {
    ...GROUND_INKS['penalty-yellow'],
    edgeWidth: 0.28,
    hatch: { angle: 0, spacing: 0.85, dash: '1.8 0.6', width: 0.12, colour: HATCH_INKS['penalty-yellow'] },
  },
  'penalty-red': {
    ...GROUND_INKS['penalty-red'],
    edgeWidth: 0.28,
    hatch: { angle: 0, spacing: 0.85, width: 0.12, colour: HATCH_INKS['penalty-red'] },
  },
  'out-of-bounds': {
    ...GROUND_INKS['out-of-bounds'],
    edgeWidth: 0.32,
    hatch: { angle: -0.8, spacing: 2.1, width: 0.09, colour: HATCH_INKS['out-of-bounds'] },
  },
};
