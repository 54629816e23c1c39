/** What the mouse does on the map: place, choose, take hold of corners, sides and whole features. */

import { insertVertex } from '../../../core/course/edits/insert-vertex.ts';
import { moveFeatures } from '../../../core/course/edits/move-features.ts';
import { moveVertex } from '../../../core/course/edits/move-vertex.ts';
import { removeVertex } from '../../../core/course/edits/remove-vertex.ts';
import type { VertexAddress } from '../../../core/course/edits/shape.ts';
import type { FeatureId } from '../../../core/course/document.ts';
import type { EditResult } from '../../../core/course/edits/edit.ts';
import type { LonLat } from '../../../core/course/model.ts';
import { caughtPlace } from '../catching.ts';
import { mayEdit } from '../drawing-state.ts';
import { featureAt, handleAt } from '../hit.ts';
import { takePoint } from '../point-asked.ts';
import { chosenShapes, visibleShapes } from '../selectors.ts';
import { placeAt, sketchedAs } from '../sketching.ts';
import type { DrawingStage } from './drawing-stage.ts';

/** Less than this is a click with an unsteady hand, pixels. */
const CLICK_PX = 4;
const HANDLE_PX = 9;
const FEATURE_PX = 7;
/** Clicking this near to the first or last place of a sketch ends it, pixels. */
const CLOSE_PX = 9;

/** What the button went down on. */
type Grip =
  /** The map itself: Leaflet moves it; a click places or chooses. */
  | { readonly on: 'map' }
  | { readonly on: 'corner'; readonly address: VertexAddress }
  | { readonly on: 'side'; readonly address: VertexAddress }
  | { readonly on: 'features'; readonly ids: readonly FeatureId[]; readonly from: LonLat };

interface Gesture {
  readonly grip: Grip;
  readonly startX: number;
  readonly startY: number;
  readonly adds: boolean;
  /** Features that the moved place must not catch on: themselves. */
  readonly without: readonly FeatureId[];
  moved: boolean;
}

