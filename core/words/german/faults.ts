/** What is wrong with a file, a table or an entry, and what to do about it. In German. */

import type { faults as english } from '../english/faults.ts';
import { inYards } from '../lengths.ts';
import { figures } from './figures.ts';

const { counted, short, whole } = figures;

export const faults: typeof english = {
  player: {
    shots: ({ count }) => counted(count, { one: 'gemessenen Schlag', other: 'gemessene Schläge' }),
    noneYet: 'noch keine gemessenen Schläge',
    clubSwing: ({ club, swing }) => `${club}, Schwung „${swing}“,`,
    readings: ({ count }) => counted(count, { one: 'Messwert bleibt', other: 'Messwerte bleiben' }),
    tooLong: ({ club, readings }) =>
      `${club}: ${readings} außen vor, zu lang für diesen Schläger. Die Messwerte prüfen.`,
    onStated: 'auf die eigene Angabe',
    onPreset: ({ handicap }) => `auf die Vorgabe für Handicap ${handicap}`,
    onFull: 'auf den vollen Schwung',
    fewShots: ({ club, shots, least, on }) =>
      `${club} hat ${shots}; mit weniger als ${least} stützt er sich vor allem ${on} und auf die anderen Schläger.`,
    fitted: ({ percent }) =>
      ` Sein Carry ist auf ${percent} % der Vorgabe gesetzt, im Einklang mit den bekannten Schlägern.`,
    noShots: ({ club, shots, handicap, fitted }) =>
      `${club} hat ${shots}; bis dahin gilt die Vorgabe für Handicap ${handicap}.${fitted}`,
    manyNoShots: ({ clubs, handicap, fitted }) =>
      `Keine gemessenen Schläge mit ${clubs}; bis es welche gibt, gilt die Vorgabe für Handicap ${handicap}.${fitted}`,
    allFitted: ' Die Carrys sind im Einklang mit den bekannten Schlägern gesetzt.',
    twice: ({ club }) =>
      `Das Bag enthält „${club}“ doppelt. Einem davon einen anderen Namen geben, etwa mit dem Loft.`,
    onlyPutter: 'Das Bag enthält keinen Schläger außer einem Putter. Die gespielten Schläger aufnehmen.',
    noneChosen: 'Für die Runde ist kein Schläger außer einem Putter gewählt. Wählen, was mitkommt.',
    noLevel: ({ least }) =>
      `Es gibt weder ein Handicap noch einen Schläger mit mindestens ${least} gemessenen Schlägen oder angegebenem Carry. Ein Handicap eintragen, oder einen Schläger messen.`,
    noHandicap: ({ level }) =>
      `Es gibt kein Handicap: Was nicht gemessen ist, stammt aus der Vorgabe, die am besten zu den Carrys passt (${level}). Das Handicap eintragen.`,
    noRoom: ({ most, room }) =>
      `Eine Spielerdatei fasst höchstens ${most} Schläge; Platz ist noch für ${room}. Zuerst alte Schläge herausnehmen.`,
    noShortShot: ({ club, metres }) =>
      `Der kürzeste Schlag im Bag ist ${club} mit ${whole(metres)} m (${whole(inYards(metres))} yd), und kein Schläger hat Teilschwünge: Nahe am Grün fliegt im Plan jeder Schlag am Loch vorbei. Teilschwünge des Schlägers mit dem meisten Loft zulassen, oder ein Wedge aufnehmen.`,
    tooManyClubs: ({ count, most }) =>
      `Für die Runde sind ${count} Schläger gewählt; Regel 4.1b erlaubt ${most}. Herausnehmen, was zu Hause bleibt.`,
  },
  table: {
    quantities: { wind: 'Windstärke', temperature: 'Temperatur', altitude: 'Höhe' },
    sides: { left: 'links', right: 'rechts' },
    empty: 'leer. Eine Zahl eintippen.',
    formula: ({ cell }) => `„${cell}“ ist eine Formel. Das Ergebnis dort einsetzen.`,
    cellTooLong: ({ cell }) => `„${cell}“ ist zu lang für eine Zahl. Eine Zahl eintippen.`,
    typeNumber: 'Eine Zahl eintippen.',
    otherDecimal: ({ sign }) => `„${sign}“ als Dezimalzeichen wählen, oder neu eintippen.`,
    noNumber: ({ cell, hint }) => `„${cell}“ ist keine Zahl. ${hint}`,
    neither: ({ cell, word }) => `„${cell}“: „${word}“ ist weder Einheit noch Seite. Eine Zahl eintippen.`,
    quote: 'Ein Anführungszeichen ist nicht geschlossen. Schließen, oder herausnehmen.',
    rowTooLong: 'Die Zeile ist für einen Schlag viel zu lang. Herausnehmen.',
    noCarry: 'Der Carry fehlt. Eintippen, oder die Zeile weglassen.',
    noClub: 'Der Schläger fehlt. Eintippen, oder die Zeile weglassen.',
    unknownClub: ({ club }) =>
      `„${club}“ ist nicht im Bag. Angeben, welcher Schläger es ist, oder ins Bag aufnehmen.`,
    unknownSwing: ({ swing }) => `„${swing}“ ist kein bekannter Schwung. Angeben, welcher es ist.`,
    angle: 'Ein Winkel steht, wo eine Länge gebraucht wird. Eine andere Spalte oder Einheit wählen.',
    noDistance: ({ metres }) =>
      `${short(metres, 2)} m sind keine Länge eines Golfschlags. Zahl und Einheit prüfen.`,
    noSideways: 'Wie weit er links oder rechts lag, fehlt. Eintippen, oder die Zeile weglassen.',
    noSide: ({ cell }) => `„${cell}“ ist weder links noch rechts. Eines davon eintippen.`,
    behind: ({ degrees }) => `${degrees}° liegen hinter dem Spieler. Zahl und Einheit prüfen.`,
    fartherThanCarry: ({ metres }) =>
      `${short(metres, 2)} m seitlich sind mehr, als der Ball flog. Zahl und Einheit prüfen.`,
    noDate: ({ cell }) =>
      `„${cell}“ ist kein Datum in der gewählten Reihenfolge. Eine andere wählen, oder berichtigen.`,
    fields: {
      carry: 'Carry',
      total: 'Gesamt',
      intended: 'Gewollte Länge',
      offline: 'Seitlich',
      direction: 'Richtung',
    },
    firstOnly: ({ most, line }) =>
      `Nur die ersten ${most} Zeilen wurden gelesen; Zeile ${line} und was folgt nicht. Die Datei teilen und Stück für Stück lesen.`,
    noRoom: ({ most, line }) =>
      `Eine Spielerdatei fasst höchstens ${most} Schläge; Zeile ${line} und was folgt wurde nicht gelesen. Zuerst alte Schläge aus der Spielerdatei nehmen.`,
    fileTooLong: ({ count, most }) =>
      `Die Datei enthält ${count} Zeichen; gelesen werden höchstens ${most}. In mehrere Dateien teilen.`,
    noCarryColumn: 'Keine Spalte wird als Carry gelesen. Die Spalte wählen, die ihn enthält.',
    noSideColumn:
      'Keine Spalte wird als seitlicher Abstand oder als Richtung gelesen. Eine der beiden wählen.',
    noClubColumn:
      'Keine Spalte nennt den Schläger. Eine wählen, oder angeben, von welchem Schläger die Tabelle ist.',
    noQuantity: ({ cell, quantity }) =>
      `${cell} ist keine ${quantity}. Eine Zahl eintippen, oder leer lassen.`,
    beyond: ({ cell, quantity }) =>
      `${cell} kommt als ${quantity} auf keinem Platz vor. Zahl und Einheit prüfen.`,
    noWindSide: ({ cell }) =>
      `„${cell}“ ist keine Seite, von der Wind kommt. Grad eintippen, 0 von vorn und 90 von rechts, oder Wörter wie “from the left”.`,
    holdsTooMuch: ({ count, most }) =>
      `Die Datei enthält ${count} Zeichen; gelesen werden höchstens ${most}. In mehrere Dateien teilen.`,
    utf16: 'Das ist UTF-16 oder kein Text. Als CSV in UTF-8 speichern und noch einmal versuchen.',
    noTable:
      'Keine Zeilen mit zwei oder mehr Spalten gefunden. Eine Tabelle mit einem Schlag je Zeile als CSV ausgeben.',
    letters:
      'Einige Buchstaben waren nicht lesbar. Sehen Schlägernamen seltsam aus, die Datei als UTF-8 speichern und noch einmal versuchen.',
    doubts: {
      noSide:
        'Keine Spalte sagt, wie weit links oder rechts der Ball lag. Eine wählen, sonst ist kein Schlag zu gebrauchen.',
      unit: ({ column, unit }) => `Die Einheit von „${column}“ fehlt; angenommen ist ${unit}. Prüfen.`,
      windFrom: ({ column }) =>
        `„${column}“ gilt vom Spieler aus: 0 von vorn, 90 von rechts. Ist es nach dem Kompass, auf „nicht gelesen“ stellen.`,
      noWindFrom:
        'Keine Spalte sagt, von welcher Seite der Wind kam. Für die ganze Tabelle angeben, sonst zählen die Schläge wie gemessen.',
      sign: ({ column, side }) =>
        `In „${column}“ gelten Zahlen ohne Minus als ${side}. An einem erinnerten Schlag prüfen.`,
      notInBag: ({ names }) =>
        `Nicht im Bag: ${names}. Angeben, welche Schläger das sind, sonst bleiben deren Schläge außen vor.`,
      takenAsCarry: ({ column }) =>
        `„${column}“ gilt als Carry. Enthält es auch den Roll, geraten die Schläger zu lang.`,
      noCarry: 'Keine Spalte enthält den Carry. Eine wählen, sonst ist kein Schlag zu gebrauchen.',
      dates:
        'Ob in den Daten Tag oder Monat zuerst kommt, ist nicht zu sehen; angenommen ist der Tag. Prüfen.',
    },
    paces: 'So viele Schritte sind keine Länge eines Golfschlags. Die Zahl prüfen.',
    notUtf8:
      'Die Datei ist nicht UTF-8; sie wurde als westeuropäischer Text gelesen. Buchstaben mit Akzenten und Umlaute prüfen.',
    megabytes: ({ size, most }) =>
      `Die Datei enthält ${size} MB; gelesen werden höchstens ${most} MB. In mehrere Dateien teilen.`,
    gone: 'Die Tabelle ist nicht mehr geöffnet. Die Datei noch einmal wählen.',
    inField: ({ field, message }) => `${field}: ${message}`,
  },
  bag: {
    full: ({ most }) =>
      `Das Bag enthält ${most} Schläger, mehr werden nicht aufbewahrt. Zuerst einen herausnehmen.`,
    oneSwing: 'Ein Schläger braucht mindestens einen Schwung. Vor dem Herausnehmen einen anderen wählen.',
    oneClub: 'Ein Bag enthält neben dem Putter mindestens einen Schläger. Vorher einen anderen aufnehmen.',
    noName: 'Ein Schläger braucht einen Namen. Einen eintippen.',
    longName: 'Der Name ist länger als 60 Buchstaben. Kürzen.',
    taken: ({ name }) => `Das Bag enthält „${name}“ schon. Einen anderen Namen wählen, etwa mit dem Loft.`,
  },
  putts: {
    holed: ({ made, tries, feet }) =>
      `${made} eingelocht von ${tries} aus ${short(feet, 1)} ft geht nicht. Diese Zeile berichtigen.`,
    none: 'Kein Putt ist eingetragen. Angeben, wie viele versucht und wie viele eingelocht wurden.',
    tooMany: 'Es gibt mehr Tests, als eine Datei aufbewahrt. Zuerst alte herausnehmen.',
    noTry: 'Kein Versuch ist eingetragen. Angeben, wie oft versucht und wie oft gerettet wurde.',
    saved: ({ saved, tries }) => `${saved} gerettet von ${tries} geht nicht. Diese Zeile berichtigen.`,
    noRecord: 'Keine Putts notiert. Putten, oder den Zehn-Minuten-Test ausfüllen.',
    holedMetres: ({ made, tries, metres }) =>
      `${made} eingelocht von ${tries} aus ${short(metres, 2)} m geht nicht. Diese Zeile berichtigen.`,
    count: ({ putts, metres }) =>
      `${putts} Putts aus ${short(metres, 2)} m geht nicht. Diese Zeile berichtigen.`,
    past: ({ metres, past }) =>
      `Ein Putt aus ${short(metres, 2)} m, der ${short(past, 2)} m hinter dem Loch liegen blieb, geht nicht. Diese Zeile berichtigen.`,
  },
  file: {
    where: 'Datei',
    newerPlayer: ({ version, current }) =>
      `Die Spielerdatei hat Formatversion ${version}; dieses Programm liest bis Version ${current}. Mit einer neueren Ausgabe von Holewright öffnen.`,
    playerTooLong: ({ count, most }) =>
      `Die Datei enthält ${count} Zeichen; gelesen werden höchstens ${most}. Alte Schläge herausnehmen.`,
    notPlayer:
      'Die Datei weist sich nicht als Spielerdatei aus (holewright.format "player" mit formatVersion ab 1). Eine Spielerdatei wählen, oder einen neuen Spieler anlegen.',
    manyClubs: ({ count, most }) =>
      `Das Bag enthält ${count} Schläger; gelesen werden höchstens ${most}. Herausnehmen, was nicht gespielt wird.`,
    manyShots: ({ count, most }) =>
      `Die Datei enthält ${count} Schläge; gelesen werden höchstens ${most}. Die ältesten herausnehmen.`,
    somethingElse: 'etwas anderes',
    missing: ({ wanted }) =>
      `Fehlt; gebraucht wird ${wanted}. In der Datei ergänzen, oder die letzte gute Kopie zurückholen.`,
    unexpected: ({ found, wanted }) =>
      `Dort steht ${found}; erwartet war ${wanted}. In der Datei berichtigen, oder die letzte gute Kopie zurückholen.`,
    moreFields: ({ count }) => `${count} weitere Felder sind nicht lesbar. Zuerst diese berichtigen.`,
  },
  round: {
    tooLong: ({ count, most }) =>
      `Die Datei enthält ${count} Zeichen; gelesen werden höchstens ${most}. In einzelne Runden teilen.`,
    notRound:
      'Die Datei sagt nicht, dass sie eine Rundendatei ist (holewright.format "round" mit einer formatVersion ab 1). Eine Rundendatei wählen, oder eine neue Runde beginnen.',
    newer: ({ version, current }) =>
      `Die Rundendatei hat Formatversion ${version}; dieses Programm liest bis Version ${current}. Mit einer neueren Ausgabe von Holewright öffnen.`,
    holeTwice: ({ hole }) => `Loch ${hole} ist doppelt eingetragen. Eines von beiden herausnehmen.`,
    doNotAddUp: ({ score, others }) =>
      `Der Score ist ${score}, Putts und Strafschläge sind ${others}. Noch einmal auf die Scorekarte sehen.`,
    penalties: ({ hole, shots }) =>
      `Das Loch hat ${hole} Strafschläge, seine Schläge haben ${shots}. Noch einmal auf die Schläge sehen.`,
    moreShots: ({ score, counted: come }) =>
      `Der Score ist ${score}, Schläge und Strafschläge ergeben ${come}. Noch einmal auf die Schläge sehen.`,
    sharedPlan: 'geteilter Plan',
    shareTooLarge: ({ count, most }) =>
      `Zusammen haben sie ${count} Zeichen; höchstens ${most} lassen sich wieder öffnen. Den Platz als eigene Datei weitergeben.`,
  },
  day: ({ problem }) => `${problem}. Berichtigen, oder für den üblichen Wert weglassen.`,
  plan: {
    noSuchHole: ({ numbers }) => `Dieses Loch hat der Platz nicht; er hat ${numbers}.`,
    noHoles: 'Dieses Loch hat der Platz nicht; er hat gar keine Löcher.',
    noGreen:
      'Kein Grün ist gezeichnet, also gibt es nichts anzuspielen. Das Grün zeichnen (golf=green mit dem ref dieses Lochs).',
    player: ({ name }) => `Spieler ${name}`,
    noClubs:
      'Das Bag enthält keinen Schläger mit einer Streuung. Schläger mit gemessenen Schlägen, eigene Angaben oder ein Handicap eintragen.',
    offGreen: ({ name }) =>
      `Die Fahnenposition „${name}“ liegt nicht auf dem Grün dieses Lochs. Auf das Grün versetzen.`,
    called: ({ name }) => `„${name}“`,
    noTee: ({ name, names }) => `Einen Abschlag „${name}“ hat es nicht; es hat ${names}.`,
    noPosition: ({ name, names }) => `Eine Fahnenposition „${name}“ hat es nicht; es hat ${names}.`,
  },
  photo: {
    height: 'Die Höhe der Kamera ist eine Zahl von 0,3 bis 30 m über dem Boden.',
    distances: 'Die Entfernungen der Marken sind Zahlen von 5 bis 400 m.',
    alike: 'Die beiden Marken sind fast gleich weit weg. Eine deutlich weitere wählen.',
    lower:
      'Die weitere Marke liegt im Bild tiefer als die nähere. Prüfen, welche Entfernung zu welcher gehört.',
    sky: 'Dieser Punkt liegt über dem Horizont, den die beiden Marken ergeben: Dort kann kein Ball liegen.',
    tooFar: 'Dieser Punkt liegt weiter weg, als ein Ball zu schlagen ist. Die Marken prüfen.',
  },
};
