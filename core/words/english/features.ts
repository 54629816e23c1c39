/** What is drawn of a course, by kind, hole and name. */

import { figures } from './figures.ts';

const { counted, plural } = figures;

export const features = {
  kinds: {
    tee: 'tee area',
    fairway: 'fairway',
    green: 'green',
    bunker: 'bunker',
    rough: 'rough',
    'long-rough': 'long rough',
    'penalty-yellow': 'yellow penalty area',
    'penalty-red': 'red penalty area',
    'out-of-bounds': 'out of bounds',
    path: 'path',
    woods: 'woods',
    boundary: 'boundary',
    hole: 'hole line',
    tree: 'tree',
    'tee-marker': 'tee marker',
    'hole-position': 'hole position',
    'ground-level': 'ground level',
    'slope-mark': 'slope arrow',
  },
  counts: {
    tee: ({ count }: { readonly count: number }) => counted(count, { one: 'tee area', other: 'tee areas' }),
    fairway: ({ count }: { readonly count: number }) => counted(count, { one: 'fairway', other: 'fairways' }),
    green: ({ count }: { readonly count: number }) => counted(count, { one: 'green', other: 'greens' }),
    bunker: ({ count }: { readonly count: number }) => counted(count, { one: 'bunker', other: 'bunkers' }),
    rough: ({ count }: { readonly count: number }) =>
      counted(count, { one: 'rough', other: 'areas of rough' }),
    'long-rough': ({ count }: { readonly count: number }) =>
      counted(count, { one: 'long rough', other: 'areas of long rough' }),
    'penalty-yellow': ({ count }: { readonly count: number }) =>
      counted(count, { one: 'yellow penalty area', other: 'yellow penalty areas' }),
    'penalty-red': ({ count }: { readonly count: number }) =>
      counted(count, { one: 'red penalty area', other: 'red penalty areas' }),
    'out-of-bounds': ({ count }: { readonly count: number }) =>
      counted(count, { one: 'out of bounds', other: 'areas out of bounds' }),
    path: ({ count }: { readonly count: number }) => counted(count, { one: 'path', other: 'paths' }),
    woods: ({ count }: { readonly count: number }) =>
      counted(count, { one: 'area of woods', other: 'areas of woods' }),
    boundary: ({ count }: { readonly count: number }) =>
      counted(count, { one: 'boundary', other: 'boundaries' }),
    hole: ({ count }: { readonly count: number }) =>
      counted(count, { one: 'hole line', other: 'hole lines' }),
    tree: ({ count }: { readonly count: number }) => counted(count, { one: 'tree', other: 'trees' }),
    'tee-marker': ({ count }: { readonly count: number }) =>
      counted(count, { one: 'tee marker', other: 'tee markers' }),
    'hole-position': ({ count }: { readonly count: number }) =>
      counted(count, { one: 'hole position', other: 'hole positions' }),
    'ground-level': ({ count }: { readonly count: number }) =>
      counted(count, { one: 'ground level', other: 'ground levels' }),
    'slope-mark': ({ count }: { readonly count: number }) =>
      counted(count, { one: 'slope arrow', other: 'slope arrows' }),
  },
  holeLine: 'hole line',
  lineOf: ({ hole }: { readonly hole: string }) => `line of hole ${hole}`,
  feature: 'feature',
  nothing: 'nothing',
  ofHole: ({ what, hole }: { readonly what: string; readonly hole: string }) => `${what} of hole ${hole}`,
  named: ({ what, name }: { readonly what: string; readonly name: string }) => `${what} "${name}"`,
  some: ({ count }: { readonly count: number }) => counted(count, { one: 'feature', other: 'features' }),
  sentence: ({ what }: { readonly what: string }) => `The ${what}`,
  where: ({ index }: { readonly index: number }) => `feature ${index}`,
  whereWhat: ({ index, what }: { readonly index: number; readonly what: string }) =>
    `feature ${index} (${what})`,
  joined: ({ first, second }: { readonly first: string; readonly second: string }) => `${first}, ${second}`,
  hole: ({ hole }: { readonly hole: string }) => `hole ${hole}`,
  quoted: ({ name }: { readonly name: string }) => `"${name}"`,
  whereHole: ({ hole, feature }: { readonly hole: number; readonly feature: number }) =>
    `hole ${hole} (feature ${feature})`,
  inHole: ({
    where,
    what,
    name,
    feature,
  }: {
    readonly where: string;
    readonly what: string;
    readonly name: string;
    readonly feature: number;
  }) => `${where}, ${what} "${name}" (feature ${feature})`,
  slopeArrow: ({ feature }: { readonly feature: number }) => `slope arrow (feature ${feature})`,
  trees: ({ list }: { readonly list: string }) => `trees (${list})`,
  /** `feature 4`, `features 4, 9 and 3 more`. */
  listed: ({
    count,
    shown,
    more,
  }: {
    readonly count: number;
    readonly shown: string;
    readonly more: number;
  }) =>
    `${plural(count, { one: 'feature', other: 'features' })} ${shown}${more === 0 ? '' : ` and ${more} more`}`,
  whereOnlyHole: ({ hole }: { readonly hole: number }) => `hole ${hole}`,
  assumedPlaces: {
    startOfLine: 'Start of the line',
    endOfLine: 'End of the line',
    middleOfGreen: 'Middle of the green',
  },
  course: 'course',
  it: 'it',
};
