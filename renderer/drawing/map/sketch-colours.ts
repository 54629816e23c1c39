/** Colours of what lies over the ground while drawing: each line is cased, so that it shows on any ground and picture. */

import type { Theme } from '../../map/palette.ts';

export interface SketchColours {
  readonly line: string;
  readonly casing: string;
  readonly handle: string;
  readonly chosenCorner: string;
  readonly playLine: string;
  readonly fault: string;
  readonly wash: string;
  readonly ink: string;
  readonly halo: string;
}

const LIGHT: SketchColours = {
  line: '#0b4bb3',
  casing: '#ffffff',
  handle: '#ffffff',
  chosenCorner: '#c23a00',
  playLine: '#26352a',
  fault: '#a4161a',
  wash: 'rgba(11, 75, 179, 0.14)',
  ink: '#17211c',
  halo: 'rgba(255, 254, 248, 0.92)',
};

const DARK: SketchColours = {
  line: '#a9ccff',
  casing: '#0b1220',
  handle: '#0b1220',
  chosenCorner: '#ffb066',
  playLine: '#e7ede5',
  fault: '#ff9d8f',
  wash: 'rgba(169, 204, 255, 0.18)',
  ink: '#f2f5ee',
  halo: 'rgba(12, 18, 16, 0.88)',
};

export function sketchColours(theme: Theme): SketchColours {
  return theme === 'dark' ? DARK : LIGHT;
}
