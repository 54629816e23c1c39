/** Bringing in a map file. In German. */

import type { mapImport as english } from '../english/map-import.ts';
import { figures } from './figures.ts';

const { counted } = figures;

export const mapImport: typeof english = {
  title: 'Kartendatei einlesen',
  file: 'Einzulesende Kartendatei',
  explain:
    'Als Datei gespeicherte OpenStreetMap-Daten, GeoJSON beliebiger Programme, auf dem Platz abgegangene GPX-Punkte und -Spuren, Bodenhöhen als GeoTIFF. Vor jeder Änderung ist zu sehen, was die Datei bringt.',
  reading: ({ file }) => `${file} wird gelesen …`,
  workingOut: 'Es wird ermittelt, was sie bringt …',
  takeIn: 'Übernehmen',
  leave: 'Nicht weiter',
  choose: 'Datei wählen …',
  cannot: ({ file }) => `${file} lässt sich nicht einlesen:`,
  report: {
    name: 'Was die Datei bringt',
    takenIn: ({ file }) => `Übernommen aus ${file}`,
    nothing: ({ file }) => `${file} bringt nichts`,
    brings: ({ file }) => `${file} bringt`,
    features: ({ count }) => counted(count, { one: 'Objekt', other: 'Objekte' }),
    makeRoom: ({ features }) => `${features} eines früheren Einlesens machen Platz dafür.`,
    putToHoles: ({ byNumber, byNearness }) =>
      `Löchern zugeordnet: ${byNumber} nach ihrer Nummer, ${byNearness} nach Nähe.`,
    noHole: 'Keinem Loch zugeordnet',
    leftOut: 'Außen vor',
    toKnow: 'Zu wissen',
    sources: 'Als Quellen zu nennen',
    more: ({ count }) => `und ${count} weitere`,
  },
  wishes: {
    tracks: 'Spuren umgehen',
    byName: 'was ihre Namen sagen',
    levelEvery: 'Eine Höhe alle',
    again: 'Neu ermitteln',
    tagged: ({ tagged, features }) => `${tagged} von ${features} Objekten sagen selbst, was sie sind.`,
    standsIn: 'Was es ist, steht in',
    knownTags: 'bekannten Tags',
    holeIn: 'Lochnummer steht in',
    caption: ({ property }) => `Welcher Wert von ${property} als welche Art gezeichnet wird`,
    value: 'Wert',
    times: 'Anzahl',
    drawnAs: 'Gezeichnet als',
    isDrawnAs: ({ value }) => `${value} wird gezeichnet als`,
    leftOut: 'außen vor',
  },
  faults: {
    unknown:
      'Keine der Dateien, die sich einlesen lassen: OpenStreetMap-Daten (XML oder JSON), GeoJSON, GPX oder ein GeoTIFF mit Höhen.',
    notText: 'Kein UTF-8-Text. Noch einmal als UTF-8 ausgeben.',
    file: 'die Datei',
    ended:
      'Das Lesen brach ab, wohl weil der Speicher nicht reicht. Auf den Platz zuschneiden und noch einmal einlesen; nichts wurde geändert.',
    tooLarge: ({ most }) => `Größer als ${most} MiB. Auf den Platz zuschneiden.`,
  },
};
