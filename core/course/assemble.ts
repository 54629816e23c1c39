/**
 * Gathers the things read one by one into holes and a course: markers go to the hole that their `ref` names, and whatever
 * lies beyond the 180° meridian is brought next to the first line of a hole.
 */

import { ASSUMED_PLACES } from './assumed-places.ts';
import type { Fault } from '../result.ts';
import { parForLength } from './defaults.ts';
import { polylineLengthM } from './ellipsoid.ts';
import { broughtNear, lineNear, placedNear } from './longitude.ts';
import { middleOf } from './polygon.ts';
import { chooseGreen } from './hole-features.ts';
import type {
  Area,
  Course,
  GroundLevel,
  Hole,
  HolePosition,
  Sand,
  SlopeMark,
  StrayMarker,
  TeeMarker,
  Tree,
} from './model.ts';
import type { FeatureReading, HoleLine } from './read-feature.ts';

export interface CourseHead {
  readonly name: string;
  readonly formatVersion: number;
  readonly invented: boolean;
  readonly sand?: Sand;
}

export function assembleCourse(
  head: CourseHead,
  readings: readonly FeatureReading[],
  warnings: readonly Fault[],
): Course {
  const areas: Area[] = [];
  const trees: Tree[] = [];
  const levels: GroundLevel[] = [];
  const slopeMarks: SlopeMark[] = [];
  const markers: StrayMarker[] = [];
  const lines: HoleLine[] = [];
  const about = longitudeOf(readings);
  for (const reading of readings) {
    switch (reading.as) {
      case 'areas':
        for (const area of reading.areas) areas.push(broughtNear(area, about));
        break;
      case 'tree':
        trees.push(placedNear(reading.tree, about));
        break;
      case 'level':
        levels.push(placedNear(reading.level, about));
        break;
      case 'slope':
        slopeMarks.push(placedNear(reading.mark, about));
        break;
      case 'marker':
        markers.push(placedNear(reading.marker, about));
        break;
      case 'hole':
        lines.push(lineNear(reading.hole, about));
        break;
      case 'unknown':
        break;
    }
  }
  const numbers = new Set(lines.map(({ number }) => number));
  const strayMarkers = markers.filter(({ hole }) => !numbers.has(hole));
  const holes = lines
    .map((line) => assembleHole(line, areas, markers))
    .toSorted((a, b) => a.number - b.number || a.featureIndex - b.featureIndex);
  return {
    ...head,
    holes,
    areas,
    trees,
    levels,
    ...(slopeMarks.length === 0 ? {} : { slopeMarks }),
    ...(strayMarkers.length === 0 ? {} : { strayMarkers }),
    warnings,
  };
}

/** Of the first hole's line, or of the first area where there is no line. Degrees. */
function longitudeOf(readings: readonly FeatureReading[]): number {
  let area: number | undefined;
  for (const reading of readings) {
    if (reading.as === 'hole') return reading.hole.line[0]?.[0] ?? 0;
    if (reading.as === 'areas') area ??= reading.areas[0]?.rings[0]?.[0]?.[0];
  }
  return area ?? 0;
}

function assembleHole(line: HoleLine, areas: readonly Area[], markers: readonly StrayMarker[]): Hole {
  const own = markers.filter(({ hole }) => hole === line.number);
  const tees: TeeMarker[] = own
    .filter(({ kind }) => kind === 'tee-marker')
    .map(({ name, at, featureIndex }, index) => ({ name: name ?? `Tee ${index + 1}`, at, featureIndex }));
  const positions: HolePosition[] = own
    .filter(({ kind }) => kind === 'hole-position')
    .map(({ name, at, featureIndex }, index) => ({
      name: name ?? `Position ${index + 1}`,
      at,
      featureIndex,
    }));
  const start = line.line[0]!;
  const end = line.line.at(-1)!;
  if (tees.length === 0) tees.push({ name: ASSUMED_PLACES.startOfLine, at: start });
  if (positions.length === 0) {
    const green = chooseGreen(areas, line.number, end);
    positions.push(
      green === undefined
        ? { name: ASSUMED_PLACES.endOfLine, at: end }
        : { name: ASSUMED_PLACES.middleOfGreen, at: middleOf(green.rings) },
    );
  }
  return {
    number: line.number,
    ...(line.name === undefined ? {} : { name: line.name }),
    par: line.par ?? parForLength(polylineLengthM(line.line)),
    ...(line.par === undefined ? { parAssumed: true } : {}),
    ...(line.strokeIndex === undefined ? {} : { strokeIndex: line.strokeIndex }),
    line: line.line,
    tees,
    positions,
    featureIndex: line.featureIndex,
  };
}
