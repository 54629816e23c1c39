/** Short game and putting in the Player room: part swings, putts, up and downs. In German. */

import type { shortGame as english } from '../english/short-game.ts';
import { figures } from './figures.ts';

const { counted } = figures;

export const shortGame: typeof english = {
  putting: {
    hardly: ({ what, tell }) =>
      ` Die Aufzeichnung sagt noch kaum etwas über ${what}: Hier zählt, was zu erwarten ist. ${tell}`,
    errors: {
      direction: 'den Fehler der Richtung',
      length: 'den Fehler der Länge',
      both: 'die Fehler von Richtung und Länge',
    },
    name: 'Putten',
    direction: 'Richtung ±',
    length: 'Länge ±',
    caption: 'Chance einzulochen nach Entfernung',
    chance: 'Chance einzulochen',
    longTell: 'Putts von 20 Fuß und mehr sagen am meisten.',
    shortTell: 'Putts von 3 bis 10 Fuß sagen am meisten.',
    restsOnPutts: ({ putts, more }) =>
      `Aus ${putts} notierten Putts, nach größter Wahrscheinlichkeit; unter jeder Zahl der Bereich, der in neun von zehn Fällen den wahren Wert enthält.${more}`,
    stated: 'Wie die Datei es angibt, nicht aus notierten Putts. Der Test dauert zehn Minuten.',
    preset: ({ source }) => `Grundlage: ${source}, keine eigenen Putts. Der Test dauert zehn Minuten.`,
  },
  saves: {
    kinds: { chip: 'Chip', pitch: 'Pitch', bunker: 'Bunker am Grün' },
    small: { chip: 'Chip', pitch: 'Pitch', bunker: 'Bunker' },
    name: 'Up and Downs',
    title: 'Up and Down',
    fromA: 'Aus',
    onRecord: 'Notiert',
    chance: 'Chance, %',
    saved: 'Gerettet',
    of: ({ saved, tries }) => `${saved} von ${tries}`,
    takeOut: ({ kind }) => `Notiertes herausnehmen: ${kind}`,
    takeOutStep: ({ kind }) => `Up and Downs herausnehmen: ${kind}`,
    triedFrom: ({ kind }) => `Versucht: ${kind}`,
    savedFrom: ({ kind }) => `Gerettet: ${kind}`,
    add: ({ kind }) => `Up and Downs hinzufügen: ${kind}`,
    addStep: ({ kind }) => `Up and Downs hinzufügen: ${kind}`,
  },
  parts: {
    name: 'Teilschwünge',
    none: 'Kein Schläger wird für Teilschwünge benutzt. Unter „Schläger“ bei einem Wedge „Teil, nach Gefühl“ ankreuzen.',
    caption: 'Standardabweichung des Carrys nach gewünschter Länge',
    carry: ({ unit }) => `Carry ±, ${unit}, bei gewünschten`,
    howTo:
      'Zum Messen: eine Länge wählen, schlagen und den Schlag mit dem Schwung „Teilschwung“ und der Länge unter „Gewollt“ eintippen. Ab acht Schlägen zählen sie; Wedges mit weniger teilen sich ihre.',
  },
  log: {
    distanceFault: ({ most, unit }) => `Die Entfernung ist eine Zahl von 1 bis ${most} ${unit}.`,
    pastFault: 'Wo er liegen blieb, ist eine Zahl: hinter dem Loch, oder mit Minus davor.',
    addStep: 'ein Grün ins Protokoll',
    name: 'Putt-Protokoll',
    title: 'Protokoll der Grüns',
    firstFrom: ({ unit }) => `Erster Putt aus, ${unit}`,
    putts: 'Putts',
    stopped: ({ unit }) => `Erster blieb liegen, ${unit} dahinter (− davor)`,
    optional: 'freiwillig',
    greens: ({ count }) => counted(count, { one: 'Grün', other: 'Grüns' }),
    count: ({ greens }) => `${greens} im Protokoll.`,
    last: 'Letzte Grüns im Protokoll',
    takeOut: ({ green }) => `${green} herausnehmen`,
    takeOutStep: 'ein Grün aus dem Protokoll nehmen',
  },
  add: 'Hinzufügen',
  puttCount: ({ count }) => counted(count, { one: 'Putt', other: 'Putts' }),
  takeOut: 'herausnehmen',
  from: 'Aus',
  test: {
    name: 'Zehn-Minuten-Test',
    explain:
      'Auf einem ebenen Teil des Übungsgrüns, jedes Mal von einer anderen Seite des Lochs, ein Putt je Versuch. Das Geschehene eintragen; Entfernungen ohne Zahl unter „Eingelocht“ bleiben außen vor.',
    addStep: 'Putt-Test hinzufügen',
    tried: 'Versucht',
    holed: 'Eingelocht',
    triedFrom: ({ feet }) => `Versucht aus ${feet} ft`,
    holedFrom: ({ feet }) => `Eingelocht aus ${feet} ft`,
    record: 'Diesen Test notieren',
    onRecord: 'Notierte Tests',
    undated: 'ohne Datum',
    takeOut: ({ day }) => `Test herausnehmen: ${day}`,
    takeOutStep: 'Putt-Test herausnehmen',
  },
};
