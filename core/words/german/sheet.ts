/** The printed page of one hole. In German. */

import type { sheet as english } from '../english/sheet.ts';

export const sheet: typeof english = {
  nothing: 'Noch ist nichts geplant. Ein Loch wählen, seinen Plan abwarten, dann drucken.',
  drawing: ({ number }) => `Zeichnung von Loch ${number}`,
  from: ({ tee, player }) => `vom Abschlag ${tee}. Spieler: ${player}.`,
  invented: 'Erfundener Platz.',
  ball: ({ where, length }) => `Ball ${where}, ${length} bis zum Loch.`,
  recommended: ({ shot }) => `Empfohlen: ${shot}`,
  odds: 'Par / Bogey / Doppel +, %',
  close: '(praktisch gleich)',
  foot: ({ seed }) =>
    `Schätzungen aus den Schlägen des Spielers (Startwert ${seed}). Längen sind so gut wie die Karte: auf dem Platz prüfen. Platzregeln und Entscheidungen der Spielleitung gehen vor.`,
};
