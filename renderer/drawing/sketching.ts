/** Drawing: places one after the other, then the thing they make. */

import { nameIn } from '../../core/words/told.ts';
import type { Words } from '../../core/words/words.ts';
import {
  type EditableDocument,
  geometryOf,
  holeOf,
  kindOf,
  propertiesOf,
} from '../../core/course/document.ts';
import { addFeature, type NewFeature } from '../../core/course/edits/add-feature.ts';
import { cutHole } from '../../core/course/edits/cut-hole.ts';
import { cutInTwo } from '../../core/course/edits/cut-in-two.ts';
import { bearingRad, distanceM } from '../../core/course/ellipsoid.ts';
import type { FeatureKind } from '../../core/course/feature-kind.ts';
import type { LonLat } from '../../core/course/model.ts';
import { samePosition } from '../../core/course/positions.ts';
import { TEE_COLOUR_MEMBER, teeColourOf } from '../../core/course/tee-colour.ts';
import type { Geometry } from '../../core/course/schema.ts';
import type { DrawingDesk } from './desk.ts';
import { CHOOSING, type DrawingState, type Mode } from './drawing-state.ts';
import { cardOf, type DrawnAs, fewestPlaces } from './kinds.ts';
import { lineOfHole } from './selectors.ts';

/** Fall of a first slope arrow, per cent, to be corrected: an ordinary green's (common practice, no source). */
const USUAL_SLOPE_PERCENT = 1.5;

/** What the places drawn in this mode make; null where nothing is drawn. */
export function sketchedAs(mode: Mode): DrawnAs | null {
  switch (mode.do) {
    case 'draw':
      return cardOf(mode.kind).drawnAs;
    case 'cut':
      return 'line';
    case 'hollow':
      return 'area';
    case 'choose':
    case 'point':
      return null;
  }
}

/** A click or Enter at a place: a point is done, so is an arrow's second place; one on the first or last ends a shape, others lengthen it. */
export function placeAt(desk: DrawingDesk, at: LonLat, nearM: number): void {
  const { mode, sketch } = desk.store.state();
  const drawnAs = sketchedAs(mode);
  if (drawnAs === null) return;
  if (drawnAs === 'point') {
    desk.store.dispatch({ type: 'place-added', at });
    finishSketch(desk);
    return;
  }
  const last = sketch.at(-1);
  const enough = sketch.length >= fewestPlaces(drawnAs);
  const isOn = (place: LonLat | undefined): boolean =>
    place !== undefined && (samePosition(place, at) || distanceM(place, at) <= nearM);
  if (enough && (isOn(last) || (drawnAs === 'area' && isOn(sketch[0])))) {
    finishSketch(desk);
    return;
  }
  if (isOn(last)) return;
  desk.store.dispatch({ type: 'place-added', at });
  if (drawnAs === 'arrow' && sketch.length === 1) finishSketch(desk);
}

/** Makes the thing of the places drawn. Where it is refused the places stay, to be put right. */
export function finishSketch(desk: DrawingDesk): void {
  const state = desk.store.state();
  const { mode, sketch } = state;
  const drawnAs = sketchedAs(mode);
  if (drawnAs === null || sketch.length === 0) return;
  const fewest = fewestPlaces(drawnAs);
  if (sketch.length < fewest) {
    const left = fewest - sketch.length;
    const words = desk.words();
    desk.say(
      words.drawing.moreNeeded({
        left,
        places: left === 1 ? words.drawing.placeMore : words.drawing.placesMore,
      }),
      'refusal',
    );
    return;
  }
  switch (mode.do) {
    case 'draw': {
      const hole = holeForNew(state, mode.kind);
      const taken = desk.attempt(
        (document) => addFeature(document, newFeature(document, state, mode.kind, desk.words())),
        'touched',
      );
      if (taken && mode.kind === 'hole') desk.store.dispatch({ type: 'hole-chosen', hole });
      // what it starts with is a guess, to be typed over
      if (taken && (mode.kind === 'slope-mark' || mode.kind === 'ground-level'))
        desk.store.dispatch({ type: 'panel-shown', panel: 'chosen' });
      if (!taken && drawnAs !== 'point') return;
      break;
    }
    case 'cut':
      if (!desk.attempt((document) => cutInTwo(document, mode.feature, sketch), 'touched')) return;
      desk.store.dispatch({ type: 'mode-set', mode: CHOOSING });
      break;
    case 'hollow':
      if (!desk.attempt((document) => cutHole(document, mode.feature, { outline: sketch }), 'touched'))
        return;
      desk.store.dispatch({ type: 'mode-set', mode: CHOOSING });
      break;
    case 'choose':
    case 'point':
      return;
  }
  const { said } = desk.store.state();
  desk.store.dispatch({ type: 'sketch-dropped' });
  const last = desk.store.state().history.past.at(-1);
  if (said?.tone === 'refusal') desk.store.dispatch({ type: 'said', said });
  else if (last !== undefined) desk.say(desk.words().drawing.done({ step: nameIn(last, desk.words()) }));
}

