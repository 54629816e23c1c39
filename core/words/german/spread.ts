/** What shots say of a club, in sentences: average, spread, lean, gaps between clubs, change over time, how a shot counts. In German. */

import type { spread as english } from '../english/spread.ts';
import { figures } from './figures.ts';

const { counted, plural } = figures;

export const spread: typeof english = {
  lengthUnit: {
    yards: ({ count }) => plural(count, { one: 'Yard', other: 'Yards' }),
    metres: ({ count }) => plural(count, { one: 'Meter', other: 'Meter' }),
  },
  unit: { yards: 'Yards', metres: 'Meter' },
  clubSwing: ({ club, swing }) => `${club}, Schwung „${swing}“`,
  sides: { left: 'links', right: 'rechts' },
  rung: ({ club, carry, low, high, unit, doubt }) =>
    `${club} trägt im Mittel ${carry} ${unit}, die Hälfte der sauberen Schläge zwischen ${low} und ${high}.${doubt}`,
  rungDoubt: ({ low, high }) =>
    ` Der Mittelwert selbst liegt in neun von zehn Fällen zwischen ${low} und ${high}.`,
  gaps: {
    wide: ({ longer, shorter, apart }) =>
      `${apart} liegen zwischen ${longer} und ${shorter}: Längen dazwischen verlangen einen kürzeren Schwung.`,
    narrow: ({ longer, shorter, apart, times }) =>
      `${longer} und ${shorter} liegen ${apart} auseinander: In ${times} von hundert Fällen landet der längere kürzer.`,
    turned: ({ longer, shorter }) =>
      `${longer} trägt nicht weiter als ${shorter}, obwohl er weniger Loft hat.`,
  },
  degrees: {
    left: ({ degrees }) => `${degrees}° nach links`,
    right: ({ degrees }) => `${degrees}° nach rechts`,
  },
  noLean: ({ club }) => `${club} hat keine Neigung`,
  leans: ({ club, side }) => `${club} neigt ${side}`,
  leanDoubt: ({ low, high }) => `; in neun von zehn Fällen liegt die Neigung zwischen ${low} und ${high}`,
  lean: ({ main, doubt, within }) =>
    `${main}${doubt}. Zwei von drei sauberen Schlägen starten höchstens ${within}° davon entfernt.`,
  pattern: {
    onLine: 'auf der Ziellinie',
    left: ({ length }) => `${length} links vom Ziel`,
    right: ({ length }) => `${length} rechts vom Ziel`,
    longRight: ' Längere gehen eher nach rechts, kürzere nach links.',
    longLeft: ' Längere gehen eher nach links, kürzere nach rechts.',
    noShots: 'Dahinter stehen keine gemessenen Schläge.',
    shots: ({ count }) =>
      `Dahinter ${plural(count, { one: 'steht', other: 'stehen' })} ${counted(count, { one: 'gemessener Schlag', other: 'gemessene Schläge' })}.`,
    hardlyPoor: 'Kaum welche sind',
    poor: ({ percent }) => `${percent} von hundert Schlägen sind`,
    all: ({
      club,
      carry,
      side,
      halfAlong,
      halfAcross,
      mostAlong,
      mostAcross,
      lean,
      poor,
      poorCarry,
      basis,
    }) =>
      `${club}: Saubere Schläge tragen im Mittel ${carry} und landen ${side}. Die Hälfte davon liegt höchstens ${halfAlong} kürzer oder länger und ${halfAcross} seitlich davon, neun von zehn höchstens ${mostAlong} und ${mostAcross}.${lean} ${poor} Fehltreffer; diese tragen etwa ${poorCarry}. ${basis}`,
  },
  drift: {
    less: ({ club, by, period, low, high }) =>
      `${club} trägt ${by} weniger als ${period} (90-%-Bereich ${low} bis ${high}).`,
    more: ({ club, by, period, low, high }) =>
      `${club} trägt ${by} mehr als ${period} (90-%-Bereich ${low} bis ${high}).`,
    yearBefore: ({ day }) => `im Jahr vor dem ${day}`,
  },
  counted: {
    notCounted: ({ why }) => `Zählt nicht: ${why}`,
    asMeasured: 'Wie gemessen.',
    becomes: ({ length, side, where, was }) => `${length}, ${side} ${where}; geschlagen ${was}.`,
    goodLie: 'aus guter Lage',
    stillAir: 'bei Windstille, 15 °C und auf Meereshöhe',
    from: {
      good: 'aus guter Lage',
      rough: 'aus dem Rough',
      longRough: 'aus hohem Rough',
      bunker: 'aus Sand',
      woods: 'unter Bäumen',
      penalty: 'aus einer Penalty Area',
    },
    wind: ({ wind, side }) => `bei ${wind} Wind${side}`,
    temperature: ({ temperature }) => `bei ${temperature}`,
    altitude: ({ metres }) => `auf ${metres} m über dem Meer`,
  },
  windSides: {
    '0': 'von vorn',
    '1': 'von vorn rechts',
    '2': 'von rechts',
    '3': 'von hinten rechts',
    '4': 'von hinten',
    '5': 'von hinten links',
    '6': 'von links',
    '7': 'von vorn links',
  },
  doubts: {
    lie: ({ lie }) => `die Lage „${lie}“ ist nicht bekannt; sie gilt als gute`,
    'wind-side': 'es war windig, aber es fehlt, von welcher Seite der Wind kam',
    wind: ({ wind, most }) => `Wind von ${wind} m/s liegt außerhalb des Flugmodells, das bis ${most} reicht`,
    temperature: ({ temperature, coldest, hottest }) =>
      `${temperature} °C liegen außerhalb des Flugmodells, das von ${coldest} bis ${hottest} reicht`,
    altitude: ({ altitude, most }) =>
      `${altitude} m über dem Meer liegen außerhalb des Flugmodells, das bis ${most} reicht`,
    flight:
      'Wind und Luft ändern den üblichen Schlag dieses Schlägers mehr, als dem Flugmodell zu trauen ist',
  },
  leftOut: {
    'shot-of-unknown-club': ({ club }) =>
      `„${club}“ ist nicht im Bag. Den Schläger ins Bag aufnehmen, oder seinen Namen bei den Schlägen berichtigen.`,
    'shot-of-unknown-swing': ({ club }) =>
      `das Bag führt diesen Schwung für ${club} nicht. Den Schwung beim Schläger im Bag aufnehmen.`,
    'shot-of-putter': ({ club }) =>
      `${club} ist ein Putter. Das Putten stattdessen durch seine beiden Streuungen angeben.`,
    'part-shot-unused': ({ club }) =>
      `Teilschwüngen mit ${club} fehlt die gewollte Länge. intendedM ergänzen; bis dahin gilt der volle Schwung.`,
    'shot-from-bad-lie': ({ club }) =>
      `mit ${club} aus einer Lage, deren Wirkung auf diesen Schwung nicht bekannt ist. Aufbewahrt, sagt aber nichts über den Schläger selbst.`,
    'shot-without-direction': ({ club }) => `mit ${club} ohne Richtung. offlineM oder directionDeg ergänzen.`,
    'shot-impossible': ({ club }) =>
      `mit ${club}: weniger als 1 m Carry, oder seitlich weiter als lang. Die Messwerte prüfen.`,
  },
  someLeftOut: ({ count, why }) =>
    `${counted(count, { one: 'Schlag bleibt', other: 'Schläge bleiben' })} außen vor: ${why}`,
  someAsMeasured: ({ count, club, why }) =>
    `${counted(count, { one: 'Schlag', other: 'Schläge' })} mit ${club} zählen wie gemessen: ${why}.`,
  andMore: ({ place, count }) => `${place} und ${count} weitere`,
  level: ({ handicap, group }) => `Handicap ${handicap}, ${group}`,
  levelGroups: {
    men: 'Männer',
    women: 'Frauen',
    'senior-men': 'Senioren',
    'senior-women': 'Seniorinnen',
    juniors: 'Jugend',
  },
};
