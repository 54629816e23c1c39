/** What is drawn of a course, by kind, hole and name. In German. */

import type { features as english } from '../english/features.ts';
import { figures } from './figures.ts';

const { counted } = figures;

export const features: typeof english = {
  kinds: {
    tee: 'Abschlagfläche',
    fairway: 'Fairway',
    green: 'Grün',
    bunker: 'Bunker',
    rough: 'Rough',
    'long-rough': 'hohes Rough',
    'penalty-yellow': 'gelbe Penalty Area',
    'penalty-red': 'rote Penalty Area',
    'out-of-bounds': 'Aus',
    path: 'Weg',
    woods: 'Wald',
    boundary: 'Platzgrenze',
    hole: 'Spiellinie',
    tree: 'Baum',
    'tee-marker': 'Teemarkierung',
    'hole-position': 'Fahnenposition',
    'ground-level': 'Bodenhöhe',
    'slope-mark': 'Gefällepfeil',
  },
  counts: {
    tee: ({ count }) => counted(count, { one: 'Abschlagfläche', other: 'Abschlagflächen' }),
    fairway: ({ count }) => counted(count, { one: 'Fairway', other: 'Fairways' }),
    green: ({ count }) => counted(count, { one: 'Grün', other: 'Grüns' }),
    bunker: ({ count }) => counted(count, { one: 'Bunker', other: 'Bunker' }),
    rough: ({ count }) => counted(count, { one: 'Rough', other: 'Roughflächen' }),
    'long-rough': ({ count }) => counted(count, { one: 'hohes Rough', other: 'Flächen mit hohem Rough' }),
    'penalty-yellow': ({ count }) =>
      counted(count, { one: 'gelbe Penalty Area', other: 'gelbe Penalty Areas' }),
    'penalty-red': ({ count }) => counted(count, { one: 'rote Penalty Area', other: 'rote Penalty Areas' }),
    'out-of-bounds': ({ count }) => counted(count, { one: 'Aus', other: 'Ausflächen' }),
    path: ({ count }) => counted(count, { one: 'Weg', other: 'Wege' }),
    woods: ({ count }) => counted(count, { one: 'Wald', other: 'Waldflächen' }),
    boundary: ({ count }) => counted(count, { one: 'Platzgrenze', other: 'Platzgrenzen' }),
    hole: ({ count }) => counted(count, { one: 'Spiellinie', other: 'Spiellinien' }),
    tree: ({ count }) => counted(count, { one: 'Baum', other: 'Bäume' }),
    'tee-marker': ({ count }) => counted(count, { one: 'Teemarkierung', other: 'Teemarkierungen' }),
    'hole-position': ({ count }) => counted(count, { one: 'Fahnenposition', other: 'Fahnenpositionen' }),
    'ground-level': ({ count }) => counted(count, { one: 'Bodenhöhe', other: 'Bodenhöhen' }),
    'slope-mark': ({ count }) => counted(count, { one: 'Gefällepfeil', other: 'Gefällepfeile' }),
  },
  holeLine: 'Spiellinie',
  lineOf: ({ hole }) => `Spiellinie von Loch ${hole}`,
  feature: 'Objekt',
  nothing: 'nichts',
  ofHole: ({ what, hole }) => `${what} von Loch ${hole}`,
  named: ({ what, name }) => `${what} „${name}“`,
  some: ({ count }) => counted(count, { one: 'Objekt', other: 'Objekte' }),
  sentence: ({ what }) => what,
};
