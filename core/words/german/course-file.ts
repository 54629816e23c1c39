/** The file of a course: beginning, opening, saving, lost work, earlier versions. In German. */

import type { courseFile as english } from '../english/course-file.ts';
import { figures } from './figures.ts';

const { counted } = figures;

export const courseFile: typeof english = {
  saved: 'gespeichert',
  openFirst: 'Zuerst einen Platz öffnen oder beginnen.',
  gone: ({ name }) =>
    `${name} liegt nicht mehr im Ordner. Die Arbeit ist noch hier und im Journal, aber es gibt keine Datei, in die sie gespeichert werden könnte.`,
  writeAnew: 'Die Datei neu schreiben',
  writtenAnew: ({ name }) => `Die Arbeit steht jetzt in ${name}.`,
  unreadable: 'nicht lesbar.',
  cannotEdit: ({ name, why }) => `${name} lässt sich nicht bearbeiten: ${why}`,
  demo: ({ name }) => `${name} ist eine Demo und bleibt, wie sie ist. Zum Bearbeiten eine Kopie anlegen.`,
  asking: 'Die Datei wird angefragt …',
  onOpening: ({ notes }) => `Beim Öffnen: ${notes}`,
  notSavedOnLeaving: ({ name, message }) =>
    `${name} ließ sich beim Verlassen nicht speichern: ${message} Die Änderungen stehen im Journal und werden beim nächsten Öffnen angeboten.`,
  kept: 'Die Änderungen bleiben in diesem Fenster und im Journal; das Speichern wird von selbst wieder versucht.',
  notSaved: ({ message, kept }) => `Nicht gespeichert: ${message} ${kept}`,
  onDiskUnreadable: ({ why }) =>
    `Die Datei auf der Platte ist nicht lesbar (${why}). Darüber speichern, oder zu einer aufbewahrten Kopie zurück.`,
  notInJournal: ({ message }) =>
    `Die letzte Änderung steht noch nicht im Journal: ${message} In diesem Fenster ist sie noch.`,
  journalUnreadable: ({ message }) => `Das Journal früherer Änderungen ist nicht lesbar: ${message}`,
  bringBackStep: 'Ungespeicherte Änderungen zurückholen',
  giveName: 'Dem Platz zuerst einen Namen geben.',
  longName: ({ length, most }) => `Der Name hat ${length} Zeichen; ${most} genügen.`,
  newUnreadable: 'Die neue Datei ist nicht lesbar.',
  writePlace: 'Breite und Länge in Grad eintragen, etwa 52.3702, 4.8952.',
  holder: {
    window: 'Ein anderes Fenster',
    program: 'Ein anderes Programm auf diesem Rechner',
    somebody: 'von jemand anderem',
    computer: ({ whose }) => `Der Rechner ${whose}`,
    held: ({ where, when }) =>
      `${where} hat diesen Platz seit ${when} geöffnet. Hier lässt er sich ansehen; zum Bearbeiten dort schließen.`,
  },
  tryAgain: 'Noch einmal versuchen',
  course: 'Platz',
  myCopy: ({ name }) => `${name}, meine Kopie`,
  copying: 'Wird kopiert …',
  copyToEdit: 'Kopie zum Bearbeiten anlegen',
  lost: {
    name: 'Ungespeicherte Arbeit gefunden',
    title: ({ when }) => `Arbeit von ${when} wurde nicht gespeichert.`,
    notes: 'die Notizen des Platzes',
    wouldBring: ({ what }) => `Zurück käme: ${what}.`,
    changes: ({ count }) => counted(count, { one: 'Änderung', other: 'Änderungen' }),
    last: ({ changes, names, more }) => `${changes}, zuletzt: ${names}${more}`,
    bringBack: 'Zurückholen',
    giveUp: 'Endgültig aufgeben',
    added: ({ count }) => `${counted(count, { one: 'Objekt', other: 'Objekte' })} neu`,
    changed: ({ count }) => `${counted(count, { one: 'Objekt', other: 'Objekte' })} geändert`,
    removed: ({ count }) => `${counted(count, { one: 'Objekt', other: 'Objekte' })} entfernt`,
  },
  changedUnsaved: ({ name }) =>
    `${name} wurde von einem anderen Programm geändert, und hier gibt es ungespeicherte Änderungen. Von selbst gespeichert wird erst nach einer Wahl.`,
  changed: ({ name }) => `${name} wurde von einem anderen Programm geändert.`,
  takeOther: 'Die andere Fassung nehmen; meine aufgeben',
  readAgain: 'Neu lesen',
  keepMine: 'Meine behalten und darüber speichern',
  trySave: 'Jetzt speichern versuchen',
  beginAnother: 'Einen anderen Platz beginnen',
  begin: 'Einen Platz beginnen',
  noneOpen: 'Kein Platz geöffnet',
  chooseOrBegin: 'Oben in der Leiste einen wählen, oder hier einen beginnen.',
  copies: {
    title: 'Frühere Fassungen',
    unreadable: ({ why }) => `Diese Fassung ist nicht lesbar: ${why}`,
    same: 'Diese Fassung ist dieselbe wie auf der Karte.',
    goBackStep: ({ when }) => `Zurück zu ${when}`,
    asItWas: ({ when }) => `Das ist der Platz, wie er um ${when} war. Rückgängig holt den späteren zurück.`,
    none: 'Noch keine: Eine Kopie wird jedes Mal aufbewahrt, wenn eine Fassung überschrieben wird, im Abstand von einer Minute.',
    goBack: 'Dorthin zurück',
  },
  nameOfCourse: 'Name des Platzes',
  where: 'Wo er liegt: Breite, Länge',
  whereNote: 'Ein Punkt nahe der Mitte. Er darf fehlen, wenn danach eine Kartendatei eingelesen wird.',
  beginIt: 'Platz beginnen',
  lookingOnly: 'nur zum Ansehen',
  saving: 'speichert …',
  isNotSaved: 'nicht gespeichert',
  soon: 'wird gleich gespeichert',
  steps: ({ count }) => counted(count, { one: 'Schritt', other: 'Schritte' }),
  saveNow: ({ steps }) => `Jetzt speichern (Strg+S); ${steps} lassen sich zurücknehmen`,
  save: 'Speichern',
  savedNow: 'Gespeichert.',
  recover: {
    newer: 'Eine neuere Fassung des Programms hat es geschrieben. Den Platz zum Zurückholen damit öffnen.',
    noFit:
      'Die Datei wurde seitdem von einem anderen Programm geändert; diese Änderungen passen nicht mehr darauf.',
    lost: ({ count }) => `Die letzten ${count} Änderungen sind nicht lesbar.`,
    undo: ({ step }) => `Rückgängig: ${step}`,
    asOpened: 'Wie geöffnet',
  },
};
