/**
 * How a hole lies on the screen. The map's own coordinates are metres, turned so that a chosen bearing points
 * up; Leaflet shows them flat (its simple coordinate system) with latitude up and longitude to the right.
 */

import type { LocalFrame } from '../../core/course/local-frame.ts';
import type { Hole, LonLat } from '../../core/course/model.ts';
import type { Spot } from '../../core/plan/model.ts';

export interface Sheet {
  readonly frame: LocalFrame;
  /** Bearing that points up the screen, radians clockwise from north. */
  readonly up: number;
  /** Spot of the frame to the map's [latitude, longitude]. */
  readonly toMap: (spot: Spot) => [number, number];
  readonly fromMap: (at: { readonly lat: number; readonly lng: number }) => Spot;
}

export function makeSheet(frame: LocalFrame, up: number): Sheet {
  const cos = Math.cos(up);
  const sin = Math.sin(up);
  return {
    frame,
    up,
    toMap: ({ x, y }) => [x * sin + y * cos, x * cos - y * sin],
    fromMap: ({ lat, lng }) => ({ x: lng * cos + lat * sin, y: lat * cos - lng * sin }),
  };
}

/** The bearing from the start of the hole's line to its end. */
export function holeBearing(frame: LocalFrame, hole: Hole): number {
  const start = hole.line[0];
  const end = hole.line.at(-1);
  if (start === undefined || end === undefined) return 0;
  const a = frame.toSpot(start);
  const b = frame.toSpot(end);
  return Math.atan2(b.x - a.x, b.y - a.y);
}

/** The spot `right` and `up` metres on the screen from another. */
export function moveOnScreen(sheet: Sheet, spot: Spot, right: number, up: number): Spot {
  const [lat, lng] = sheet.toMap(spot);
  return sheet.fromMap({ lat: lat + up, lng: lng + right });
}

/** Every place of a list in the sheet's frame. */
export function spotsOf(frame: LocalFrame, places: readonly LonLat[]): Spot[] {
  return places.map((place) => frame.toSpot(place));
}
