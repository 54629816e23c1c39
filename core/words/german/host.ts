/** What the page itself says of the machine beneath it: gone, too large, not text, where a file went. In German. */

import type { host as english } from '../english/host.ts';

export const host: typeof english = {
  savedAs: ({ where }) => `Gespeichert als ${where}.`,
  partGone:
    'Der Teil von Holewright, der Dateien liest und schreibt, antwortet nicht. Dieses Fenster offen lassen, Unverzichtbares kopieren, dann Holewright beenden und neu starten.',
  serverGone:
    'Das Programm hinter dieser Seite ist beendet. Dieses Fenster offen lassen: Die Arbeit ist noch darin. „npm start“ noch einmal ausführen, aus dem neuen Fenster eine Kopie speichern, dann dieses schließen.',
  noFile: 'Keine Datei gewählt.',
  printPlace: 'der im Druckfenster gewählte Ort (dort „Als PDF speichern“ als Drucker wählen)',
  largerThan: ({ name, size }) =>
    `${name} ist größer als ${size}. Im Ursprungsprogramm verkleinern und noch einmal versuchen.`,
  notText: ({ name }) =>
    `${name} ließ sich nicht als UTF-8-Text lesen. Noch einmal als GeoJSON oder JSON ausgeben und neu versuchen.`,
  copyingStopped: ({ name }) => `Das Kopieren von ${name} wurde angehalten. Nichts wurde behalten.`,
};
