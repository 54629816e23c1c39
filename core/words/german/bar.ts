/** The bar at the top: rooms, files, undo, settings, print and help; and the notices. In German. */

import type { bar as english } from '../english/bar.ts';
import { figures } from './figures.ts';

const { counted } = figures;

export const bar: typeof english = {
  rooms: {
    plan: 'Planung',
    course: 'Platz',
    player: 'Spieler',
    round: 'Runde',
  },
  roomsOfProgram: 'Bereiche des Programms',
  nothingToUndo: 'Nichts rückgängig zu machen',
  undo: ({ step }) => `Rückgängig: ${step} (Strg+Z)`,
  nothingToRedo: 'Nichts zu wiederholen',
  redo: ({ step }) => `Wiederholen: ${step} (Strg+Umschalt+Z)`,
  undoAndRedo: 'Rückgängig und Wiederholen',
  units: 'Einheiten',
  yards: 'Yards',
  metres: 'Meter',
  theme: 'Farben',
  asTheSystem: 'System',
  light: 'Hell',
  dark: 'Dunkel',
  language: 'Sprache',
  printThisHole: 'Dieses Loch drucken',
  chooseHoleToPrint: 'Zum Drucken ein Loch wählen',
  help: 'Hilfe',
  files: {
    course: {
      name: 'Platz',
      bring: 'Platzdatei einlesen',
      none: 'Noch kein Platz',
    },
    player: {
      name: 'Spieler',
      bring: 'Spielerdatei einlesen',
      none: 'Noch kein Spieler',
    },
  },
  readingFiles: 'Dateien werden gelesen …',
  inventedDemoMark: '(erfundene Demo)',
  noteCount: ({ count }) => counted(count, { one: 'Hinweis', other: 'Hinweise' }),
  notesOn: ({ notes, kind }) => `${notes} zur ${kind === 'course' ? 'Platzdatei' : 'Spielerdatei'}`,
  closeNotice: 'Diese Meldung schließen',
  couldNotBeOpened: ({ name }) => `${name} ließ sich nicht öffnen`,
  changedByOther: ({ name }) => `${name} wurde von einem anderen Programm geändert`,
  notesOnFile: ({ name }) => `Hinweise zu ${name}`,
  toPutRight: ({ count }) =>
    `${counted(count, { one: 'Stelle ist', other: 'Stellen sind' })} darin zu berichtigen.`,
  chooseOrMend: 'Eine andere Datei wählen, oder diese berichtigen und neu einlesen.',
  staysOpen: ({ name }) => `${name} bleibt geöffnet.`,
  worthALook: 'Die Datei ist geöffnet; diese Stellen sind einen Blick wert.',
  asItWasBefore: 'Zu sehen ist der Stand von vorher.',
  readAgain: 'Neu lesen',
  warning: 'Hinweis',
  holeTitle: ({ number }) => `Loch ${number}`,
  calculationFailed: 'Eine Berechnung konnte nicht weiterlaufen',
  startAgain: ({ message }) => `${message} Das Fenster schließen und das Programm neu starten.`,
  calculationStopped: 'Eine Berechnung ist abgebrochen',
  begunAnew:
    'Alles wurde von selbst neu begonnen; die betroffenen Löcher werden noch einmal berechnet. Dateien und Zeichnungen sind unberührt.',
  chooseAgain: ({ said }) =>
    `Technische Meldung (englisch): „${said}“. Das Loch noch einmal wählen; geschieht es wieder, das Fenster schließen und das Programm neu starten.`,
  engineSaid: ({ said }) => `Technische Meldung (englisch): „${said}“.`,
  calculationNotStarted: 'Eine Berechnung ließ sich nicht starten.',
  settingsNotKept: 'Einstellungen wurden nicht gespeichert',
  noAnswer: 'Das Programm antwortet nicht',
  noFileList: 'Die Liste der Dateien ließ sich nicht lesen',
  noLongerThere: ({ name }) => `${name} liegt nicht mehr im Ordner`,
  staysTillClosed:
    'Was zu sehen ist, bleibt bis zum Schließen des Fensters. Zum Weiterarbeiten die Datei zurücklegen oder sie unter „Platz“ oder „Spieler“ neu schreiben.',
  leftBehind: ({ name }) => `Ungespeicherte Arbeit an ${name}`,
  leftBehindWhy: ({ when }) =>
    `Notiert am ${when} und nicht gespeichert; die Datei liegt nicht mehr im Ordner. Daraus kann wieder eine Datei werden; bis zur Entscheidung bleibt alles auf der Platte.`,
  keepAsFile: {
    course: 'Zur Datei machen und öffnen',
    player: 'Zur Datei machen und öffnen',
    round: 'Zur Datei machen; zu finden bei den Runden',
  },
  notKeptAsFile: ({ name }) => `Aus der Arbeit an ${name} wurde keine Datei`,
  notGivenUp: ({ name }) => `Die Arbeit an ${name} liegt noch auf der Platte`,
  notBroughtIn: 'Die Datei ließ sich nicht einlesen',
  printingFailed: 'Drucken ist fehlgeschlagen',
};
