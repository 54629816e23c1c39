/** What is wrong with a course, by the rules of the check. */

import { figures } from './figures.ts';

const { short } = figures;

export const courseFaults = {
  reachesOutside: ({ remedy }: { readonly remedy: string }) =>
    `It reaches outside the drawn boundary. ${remedy}`,
  whollyOutside: ({ remedy }: { readonly remedy: string }) =>
    `It lies wholly outside the drawn boundary. ${remedy}`,
  treesOutside: ({ count }: { readonly count: number }) =>
    `${count} trees lie outside the drawn boundary. Leave them if they stand there; else move or remove them.`,
  treeOutside:
    'One tree lies outside the drawn boundary. Leave them if they stand there; else move or remove them.',
  duplicateHole: ({ feature, hole }: { readonly feature: number; readonly hole: number }) =>
    `Feature ${feature} is hole ${hole} already. Give one of the two another ref, or remove it.`,
  offTee: ({ metres }: { readonly metres: number }) =>
    `Its line does not start at a tee. Start it on a tee area (golf=tee) or within ${metres} m of a tee marker.`,
  startsThere: 'It starts there: turn its direction round, tee first.',
  drawOn: 'Draw it on to the middle of the green, or correct the ref of one of the two.',
  offGreen: ({ feature, remedy }: { readonly feature: number; readonly remedy: string }) =>
    `Its line does not end on its green (feature ${feature}). ${remedy}`,
  markerOff: 'It does not lie on a tee area. Move it, or draw the area and tag it golf=tee.',
  openRing: ({ ring }: { readonly ring: number }) =>
    `Ring ${ring} is not closed: its last position differs from its first. It is closed by a straight line for planning; repeat the first position at the end, or draw the missing part.`,
  moveInside: 'Move it inside, or redraw the boundary.',
  lineOutside: ({ remedy }: { readonly remedy: string }) =>
    `Its line runs outside the drawn boundary. ${remedy}`,
  namedOutside: ({
    name,
    feature,
    remedy,
  }: {
    readonly name: string;
    readonly feature: number;
    readonly remedy: string;
  }) => `"${name}" (feature ${feature}) lies outside the drawn boundary. ${remedy}`,
  greensOverlap: ({
    area,
    hole,
    feature,
  }: {
    readonly area: number;
    readonly hole: number;
    readonly feature: number;
  }) =>
    `${area} m² of it are also green of hole ${hole} (feature ${feature}). Correct the outlines; a green that two holes share is drawn once, without ref.`,
  badPar: ({ par }: { readonly par: number }) =>
    `Par is ${par}; it must be a whole number from 3 to 6. Correct par on the golf=hole line.`,
  positionOff: ({ feature }: { readonly feature: number }) =>
    `It does not lie on the green (feature ${feature}). Move it there or correct its ref.`,
  selfCrossing: ({ lon, lat }: { readonly lon: string; readonly lat: string }) =>
    `Its outline crosses or touches itself near longitude ${lon}, latitude ${lat}. Move or remove points there until it does not.`,
  slopeOff: 'It lies on no green and says nothing about any. Move it onto the green, or remove it.',
  /** Both in percent; `taken` is the steepest that counts. */
  slopeSteep: ({ slope, taken }: { readonly slope: number; readonly taken: number }) =>
    `It falls by ${short(slope, 1)} %; a ball would hardly stop there, and the plan takes ${short(taken, 1)} %. Measure again, or write slope_percent up to ${short(taken, 1)}.`,
  badIndex: ({ index, most }: { readonly index: number; readonly most: number }) =>
    `Its stroke index is ${index}; it must be a whole number from 1 to ${most}. Correct handicap on the golf=hole line.`,
  sameIndex: ({ index, hole }: { readonly index: number; readonly hole: number }) =>
    `Its stroke index ${index} is that of hole ${hole} too. Correct handicap on one of the two golf=hole lines.`,
  noGreen: ({ hole }: { readonly hole: number }) =>
    `It has no green, so it cannot be planned; other holes can. Draw one and tag it golf=green, ref=${hole}.`,
  tooLarge: ({ metres, most }: { readonly metres: number; readonly most: number }) =>
    `Its line, tees and hole positions are spread over ${short(metres / 1000, metres < 10_000 ? 1 : 0)} km; up to ${short(most / 1000, 1)} km can be planned. Check its coordinates (degrees, longitude first), and whether a tee marker or hole position bears its number (ref) but belongs elsewhere.`,
  noPar: ({ par }: { readonly par: number }) =>
    `It has no par that can be read; ${par} is taken from its length. Write par on the golf=hole line.`,
};
