/** What is wrong with the text of a course file, what its members should hold, and what is assumed where they are absent. */

import { figures } from './figures.ts';

const { plural, whole } = figures;

interface FoundValue {
  readonly key: string;
  readonly found: string;
  readonly wanted: string;
}

export const courseReading = {
  json: {
    tooLong: ({ count, most }: { readonly count: number; readonly most: number }) =>
      `It holds ${count} characters; at most ${most} are read. Split the file or thin out its points.`,
    where: ({ line, column }: { readonly line: number; readonly column: number }) =>
      `line ${line}, column ${column}`,
    syntax: ({ expected, found }: { readonly expected: string; readonly found: string }) =>
      `Not valid JSON: ${expected} should follow, but ${found}. Mend the text at that place, or open the last good copy.`,
    valid: 'valid JSON',
    endOfFile: 'the end of the file',
    commaOr: ({ closer }: { readonly closer: string }) => `a comma or "${closer}"`,
    colon: 'a colon',
    value: 'a value',
    name: 'a name in double quotes',
    nameOrEnd: 'a name in double quotes or "}"',
    restOfText: 'the rest of the text in quotes or a closing quote',
    escape: 'an escape that JSON knows',
    closingQuote: 'a closing quote',
    ends: 'the text ends there',
    stands: ({ what }: { readonly what: string }) => `${what} stands there`,
    lineBreak: 'a line break',
    quote: 'a double quote',
    character: ({ character }: { readonly character: string }) => `"${character}"`,
  },
  file: {
    tooDeep: ({ most }: { readonly most: number }) =>
      `It is nested more than ${most} levels deep. Export it again from the program that made it.`,
    dropped: ({ count }: { readonly count: number }) =>
      `${count} members called __proto__ are left out: they have no meaning in a course file.`,
    noObject:
      'It is no GeoJSON object and is left out; saving drops it. Keep a copy of the file if it matters.',
    sameId: ({ id }: { readonly id: string }) =>
      `Its id ${id} is taken by an earlier feature; it gets another one.`,
    noCollection:
      'It is not a GeoJSON FeatureCollection with a list of features. Choose a course file, or export one from a GIS program as GeoJSON.',
    noHeader: ({ version }: { readonly version: number }) =>
      `The collection has no holewright member; it is read as format version ${version} without a name. Saving adds the member.`,
    manyFeatures: ({ count, most }: { readonly count: number; readonly most: number }) =>
      `It holds ${count} features; at most ${most} are read. Cut it down to the course itself.`,
    manyPositions: ({ count, most }: { readonly count: number; readonly most: number }) =>
      `It holds ${count} positions; at most ${most} are read. Simplify the shapes or cut the file down to the course itself.`,
    newer: ({ version, current }: { readonly version: number; readonly current: number }) =>
      `The file is of format version ${version}; this program reads up to version ${current}. Open it with a newer release of Holewright.`,
  },
  shape: {
    emptyRing: ({ ring }: { readonly ring: number }) =>
      `Ring ${ring} has fewer than 3 different positions and encloses nothing. Draw it again or remove it.`,
    drawnAs: ({ type }: { readonly type: string }) => `drawn as a ${type}`,
    notDrawn: 'not drawn at all (its geometry is null)',
    mustBe: ({
      drawn,
      kind,
      allowed,
    }: {
      readonly drawn: string;
      readonly kind: string;
      readonly allowed: string;
    }) => `It is ${drawn}; a ${kind} must be a ${allowed}. Draw it again or remove it.`,
    unreadable: ({
      place,
      found,
      why,
    }: {
      readonly place: string;
      readonly found: string;
      readonly why: string;
    }) => `${place} is ${found}: ${why}. Correct it or remove the feature.`,
    noFeature: ({
      place,
      found,
      wanted,
    }: {
      readonly place: string;
      readonly found: string;
      readonly wanted: string;
    }) => `${place} is ${found}, not ${wanted}. Write it as a GeoJSON Feature or remove it.`,
    it: 'It',
    asGeoJson: 'what GeoJSON asks for',
    problems: {
      longitude: 'longitude must be a number',
      longitudeRange: 'longitude must be from -180 to 180',
      latitude: 'latitude must be a number',
      latitudeRange: 'latitude must be from -90 to 90',
      position: 'a position must be [longitude, latitude]',
      ring: 'a ring must be a list of positions',
      shortRing: 'a ring needs at least 3 different positions',
      polygon: 'a polygon must be a list of rings',
      emptyPolygon: 'a polygon needs at least one ring',
      line: 'a line must be a list of positions',
      shortLine: 'a line needs at least 2 positions',
      multipolygon: 'a multipolygon must be a list of polygons',
      emptyMultipolygon: 'a multipolygon needs at least one polygon',
    },
  },
  unknown: ({ what }: { readonly what: string }) =>
    `${what}. It stays in the file and is left out of the plan; tag it if it should count.`,
  noTag: 'It has no golf, natural or holewright_kind tag',
  noKind: ({ tags }: { readonly tags: string }) => `${tags} is of no kind that is planned with`,
  value: {
    unreadable: ({ key, found, wanted }: FoundValue) => `${key} is ${found}; write ${wanted}.`,
    readAsAbsent: ({ key, found, wanted }: FoundValue) =>
      `${key} is ${found}; write ${wanted}. It is read as absent.`,
    missing: ({ key, wanted }: { readonly key: string; readonly wanted: string }) =>
      `${key} is missing; write ${wanted}.`,
    absent: 'absent',
  },
  /** What each property should hold. */
  properties: {
    ref: 'the number of the hole, such as 7',
    name: 'a text in quotes',
    par: 'a number, such as 4',
    handicap: 'the stroke index, such as 11',
    height: 'metres from 0 to 200, such as 12',
    diameter_crown: 'metres from 0 to 200, such as 8',
    canopy_base_m: 'metres from 0 to 200, such as 2',
    canopy_density_per_m: 'a number from 0 to 10, such as 0.12',
    leaf_type: 'broadleaved, needleleaved, mixed',
    leaf_cycle: 'evergreen, deciduous, semi_evergreen, semi_deciduous, mixed',
    ele: 'metres above sea level, such as 31.5',
    lip_m: 'metres from 0 to 10, such as 0.8',
    slope_percent: 'per cent from 0 to 15, such as 2.5',
    downhill_deg: 'degrees clockwise from north, from 0 to 360, such as 135 for south-east',
  },
  wholeNumber: ({ least, most }: { readonly least: number; readonly most: number }) =>
    `a whole number from ${least} to ${most}`,
  lengthIn: ({
    least,
    most,
    unit,
  }: {
    readonly least: number;
    readonly most: number;
    readonly unit: string;
  }) => `a number from ${whole(least)} to ${whole(most)} ${unit}`,
  cardLength: ({ least, most }: { readonly least: number; readonly most: number }) =>
    `the length on the card in metres, from ${least} to ${most}`,
  canopy: {
    upsideDown: ({ base, top }: { readonly base: number; readonly top: number }) =>
      `The canopy's base (${base} m) lies above its top (${top} m); a default base is taken. Correct canopy_base_m or height.`,
    woods: ({ measures, count }: { readonly measures: string; readonly count: number }) =>
      `The woods have no height: ${measures} ${plural(count, { one: 'is', other: 'are' })} taken. Measure and write height and canopy_base_m, in metres.`,
    oneTree: ({ measures, count }: { readonly measures: string; readonly count: number }) =>
      `One tree lacks measures: ${measures} ${plural(count, { one: 'is', other: 'are' })} taken. Write height, canopy_base_m and diameter_crown, in metres.`,
    trees: ({
      trees,
      measures,
      count,
    }: {
      readonly trees: number;
      readonly measures: string;
      readonly count: number;
    }) =>
      `${trees} trees lack measures: ${measures} ${plural(count, { one: 'is', other: 'are' })} taken. Write height, canopy_base_m and diameter_crown, in metres.`,
    top: ({ metres }: { readonly metres: number }) => `top ${metres} m`,
    base: ({ metres }: { readonly metres: number }) => `base ${metres} m`,
    density: ({ perM }: { readonly perM: number }) => `density ${perM} per m`,
    crown: ({ metres }: { readonly metres: number }) => `crown radius ${metres} m`,
  },
  holeWithoutLine: ({
    feature,
    what,
    hole,
  }: {
    readonly feature: number;
    readonly what: string;
    readonly hole: number;
  }) =>
    `Feature ${feature} (${what}) names it, but it has no hole line. Draw one from tee to green and tag it golf=hole, ref=${hole}; or correct the ref.`,
  noHoles:
    'The course has no hole. Draw a line from tee to green and tag it golf=hole with ref, par and handicap.',
  drawing: {
    noHole: 'The course has no such hole. Choose one of those that it has.',
    tooLarge: ({
      scale,
      width,
      height,
      most,
    }: {
      readonly scale: number;
      readonly width: number;
      readonly height: number;
      readonly most: number;
    }) =>
      `At 1:${scale} the drawing would be ${width} × ${height} mm; up to ${most} mm are drawn. Choose a scale such as 2000.`,
    title: ({ hole, par }: { readonly hole: number; readonly par: number }) => `Hole ${hole}, par ${par}`,
    titleNamed: ({
      hole,
      name,
      par,
    }: {
      readonly hole: number;
      readonly name: string;
      readonly par: number;
    }) => `Hole ${hole}, ${name}, par ${par}`,
    playedUpwards: ({ course, scale }: { readonly course: string; readonly scale: number }) =>
      `${course}. Drawn at 1:${scale}, played upwards.`,
    northUp: ({ course, scale }: { readonly course: string; readonly scale: number }) =>
      `${course}. Drawn at 1:${scale}, north up.`,
    area: ({ kind, name }: { readonly kind: string; readonly name: string }) => `${kind}: ${name}`,
  },
};
