/** Ground heights of an elevation model, taken over as ground levels on a grid over the course. */

import { told, type Told, toldFault } from '../../words/told.ts';
import { type Fault, type Result, refuse } from '../../result.ts';
import { tagsOfKind } from '../edits/kind-tags.ts';
import { makeLocalFrame } from '../local-frame.ts';
import type { LonLat } from '../model.ts';
import { isInside } from '../polygon.ts';
import { completeProposal } from './complete-proposal.ts';
import { readElevationModel } from './elevation-model.ts';
import { LeftOutList } from './left-out.ts';
import {
  type CourseExtent,
  ELEVATION_MODEL,
  type ImportContext,
  type ImportProposal,
  ORIGIN_MEMBER,
  type ProposedFeature,
} from './proposal.ts';

export const DEFAULT_SPACING_M = 20;
/** More levels slow the preparing of a hole and tell no more. */
export const MOST_LEVELS = 10_000;
/** Heights are also taken this far round what is drawn, where no boundary says how far the course goes, metres. */
const MARGIN_M = 30;

/**
 * Levels from an earlier model are replaced, those drawn by hand stay. Refuses a course of which nothing is drawn
 * yet, for its place is not known, and a spacing that gives too many levels.
 */
export async function readHeights(
  buffer: ArrayBuffer,
  context: ImportContext,
  spacingM: number = DEFAULT_SPACING_M,
): Promise<Result<ImportProposal, readonly Fault[]>> {
  if (!(spacingM >= 1 && spacingM <= 1000)) {
    return refused(
      'bad-spacing',
      told(({ courseImport }) => courseImport.faults.spacing, { metres: spacingM }),
    );
  }
  const { extent } = context;
  if (extent === null) {
    return refused(
      'no-course-yet',
      told(({ courseImport }) => courseImport.faults.nothingDrawn),
    );
  }
  const places = gridOver(extent, spacingM);
  if (typeof places === 'number') {
    const wider = Math.ceil(spacingM * Math.sqrt(places / MOST_LEVELS));
    return refused(
      'too-many-levels',
      told(({ courseImport }) => courseImport.faults.manyLevels, {
        metres: spacingM,
        count: places,
        most: MOST_LEVELS,
        wider,
      }),
    );
  }
  if (places.length === 0) {
    return refused(
      'bad-spacing',
      told(({ courseImport }) => courseImport.faults.noneInside, { metres: spacingM }),
    );
  }
  const model = await readElevationModel(buffer, around(places));
  if (!model.ok) return model;
  const { heightAt, gridName, unitM, unitAssumed } = model.value;
  const leftOut = new LeftOutList();
  const features: ProposedFeature[] = [];
  for (const [lon, lat] of places) {
    const heightM = heightAt([lon, lat]);
    const origin = `${lat.toFixed(5)}, ${lon.toFixed(5)}`;
    if (heightM === undefined) {
      leftOut.add(
        told(({ courseImport }) => courseImport.things.groundLevel),
        told(({ courseImport }) => courseImport.why.noHeight),
        origin,
      );
      continue;
    }
    features.push({
      kind: 'ground-level',
      properties: {
        ...tagsOfKind('ground-level'),
        ele: Math.round(heightM * 100) / 100,
        [ORIGIN_MEMBER]: ELEVATION_MODEL,
      },
      geometry: { type: 'Point', coordinates: [lon, lat] },
      origin,
    });
  }
  if (features.length === 0) {
    return refused(
      'no-heights-here',
      told(({ courseImport }) => courseImport.faults.noHeights),
    );
  }
  const notes = [
    told(({ courseImport }) => courseImport.notes.heights, { metres: spacingM, grid: gridName }),
    ...(unitAssumed ? [told(({ courseImport }) => courseImport.notes.metresTaken)] : []),
    ...(unitM === 1
      ? []
      : [told(({ courseImport }) => courseImport.notes.feet, { metres: unitM.toFixed(6) })]),
    ...(context.modelLevels.length === 0
      ? []
      : [told(({ courseImport }) => courseImport.notes.replaced, { count: context.modelLevels.length })]),
  ];
  return completeProposal(
    { kind: 'heights', features, leftOut, notes, sources: [], replaces: context.modelLevels },
    context,
  );
}

function around(places: readonly LonLat[]): CourseExtent {
  let [west, south, east, north] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [lon, lat] of places) {
    [west, east] = [Math.min(west, lon), Math.max(east, lon)];
    [south, north] = [Math.min(south, lat), Math.max(north, lat)];
  }
  return { west, south, east, north, boundary: [] };
}

/** Places on a square grid in the plane at the middle of the course; their rough number where there are too many. */
function gridOver({ west, south, east, north, boundary }: CourseExtent, spacingM: number): LonLat[] | number {
  const frame = makeLocalFrame([(west + east) / 2, (south + north) / 2]);
  const corner = frame.toSpot([east, north]);
  const other = frame.toSpot([west, south]);
  const margin = boundary.length > 0 ? 0 : MARGIN_M;
  const halfX = Math.max(Math.abs(corner.x), Math.abs(other.x)) + margin;
  const halfY = Math.max(Math.abs(corner.y), Math.abs(other.y)) + margin;
  const [stepsX, stepsY] = [Math.ceil(halfX / spacingM), Math.ceil(halfY / spacingM)];
  const count = (2 * stepsX + 1) * (2 * stepsY + 1);
  // a boundary takes some away: looked at only where that can help
  if (count > 4 * MOST_LEVELS) return count;
  const places: LonLat[] = [];
  for (let row = -stepsY; row <= stepsY; row++) {
    for (let column = -stepsX; column <= stepsX; column++) {
      const place = frame.toLonLat({ x: column * spacingM, y: row * spacingM });
      if (boundary.length > 0 && !boundary.some((ring) => isInside(place, { rings: [ring] }))) continue;
      places.push(place);
    }
  }
  return places.length > MOST_LEVELS ? places.length : places;
}

function refused(code: string, message: Told): Result<never, readonly Fault[]> {
  return refuse([toldFault({ severity: 'error', code, where: 'file', message })]);
}