/** Escape: first the places, then the drawing. */
export function dropSketch({ store }: DrawingDesk): void {
  const { sketch, mode } = store.state();
  if (sketch.length > 0) store.dispatch({ type: 'sketch-dropped' });
  else if (mode.do !== 'choose') store.dispatch({ type: 'mode-set', mode: CHOOSING });
  else store.dispatch({ type: 'selected', ids: [] });
}

function newFeature(
  document: EditableDocument,
  state: DrawingState,
  kind: FeatureKind,
  words: Words,
): NewFeature {
  const hole = holeForNew(state, kind);
  const properties = firstProperties(document, state, kind, hole, words);
  return {
    kind,
    geometry: geometryFor(state.sketch, cardOf(kind).drawnAs),
    ...(hole === null ? {} : { hole }),
    properties,
  };
}

/** The hole worked on; a line of play goes to the next number that has none. */
export function holeForNew(state: DrawingState, kind: FeatureKind): number | null {
  if (!cardOf(kind).ofHole) return null;
  const hole = state.hole ?? 1;
  if (kind !== 'hole') return hole;
  const { document } = state.history;
  if (lineOfHole(document, hole) === undefined) return hole;
  let next = 1;
  while (lineOfHole(document, next) !== undefined) next++;
  return next;
}

/** Names and heights that a thing starts with, so that nothing has to be asked before it is there. */
function firstProperties(
  document: EditableDocument,
  state: DrawingState,
  kind: FeatureKind,
  hole: number | null,
  words: Words,
): Readonly<Record<string, unknown>> {
  const alike = document.features.filter((feature) => kindOf(feature) === kind);
  const names = (features: typeof alike): string[] =>
    features.map((feature) => propertiesOf(feature)['name']).filter((name) => typeof name === 'string');
  const ofHole = names(alike.filter((feature) => holeOf(feature) === hole));
  switch (kind) {
    case 'tee-marker': {
      const name = firstFree([...new Set(names(alike))], ofHole, words.drawing.names.tee);
      const same = alike.find((feature) => propertiesOf(feature)['name'] === name);
      const colour = same === undefined ? undefined : teeColourOf(propertiesOf(same));
      return { name, ...(colour === undefined ? {} : { [TEE_COLOUR_MEMBER]: colour }) };
    }
    case 'hole-position':
      return {
        name: firstFree(
          [words.drawing.names.middle, words.drawing.names.front, words.drawing.names.back],
          ofHole,
          words.drawing.names.position,
        ),
      };
    case 'ground-level':
      return { ele: nearestValue(alike, 'ele', state.sketch[0]!) ?? 0 };
    case 'slope-mark': {
      const [at, towards] = state.sketch;
      const slope = nearestValue(alike, 'slope_percent', at!) ?? USUAL_SLOPE_PERCENT;
      const degrees = Math.round((bearingRad(at!, towards!) * 180) / Math.PI) % 360;
      return { slope_percent: slope, downhill_deg: degrees };
    }
    default:
      return {};
  }
}

function firstFree(usual: readonly string[], taken: readonly string[], word: string): string {
  const free = usual.find((name) => !taken.includes(name));
  if (free !== undefined) return free;
  let number = 1;
  while (taken.includes(`${word} ${number}`)) number++;
  return `${word} ${number}`;
}

/** The number that the nearest of these points holds, to be corrected; null for the first. */
function nearestValue(
  points: readonly EditableDocument['features'][number][],
  key: string,
  at: LonLat,
): number | null {
  let best: number | null = null;
  let least = Infinity;
  for (const point of points) {
    const geometry = geometryOf(point);
    const value = Number.parseFloat(String(propertiesOf(point)[key]));
    if (geometry?.type !== 'Point' || !Number.isFinite(value)) continue;
    const [lon, lat] = geometry.coordinates;
    const distance = distanceM([lon, lat], at);
    if (distance >= least) continue;
    least = distance;
    best = value;
  }
  return best;
}

function geometryFor(places: readonly LonLat[], drawnAs: DrawnAs): Geometry {
  const positions = places.map(([lon, lat]): [number, number] => [lon, lat]);
  switch (drawnAs) {
    case 'point':
    case 'arrow':
      return { type: 'Point', coordinates: positions[0]! };
    case 'line':
      return { type: 'LineString', coordinates: positions };
    case 'area':
      return { type: 'Polygon', coordinates: [[...positions, positions[0]!]] };
  }
}
