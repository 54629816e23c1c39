/**
 * The map's colours in both themes. The grounds differ in lightness as well as in hue, the two shots in hue, dash
 * and shape, so that nothing rests on telling red from green.
 */

import { type LieCode, Lie } from '../../core/ground/lies.ts';

export interface Palette {
  readonly ground: Readonly<Record<LieCode, string>>;
  /** Drawn along the edge of each ground that has one. */
  readonly greenEdge: string;
  readonly bunkerEdge: string;
  readonly crownLight: string;
  readonly crownDark: string;
  readonly crownEdge: string;
  readonly outHatch: string;
  readonly stakeYellow: string;
  readonly stakeRed: string;
  readonly stakeWhite: string;
  readonly stakeCase: string;
  /** Laid over what is not part of the hole. */
  readonly veil: string;
  readonly playLine: string;
  readonly shotA: string;
  readonly shotB: string;
  readonly shotCase: string;
  readonly ballFill: string;
  readonly troubleMark: string;
  readonly labelInk: string;
  readonly labelHalo: string;
}

const LIGHT: Palette = {
  ground: {
    [Lie.rough]: '#a6b97e',
    [Lie.fairway]: '#c0dc98',
    [Lie.green]: '#def3c0',
    [Lie.bunker]: '#f3e6bd',
    [Lie.tee]: '#cbe5a6',
    [Lie.longRough]: '#b7ad78',
    [Lie.woods]: '#6d8c5c',
    [Lie.path]: '#d6ccb9',
    [Lie.penaltyYellow]: '#86b8d6',
    [Lie.penaltyRed]: '#86b8d6',
    [Lie.outOfBounds]: '#cfcabd',
  },
  greenEdge: '#6f9a56',
  bunkerEdge: '#bda467',
  crownLight: '#7b9a68',
  crownDark: '#5e7f50',
  crownEdge: '#4b6a41',
  outHatch: '#b7b1a1',
  stakeYellow: '#f2cf1d',
  stakeRed: '#d13b2c',
  stakeWhite: '#ffffff',
  stakeCase: '#3a3a33',
  veil: 'rgba(246, 244, 237, 0.6)',
  playLine: '#3d4a3c',
  shotA: '#15377a',
  shotB: '#b34700',
  shotCase: '#ffffff',
  ballFill: '#ffffff',
  troubleMark: '#8c1d18',
  labelInk: '#17211c',
  labelHalo: 'rgba(255, 254, 248, 0.92)',
};

const DARK: Palette = {
  ground: {
    [Lie.rough]: '#36452f',
    [Lie.fairway]: '#4b663c',
    [Lie.green]: '#759c5c',
    [Lie.bunker]: '#b7a573',
    [Lie.tee]: '#5a7a48',
    [Lie.longRough]: '#554d2c',
    [Lie.woods]: '#213428',
    [Lie.path]: '#5e594c',
    [Lie.penaltyYellow]: '#2a516e',
    [Lie.penaltyRed]: '#2a516e',
    [Lie.outOfBounds]: '#23282a',
  },
  greenEdge: '#a4c98a',
  bunkerEdge: '#d8c791',
  crownLight: '#2a4132',
  crownDark: '#1b2c22',
  crownEdge: '#15231b',
  outHatch: '#343b3c',
  stakeYellow: '#ecd04a',
  stakeRed: '#ee6a58',
  stakeWhite: '#f3f3ea',
  stakeCase: '#0d1110',
  veil: 'rgba(18, 23, 21, 0.62)',
  playLine: '#c9d3c4',
  shotA: '#9cc3ff',
  shotB: '#ffb066',
  shotCase: '#0b1220',
  ballFill: '#0b1220',
  troubleMark: '#ff9d8f',
  labelInk: '#f2f5ee',
  labelHalo: 'rgba(12, 18, 16, 0.88)',
};

export type Theme = 'light' | 'dark';

export function paletteOf(theme: Theme): Palette {
  return theme === 'dark' ? DARK : LIGHT;
}
