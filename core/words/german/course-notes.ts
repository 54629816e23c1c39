/** What a course lacks, and what would mend it. In German. */

import type { courseNotes as english } from '../english/course-notes.ts';

import { figures } from './figures.ts';
import { inFeet, inYards } from '../lengths.ts';

const { short } = figures;
const feet = (metres: number): string => short(inFeet(metres), 1);
const yards = (metres: string): string => figures.whole(inYards(Number(metres)));

export const courseNotes: typeof english = {
  yards: {
    cardDiffers: ({ tee, length, than, card }) =>
      `Vom Abschlag „${tee}“ ist die Linie ${yards(length)} yd lang, ${than} als die ${yards(card)} yd der Scorekarte. Markierung oder Linie versetzen, oder die Länge der Scorekarte berichtigen.`,
    high: ({ metres }) => `${feet(metres)} ft hoch`,
    branches: ({ metres }) => `Äste ab ${feet(metres)} ft`,
    crown: ({ metres }) => `Krone ${feet(metres)} ft breit`,
    longer: ({ metres }) => `${yards(metres)} yd länger`,
    shorter: ({ metres }) => `${yards(metres)} yd kürzer`,
  },
  cardDiffers: ({ tee, length, than, card }) =>
    `Vom Abschlag „${tee}“ ist die Linie ${length} m lang, ${than} als die ${card} m der Scorekarte. Markierung oder Linie versetzen, oder die Länge der Scorekarte berichtigen.`,
  high: ({ metres }) => `${short(metres, 2)} m hoch`,
  branches: ({ metres }) => `Äste ab ${short(metres, 2)} m`,
  density: ({ density }) => `Dichte ${short(density, 3)} je m`,
  crown: ({ metres }) => `Krone ${short(metres, 2)} m breit`,
  longer: ({ metres }) => `${metres} m länger`,
  shorter: ({ metres }) => `${metres} m kürzer`,
  noLine: ({ hole }) => `Loch ${hole} hat keine Spiellinie: Es lässt sich nicht planen.`,
  drawLine: 'Linie vom Abschlag zum Grün zeichnen',
  noGreen: ({ hole }) => `Loch ${hole} hat kein Grün: Es lässt sich nicht planen.`,
  drawGreen: 'Grün zeichnen',
  noPar: ({ hole, par }) => `Loch ${hole} hat kein Par: ${par} ist aus der Länge angenommen.`,
  writePar: ({ par }) => `Par ${par} eintragen`,
  noIndex: ({ hole }) => `Loch ${hole} hat keinen Stroke-Index: Vorgabeschläge zählen dort nicht.`,
  enterIndex: 'Stroke-Index der Scorekarte eintragen',
  noTee: ({ hole }) =>
    `Loch ${hole} hat keine Abschlagfläche: Der Boden am Abschlag gilt als das, was dort gezeichnet ist, sonst als Rough.`,
  drawTee: 'Abschlag zeichnen',
  noMarker: ({ hole }) => `Loch ${hole} hat keine Teemarkierung: Das Spiel beginnt, wo die Linie beginnt.`,
  putMarker: 'Teemarkierung an den Beginn der Linie setzen',
  endOfLine: 'das Ende der Linie',
  middleOfGreen: 'die Mitte des Grüns',
  noPosition: ({ hole, taken }) => `Loch ${hole} hat keine Fahnenposition: angenommen ist ${taken}.`,
  putAtEnd: 'Eine ans Ende der Linie setzen',
  putInMiddle: 'Eine in die Mitte des Grüns setzen',
  noHoles:
    'Der Platz hat noch kein Loch. Eine Linie vom Abschlag zum Grün zeichnen, oder eine Karte einlesen.',
  drawFirst: 'Linie von Loch 1 zeichnen',
  noHeights:
    'Der Platz hat keine Bodenhöhen: Er gilt als eben. Ein Höhenmodell einlesen, oder Bodenhöhen zeichnen.',
  drawLevel: 'Bodenhöhe zeichnen',
  correctCard: 'Länge der Scorekarte berichtigen',
  noCanopy: ({ what, taken }) =>
    `${what} ohne Höhe: angenommen ist ${taken}. Messen und berichtigen, oder diese Werte eintragen.`,
  writeCanopy: ({ taken }) => `${taken} eintragen`,
};
