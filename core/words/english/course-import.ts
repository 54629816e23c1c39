/** What a map file brings and what is left out of it, why, and what is wrong with the file. */

import { figures } from './figures.ts';

const { counted } = figures;

type Held = { readonly count: number; readonly most: number };

export const courseImport = {
  from: { osm: 'OpenStreetMap', geojson: 'GeoJSON', gpx: 'GPX', heights: 'an elevation model' },
  step: ({ count, from }: { readonly count: number; readonly from: string }) =>
    `Import ${counted(count, { one: 'feature', other: 'features' })} from ${from}`,
  nothing: 'The file holds nothing that the course could take in. See what was left out and why.',
  courseChanged: 'The course has changed since the file was read. Import it again.',
  /** What things of the file are called. */
  things: {
    others: 'other things',
    element: 'element',
    relation: 'relation',
    waypoint: 'waypoint',
    track: 'track',
    route: 'route',
    feature: 'feature',
    groundLevel: 'ground level',
    building: 'building',
  },
  why: {
    manySorts: 'of too many sorts to be listed one by one',
    noLines: 'the course has no hole lines yet',
    manyLines: 'there are too many hole lines to look at each',
    noneNear: {
      end: ({ metres }: { readonly metres: number }) => `no hole is near: none ends within ${metres} m`,
      'first-half': ({ metres }: { readonly metres: number }) =>
        `no hole is near: none starts within ${metres} m`,
      whole: ({ metres }: { readonly metres: number }) => `no hole is near: none runs within ${metres} m`,
    },
    bothEnd: ({ first, second }: { readonly first: number; readonly second: number }) =>
      `holes ${first} and ${second} both end on it; it serves both without a number`,
    asNear: ({
      first,
      near,
      second,
      far,
    }: {
      readonly first: number;
      readonly near: number;
      readonly second: number;
      readonly far: number;
    }) => `it lies about as near to hole ${first} (${near} m) as to hole ${second} (${far} m)`,
    known: 'is in the course already, from an earlier import',
    noHole: ({ why }: { readonly why: string }) => `belongs to no hole that it names, and ${why}`,
    tangled: ({ most }: { readonly most: number }) =>
      `its line has more than ${most} points or crosses itself time and again; simplify it`,
    noTag: 'has no tag that is known and no mapping; say which kind it is',
    drawnAs: ({ type, wanted }: { readonly type: string; readonly wanted: string }) =>
      `is drawn as a ${type}, and must be a ${wanted}`,
    outside: 'has coordinates that are no longitude and latitude in degrees',
    noFeature: 'is no GeoJSON feature',
    noGeometry: 'has no geometry',
    unreadable: 'has a geometry that cannot be read',
    waypointName: 'its name says neither tee nor hole position; call it such as "3 tee white" or "3 pin"',
    trackName: 'its name says no kind; choose what it goes round, such as green',
    isPoint: ({ kind }: { readonly kind: string }) => `a ${kind} is a point; mark it as a waypoint`,
    open: ({ kind }: { readonly kind: string }) =>
      `it does not come back to where it began, so it goes round no ${kind}`,
    noHeight: 'the model has no height there',
    manyPoints: ({ most }: { readonly most: number }) => `has more than ${most} points`,
    noPlace: 'has no place: lat and lon are missing or out of range',
    cannotBeRead: ({ place }: { readonly place: string }) => `cannot be read (${place})`,
    practice: 'is for practice, not for play',
    noShot: 'does not bear on any shot',
    underGround: 'runs under ground there',
    noMeaning: 'has no meaning for play',
    tags: {
      barrier: 'fences, walls and hedges are not planned with; draw out of bounds where they mark it',
      building: 'buildings are not planned with; draw out of bounds round them where they are',
      highway: 'roads and paths for others than players are not planned with; those with golf=cartpath are',
      power: 'wires and poles are not planned with',
      landuse: 'this use of land is not planned with',
      natural: 'this natural feature is not planned with; draw rough, long rough or woods in its place',
      leisure: 'this is no part of play',
      waterway: 'only stream, ditch, drain, canal and river are taken in',
      golf: 'this value of golf is not known',
    },
    partOfOutline: 'not all of its outline is in the file; save the file with all members of its relations',
    noOutline: 'it has no outline',
    gap: ({ lat, lon }: { readonly lat: string; readonly lon: string }) =>
      `its outline has a gap near ${lat}, ${lon}`,
    fewCorners: 'one of its outlines has fewer than 3 corners',
    intricate: 'it has too many outlines within each other',
    onlyMultipolygons: 'only relations of type multipolygon have an outline of their own',
    noArea: 'is drawn as an area of several outlines, and is no area',
    noPoints: 'it has no points; save the file with the points of its ways',
    pointsMissing: 'not all of its points are in the file; save a larger area',
    wantsPoint: 'is drawn as a line or an area where a point belongs',
    notClosed: 'its outline is not closed; close it, or draw the area here',
    isDrawnAsPoint: 'is drawn as a point; draw its outline or line here',
    muchWater: 'there is too much running water in the file; save the course alone',
    badLine: 'its line is too long, has no length, or crosses itself time and again',
    manyTrees: ({ most }: { readonly most: number }) =>
      `it would be more than ${most} trees; draw woods in its place`,
  },
  notes: {
    times: ({ count, note }: { readonly count: number; readonly note: string }) => `${count} × ${note}`,
    crossing: ({ count }: { readonly count: number }) =>
      `${count} outlines cross themselves. They are taken in; the check names them.`,
    numbered: ({ count, numbers }: { readonly count: number; readonly numbers: string }) =>
      `${count} hole lines without a number were given ${numbers}. Put the holes in order.`,
    andSoOn: ({ numbers }: { readonly numbers: string }) => `${numbers} and so on`,
    twice: ({ holes }: { readonly holes: string }) =>
      `There are two lines for hole ${holes}. Renumber or remove one of each, or import one course at a time.`,
    lost: ({ count }: { readonly count: number }) =>
      `${count} points without a readable lat and lon are passed over.`,
    red: ({ what }: { readonly what: string }) =>
      `${what} is taken as a red penalty area (Rules of Golf 2023, definition of penalty area: red where no colour is marked)`,
    sand: 'natural=sand is taken as a bunker',
    scrub: ({ metres }: { readonly metres: number }) =>
      `natural=scrub is taken as woods, ${metres} m high where it says no height`,
    forest: 'landuse=forest is taken as woods',
    strayInner: ({ what }: { readonly what: string }) =>
      `${what}: inner outlines that lie in no outer one are dropped`,
    teePoint: 'golf=tee drawn as a point is taken as a tee marker',
    width: ({ what, metres }: { readonly what: string; readonly metres: number }) =>
      `${what} without a width is taken as ${metres} m wide`,
    treeRow: 'natural=tree_row is taken as trees standing crown to crown',
    heights: ({ metres, grid }: { readonly metres: number; readonly grid: string }) =>
      `Heights every ${metres} m, read from ${grid}.`,
    metresTaken: 'The file names no unit of height: metres are taken.',
    feet: ({ metres }: { readonly metres: string }) =>
      `Its heights are in feet and were converted at ${metres} m.`,
    replaced: ({ count }: { readonly count: number }) =>
      `${count} levels of an earlier elevation model are replaced.`,
  },
  grids: {
    degrees: 'WGS 84 longitude and latitude',
    webMercator: 'Web Mercator',
    utm: ({ zone }: { readonly zone: string }) => `UTM zone ${zone} on WGS 84`,
    none: 'no coordinate system that it names',
    own: ({ citation }: { readonly citation: string }) => `a system of its own${citation}`,
  },
  faults: {
    tooMuch: ({
      features,
      corners,
      mostFeatures,
      mostCorners,
    }: {
      readonly features: number;
      readonly corners: number;
      readonly mostFeatures: number;
      readonly mostCorners: number;
    }) =>
      `It would add ${features} features with ${corners} corners; a course holds up to ${mostFeatures} and ${mostCorners}. Cut the file down to the course itself.`,
    manyLines: ({ count, most }: Held) =>
      `It holds ${count} hole lines; at most ${most} are taken in. Cut the file down to one course.`,
    tooDeep: 'It is nested too deep to be GeoJSON. Export it again.',
    notGeoJson: 'It is no GeoJSON: neither features nor a geometry. Export it as GeoJSON (RFC 7946).',
    manyFeatures: ({ count, most }: Held) =>
      `It holds ${count} features; at most ${most} are read. Cut it down to the course.`,
    noDegrees: ({ what }: { readonly what: string }) =>
      `The coordinates of ${what} are no longitude and latitude in degrees. Export the file in WGS 84 (EPSG:4326), as GeoJSON asks for.`,
    otherSystem: ({ system }: { readonly system: string }) =>
      `Its coordinates are in ${system}. Export it in WGS 84 longitude and latitude (EPSG:4326).`,
    notGpx: ({ root }: { readonly root: string }) =>
      `It is XML of another kind (<${root}>); GPX begins with <gpx>. Export the tracks as GPX.`,
    notOsm: ({ root }: { readonly root: string }) =>
      `It is XML of another kind (${root}); OpenStreetMap data begins with <osm>. Export the area as .osm.`,
    empty: 'empty',
    noElements:
      'It has no list of elements, as data from the Overpass service has. Save the answer as JSON again.',
    manyCharacters: ({ count, most }: Held) =>
      `It holds ${count} characters; at most ${most} are read. Save a smaller area.`,
    notXml: ({ format, why }: { readonly format: string; readonly why: string }) =>
      `The file cannot be read as ${format}: ${why}. Save it again from the program that made it.`,
    doctype: 'it declares a document type (DOCTYPE), which is not read for safety',
    deepXml: ({ most }: { readonly most: number }) => `it is nested more than ${most} elements deep`,
    largeXml: ({ most }: { readonly most: number }) => `it has more than ${most} elements`,
    spacing: ({ metres }: { readonly metres: number }) =>
      `The spacing is in metres, from 1 to 1000, not ${metres}.`,
    nothingDrawn: 'The course has nothing drawn yet, so its place is not known. Draw or import it first.',
    manyLevels: ({
      metres,
      count,
      most,
      wider,
    }: Held & { readonly metres: number; readonly wider: number }) =>
      `${metres} m apart there would be about ${count} levels; at most ${most} are kept. Take a spacing of ${wider} m.`,
    noneInside: ({ metres }: { readonly metres: number }) =>
      `No place of a grid of ${metres} m lies inside the boundary. Take a smaller spacing.`,
    noHeights: 'The model has no heights over the course. Choose another file for this place.',
    largeTiff: ({ most }: { readonly most: number }) =>
      `It is larger than ${most} MiB. Cut it down to the course.`,
    notTiff: ({ why }: { readonly why: string }) =>
      `It cannot be read as GeoTIFF: ${why}. Download it again.`,
    brokenTiff: ({ why }: { readonly why: string }) =>
      `It cannot be read as GeoTIFF: ${why}. Download it again, or convert it.`,
    unpacks: 'Its data unpacks to more than its header says. Download it again.',
    damaged: 'its data is damaged',
    otherGrid: ({ grid }: { readonly grid: string }) =>
      `Its coordinates are in ${grid}; longitude and latitude, Web Mercator and UTM, each on WGS 84, are read. Convert it to EPSG:4326 with a GIS program.`,
    badSize: ({ sizes }: { readonly sizes: string }) =>
      `Its size of ${sizes} cells cannot be. Download it again.`,
    compression: ({ method }: { readonly method: string }) =>
      `It is compressed by method ${method}, which is not read. Save it with deflate or LZW compression, or none.`,
    unit: 'Its heights are in a unit that is not known. Convert them to metres.',
    notPlaced:
      'It does not say where its cells lie, or they stand at a slant. Convert it to EPSG:4326 with a GIS program.',
    elsewhere: ({
      west,
      east,
      south,
      north,
    }: {
      readonly west: string;
      readonly east: string;
      readonly south: string;
      readonly north: string;
    }) =>
      `It covers longitude ${west} to ${east} and latitude ${south} to ${north}, and not the course. Choose the file for the course's place.`,
    tooFine: 'It has too many cells over the course. Resample it to 1 m or more, or cut it down.',
    tiff: {
      beginning: 'it does not begin as a TIFF file does',
      cutOff: 'its directory lies outside the file: it is cut off',
      entries: ({ count }: { readonly count: number }) => `its directory has ${count} entries`,
      tag: ({ tag }: { readonly tag: number }) =>
        `its tag ${tag} points outside the file: it is cut off or damaged`,
    },
  },
};
