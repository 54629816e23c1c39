/** What a course lacks, and what would mend it. */

import { figures } from './figures.ts';
import { inFeet, inYards } from '../lengths.ts';

const feet = (metres: number): string => figures.short(inFeet(metres), 1);
const yards = (metres: string): string => figures.whole(inYards(Number(metres)));

interface CardDiffers {
  readonly tee: string;
  readonly length: string;
  readonly than: string;
  readonly card: string;
}

export const courseNotes = {
  /** The same where yards are chosen; the values are metres all the same. */
  yards: {
    cardDiffers: ({ tee, length, than, card }: CardDiffers) =>
      `From tee "${tee}" the line is ${yards(length)} yd long, ${than} than the ${yards(card)} yd of the card. Move the marker or the line, or correct the card length.`,
    high: ({ metres }: { readonly metres: number }) => `${feet(metres)} ft high`,
    branches: ({ metres }: { readonly metres: number }) => `branches from ${feet(metres)} ft`,
    crown: ({ metres }: { readonly metres: number }) => `crown ${feet(metres)} ft wide`,
    longer: ({ metres }: { readonly metres: string }) => `${yards(metres)} yd longer`,
    shorter: ({ metres }: { readonly metres: string }) => `${yards(metres)} yd shorter`,
  },
  cardDiffers: ({ tee, length, than, card }: CardDiffers) =>
    `From tee "${tee}" the line is ${length} m long, ${than} than the ${card} m of the card. Move the marker or the line, or correct the card length.`,
  high: ({ metres }: { readonly metres: number }) => `${metres} m high`,
  branches: ({ metres }: { readonly metres: number }) => `branches from ${metres} m`,
  density: ({ density }: { readonly density: number }) => `density ${density} per m`,
  crown: ({ metres }: { readonly metres: number }) => `crown ${metres} m wide`,
  longer: ({ metres }: { readonly metres: string }) => `${metres} m longer`,
  shorter: ({ metres }: { readonly metres: string }) => `${metres} m shorter`,
  noLine: ({ hole }: { readonly hole: number }) => `Hole ${hole} has no line of play: it cannot be planned.`,
  drawLine: 'Draw the line from tee to green',
  noGreen: ({ hole }: { readonly hole: number }) => `Hole ${hole} has no green: it cannot be planned.`,
  drawGreen: 'Draw the green',
  noPar: ({ hole, par }: { readonly hole: number; readonly par: number }) =>
    `Hole ${hole} has no par: ${par} is taken from its length.`,
  writePar: ({ par }: { readonly par: number }) => `Write par ${par}`,
  noIndex: ({ hole }: { readonly hole: number }) =>
    `Hole ${hole} has no stroke index: handicap strokes are not counted on it.`,
  enterIndex: 'Enter the stroke index of the card',
  noTee: ({ hole }: { readonly hole: number }) =>
    `Hole ${hole} has no tee area: the ground at the tee is taken for what is drawn there, else rough.`,
  drawTee: 'Draw the tee',
  noMarker: ({ hole }: { readonly hole: number }) =>
    `Hole ${hole} has no tee marker: play starts where its line starts.`,
  putMarker: 'Put a tee marker at the start of the line',
  endOfLine: 'end of its line',
  middleOfGreen: 'middle of its green',
  noPosition: ({ hole, taken }: { readonly hole: number; readonly taken: string }) =>
    `Hole ${hole} has no hole position: the ${taken} is taken.`,
  putAtEnd: 'Put one at the end of the line',
  putInMiddle: 'Put one in the middle of the green',
  noHoles: 'The course has no hole yet. Draw a line from tee to green, or import a map.',
  drawFirst: 'Draw the line of hole 1',
  noHeights:
    'The course has no ground heights: it is planned as level. Import an elevation model, or draw ground levels.',
  drawLevel: 'Draw a ground level',
  correctCard: 'Correct the card length',
  noCanopy: ({ what, taken }: { readonly what: string; readonly taken: string }) =>
    `${what} without a height: taken as ${taken}. Measure and correct, or write these values.`,
  writeCanopy: ({ taken }: { readonly taken: string }) => `Write ${taken}`,
};
