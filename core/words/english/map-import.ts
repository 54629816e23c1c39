/** Bringing in a map file. */

import { figures } from './figures.ts';

const { counted } = figures;

export const mapImport = {
  title: 'Bring in a map file',
  file: 'Map file to bring in',
  explain:
    'OpenStreetMap data saved to a file, GeoJSON of any program, GPX points and tracks walked on the course, ground heights as GeoTIFF. You see what it brings before anything is changed.',
  reading: ({ file }: { readonly file: string }) => `Reading ${file} …`,
  workingOut: 'Working out what it brings …',
  takeIn: 'Take it in',
  leave: 'Leave it',
  choose: 'Choose a file …',
  cannot: ({ file }: { readonly file: string }) => `${file} cannot be brought in:`,
  report: {
    name: 'What the file brings',
    takenIn: ({ file }: { readonly file: string }) => `Taken in from ${file}`,
    nothing: ({ file }: { readonly file: string }) => `${file} brings nothing`,
    brings: ({ file }: { readonly file: string }) => `${file} brings`,
    features: ({ count }: { readonly count: number }) =>
      counted(count, { one: 'feature', other: 'features' }),
    makeRoom: ({ features }: { readonly features: string }) =>
      `${features} of an earlier import make room for them.`,
    putToHoles: ({ byNumber, byNearness }: { readonly byNumber: number; readonly byNearness: number }) =>
      `Put to holes: ${byNumber} by their number, ${byNearness} by nearness.`,
    noHole: 'Put to no hole',
    leftOut: 'Left out',
    toKnow: 'To know',
    sources: 'To be named as sources',
    more: ({ count }: { readonly count: number }) => `and ${count} more`,
  },
  wishes: {
    tracks: 'Tracks go round',
    byName: 'what their names say',
    levelEvery: 'One level every',
    again: 'Work out again',
    tagged: ({ tagged, features }: { readonly tagged: number; readonly features: number }) =>
      `${tagged} of ${features} features say themselves what they are.`,
    standsIn: 'What it is stands in',
    knownTags: 'tags that are known',
    holeIn: 'Hole number is in',
    caption: ({ property }: { readonly property: string }) =>
      `Which value of ${property} is drawn as which kind`,
    value: 'Value',
    times: 'Times',
    drawnAs: 'Drawn as',
    isDrawnAs: ({ value }: { readonly value: string }) => `${value} is drawn as`,
    leftOut: 'left out',
  },
  faults: {
    unknown:
      'It is none of the files that can be brought in: OpenStreetMap data (XML or JSON), GeoJSON, GPX, or a GeoTIFF of heights.',
    notText: 'It is not UTF-8 text. Export it again as UTF-8.',
    file: 'the file',
    ended:
      'Reading it broke off, most likely because it takes more memory than there is. Cut it down to the course and bring it in again; nothing was changed.',
    tooLarge: ({ most }: { readonly most: number }) =>
      `It is larger than ${most} MiB. Cut it down to the course.`,
  },
};
