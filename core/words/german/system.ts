/** What the desktop program says outside its page: menu, dialogs for files, mishaps. In German. */

import type { system as english } from '../english/system.ts';

export const system: typeof english = {
  program: 'Holewright',
  menu: {
    program: '&Holewright',
    about: 'Über Holewright',
    quit: 'Beenden',
    text: '&Text',
    cut: 'Ausschneiden',
    copy: 'Kopieren',
    paste: 'Einfügen',
    selectAll: 'Alles auswählen',
    window: '&Fenster',
    larger: 'Größer',
    smaller: 'Kleiner',
    usualSize: 'Normale Größe',
    wholeScreen: 'Ganzer Bildschirm',
    minimise: 'Minimieren',
  },
  about: {
    version: ({ version }) => `Holewright ${version}`,
    files: ({ folder }) => `Eigene Dateien: ${folder}`,
  },
  bringIn: {
    course: 'Platzdatei, die in den Arbeitsordner kopiert wird',
    player: 'Spielerdatei, die in den Arbeitsordner kopiert wird',
    round: 'Rundendatei, die in den Arbeitsordner kopiert wird',
  },
  kinds: { course: 'Platz', player: 'Spieler', round: 'Runde' },
  everyFile: 'Alle Dateien',
  attach: 'Bild oder Kartendatei, die neben den Platz kopiert wird',
  picturesAndMaps: 'Bilder und Kartendateien',
  saveAs: ({ kind }) => `Speichern als ${kind}`,
  exports: {
    pdf: 'PDF',
    '.geojson': 'Karte (GeoJSON)',
    '.json': 'Daten (JSON)',
    '.csv': 'Tabelle (CSV)',
    '.svg': 'Zeichnung (SVG)',
    '.png': 'Bild (PNG)',
  },
  mishaps: {
    savedWork:
      'Die Dateien auf der Platte sind, wie zuletzt gespeichert; angefangene Arbeit wird beim Öffnen der Seite wieder angeboten.',
    openAgain: 'Seite neu öffnen',
    quit: 'Beenden',
    wait: 'Warten',
    stopped: ({ cause }) => `Die Seite des Fensters ist stehen geblieben (${cause}).`,
    noMemory: 'der Speicher ging aus',
    stoppedDetail: ({ savedWork }) => `${savedWork} Bleibt sie wieder stehen, einen kleineren Platz öffnen.`,
    noAnswer: 'Das Fenster antwortet nicht.',
    noAnswerDetail: ({ savedWork }) =>
      `Warten hilft oft. Die Seite neu zu öffnen bricht ab, was sie gerade tat. ${savedWork}`,
    partMissing: ({ path, reason }) => `Ein Teil des Programms ließ sich nicht laden (${path}: ${reason}).`,
    notLoaded: ({ reason, address }) => `Die Seite ließ sich nicht laden (${reason}, ${address}).`,
    notBuilt: ({ folder }) => `Die Seite ist nicht gebaut: In ${folder} fehlt index.html.`,
    unsaved: 'Ein Teil der Arbeit ist noch nicht gespeichert.',
    unsavedDetail:
      'Zurück, um zu speichern; oder schließen und verlieren, was nach dem letzten Speichern kam.',
    goBack: 'Zurück',
    closeUnsaved: 'Ohne Speichern schließen',
    hasToClose: 'Holewright muss schließen',
    endDetail: ({ what, savedWork }) =>
      `${what}\n\n${savedWork} Das Programm neu starten; kommt das wieder, im Ordner des Programms „npm ci“ und „npm run build“ ausführen.`,
  },
};
