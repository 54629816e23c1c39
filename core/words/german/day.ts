/** The day: wind, air, ground, season, local rules, in words and on its panel. In German. */

import type { day as english } from '../english/day.ts';

export const day: typeof english = {
  day: 'Tag',
  close: 'Schließen',
  change: 'Ändern',
  numberFromTo: ({ least, most }) => `Eine Zahl von ${least} bis ${most}.`,
  firmness: {
    soft: 'Weich',
    medium: 'Mittel',
    firm: 'Hart',
  },
  seasons: {
    leaf: 'Belaubt',
    bare: 'Kahl',
  },
  temperature: 'Temperatur',
  height: 'Höhe über dem Meer',
  greenSpeed: 'Grüngeschwindigkeit (Stimpmeter)',
  ground: 'Boden',
  firmnessOfGround: 'Härte des Bodens',
  trees: 'Bäume',
  backToOrdinary: 'Zurück zu einem gewöhnlichen Tag',
  forEveryHole:
    'Für jedes Loch dieses Platzes, bis zur nächsten Änderung. Donner zu hören: den Platz verlassen.',
  wind: 'Wind',
  comesFrom: 'kommt aus',
  gusts: 'Böen, ±',
  giveASpeed: 'Der Knopf steht dort, woher der Wind kommt, Norden oben. Erst eine Stärke macht ihn spürbar.',
  windNote: ({ from, here }) =>
    `Aus ${from}${here}. Zwei von drei Schlägen treffen auf Wind innerhalb von ± den Böen.`,
  onThisHole: ({ wind }) => `; auf diesem Loch ${wind}`,
  windComesFrom: 'Wind kommt aus',
  dialValue: ({ point, degrees }) => `${point}, ${degrees} Grad`,
  plannedFor: ({ day }) => `Geplant für diesen Tag: ${day}. Zu ändern hier oder unter Planung.`,
  steps: {
    temperature: ({ value }) => `Temperatur ${value}`,
    height: 'Höhe über dem Meer',
    greenSpeed: ({ feet }) => `Grüngeschwindigkeit ${feet} ft`,
    bare: 'kahle Bäume',
    leaf: 'belaubte Bäume',
    ordinary: 'zurück zu einem gewöhnlichen Tag',
    windFrom: ({ point }) => `Wind aus ${point}`,
    wind: ({ speed }) => `Wind ${speed}`,
    gusts: ({ speed }) => `Böen ± ${speed}`,
    inForce: ({ rule }) => `${rule} in Kraft`,
    notInForce: ({ rule }) => `${rule} nicht in Kraft`,
  },
  localRules: ({ which }) => `Platzregeln: ${which}`,
  noneInForce: 'keine in Kraft',
  inForce: ({ rules }) => `${rules} in Kraft`,
  onlyWhereMade: 'Nur, wo die Spielleitung sie erlassen hat; ihr eigener Wortlaut gilt.',
  rules: {
    strokeAndDistanceAlternative: {
      name: 'Alternative zu Schlag und Distanzverlust (Musterplatzregel E-5)',
      label: 'Platzregel E-5',
      text: 'Ein verlorener Ball oder ein Ball im Aus darf mit zwei Strafschlägen zwischen der vermuteten Stelle und dem nächsten Rand des Fairways gedroppt werden, nicht näher zum Loch, anstatt noch einmal zu spielen.',
    },
    preferredLies: {
      name: 'Besserlegen (Musterplatzregel E-3)',
      label: 'Besserlegen (E-3)',
      text: 'Ein Ball auf Gras mit Fairwayschnitt darf straflos aufgenommen, gereinigt und in der Nähe hingelegt werden, nicht näher zum Loch.',
    },
  },
  parts: {
    still: 'windstill',
    hardlyAny: ({ gusts }) => `kaum Wind${gusts}`,
    gusts: ({ speed }) => `, Böen ± ${speed}`,
    wind: ({ speed, point, gusts }) => `Wind ${speed} aus ${point}${gusts}`,
    altitude: ({ height }) => `${height} über dem Meer`,
    humidity: ({ percent }) => `Luftfeuchte ${percent} %`,
    ground: {
      soft: 'weicher Boden',
      medium: 'mittlerer Boden',
      firm: 'harter Boden',
    },
    greens: ({ feet }) => `Grüns ${feet} ft`,
    bare: 'kahle Bäume',
    ruleE5: 'Platzregel E-5',
    ruleE3: 'Besserlegen (E-3)',
  },
  ordinary: ({ temperature, feet }) =>
    `Ein gewöhnlicher Tag: windstill, ${temperature}, mittlerer Boden, Grüns ${feet} ft`,
  ofRound: {
    label: 'Tag der Runde',
    under: ({ day }) => `Gespielt an diesem Tag: ${day}.`,
    none: 'Kein Tag ist notiert: Die Runde wird mit einem gewöhnlichen Tag verglichen.',
    take: 'Den jetzt eingestellten Tag notieren',
    step: 'den Tag der Runde notieren',
    working: ({ done, total }) =>
      `Löcher werden für den Tag der Runde durchgerechnet: ${done} von ${total} verglichen`,
    stop: 'Anhalten',
    stopped:
      'Angehalten: Löcher, die für den Tag der Runde nicht durchgerechnet sind, werden nach ihren Summen verglichen.',
    goOn: 'Weiter',
  },
  oneDay: {
    step: 'das eigene Wetter der Runde',
    title: 'Das eigene Wetter der Runde gehört nun zum Tag',
    temperature: ({ own, plan }) =>
      `Die Runde hatte ${own} °C, der Tag hat ${plan} °C: Es bleibt bei dem des Tages.`,
    greenSpeed: ({ own, plan }) =>
      `Die Runde hatte Grüns von ${own} ft, der Tag hat ${plan} ft: Es bleibt bei dem des Tages.`,
    wind: ({ point }) =>
      `Die Runde hatte Wind aus ${point}, der Tag hat anderen: Es bleibt bei dem des Tages.`,
    windWithoutSpeed: ({ point }) =>
      `Die Runde hatte Wind aus ${point} ohne Stärke: Mit einer Stärke rechnen Planung und Karten damit.`,
  },
  windOn: {
    into: 'von vorn',
    behind: 'von hinten',
    intoLeft: 'von vorn links',
    intoRight: 'von vorn rechts',
    behindLeft: 'von hinten links',
    behindRight: 'von hinten rechts',
    acrossLeft: 'quer von links',
    acrossRight: 'quer von rechts',
  },
};
