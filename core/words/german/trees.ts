/** Ways out of trees. In German. */

import type { trees as english } from '../english/trees.ts';

export const trees: typeof english = {
  gap: ({ degrees }) => `Lücke ${degrees}`,
  ways: {
    forwards: 'nach vorn',
    sideways: 'zur Seite',
    backwards: 'zurück',
  },
  passages: {
    open: 'kein Baum im Weg',
    under: 'unter den Ästen',
    over: 'über die Wipfel',
    through: 'durch Laub und Zweige',
  },
  opening: {
    none: 'Dort keine Lücke für diesen Schläger',
    open: 'Nach beiden Seiten offen',
    gap: ({ degrees }) => `Eine Lücke von ${degrees}`,
  },
  gapWords: ({ opening, spread, chance }) =>
    `${opening}; zwei von drei Treffern bleiben innerhalb von ${spread}. ${chance} der guten Treffer kommen durch.`,
  needs: 'braucht',
  stayBelow: 'unter',
  clearance: ({ asks, height, at, club, has, sd }) =>
    `${asks} ${height} bei ${at}; ${club} hat ${has} ± ${sd}`,
  swungClub: ({ swing, club }) => `${club} (${swing})`,
  waysOut: 'Wege aus den Bäumen',
  outOfTrees: 'Aus den Bäumen',
  chooseBelow: 'Unten einen Schlag wählen, um zu sehen, wie er an den Bäumen vorbeikommt.',
  looking: 'Die Bäume um den Ball werden betrachtet.',
  onceWorkedOut: 'Die Wege werden verglichen, sobald das Loch genau berechnet ist.',
  noClub: 'Kein Schläger im Bag wird von hier gespielt: siehe unten die Möglichkeiten zu droppen.',
  none: 'keine',
  openGap: 'offen',
  columns: {
    way: 'Weg',
    gap: 'Lücke / eigene',
    through: 'Durch',
    strokes: 'Schläge',
  },
  tryIt: 'Versuchen',
  note: 'Schläge aus wenigen Ziehungen; einen wählen, um ihn als eigenes Ziel genau zu werten. Die Tabelle unten enthält auch das Droppen bei unspielbarem Ball. Wie dicht die Bäume sind, ist eine Annahme der Karte: vor dem Schlag hinsehen und nie auf Menschen zu spielen.',
};
