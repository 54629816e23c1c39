/** Changes of a course: their names for undo, and why one cannot be made. */

import { figures } from './figures.ts';

const { counted } = figures;

export const courseEdits = {
  shapes: {
    Point: 'a point',
    LineString: 'a line',
    Polygon: 'an area',
    MultiPolygon: 'an area of several parts',
  },
  or: ({ first, second }: { readonly first: string; readonly second: string }) => `${first} or ${second}`,
  cornersLeft: ({ count }: { readonly count: number }) =>
    `has only ${counted(count, { one: 'corner', other: 'corners' })} left there`,
  pointsLeft: ({ count }: { readonly count: number }) =>
    `has only ${counted(count, { one: 'point', other: 'points' })} left there`,
  names: {
    change: ({ what }: { readonly what: string }) => `Change ${what}`,
    changeProperty: ({ property, what }: { readonly property: string; readonly what: string }) =>
      `Change ${property} of ${what}`,
    add: ({ what }: { readonly what: string }) => `Add ${what}`,
    copy: ({ what, hole }: { readonly what: string; readonly hole: number }) =>
      `Copy ${what} to hole ${hole}`,
    cutHole: ({ what }: { readonly what: string }) => `Cut a hole into ${what}`,
    cut: ({ what, parts }: { readonly what: string; readonly parts: string }) => `Cut ${what} in ${parts}`,
    fill: ({ what }: { readonly what: string }) => `Fill a hole of ${what}`,
    addCorner: ({ what }: { readonly what: string }) => `Add a corner to ${what}`,
    merge: ({ what }: { readonly what: string }) => `Merge ${what}`,
    move: ({ what }: { readonly what: string }) => `Move ${what}`,
    moveCorner: ({ what }: { readonly what: string }) => `Move a corner of ${what}`,
    orderRings: 'Put the rings in order',
    remove: ({ what }: { readonly what: string }) => `Remove ${what}`,
    removeCorner: ({ what }: { readonly what: string }) => `Remove a corner of ${what}`,
    renumberOne: ({ from, to }: { readonly from: number; readonly to: number }) =>
      `Make hole ${from} number ${to}`,
    renumber: 'Renumber the holes',
    reorder: 'Reorder the holes',
    rename: 'Rename the course',
    sand: 'Change the sand of the course',
    notes: 'Change the notes of the course',
    turn: ({ what, kind }: { readonly what: string; readonly kind: string }) => `Turn ${what} into ${kind}`,
    simplify: ({ what }: { readonly what: string }) => `Simplify ${what}`,
    smooth: ({ what }: { readonly what: string }) => `Smooth ${what}`,
    split: ({ what }: { readonly what: string }) => `Split ${what} into its parts`,
  },
  properties: {
    ref: 'hole number',
    name: 'name',
    par: 'par',
    handicap: 'stroke index',
    height: 'height',
    diameter_crown: 'crown',
    canopy_base_m: 'canopy base',
    canopy_density_per_m: 'canopy density',
    leaf_type: 'leaves',
    leaf_cycle: 'leaf cycle',
    ele: 'elevation',
    lip_m: 'lip',
    slope_percent: 'slope',
    downhill_deg: 'downhill direction',
    card_length_m: 'card length',
  },
  two: 'two',
  cannotBe: ({
    key,
    value,
    wanted,
  }: {
    readonly key: string;
    readonly value: string;
    readonly wanted: string;
  }) => `${key} cannot be ${value}: write ${wanted}.`,
  needs: ({ kind, key, wanted }: { readonly kind: string; readonly key: string; readonly wanted: string }) =>
    `A ${kind} needs ${key}: write ${wanted}.`,
  mustBe: ({
    what,
    allowed,
    drawn,
  }: {
    readonly what: string;
    readonly allowed: string;
    readonly drawn: string;
  }) => `${what} must be ${allowed}, not ${drawn}.`,
  crossesDrawn: ({ what }: { readonly what: string }) =>
    `${what} crosses its own outline. Draw the corners in order round the area.`,
  badNumber: ({ hole }: { readonly hole: number }) =>
    `A hole cannot be number ${hole}: write a whole number such as 7.`,
  oneLine: ({ what }: { readonly what: string }) =>
    `${what} cannot be copied: a hole has one line. Draw the other hole's line.`,
  noCopy: ({ what }: { readonly what: string }) => `${what} has no shape that can be copied. Draw it again.`,
  offMap: ({ what }: { readonly what: string }) =>
    `${what} would be moved off the map. Choose a smaller shift.`,
  crosses: ({ what }: { readonly what: string }) =>
    `${what} crosses its own outline. Move its corners apart first.`,
  theHole: 'The hole',
  cutCrosses: 'The outline to be cut out crosses itself. Draw its corners in order.',
  cannotCut: 'These outlines cannot be cut. Simplify them, then cut again.',
  nothingLeft: ({ what }: { readonly what: string }) =>
    `Nothing would be left of the ${what}. Remove it instead.`,
  notCovered: ({ what }: { readonly what: string }) =>
    `${what} is not covered there. Draw the hole inside it.`,
  lineOffMap: 'The line leaves the map. Draw it again.',
  drawAcross: ({ what }: { readonly what: string }) => `Draw a line across the ${what}.`,
  lineCrosses: 'The line crosses itself. Draw it straight across.',
  notThrough: ({ what }: { readonly what: string }) =>
    `The line does not go right through the ${what}. Begin and end it outside.`,
  tooMany: ({ most }: { readonly most: number }) =>
    `The course would hold more than ${most} features. Add fewer at once, or remove some first.`,
  nothingChosen: 'Nothing is chosen. Choose one or more features on the map first.',
  noFeature: ({ id }: { readonly id: string }) =>
    `The course has no feature ${id} any more. Choose it again on the map.`,
  noRing: ({ what }: { readonly what: string }) =>
    `${what} has no such hole any more. Choose one on the map.`,
  isPoint: ({ what }: { readonly what: string }) => `${what} is a point and has no corners.`,
  chooseTwo: 'Choose at least two areas to be made one.',
  noKind: 'feature without a kind',
  differ: ({ first, second }: { readonly first: string; readonly second: string }) =>
    `A ${first} and a ${second} cannot be one area. Give both the same kind first.`,
  cannotMerge: 'These outlines cannot be put together. Simplify them, then merge again.',
  notTouching:
    'These areas do not touch along a side. Move corners until they overlap or share a side, then merge again.',
  noPlace: 'That is no place: longitude goes from -180 to 180, latitude from -90 to 90.',
  noMove: ({ what }: { readonly what: string }) =>
    `${what} has no shape that can be moved. Remove it and draw it again.`,
  tooFar: ({ what }: { readonly what: string }) =>
    `${what} lies too far away to be moved along. Move it by itself.`,
  ringsInOrder: 'All rings are closed and in order.',
  singlePoint: 'is a single point',
  tooFew: ({ what, rest }: { readonly what: string; readonly rest: string }) =>
    `${what} ${rest}. Remove the whole of it instead.`,
  noHole: ({ hole }: { readonly hole: number }) => `There is no hole ${hole}. Draw its line first.`,
  sameNumber: ({
    first,
    second,
    number,
  }: {
    readonly first: number;
    readonly second: number;
    readonly number: number;
  }) =>
    `Holes ${first} and ${second} would both be number ${number}. Give the other one a number of its own too.`,
  nameEach: ({ holes }: { readonly holes: string }) => `Name each hole once: ${holes}.`,
  saysSo: 'The course says so already.',
  notDrawn: 'not drawn',
  drawnAs: ({ shape }: { readonly shape: string }) => `drawn as ${shape}`,
  kindMustBe: ({
    what,
    drawn,
    kind,
    allowed,
  }: {
    readonly what: string;
    readonly drawn: string;
    readonly kind: string;
    readonly allowed: string;
  }) => `${what} is ${drawn}; a ${kind} must be ${allowed}.`,
  notPlace: ({ lon, lat }: { readonly lon: number; readonly lat: number }) =>
    `${lon}, ${lat} is no place: write longitude from -180 to 180 and latitude from -90 to 90 degrees.`,
  saysKind: ({ tag }: { readonly tag: string }) =>
    `${tag} says what kind the feature is. Change its kind instead.`,
  noProperty: 'No property was named. Name one, such as par or height.',
  noShape: ({ what }: { readonly what: string }) =>
    `${what} has no shape that can be read. Remove it and draw it again.`,
  worksOn: ({
    what,
    drawn,
    types,
  }: {
    readonly what: string;
    readonly drawn: string;
    readonly types: string;
  }) => `${what} is drawn as ${drawn}; this works on ${types}.`,
  manyCorners: ({
    what,
    count,
    most,
  }: {
    readonly what: string;
    readonly count: number;
    readonly most: number;
  }) => `${what} would have ${count} corners; at most ${most} are kept. Simplify it first.`,
  leavesMap: ({ what }: { readonly what: string }) =>
    `${what} would leave the map: longitude goes from -180 to 180 and latitude from -90 to 90 degrees.`,
  enclosesNothing: ({ what }: { readonly what: string }) =>
    `${what} would enclose nothing: an area needs at least 3 different corners.`,
  noLength: ({ what }: { readonly what: string }) =>
    `${what} would have no length: a line needs at least 2 different points.`,
  tolerance: ({ metres }: { readonly metres: number }) =>
    `The tolerance is in metres, above 0 and up to 1000, not ${metres}.`,
  wouldCross: ({ what, metres }: { readonly what: string; readonly metres: number }) =>
    `${what} would cross its own outline. Take a smaller tolerance than ${metres} m.`,
  rounds: ({ most, rounds }: { readonly most: number; readonly rounds: number }) =>
    `Smooth in 1 to ${most} rounds, not ${rounds}.`,
  wouldCrossSmooth: ({ what }: { readonly what: string }) =>
    `${what} would cross its own outline when smoothed. Widen its narrow places first, or smooth less.`,
  noCorner: ({ what }: { readonly what: string }) =>
    `${what} has no such corner any more. Choose one of those shown on the map.`,
};
