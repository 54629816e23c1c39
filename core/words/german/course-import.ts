/** What a map file brings and what is left out of it, why, and what is wrong with the file. In German. */

import type { courseImport as english } from '../english/course-import.ts';
import { figures } from './figures.ts';

const { counted, short } = figures;

export const courseImport: typeof english = {
  from: { osm: 'OpenStreetMap', geojson: 'GeoJSON', gpx: 'GPX', heights: 'einem Höhenmodell' },
  step: ({ count, from }) => `${counted(count, { one: 'Objekt', other: 'Objekte' })} aus ${from} einlesen`,
  nothing: 'Die Datei enthält nichts, was der Platz aufnehmen könnte. Unten steht, was warum wegblieb.',
  courseChanged: 'Der Platz hat sich geändert, seit die Datei gelesen wurde. Noch einmal einlesen.',
  things: {
    others: 'anderes',
    element: 'Element',
    relation: 'Relation',
    waypoint: 'Wegpunkt',
    track: 'Track',
    route: 'Route',
    feature: 'Objekt',
    groundLevel: 'Bodenhöhe',
    building: 'Gebäude',
  },
  why: {
    manySorts: 'von zu vielen Sorten, um sie einzeln aufzuzählen',
    noLines: 'der Platz hat noch keine Spiellinien',
    manyLines: 'es gibt zu viele Spiellinien, um jede anzusehen',
    noneNear: {
      end: ({ metres }) => `kein Loch ist nahe: Keines endet innerhalb von ${metres} m`,
      'first-half': ({ metres }) => `kein Loch ist nahe: Keines beginnt innerhalb von ${metres} m`,
      whole: ({ metres }) => `kein Loch ist nahe: Keines verläuft innerhalb von ${metres} m`,
    },
    bothEnd: ({ first, second }) =>
      `die Löcher ${first} und ${second} enden beide darauf; es dient beiden, ohne Nummer`,
    asNear: ({ first, near, second, far }) =>
      `es liegt etwa so nahe bei Loch ${first} (${near} m) wie bei Loch ${second} (${far} m)`,
    known: 'steht schon im Platz, von einem früheren Einlesen',
    noHole: ({ why }) => `gehört zu keinem Loch, das es nennt, und ${why}`,
    tangled: ({ most }) =>
      `die Linie hat mehr als ${most} Punkte oder kreuzt sich immer wieder; vereinfachen`,
    noTag: 'hat kein bekanntes Tag und keine Zuordnung; angeben, welche Art es ist',
    drawnAs: ({ type, wanted }) => `ist als ${type} gezeichnet, verlangt ist ${wanted}`,
    outside: 'hat Koordinaten, die keine geografische Länge und Breite in Grad sind',
    noFeature: 'ist kein GeoJSON-Feature',
    noGeometry: 'hat keine Geometrie',
    unreadable: 'hat eine Geometrie, die sich nicht lesen lässt',
    waypointName: 'der Name nennt weder Abschlag noch Fahnenposition; etwa “3 tee white” oder “3 pin” nennen',
    trackName: 'der Name nennt keine Art; wählen, worum er herumführt, etwa um das Grün',
    isPoint: ({ kind }) => `„${kind}“ ist ein Punkt; als Wegpunkt markieren`,
    open: ({ kind }) =>
      `kommt nicht dorthin zurück, wo es begann, und umschließt daher nichts von der Art „${kind}“`,
    noHeight: 'das Modell hat dort keine Höhe',
    manyPoints: ({ most }) => `hat mehr als ${most} Punkte`,
    noPlace: 'hat keinen Ort: lat und lon fehlen oder liegen außerhalb des Bereichs',
    cannotBeRead: ({ place }) => `nicht lesbar (${place})`,
    practice: 'dient dem Üben, nicht dem Spiel',
    noShot: 'spielt für keinen Schlag eine Rolle',
    underGround: 'verläuft dort unter der Erde',
    noMeaning: 'bedeutet für das Spiel nichts',
    tags: {
      barrier: 'mit Zäunen, Mauern und Hecken wird nicht geplant; Aus zeichnen, wo sie es begrenzen',
      building: 'mit Gebäuden wird nicht geplant; Aus um sie herum zeichnen, wo es gilt',
      highway: 'mit Straßen und Wegen für andere als Spieler wird nicht geplant; mit golf=cartpath schon',
      power: 'mit Leitungen und Masten wird nicht geplant',
      landuse: 'mit dieser Landnutzung wird nicht geplant',
      natural: 'damit wird nicht geplant; Rough, hohes Rough oder Wald an die Stelle zeichnen',
      leisure: 'gehört nicht zum Spiel',
      waterway: 'nur stream, ditch, drain, canal und river werden aufgenommen',
      golf: 'dieser Wert von golf ist nicht bekannt',
    },
    partOfOutline:
      'nicht der ganze Umriss steht in der Datei; die Datei mit allen Mitgliedern der Relationen speichern',
    noOutline: 'hat keinen Umriss',
    gap: ({ lat, lon }) => `der Umriss hat eine Lücke nahe ${lat}, ${lon}`,
    fewCorners: 'einer der Umrisse hat weniger als 3 Ecken',
    intricate: 'hat zu viele Umrisse ineinander',
    onlyMultipolygons: 'nur Relationen der Art multipolygon haben einen eigenen Umriss',
    noArea: 'ist als Fläche mit mehreren Umrissen gezeichnet und ist keine Fläche',
    noPoints: 'hat keine Punkte; die Datei mit den Punkten der Wege speichern',
    pointsMissing: 'nicht alle Punkte stehen in der Datei; ein größeres Gebiet speichern',
    wantsPoint: 'ist als Linie oder Fläche gezeichnet, wo ein Punkt hingehört',
    notClosed: 'der Umriss ist nicht geschlossen; schließen, oder die Fläche hier zeichnen',
    isDrawnAsPoint: 'ist als Punkt gezeichnet; Umriss oder Linie hier zeichnen',
    muchWater: 'in der Datei ist zu viel fließendes Wasser; nur den Platz speichern',
    badLine: 'die Linie ist zu lang, hat keine Länge oder kreuzt sich immer wieder',
    manyTrees: ({ most }) => `das wären mehr als ${most} Bäume; stattdessen Wald zeichnen`,
  },
  notes: {
    times: ({ count, note }) => `${count} × ${note}`,
    crossing: ({ count }) =>
      `${count} Umrisse kreuzen sich selbst. Aufgenommen werden sie trotzdem; die Prüfung nennt sie.`,
    numbered: ({ count, numbers }) =>
      `${count} Spiellinien ohne Nummer bekamen ${numbers}. Die Löcher in die richtige Reihenfolge bringen.`,
    andSoOn: ({ numbers }) => `${numbers} und so fort`,
    twice: ({ holes }) =>
      `Für Loch ${holes} gibt es zwei Linien. Je eine umnummerieren oder entfernen, oder nur einen Platz auf einmal einlesen.`,
    lost: ({ count }) => `${count} Punkte ohne lesbares lat und lon werden übergangen.`,
    red: ({ what }) =>
      `${what} gilt als rote Penalty Area (Golfregeln 2023, Definition Penalty Area: rot, wo keine Farbe markiert ist)`,
    sand: 'natural=sand gilt als Bunker',
    scrub: ({ metres }) => `natural=scrub gilt als Wald, ${metres} m hoch, wo keine Höhe steht`,
    forest: 'landuse=forest gilt als Wald',
    strayInner: ({ what }) => `${what}: Innere Umrisse, die in keinem äußeren liegen, fallen weg`,
    teePoint: 'golf=tee als Punkt gilt als Teemarkierung',
    width: ({ what, metres }) => `${what} ohne Breite gilt als ${short(metres, 2)} m breit`,
    treeRow: 'natural=tree_row gilt als Bäume, Krone an Krone',
    heights: ({ metres, grid }) => `Höhen alle ${metres} m, gelesen aus ${grid}.`,
    metresTaken: 'Die Datei nennt keine Einheit der Höhe: Meter sind angenommen.',
    feet: ({ metres }) => `Die Höhen sind in Fuß und wurden mit ${metres} m umgerechnet.`,
    replaced: ({ count }) => `${count} Bodenhöhen eines früheren Höhenmodells werden ersetzt.`,
  },
  grids: {
    degrees: 'geografischer Länge und Breite in WGS 84',
    webMercator: 'Web Mercator',
    utm: ({ zone }) => `UTM-Zone ${zone} auf WGS 84`,
    none: 'keinem Koordinatensystem, das sie nennt',
    own: ({ citation }) => `einem eigenen System${citation}`,
  },
  faults: {
    tooMuch: ({ features, corners, mostFeatures, mostCorners }) =>
      `Das wären ${features} weitere Objekte mit ${corners} Ecken; ein Platz fasst ${mostFeatures} und ${mostCorners}. Die Datei auf den Platz selbst zuschneiden.`,
    manyLines: ({ count, most }) =>
      `Die Datei enthält ${count} Spiellinien; aufgenommen werden höchstens ${most}. Auf einen Platz zuschneiden.`,
    tooDeep: 'Zu tief verschachtelt für GeoJSON. Noch einmal ausgeben.',
    notGeoJson: 'Kein GeoJSON: weder Objekte noch Geometrie. Als GeoJSON (RFC 7946) ausgeben.',
    manyFeatures: ({ count, most }) =>
      `Die Datei enthält ${count} Objekte; gelesen werden höchstens ${most}. Auf den Platz zuschneiden.`,
    noDegrees: ({ what }) =>
      `Die Koordinaten von ${what} sind keine geografische Länge und Breite in Grad. Die Datei in WGS 84 (EPSG:4326) ausgeben, wie GeoJSON es verlangt.`,
    otherSystem: ({ system }) =>
      `Die Koordinaten stehen in ${system}. In geografischer Länge und Breite in WGS 84 (EPSG:4326) ausgeben.`,
    notGpx: ({ root }) =>
      `XML von anderer Art (<${root}>); GPX beginnt mit <gpx>. Die Tracks als GPX ausgeben.`,
    notOsm: ({ root }) =>
      `XML von anderer Art (${root}); Daten von OpenStreetMap beginnen mit <osm>. Das Gebiet als .osm ausgeben.`,
    empty: 'leer',
    noElements:
      'Ohne Liste der Elemente, wie sie Daten des Dienstes Overpass haben. Die Antwort noch einmal als JSON speichern.',
    manyCharacters: ({ count, most }) =>
      `Die Datei enthält ${count} Zeichen; gelesen werden höchstens ${most}. Ein kleineres Gebiet speichern.`,
    notXml: ({ format, why }) =>
      `Die Datei ist nicht als ${format} lesbar: ${why}. Aus dem Ursprungsprogramm noch einmal speichern.`,
    doctype: 'sie erklärt einen Dokumenttyp (DOCTYPE), der aus Sicherheit nicht gelesen wird',
    deepXml: ({ most }) => `sie ist mehr als ${most} Elemente tief verschachtelt`,
    largeXml: ({ most }) => `sie hat mehr als ${most} Elemente`,
    spacing: ({ metres }) => `Der Abstand ist in Metern, von 1 bis 1000, nicht ${metres}.`,
    nothingDrawn:
      'Vom Platz ist noch nichts gezeichnet, daher ist seine Lage nicht bekannt. Zuerst zeichnen oder einlesen.',
    manyLevels: ({ metres, count, most, wider }) =>
      `Im Abstand von ${metres} m wären es etwa ${count} Bodenhöhen; behalten werden höchstens ${most}. Einen Abstand von ${wider} m nehmen.`,
    noneInside: ({ metres }) =>
      `Kein Punkt eines Rasters von ${metres} m liegt innerhalb der Platzgrenze. Einen kleineren Abstand nehmen.`,
    noHeights: 'Das Modell hat über dem Platz keine Höhen. Eine andere Datei für diesen Ort wählen.',
    largeTiff: ({ most }) => `Die Datei ist größer als ${most} MiB. Auf den Platz zuschneiden.`,
    notTiff: ({ why }) => `Nicht als GeoTIFF lesbar: ${why}. Noch einmal herunterladen.`,
    brokenTiff: ({ why }) => `Nicht als GeoTIFF lesbar: ${why}. Noch einmal herunterladen, oder umwandeln.`,
    unpacks: 'Die Daten sind entpackt größer, als die Datei angibt. Noch einmal herunterladen.',
    damaged: 'die Daten sind beschädigt',
    otherGrid: ({ grid }) =>
      `Die Koordinaten stehen in ${grid}; gelesen werden geografische Länge und Breite, Web Mercator und UTM, jeweils auf WGS 84. Mit einem GIS-Programm in EPSG:4326 umwandeln.`,
    badSize: ({ sizes }) => `Eine Größe von ${sizes} Zellen kann nicht sein. Noch einmal herunterladen.`,
    compression: ({ method }) =>
      `Komprimiert mit Verfahren ${method}, das nicht gelesen wird. Mit Deflate oder LZW speichern, oder ohne.`,
    unit: 'Die Höhen sind in einer unbekannten Einheit. In Meter umwandeln.',
    notPlaced:
      'Die Datei sagt nicht, wo ihre Zellen liegen, oder sie liegen schräg. Mit einem GIS-Programm in EPSG:4326 umwandeln.',
    elsewhere: ({ west, east, south, north }) =>
      `Die Datei reicht von Länge ${west} bis ${east} und von Breite ${south} bis ${north} und nicht bis zum Platz. Die Datei für diesen Ort wählen.`,
    tooFine: 'Zu viele Zellen über dem Platz. Auf 1 m oder gröber umrechnen, oder zuschneiden.',
    tiff: {
      beginning: 'sie beginnt nicht wie eine TIFF-Datei',
      cutOff: 'das Verzeichnis liegt außerhalb der Datei, die also abgeschnitten ist',
      entries: ({ count }) => `ihr Verzeichnis hat ${count} Einträge`,
      tag: ({ tag }) =>
        `das Tag ${tag} zeigt aus der Datei hinaus, die also abgeschnitten oder beschädigt ist`,
    },
  },
};
