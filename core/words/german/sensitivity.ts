/** How far the day may change before the recommendation does. In German. */

import type { sensitivity as english } from '../english/sensitivity.ts';

export const sensitivity: typeof english = {
  title: 'Wie weit sich der Tag ändern darf',
  intro:
    'Eine Bedingung nach der anderen, für diesen Schlag; spätere Schläge zählen wie heute. Eine Änderung zählt, wo sie mehr spart, als Zufall und eigener Spielraum erklären.',
  workingOut: 'Andere Tage werden durchgerechnet',
  stop: 'Anhalten',
  stopped: 'Angehalten.',
  again: 'Noch einmal',
  waiting: 'Steht hier, sobald das Loch ganz durchgerechnet ist.',
  noClub: 'Empfohlen ist ein Putt oder ein Drop: Ein anderer Tag ändert keinen Schläger.',
  now: ({ value }) => `jetzt ${value}`,
  line: ({ name, now, said }) => `${name}: jetzt ${now}; ${said}.`,
  conditions: {
    'wind-along': 'Wind längs des Schlags',
    'wind-across': 'Wind quer dazu',
    temperature: 'Temperatur',
    firmness: 'Boden',
    'green-speed': 'Grüngeschwindigkeit',
    season: 'Bäume',
  },
  none: 'kein Wind',
  against: ({ speed }) => `${speed} von vorn`,
  behind: ({ speed }) => `${speed} von hinten`,
  fromLeft: ({ speed }) => `${speed} von links`,
  fromRight: ({ speed }) => `${speed} von rechts`,
  ground: { soft: 'weich', medium: 'mittel', firm: 'hart' },
  trees: { leaf: 'belaubt', bare: 'kahl' },
  swings: {
    full: '',
    'three-quarter': ' Dreiviertel',
    half: ' halb',
    punch: ' Punch',
    part: ' Teilschwung',
    'curved-left': ' mit Linkskurve',
    'curved-right': ' mit Rechtskurve',
  },
  takesOver: ({ club, at }) => `ab ${at} lohnt ${club} mehr`,
  saves: ({ gain, error }) => ` (spart ${gain} ± ${error})`,
  savesAt: ({ gain, error, at }) => ` (spart ${gain} ± ${error} bei ${at})`,
  notAhead: ({ at }) => ` (bei ${at} nicht mehr vorn)`,
  aimLeft: ({ degrees, at }) => `ab ${at} ${degrees}° weiter links zielen`,
  aimRight: ({ degrees, at }) => `ab ${at} ${degrees}° weiter rechts zielen`,
  noChange: ({ from, to }) => `von ${from} bis ${to} ändert sich nichts`,
  noStep: 'nichts anderes ändert die Empfehlung',
  legend:
    'Gefüllt: Die Empfehlung bleibt. Punkte: Das Ziel dreht. Streifen: ein anderer Schläger. Der Strich ist heute.',
};
