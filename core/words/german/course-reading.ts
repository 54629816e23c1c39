/** What is wrong with the text of a course file, what its members should hold, what is assumed. In German. */

import type { courseReading as english } from '../english/course-reading.ts';
import { figures } from './figures.ts';

const { short, whole } = figures;

export const courseReading: typeof english = {
  json: {
    tooLong: ({ count, most }) =>
      `Die Datei enthält ${count} Zeichen; gelesen werden höchstens ${most}. Teilen, oder Punkte ausdünnen.`,
    where: ({ line, column }) => `Zeile ${line}, Spalte ${column}`,
    syntax: ({ expected, found }) =>
      `Kein gültiges JSON: Erwartet wird ${expected}, aber ${found}. Den Text an dieser Stelle berichtigen, oder die letzte gute Kopie öffnen.`,
    valid: 'gültiges JSON',
    endOfFile: 'das Ende der Datei',
    commaOr: ({ closer }) => `ein Komma oder „${closer}“`,
    colon: 'ein Doppelpunkt',
    value: 'ein Wert',
    name: 'ein Name in doppelten Anführungszeichen',
    nameOrEnd: 'ein Name in doppelten Anführungszeichen oder „}“',
    restOfText: 'der Rest des Textes oder ein schließendes Anführungszeichen',
    escape: 'eine Escape-Folge, die JSON kennt',
    closingQuote: 'ein schließendes Anführungszeichen',
    ends: 'dort endet der Text',
    stands: ({ what }) => `dort steht ${what}`,
    lineBreak: 'ein Zeilenumbruch',
    quote: 'ein doppeltes Anführungszeichen',
    character: ({ character }) => `„${character}“`,
  },
  file: {
    tooDeep: ({ most }) =>
      `Die Datei ist mehr als ${most} Ebenen tief verschachtelt. Aus dem Ursprungsprogramm noch einmal ausgeben.`,
    dropped: ({ count }) =>
      `${count} Einträge namens __proto__ bleiben weg: In einer Platzdatei bedeuten sie nichts.`,
    noObject:
      'Kein GeoJSON-Objekt, daher außer Acht gelassen; beim Speichern fällt es weg. Eine Kopie der Datei aufbewahren, falls es zählt.',
    sameId: ({ id }) => `Die id ${id} hat schon ein früheres Objekt; dieses bekommt eine andere.`,
    noCollection:
      'Keine FeatureCollection in GeoJSON mit einer Liste von Objekten. Eine Platzdatei wählen, oder eine aus einem GIS-Programm als GeoJSON ausgeben.',
    noHeader: ({ version }) =>
      `Der Datei fehlt der Eintrag holewright; sie wird als Formatversion ${version} ohne Namen gelesen. Speichern ergänzt ihn.`,
    manyFeatures: ({ count, most }) =>
      `Die Datei enthält ${count} Objekte; gelesen werden höchstens ${most}. Auf den Platz selbst zuschneiden.`,
    manyPositions: ({ count, most }) =>
      `Die Datei enthält ${count} Punkte; gelesen werden höchstens ${most}. Die Formen vereinfachen, oder die Datei auf den Platz selbst zuschneiden.`,
    newer: ({ version, current }) =>
      `Die Datei hat Formatversion ${version}; dieses Programm liest bis Version ${current}. Mit einer neueren Ausgabe von Holewright öffnen.`,
  },
  shape: {
    emptyRing: ({ ring }) =>
      `Ring ${ring} hat weniger als 3 verschiedene Punkte und umschließt nichts. Neu zeichnen, oder entfernen.`,
    drawnAs: ({ type }) => `als ${type} gezeichnet`,
    notDrawn: 'gar nicht gezeichnet (geometry ist null)',
    mustBe: ({ drawn, kind, allowed }) =>
      `Das Objekt ist ${drawn}; „${kind}“ wird als ${allowed} gezeichnet. Neu zeichnen, oder entfernen.`,
    unreadable: ({ place, found, why }) =>
      `${place} ist ${found}: ${why}. Berichtigen, oder das Objekt entfernen.`,
    noFeature: ({ place, found, wanted }) =>
      `${place} ist ${found}, nicht ${wanted}. Als GeoJSON-Feature schreiben, oder entfernen.`,
    it: 'Der Eintrag',
    asGeoJson: 'was GeoJSON verlangt',
    problems: {
      longitude: 'die geografische Länge muss eine Zahl sein',
      longitudeRange: 'die geografische Länge geht von -180 bis 180',
      latitude: 'die geografische Breite muss eine Zahl sein',
      latitudeRange: 'die geografische Breite geht von -90 bis 90',
      position: 'ein Punkt muss [Länge, Breite] sein',
      ring: 'ein Ring muss eine Liste von Punkten sein',
      shortRing: 'ein Ring braucht mindestens 3 verschiedene Punkte',
      polygon: 'ein Polygon muss eine Liste von Ringen sein',
      emptyPolygon: 'ein Polygon braucht mindestens einen Ring',
      line: 'eine Linie muss eine Liste von Punkten sein',
      shortLine: 'eine Linie braucht mindestens 2 Punkte',
      multipolygon: 'ein MultiPolygon muss eine Liste von Polygonen sein',
      emptyMultipolygon: 'ein MultiPolygon braucht mindestens ein Polygon',
    },
  },
  unknown: ({ what }) =>
    `${what}. Es bleibt in der Datei und zählt im Plan nicht; mit einem Tag versehen, falls es zählen soll.`,
  noTag: 'Das Objekt hat keines der Tags golf, natural und holewright_kind',
  noKind: ({ tags }) => `${tags} ist von keiner Art, mit der geplant wird`,
  value: {
    unreadable: ({ key, found, wanted }) => `${key} ist ${found}; verlangt ist ${wanted}.`,
    readAsAbsent: ({ key, found, wanted }) =>
      `${key} ist ${found}; verlangt ist ${wanted}. Gelesen, als fehle der Wert.`,
    missing: ({ key, wanted }) => `${key} fehlt; verlangt ist ${wanted}.`,
    absent: 'nicht da',
  },
  properties: {
    ref: 'die Nummer des Lochs, etwa 7',
    name: 'ein Text in Anführungszeichen',
    par: 'eine Zahl, etwa 4',
    handicap: 'der Stroke-Index, etwa 11',
    height: 'ein Maß in Metern von 0 bis 200, etwa 12',
    diameter_crown: 'ein Maß in Metern von 0 bis 200, etwa 8',
    canopy_base_m: 'ein Maß in Metern von 0 bis 200, etwa 2',
    canopy_density_per_m: 'eine Zahl von 0 bis 10, etwa 0.12',
    leaf_type: 'broadleaved, needleleaved, mixed',
    leaf_cycle: 'evergreen, deciduous, semi_evergreen, semi_deciduous, mixed',
    ele: 'eine Höhe über dem Meer in Metern, etwa 31.5',
    lip_m: 'ein Maß in Metern von 0 bis 10, etwa 0.8',
    slope_percent: 'ein Gefälle in Prozent von 0 bis 15, etwa 2.5',
    downhill_deg: 'eine Richtung in Grad im Uhrzeigersinn ab Norden, von 0 bis 360, etwa 135 für Südosten',
  },
  wholeNumber: ({ least, most }) => `eine ganze Zahl von ${least} bis ${most}`,
  lengthIn: ({ least, most, unit }) => `eine Zahl von ${whole(least)} bis ${whole(most)} ${unit}`,
  cardLength: ({ least, most }) => `die Länge auf der Scorekarte in Metern, von ${least} bis ${most}`,
  canopy: {
    upsideDown: ({ base, top }) =>
      `Die untersten Äste (${short(base, 2)} m) liegen über dem Wipfel (${short(top, 2)} m); ein üblicher Wert wird genommen. canopy_base_m oder height berichtigen.`,
    woods: ({ measures, count }) =>
      `Der Wald hat keine Höhe: ${measures} ${count === 1 ? 'wird' : 'werden'} angenommen. Messen und height und canopy_base_m eintragen, in Metern.`,
    oneTree: ({ measures, count }) =>
      `Einem Baum fehlen Maße: ${measures} ${count === 1 ? 'wird' : 'werden'} angenommen. height, canopy_base_m und diameter_crown eintragen, in Metern.`,
    trees: ({ trees, measures, count }) =>
      `${trees} Bäumen fehlen Maße: ${measures} ${count === 1 ? 'wird' : 'werden'} angenommen. height, canopy_base_m und diameter_crown eintragen, in Metern.`,
    top: ({ metres }) => `Höhe ${short(metres, 2)} m`,
    base: ({ metres }) => `unterste Äste ${short(metres, 2)} m`,
    density: ({ perM }) => `Dichte ${short(perM, 3)} je m`,
    crown: ({ metres }) => `Kronenradius ${short(metres, 2)} m`,
  },
  holeWithoutLine: ({ feature, what, hole }) =>
    `Objekt ${feature} (${what}) nennt dieses Loch, aber es hat keine Spiellinie. Eine vom Abschlag zum Grün zeichnen und mit golf=hole, ref=${hole} versehen; oder das ref berichtigen.`,
  noHoles:
    'Der Platz hat kein Loch. Eine Linie vom Abschlag zum Grün zeichnen und mit golf=hole, ref, par und handicap versehen.',
  drawing: {
    noHole: 'Dieses Loch hat der Platz nicht. Eines wählen, das er hat.',
    tooLarge: ({ scale, width, height, most }) =>
      `Bei 1:${scale} wäre die Zeichnung ${width} × ${height} mm groß; gezeichnet wird bis ${most} mm. Einen Maßstab wie 2000 wählen.`,
    title: ({ hole, par }) => `Loch ${hole}, Par ${par}`,
    titleNamed: ({ hole, name, par }) => `Loch ${hole}, ${name}, Par ${par}`,
    playedUpwards: ({ course, scale }) => `${course}. Maßstab 1:${scale}, nach oben gespielt.`,
    northUp: ({ course, scale }) => `${course}. Maßstab 1:${scale}, Norden oben.`,
    area: ({ kind, name }) => `${kind}: ${name}`,
  },
};
