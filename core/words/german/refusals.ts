/** What the host refuses and why: files, copies, journals, the disk, printing. In German. */

import type { refusals as english } from '../english/refusals.ts';
import { capital } from '../capital.ts';

export const refusals: typeof english = {
  doing: {
    openingWorkspace: ({ folder }) => `das Öffnen des Arbeitsordners ${folder}`,
    readingFolder: ({ folder }) => `das Lesen des Ordners „${folder}“`,
    opening: ({ name }) => `das Öffnen von ${name}`,
    openingToEdit: ({ name }) => `das Öffnen von ${name} zum Bearbeiten`,
    saving: ({ name }) => `das Speichern von ${name}`,
    writing: ({ name }) => `das Schreiben von ${name}`,
    reading: ({ name }) => `das Lesen von ${name}`,
    readingCopies: ({ name }) => `das Lesen der aufbewahrten Kopien von ${name}`,
    readingAttachments: ({ name }) => `das Lesen der Bilder und Kartendateien von ${name}`,
    readingAllAttachments: 'das Lesen der Bilder und Kartendateien der Plätze',
    copyingBeside: ({ name, course }) => `das Kopieren von ${name} neben ${course}`,
    writingJournal: ({ name }) => `das Schreiben des Journals von ${name}`,
    readingJournal: ({ name }) => `das Lesen des Journals von ${name}`,
    clearingJournal: ({ name }) => `das Leeren des Journals von ${name}`,
    savingSettings: 'das Speichern der Einstellungen',
    readingSettings: 'das Lesen der Einstellungen',
  },
  diskFull: ({ doing }) =>
    `Die Platte ist voll, daher wurde ${doing} abgebrochen. Die Datei auf der Platte ist, wie sie war. Platz schaffen und noch einmal versuchen.`,
  forbidden: ({ doing, code }) =>
    `Das System erlaubt ${doing} nicht (${code}). Prüfen, wer in diesem Ordner lesen und schreiben darf, dann noch einmal versuchen.`,
  gone: ({ doing }) =>
    `${capital(doing)} ist gescheitert: Die Datei oder ihr Ordner ist nicht mehr da. Zurücklegen, oder die Arbeit unter einem neuen Namen speichern.`,
  notPlain: ({ doing }) =>
    `${capital(doing)} wurde abgelehnt: Es ist eine Verknüpfung oder keine gewöhnliche Datei. Eine Kopie der Datei selbst in den Ordner legen.`,
  tooLarge: ({ doing }) =>
    `${capital(doing)} wurde abgelehnt: Die Datei ist größer als 64 MiB. Verkleinern und noch einmal versuchen.`,
  busy: ({ doing, code }) =>
    `${capital(doing)} ist gescheitert: Ein anderes Programm benutzt die Datei gerade (${code}). Gleich noch einmal versuchen.`,
  failed: ({ doing, reason }) =>
    `${capital(doing)} ist gescheitert (${reason}). Noch einmal versuchen; bleibt es dabei, anderswo eine Kopie aufbewahren.`,
  folderGone: ({ folder, doing }) =>
    `Der Ordner „${folder}“ ist nicht mehr da, daher war ${doing} nicht möglich. Die Arbeit bleibt in diesem Fenster: Laufwerk oder Ordner zurückbringen und noch einmal versuchen.`,
  workspaceIsLink: ({ folder }) =>
    `Der Arbeitsordner „${folder}“ ist zu einer Verknüpfung geworden. Den echten Ordner zurückbringen und Holewright neu starten.`,
  exportsIsLink: ({ folder, workspace }) =>
    `Der Ordner „${folder}“ in „${workspace}“ ist zu einer Verknüpfung geworden, daher wurde nichts geschrieben. Dort einen echten Ordner anlegen und noch einmal versuchen.`,
  notHeld: ({ name }) =>
    `Dieses Fenster hat ${name} nicht (mehr) zum Bearbeiten, daher wurde nichts geschrieben. Die Arbeit bleibt hier: noch einmal zum Bearbeiten öffnen, oder als neue Datei speichern.`,
  noSuchFile:
    'Diese Datei ist nicht mehr im Arbeitsordner. Eine andere wählen, oder die Arbeit als neue Datei speichern.',
  isDemo: ({ name }) =>
    `${name} ist eine der Demo-Dateien und bleibt, wie sie ist. Die Arbeit als eigene Datei speichern.`,
  changedOnDisk: ({ name }) =>
    `${name} wurde seit dem Öffnen von einem anderen Programm geändert. Nichts wurde geschrieben: die Fassung auf der Platte öffnen, oder die eigene als neue Datei speichern.`,
  journalFull: ({ name }) =>
    `Das Journal von ${name} ist voll (256 MiB), daher steht diese Änderung nicht darin. ${name} speichern: Das schafft Platz.`,
  content: {
    notText: ({ name }) =>
      `${name} ist kein UTF-8-Text. Die Datei ist vielleicht beschädigt oder von anderer Art: noch einmal als GeoJSON oder JSON ausgeben, oder eine Kopie aus dem Ordner .holewright-backups daneben nehmen.`,
    wouldBeTooLarge: ({ name }) =>
      `${name} wäre größer als 64 MiB. Nichts wurde geschrieben; verkleinern und noch einmal speichern.`,
    oddCharacters: ({ name }) =>
      `${name} enthält Zeichen, die keine Textdatei fasst (eine Null oder ein halbes Zeichen). Nichts wurde geschrieben; entfernen und noch einmal speichern.`,
    notWritten: ({ name, fault }) =>
      `${name} wurde nicht geschrieben: ${fault}. Auf der Platte wurde nichts geändert.`,
    incomplete: ({ reason }) => `kein vollständiges JSON (${reason})`,
    cutOff: 'abgeschnitten',
    noObject: 'kein JSON-Objekt',
    noCollection: 'keine FeatureCollection in GeoJSON',
    noFeatures: 'ihre Liste der Objekte fehlt',
    unreadable: 'nicht lesbar',
    fault: ({ where, message, more }) =>
      `${where}: ${message.replace(/\.$/u, '')}${more === 0 ? '' : ` (und ${more} mehr)`}`,
  },
  attachments: {
    noCourse: ({ name }) => `${name} ist kein Platz. Bilder und Kartendateien gehören zu einem Platz.`,
    gone: 'Dieses Bild oder diese Kartendatei liegt nicht mehr neben dem Platz. Zurücklegen, oder neu anhängen.',
    isDemo: ({ name }) =>
      `${name} ist eine der Demo-Dateien und bleibt, wie sie ist. Als eigene Datei speichern, dann daran anhängen.`,
    unfit: ({ name }) =>
      `${name} ist weder Bild (PNG, JPEG, WebP) noch GeoTIFF, PMTiles oder MBTiles und wurde daher nicht kopiert. Als eines davon ausgeben und noch einmal versuchen.`,
    tooLarge: ({ name }) =>
      `${name} ist zum Anhängen zu groß: Bilder dürfen 256 MiB haben, Kartendateien 2 GiB. Nichts wurde kopiert; verkleinern und noch einmal versuchen.`,
    noRoom: ({ name }) =>
      `Auf der Platte ist zu wenig Platz für ${name}. Nichts wurde kopiert; Platz schaffen und noch einmal versuchen.`,
    brokeOff: ({ name }) =>
      `${name} hat sich beim Kopieren geändert oder brach ab, daher wurde nichts behalten. Noch einmal versuchen.`,
    stopped: ({ name }) => `Das Kopieren von ${name} wurde angehalten. Nichts wurde behalten.`,
    notPlain: ({ name }) => `${name} ist keine gewöhnliche Datei. Eine andere wählen.`,
    noTiles: ({ name }) => `${name} ist keine MBTiles-Datei und hat daher keine Kacheln.`,
    noIndex: ({ name }) =>
      `Eine Kachel in ${name} zu suchen dauert zu lange: Der Index fehlt. Die MBTiles-Datei neu anlegen, mit einem Index über Zoom, Spalte und Zeile.`,
    damagedTiles: ({ name, reason }) =>
      `${name} ließ sich nicht als MBTiles lesen (${reason}). Die Datei neu anlegen oder holen und noch einmal anhängen.`,
  },
  noExport: ({ name }) => `${name} ist keine Art von Datei, die geschrieben wird.`,
  inExports: ({ folder, name, workspace }) => `${folder}/${name} im Ordner ${workspace}`,
  isThere: ({ name }) =>
    `${name} gibt es schon, daher wurde nichts geschrieben. Unter einem anderen Namen speichern.`,
  noneOfOurs: ({ name }) => `${name} ist weder Platz noch Spieler noch Runde und wurde daher nicht geöffnet.`,
  noneChosen: 'Keine Datei gewählt.',
  nothingWritten: 'Nichts wurde geschrieben.',
  noPdf: 'Kein PDF wurde geschrieben.',
  notLaidOut: ({ reason }) =>
    `Die Seite ließ sich nicht für Papier setzen (${reason}). Stattdessen drucken, oder noch einmal versuchen.`,
  nothingPrinted: 'Nichts wurde gedruckt.',
  printer: ({ reason }) =>
    `Der Drucker hat es nicht angenommen (${reason}). Den Drucker prüfen, oder stattdessen als PDF speichern.`,
  windowClosed: 'Das Fenster ist geschlossen. Holewright neu starten.',
  request: {
    ownPageOnly: 'Danach darf nur die Seite des Programms selbst fragen.',
    tooLarge:
      'Das sind mehr als 64 MiB. Nichts wurde geschrieben; die Datei verkleinern und noch einmal versuchen.',
    textTooLarge:
      'Das sind mehr als 64 MiB Text. Nichts wurde geschrieben; die Datei verkleinern und noch einmal versuchen.',
    fileTooLarge: ({ name }) => `${name} ist größer als 64 MiB. Nichts wurde geschrieben.`,
    malformed: ({ method }) =>
      `Die Anfrage „${method}“ ist nicht, wie sie sein soll. Nichts wurde getan; das Fenster neu laden und noch einmal versuchen.`,
    malformedAt: ({ method, where }) =>
      `Die Anfrage „${method}“ ist bei „${where}“ nicht, wie sie sein soll. Nichts wurde getan; das Fenster neu laden und noch einmal versuchen.`,
    answer: ({ method }) =>
      `Das Programm gab auf „${method}“ eine Antwort, die diese Seite nicht versteht. Jedes Fenster von Holewright schließen und neu starten.`,
    failedAt: ({ method, error }) =>
      `Das Programm ist bei „${method}“ gescheitert: ${error}. Noch einmal versuchen.`,
    failed: ({ error }) => `Das Programm ist gescheitert: ${error}. Noch einmal versuchen.`,
    unknown: 'Eine solche Anfrage kennt das Programm nicht.',
    noFile: 'Die Anfrage ist keine Datei.',
    noSize: 'Die Anfrage sagt nicht, wie groß die Datei ist.',
    noName: 'Die Anfrage sagt nicht, wie die Datei heißt.',
    notJson: 'Die Anfrage ist kein JSON.',
    incomplete: 'Die Anfrage ist kein vollständiges JSON in UTF-8.',
    otherAddress: 'Das ist nicht die Adresse, die das Programm genannt hat.',
    noPath: 'Die Anfrage hat keinen schlichten Pfad.',
    foreignPage: 'Die Anfrage kommt von einer fremden Seite.',
    startOnly: 'Eine Startadresse wird geöffnet, sonst nichts.',
    readAndPost: 'Hier wird nur gelesen und geschickt.',
    noOrigin: 'Die Anfrage sagt nicht, von welcher Seite sie kommt.',
    noKey:
      'Dieses Fenster hat keinen Schlüssel. Die Adresse öffnen, die das Terminal zeigt; die Eingabetaste gibt dort eine neue.',
    nothingHere: 'An dieser Adresse gibt es nichts.',
    usedStart: 'Diese Startadresse wurde schon benutzt. Die Eingabetaste gibt im Terminal eine neue.',
  },
  page: {
    opening: 'Holewright wird geöffnet.',
    goOn: 'Weiter',
    ifNothing: 'falls nichts geschieht.',
    notOpened: 'Holewright: nicht geöffnet',
    didNotOpen: 'Holewright hat sich hier nicht geöffnet',
  },
};
