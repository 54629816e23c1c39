/** What lies under the drawing: pictures, map files, tile addresses. In German. */

import type { underlay as english } from '../english/underlay.ts';

export const underlay: typeof english = {
  kinds: { picture: 'Bild' },
  over: 'Zeichnung über dem Bild',
  layStep: ({ name }) => `${name} unter die Karte legen`,
  title: 'Unter der Zeichnung',
  nothing: 'Nichts',
  takeAwayStep: 'Hintergrund wegnehmen',
  tileAddress: ({ name }) => `${name} (Kacheladresse)`,
  bringIn: 'Bild- oder Kartendatei einlesen …',
  copying: 'Die Datei wird neben den Platz kopiert',
  stop: 'Anhalten',
  kindsOfFile:
    'PNG, JPEG oder WebP mit Passpunkten, GeoTIFF, PMTiles, MBTiles. Die Datei wird neben den Platz kopiert und von dort gelesen.',
  already: 'Das liegt schon unter der Zeichnung.',
  gone: ({ name }) =>
    `${name} liegt nicht mehr neben dem Platz. Noch einmal einlesen, oder einen anderen Hintergrund wählen.`,
  tooLarge: ({ name, most }) =>
    `${name} ist größer als ${most} MiB. Auf den Platz zuschneiden, oder PMTiles daraus machen.`,
  shorter: ({ name }) => `${name} ist kürzer als zuvor. Noch einmal einlesen.`,
  pixels: ({ name, width, height, most }) =>
    `${name} hat ${width} × ${height} Pixel; gezeigt werden höchstens ${most} Millionen. Verkleinern, oder PMTiles daraus machen.`,
  noPicture: ({ name }) => `${name} ist kein Bild, das sich zeigen lässt. Als PNG oder JPEG speichern.`,
  brokeOff: ({ name }) =>
    `Das Lesen von ${name} brach ab, wohl weil der Speicher nicht reicht. Verkleinern, oder PMTiles daraus machen.`,
  shapesOnly: ({ name }) =>
    `${name} enthält keine Bilder, sondern Formen. PMTiles aus Luftbildern machen (PNG, JPEG oder WebP).`,
  noPmtiles: ({ name, why }) => `${name} ist nicht als PMTiles lesbar: ${why}.`,
  noPictures: ({ name, type }) =>
    `${name} enthält keine Bilder, sondern ${type}. MBTiles aus Luftbildern nehmen.`,
  unknownAddress: ({ name }) =>
    `Die Kacheladresse „${name}“ ist auf diesem Rechner nicht bekannt. Eintragen, oder einen anderen Hintergrund wählen.`,
  termsNotAccepted: ({ name }) =>
    `Die Bedingungen von „${name}“ sind auf diesem Rechner nicht angenommen; darum wird nichts von dort geholt.`,
  fit: {
    'too-few-points': 'Zwei Passpunkte oder mehr legen das Bild an seinen Ort.',
    'points-coincide': 'Die Passpunkte liegen aufeinander. Weit auseinanderliegende Stellen nehmen.',
    'points-in-line': 'Die Passpunkte liegen auf einer Linie: Strecken braucht einen dritten daneben.',
    'not-finite': 'Ein Passpunkt ist keine Stelle. Entfernen und neu setzen.',
  },
  addPointStep: ({ number }) => `Passpunkt ${number} hinzufügen`,
  clickPoint: ({ number }) => `Passpunkt ${number}: dieselbe Stelle auf der Karte anklicken.`,
  place: 'Ort des Bildes',
  oneMore: ' Ein weiterer Punkt würde zeigen, wie gut sie passen.',
  fitsTo: ({ metres }) => ` Die Punkte passen auf ${metres} m (Standardfehler).`,
  pixelIs: ({ metres, fit }) => `Ein Pixel ist ${metres} m groß.${fit}`,
  point: 'Punkt',
  latLon: 'Breite, Länge',
  offBy: 'Abweichung',
  remove: 'Entfernen',
  movePointStep: ({ number }) => `Passpunkt ${number} versetzen`,
  removePoint: ({ number }) => `Passpunkt ${number} entfernen`,
  lengthStep: 'Länge zwischen Passpunkten setzen',
  addPoint: 'Passpunkt hinzufügen',
  fitStep: 'Ändern, wie das Bild passt',
  stretch: 'Nicht nur drehen, auch strecken',
  latLonOf: ({ number }) => `Breite und Länge von Passpunkt ${number}`,
  writeLength: 'Die Länge zwischen beiden Punkten in Metern eintragen, von 1 bis 20000.',
  fromTo: ({ metres }) => `Von 1 bis 2, jetzt ${metres} m, sind es`,
  set: 'Setzen',
  chooseSpot: 'Eine Stelle im Bild wählen',
  clickKnown: 'Eine Stelle anklicken, die auf der Karte bekannt ist',
  picture: 'Das Bild. Pfeiltasten bewegen das Kreuz, mit Umschalt feiner, Enter nimmt die Stelle.',
  address: {
    notKept: ({ message }) => `Die Adresse ist noch nicht gespeichert: ${message}`,
    kept: 'Gespeichert. Das Fenster darf dort anfragen, sobald es neu geladen ist.',
    title: 'Eigene Kacheladressen',
    notAccepted: ' (Bedingungen nicht angenommen)',
    forget: 'Vergessen',
    address: 'Adresse',
    attribution: 'Wer genannt werden will',
    accept: 'Die Nutzungsbedingungen sind gelesen und angenommen',
    keep: 'Adresse speichern',
    loadAnew: 'Fenster neu laden',
    giveName: 'Einen Namen geben.',
    taken: 'Eine andere Adresse hat diesen Namen schon.',
    tooMany: ({ most }) => `${most} Adressen werden gespeichert; zuerst eine vergessen.`,
    writeAddress:
      'Eine https-Adresse mit je einem {z}, {x} und {y} eintragen, etwa https://tiles.example/{z}/{x}/{y}.png.',
    writeWhom: 'Eintragen, wer genannt werden will; es steht auf der Karte.',
    mustAccept: 'Von einer Adresse, deren Bedingungen nicht angenommen sind, wird nichts geholt.',
  },
  geotiff: {
    unreadable: ({ why }) => `Als GeoTIFF nicht lesbar: ${why}.`,
    coordinates: ({ grid }) =>
      `Die Koordinaten sind in ${grid}; gelesen werden Länge und Breite, Web Mercator und UTM, jeweils auf WGS 84. Umwandeln, oder als Bild speichern und Passpunkte setzen.`,
    noPlace: 'Es fehlt, wo das Bild liegt. Als PNG oder JPEG speichern und Passpunkte setzen.',
    tooLarge: ({ width, height }) =>
      `${width} × ${height} Pixel und keine kleinere Kopie darin. Übersichten hinzufügen, oder verkleinern.`,
    nowhere: 'Es liegt nirgends auf der Erde.',
    damaged: 'die Daten sind beschädigt',
  },
};
