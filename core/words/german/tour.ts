/** The first walk round the window. In German. */

import type { tour as english } from '../english/tour.ts';

export const tour: typeof english = {
  name: 'Erster Rundgang',
  again: 'Noch einmal durch das Fenster führen',
  place: ({ step, steps }) => `${step} von ${steps}`,
  leave: 'Rundgang verlassen',
  next: 'Weiter',
  back: 'Zurück',
  finish: 'Fertig',
  goTo: 'Zum Umrandeten gehen',
  byKeyboard: 'Escape verlässt den Rundgang.',
  steps: {
    plan: {
      title: 'Welcher Schlag, mit welchen Aussichten',
      text: 'Links ein Loch wählen. Im umrandeten Teil steht, welcher Schläger wohin und wie viele Schläge es im Mittel braucht; der Balken darin zeigt, wie oft es Par oder besser, Bogey oder schlechter wird. Die Tabelle darunter nennt die anderen Möglichkeiten.',
    },
    move: {
      title: 'Anderer Ort, anderes Ziel',
      text: 'Den umrandeten Ball ziehen, um von woanders zu planen, oder den Ring, um ein eigenes Ziel zu versuchen; alles folgt. Mit der Tastatur: Tab drücken, bis eines davon markiert ist, dann die Pfeiltasten. „Rückgängig“ nimmt es zurück.',
    },
    shots: {
      title: 'Eigene Schläge',
      text: 'Der Beispielspieler ist erfunden. Ein neuer Spieler entsteht hier aus einem Handicap; auf der umrandeten Seite kommen dann gemessene Schläge hinzu, getippt oder aus der Tabelle eines Geräts. Je mehr Schläge, desto sicherer die Aussichten.',
    },
    draw: {
      title: 'Ein eigenes Loch',
      text: 'Hier werden Löcher gezeichnet. Den Demo-Platz kann man nur ansehen: rechts unter „Platz“ einen neuen beginnen oder eine Kopie anlegen. Dann links wählen, was gezeichnet wird, auf der Karte die Ecken anklicken und mit der Eingabetaste abschließen.',
    },
    cards: {
      title: 'Auf Papier',
      text: 'Die umrandete Seite macht die Karten zum Mitnehmen, Loch für Loch, auf A4, Letter, A6 oder als Heft. Entfernungen sind so gut wie der Plan: auf dem Platz prüfen. Platzregeln gehen vor.',
    },
    round: {
      title: 'Die Runde',
      text: 'Unter „Ziel“ steht, welcher Score geschlagen werden soll; die umrandete Seite sagt, wo er einen anderen Schläger verlangt. Nach der Runde das Gespielte eintragen und sehen, was Wahl, Können und Glück war. Diesen Rundgang gibt es in der Hilfe noch einmal.',
    },
  },
};