export function listenForPointer(stage: DrawingStage): () => void {
  const { element, desk, map } = stage;
  const { store } = desk;
  let gesture: Gesture | null = null;

  const pixel = (event: MouseEvent): { x: number; y: number } => {
    const box = element.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const place = (event: MouseEvent, without?: readonly FeatureId[]): ReturnType<typeof caughtPlace> => {
    const { x, y } = pixel(event);
    return caughtPlace(store.state(), stage.placeAt(x, y), {
      metresPerPixel: stage.metresPerPixel(),
      suspended: event.ctrlKey || event.metaKey,
      ...(without === undefined ? {} : { without }),
    });
  };

  const gripAt = (event: PointerEvent): Grip => {
    const state = store.state();
    if (state.mode.do !== 'choose' || !mayEdit(state) || event.shiftKey) return { on: 'map' };
    const { x, y } = pixel(event);
    const spot = stage.spotAt(x, y);
    const chosen = chosenShapes(state);
    if (chosen.length === 1) {
      const handle = handleAt(chosen, spot, HANDLE_PX * stage.metresPerPixel());
      if (handle !== null) return { on: handle.on, address: handle.address };
    }
    const under = featureAt(visibleShapes(state), spot, FEATURE_PX * stage.metresPerPixel());
    if (under === null || !state.selection.includes(under.feature.id)) return { on: 'map' };
    return { on: 'features', ids: state.selection, from: stage.placeAt(x, y) };
  };

  const down = (event: PointerEvent): void => {
    if (!isOnMap(event, element)) return;
    element.focus({ preventScroll: true });
    if (event.button === 2) takeAway(event);
    if (event.button !== 0 || gesture !== null) return;
    const grip = gripAt(event);
    const { x, y } = pixel(event);
    const without = grip.on === 'map' ? [] : grip.on === 'features' ? [...grip.ids] : [grip.address.feature];
    gesture = { grip, startX: x, startY: y, adds: event.shiftKey, without, moved: false };
    if (grip.on !== 'map') map.dragging.disable();
    window.addEventListener('pointermove', move);
    window.addEventListener('pointerup', up);
    window.addEventListener('pointercancel', cancel);
  };

  const hover = (event: PointerEvent): void => {
    if (gesture !== null && gesture.grip.on !== 'map') return;
    const state = store.state();
    if (sketchedAs(state.mode) === null && state.mode.do !== 'point') {
      if (state.cursor !== null) store.dispatch({ type: 'cursor-moved', cursor: null });
      showGrip(event);
      return;
    }
    element.dataset['grip'] = '';
    store.dispatch({ type: 'cursor-moved', cursor: { ...place(event), by: 'mouse' } });
  };

  const showGrip = (event: PointerEvent): void => {
    const { on } = gripAt(event);
    element.dataset['grip'] = on === 'map' ? '' : on;
  };

  const move = (event: PointerEvent): void => {
    if (gesture === null) return;
    const { x, y } = pixel(event);
    if (!gesture.moved) {
      if (Math.hypot(x - gesture.startX, y - gesture.startY) < CLICK_PX) return;
      gesture.moved = true;
      if (gesture.grip.on !== 'map') store.dispatch({ type: 'drag-begun' });
    }
    if (gesture.grip.on !== 'map') dragTo(gesture.grip, event, gesture.without);
  };

  const dragTo = (
    grip: Exclude<Grip, { on: 'map' }>,
    event: PointerEvent,
    without: readonly FeatureId[],
  ): void => {
    const { drag } = store.state().history;
    if (drag === null) return;
    const { start } = drag;
    const to = grip.on === 'features' ? placeOf(event) : place(event, without).at;
    const result = ((): EditResult => {
      switch (grip.on) {
        case 'corner':
          return moveVertex(start, grip.address, to);
        case 'side':
          return insertVertex(start, grip.address, to);
        case 'features':
          return moveFeatures(start, grip.ids, { from: grip.from, to });
      }
    })();
    // what is refused leaves the last good step
    if (!result.ok) return;
    const corner =
      grip.on === 'corner'
        ? grip.address
        : grip.on === 'side'
          ? { ...grip.address, vertex: grip.address.vertex + 1 }
          : undefined;
    store.dispatch({ type: 'dragged', edit: result.value, ...(corner === undefined ? {} : { corner }) });
  };

  const placeOf = (event: MouseEvent): LonLat => {
    const { x, y } = pixel(event);
    return stage.placeAt(x, y);
  };

  const up = (event: PointerEvent): void => {
    const ended = gesture;
    finish();
    if (ended === null) return;
    if (ended.moved) {
      if (ended.grip.on !== 'map') store.dispatch({ type: 'drag-ended' });
      return;
    }
    clicked(event, ended);
  };

  const cancel = (): void => {
    const moved = gesture?.moved === true && gesture.grip.on !== 'map';
    finish();
    if (moved) store.dispatch({ type: 'drag-dropped' });
  };

  const finish = (): void => {
    gesture = null;
    map.dragging.enable();
    window.removeEventListener('pointermove', move);
    window.removeEventListener('pointerup', up);
    window.removeEventListener('pointercancel', cancel);
  };

  const clicked = (event: PointerEvent, { grip, adds }: Gesture): void => {
    const state = store.state();
    if (sketchedAs(state.mode) !== null) {
      placeAt(desk, place(event).at, CLOSE_PX * stage.metresPerPixel());
      return;
    }
    if (state.mode.do === 'point') {
      takePoint(desk, placeOf(event));
      return;
    }
    switch (grip.on) {
      case 'corner':
        store.dispatch({ type: 'corner-chosen', corner: grip.address });
        return;
      case 'side':
        if (desk.attempt((document) => insertVertex(document, grip.address, placeOf(event)))) {
          const corner = { ...grip.address, vertex: grip.address.vertex + 1 };
          store.dispatch({ type: 'corner-chosen', corner });
        }
        return;
      case 'map':
      case 'features':
        chooseAt(stage, pixel(event), adds);
    }
  };

  /** The right button takes away: the corner under it, or the last place drawn. */
  const takeAway = (event: PointerEvent): void => {
    const state = store.state();
    if (state.sketch.length > 0) {
      store.dispatch({ type: 'place-taken-back' });
      return;
    }
    const grip = gripAt(event);
    if (grip.on === 'corner') desk.attempt((document) => removeVertex(document, grip.address));
  };

  const leave = (): void => {
    const { cursor } = store.state();
    if (cursor?.by === 'mouse') store.dispatch({ type: 'cursor-moved', cursor: null });
  };
  const noMenu = (event: MouseEvent): void => {
    event.preventDefault();
  };

  element.addEventListener('pointerdown', down, { capture: true });
  element.addEventListener('pointermove', hover);
  element.addEventListener('pointerleave', leave);
  element.addEventListener('contextmenu', noMenu);
  return () => {
    finish();
    element.removeEventListener('pointerdown', down, { capture: true });
    element.removeEventListener('pointermove', hover);
    element.removeEventListener('pointerleave', leave);
    element.removeEventListener('contextmenu', noMenu);
  };
}

/** Chooses what lies at a pixel; with `adds` it comes to what is chosen, or leaves it. */
export function chooseAt(stage: DrawingStage, { x, y }: { x: number; y: number }, adds: boolean): void {
  const { store } = stage.desk;
  const state = store.state();
  const found = featureAt(visibleShapes(state), stage.spotAt(x, y), FEATURE_PX * stage.metresPerPixel());
  if (found === null) {
    if (!adds) store.dispatch({ type: 'selected', ids: [] });
    return;
  }
  const { id } = found.feature;
  const others = state.selection.filter((other) => other !== id);
  const ids = !adds ? [id] : others.length === state.selection.length ? [...others, id] : others;
  store.dispatch({ type: 'selected', ids, show: 'chosen' });
}

function isOnMap(event: Event, element: HTMLElement): boolean {
  return event.target instanceof Node && element.contains(event.target);
}
