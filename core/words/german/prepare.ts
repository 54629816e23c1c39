/** The day of the round: form and sheet. In German. */

import type { prepare as english } from '../english/prepare.ts';

export const prepare: typeof english = {
  theDay: 'Der Tag',
  title: ({ course }) => `Vorbereitung, ${course}`,
  teeOff: 'Abschlagzeit',
  timeSuchAs: 'Eine Uhrzeit wie 08:40',
  minutes: 'Minuten für die Runde',
  rain: 'Regen wahrscheinlich',
  sun: 'starke Sonne',
  food: 'Eigene Verpflegung, mit Kommas',
  foodHint: 'solange leer, stehen Vorschläge da',
  allergies: 'Allergien, mit Kommas',
  allergiesHint: 'z. B. Nuss, Gluten',
  note: 'Kleine Portionen in gleichen Abständen, allgemein üblich; kein ärztlicher Rat. Bei Krankheit oder Diät fachkundig nachfragen.',
  noTime: 'Die Abschlagzeit ist keine Uhrzeit. Als 08:40 schreiben.',
  speedToday: ({ feet }) => `Grüngeschwindigkeit heute: ${feet} Fuß.`,
  speed: {
    title: 'Grüngeschwindigkeit heute',
    how: 'Ein vertrauter Schlag, einmal auf einem Grün bekannter Geschwindigkeit abgeschritten; dann derselbe Schlag heute, auf einer ebenen Strecke hin und zurück.',
    rolled: 'Er rollte, Schritte',
    onGreen: 'auf einem Grün von, Fuß',
    up: 'Heute hin, Schritte',
    down: 'zurück, Schritte',
    feet: ({ feet }) => `${feet} Fuß`,
    unlikely: 'unwahrscheinlich: noch einmal abschreiten',
    use: 'Heute verwenden',
    planned: ({ feet }) =>
      `Heute geplant mit: ${feet} Fuß. Das gehört zum Tag des Plans: dort, im Bereich Planung, wird es rückgängig gemacht.`,
  },
  sheet: {
    times: ({ teeOff, finish }) => `Abschlag ${teeOff}, voraussichtliches Ende ${finish}`,
    when: 'Wann',
    food: 'Essen und Wasser',
    before: ({ hole, food }) => `vor Loch ${hole}: ${food}`,
    allergies: ({ list }) => `Allergien: ${list}`,
    noneEntered: 'keine eingetragen',
    check: ({ warning }) => `Prüfen: ${warning}`,
    bag: 'Im Bag',
    warmUp: 'Sanftes Aufwärmen, zehn Minuten',
    min: ({ minutes }) => `${minutes} min`,
    green: 'Auf dem Übungsgrün',
    rolled: 'Rollte hin ______ zurück ______ Grüngeschwindigkeit heute ______',
    lastLook: 'Letzter Blick: Fahnen und Wind',
    lookBefore: 'vom Grün davor ansehen',
    care: 'Vorsicht',
  },
  windIs: ({ wind }) => `Wind ${wind}`,
  foods: {
    sandwich: 'ein halbes Vollkornbrot',
    banana: 'eine Banane',
    nuts: 'eine Handvoll Nüsse',
    oatBar: 'ein Haferriegel',
    apple: 'ein Apfel',
    riceCakes: 'Reiswaffeln',
    own: 'eigene Verpflegung',
  },
  water: ({ litres }) =>
    `Etwa ${litres} Liter Wasser, einige Schlucke an jedem zweiten Abschlag; bei Durst mehr.`,
  checkEveryItem:
    'Bei Allergien wird nichts vorgeschlagen. Jede Speise selbst prüfen: Zutaten und mögliche Spuren.',
  allergyWarning: ({ item, allergy }) =>
    `„${item}“ steht auf der Liste, und „${allergy}“ unter den Allergien.`,
  eat: ({ food }) => `Essen: ${food}. Trinken.`,
  tooManyClubs: ({ count, most, out }) =>
    `${count} Schläger stehen auf der Liste; Regel 4.1b erlaubt ${most}. ${out} herausnehmen.`,
  times: {
    meal: 'Wie gewohnt essen, heute nichts Neues; die Flaschen füllen.',
    arrive: 'Ankommen. Platzregeln, Fahnen des Tages, Wind.',
    green: 'Übungsgrün, fünfzehn Minuten; die Grüngeschwindigkeit notieren.',
    warmUp: 'Sanftes Aufwärmen, zehn Minuten.',
    range:
      'Zehn bis fünfzehn lockere Bälle, wenn es eine Range gibt: kurze Schläger zuerst, zuletzt der Schläger vom ersten Abschlag.',
    firstTee: 'Zum ersten Abschlag. Karte, Bleistift, Marker, Tees, ein zweiter Ball in der Tasche. Trinken.',
    lastLook: 'Letzter Blick auf Loch 1: Schläger, Ziel, sichere Seite.',
    teeOff: 'Abschlag.',
  },
  bag: {
    clubs: ({ count }) => `${count} Schläger`,
    clubsNamed: ({ count, list }) => `${count} Schläger: ${list}`,
    balls: ({ count }) => `${count} Bälle, eigen markiert`,
    tees: 'Tees, zwei Ballmarker, Pitchgabel',
    glovesRain: 'zwei gute Handschuhe und ein trockener in einer Tüte',
    gloves: 'ein guter Handschuh und ein Ersatz',
    towel: 'Handtuch, ein Ende nass',
    papers: 'Strategiekarte, Scorekarte, zwei Bleistifte, Platzregeln',
    food: 'Wasser und Essen wie geplant',
    rainThings: 'Regenanzug, Schirm, trockenes Handtuch, Regenhaube',
    lightJacket: 'leichte Regenjacke',
    sunThings: 'Kappe, Sonnencreme, Sonnenbrille',
    hat: 'Kappe',
    warm: 'warme Schicht, Handwärmer',
    plasters: 'Pflaster, eigene Medikamente',
  },
  warmUp: {
    walk: 'Zügig gehen, bis es warm wird, die Arme schwingen.',
    shoulders: 'Die Schultern nach hinten rollen, dann kleine, wachsende Armkreise.',
    hips: 'Füße auseinander, Hände an die Hüften: langsame Hüftkreise, beide Richtungen.',
    turn: 'Ein Schläger quer über den Schultern: langsam nach links und rechts drehen, nur so weit es von selbst geht.',
    knees: 'Am Schläger das Gleichgewicht halten: flache Kniebeugen, Fersen am Boden, Rücken lang.',
    legs: 'Festhalten und jedes Bein sanft vor und zurück schwingen, nie wippen.',
    wrists:
      'Handgelenke: einen Schläger in der Mitte halten und langsam drehen, Handfläche nach oben und unten.',
    swings: 'Ein kurzes Eisen: langsame halbe Schwünge, dann längere; zuletzt einige im Spieltempo.',
  },
  routine: {
    long: ({ length }) =>
      `Drei Bälle aus ${length} zum Vorgrün, ohne Loch: jeden so nah am Rand wie möglich stoppen. Erst fühlen, dann schauen.`,
    speed:
      'Ein vertrauter Schlag, auf derselben ebenen Strecke hin und zurück gerollt: beide Wege abschreiten und notieren. Grüngeschwindigkeit heute = bekannte Geschwindigkeit × heutiger mittlerer Weg ÷ bekannter Weg.',
    lag: ({ length }) =>
      `Lange Putts aus etwa ${length}: drei Bälle, jeder bis auf eine Putterlänge ans Loch.`,
    short:
      'Kurze zuletzt: ein Kreis von Putts aus einem langen Schritt, dann aus zweien. Mit einem aufhören, der fällt.',
  },
  cautions: {
    warmUp:
      'Sanft aufwärmen; aufhören, wenn etwas schmerzt. Bei Schmerzen oder bekannten Beschwerden vorher Physiotherapie oder Arzt fragen.',
    thunder: 'Donner zu hören: den Platz verlassen. Nicht unter einem Baum warten.',
    ahead:
      'Nie spielen, bevor die Gruppe voraus außer Reichweite ist; laut warnen, wenn ein Ball jemanden treffen könnte.',
    hot: 'Heute heiß: an jedem Abschlag trinken, Schatten nutzen, das Handtuch nässen. Schwindlig oder kein Schweiß mehr: aufhören und Hilfe holen.',
    heat: 'Bei Hitze mehr trinken und Schatten nutzen.',
    rules: 'Platzregeln und Entscheidungen der Spielleitung gehen vor.',
  },
};
