/**
 * What keys do while the map has the focus: everything that the mouse can do. Arrows nudge the chosen corner or
 * features, else they move a cross-hair; Enter places or chooses. Shift is finer, Ctrl coarser.
 */

import { tell } from '../../../core/words/told.ts';
import { insertVertex } from '../../../core/course/edits/insert-vertex.ts';
import { moveFeatures } from '../../../core/course/edits/move-features.ts';
import { moveVertex } from '../../../core/course/edits/move-vertex.ts';
import { removeFeatures } from '../../../core/course/edits/remove-features.ts';
import { removeVertex } from '../../../core/course/edits/remove-vertex.ts';
import { shifted } from '../../../core/course/edits/rigid-move.ts';
import { pathsOf, type VertexAddress } from '../../../core/course/edits/shape.ts';
import { type EditableDocument, featureById, geometryOf } from '../../../core/course/document.ts';
import type { LonLat } from '../../../core/course/model.ts';
import { positionsOf } from '../../../core/course/positions.ts';
import { caughtPlace } from '../catching.ts';
import { CHOOSING, mayEdit } from '../drawing-state.ts';
import { cardOfKey } from '../kinds.ts';
import { takePoint } from '../point-asked.ts';
import { dropSketch, finishSketch, placeAt, sketchedAs } from '../sketching.ts';
import { chooseAt } from './map-pointer.ts';
import type { DrawingStage } from './drawing-stage.ts';

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
const NUDGE_M = 1;
const CROSS_HAIR_PX = 10;
/** A nudge that is not followed by another becomes a step of its own after this long. */
const NUDGE_REST_MS = 700;

export function listenForKeys(stage: DrawingStage): () => void {
  const { element, desk } = stage;
  const { store } = desk;
  /** Metres nudged since the drag of keys began. */
  let nudged = { eastM: 0, northM: 0 };
  let nudging: ReturnType<typeof setTimeout> | null = null;

  const endNudge = (): void => {
    if (nudging === null) return;
    clearTimeout(nudging);
    nudging = null;
    nudged = { eastM: 0, northM: 0 };
    store.dispatch({ type: 'drag-ended' });
  };

  const pressed = (event: KeyboardEvent): void => {
    if (event.target !== element || event.altKey) return;
    const arrow = ARROWS[event.key];
    if (arrow !== undefined) {
      event.preventDefault();
      arrowPressed(event, arrow);
      return;
    }
    endNudge();
    if (command(event)) event.preventDefault();
  };

  const arrowPressed = (event: KeyboardEvent, [dx, dy]: readonly [number, number]): void => {
    const state = store.state();
    const step = event.shiftKey ? 0.1 : event.ctrlKey || event.metaKey ? 10 : 1;
    if (state.mode.do === 'choose' && state.selection.length > 0 && mayEdit(state)) {
      nudge(dx * step * NUDGE_M, dy * step * NUDGE_M);
      return;
    }
    const { x: width, y: height } = stage.map.getSize();
    const { cursor } = state;
    const from = cursor?.by === 'keys' ? stage.pixelOf(cursor.at) : null;
    const pixels = event.shiftKey ? 1 : (event.ctrlKey || event.metaKey ? 5 : 1) * CROSS_HAIR_PX;
    const x = (from?.x ?? width / 2) + (from === null ? 0 : dx * pixels);
    const y = (from?.y ?? height / 2) - (from === null ? 0 : dy * pixels);
    const at = stage.placeAt(x, y);
    stage.keepInSight(at);
    store.dispatch({ type: 'cursor-moved', cursor: { at, by: 'keys', caught: caughtAt(at).caught } });
  };

  const caughtAt = (at: LonLat): ReturnType<typeof caughtPlace> =>
    caughtPlace(store.state(), at, {
      metresPerPixel: stage.metresPerPixel(),
      suspended: sketchedAs(store.state().mode) === null,
    });

  const nudge = (eastM: number, northM: number): void => {
    if (nudging === null) {
      store.dispatch({ type: 'drag-begun' });
      nudged = { eastM: 0, northM: 0 };
    } else clearTimeout(nudging);
    nudging = setTimeout(endNudge, NUDGE_REST_MS);
    nudged = { eastM: nudged.eastM + eastM, northM: nudged.northM + northM };
    const { history, corner, selection } = store.state();
    if (history.drag === null) return;
    const { start } = history.drag;
    const from = placeOfCorner(start, corner) ?? firstPlace(start, selection[0]);
    if (from === null) return;
    const to = shifted(from, nudged);
    const moved =
      corner === null ? moveFeatures(start, selection, { from, to }) : moveVertex(start, corner, to);
    if (moved.ok) store.dispatch({ type: 'dragged', edit: moved.value });
    else
      desk.say(
        moved.error.told === undefined ? moved.error.message : tell(moved.error.told, desk.words()),
        'refusal',
      );
    stage.keepInSight(to);
  };

  /** True where the key meant something. */
  const command = (event: KeyboardEvent): boolean => {
    if (event.ctrlKey || event.metaKey) return event.key === 'Enter' && finished();
    switch (event.key) {
      case 'Enter':
      case ' ':
        enter(event);
        return true;
      case 'Escape':
        if (store.state().corner === null) dropSketch(desk);
        else store.dispatch({ type: 'corner-chosen', corner: null });
        return true;
      case 'Backspace':
      case 'Delete':
        takeAway();
        return true;
      case 'Insert':
        insertBehind();
        return true;
      case '+':
      case '=':
        stage.zoomBy(0.5);
        return true;
      case '-':
        stage.zoomBy(-0.5);
        return true;
      case '0':
        stage.fit();
        return true;
      case '.':
        stepCorner(1);
        return true;
      case ',':
        stepCorner(-1);
        return true;
      case 's':
        store.dispatch({ type: 'mode-set', mode: CHOOSING });
        return true;
      case 'k':
        store.dispatch({ type: 'catching-set', on: !store.state().catching });
        return true;
      default:
        return takeUp(event.key);
    }
  };

  const takeUp = (key: string): boolean => {
    const card = key.length === 1 ? cardOfKey(key) : undefined;
    if (card === undefined) return false;
    if (mayEdit(store.state())) store.dispatch({ type: 'mode-set', mode: { do: 'draw', kind: card.kind } });
    return true;
  };

  const finished = (): boolean => {
    finishSketch(desk);
    return true;
  };

  const enter = (event: KeyboardEvent): void => {
    const { cursor, mode } = store.state();
    const byKeys = cursor?.by === 'keys' ? cursor.at : null;
    if (sketchedAs(mode) !== null) {
      // with the mouse, Enter ends what was clicked; with keys it places, and on the last place it ends
      if (byKeys === null || event.shiftKey) finishSketch(desk);
      else placeAt(desk, caughtAt(byKeys).at, stage.metresPerPixel());
      return;
    }
    if (byKeys === null) return;
    if (mode.do === 'point') takePoint(desk, byKeys);
    else chooseAt(stage, stage.pixelOf(byKeys), event.shiftKey);
  };

  const takeAway = (): void => {
    const { sketch, corner, selection } = store.state();
    if (sketch.length > 0) store.dispatch({ type: 'place-taken-back' });
    else if (corner !== null) desk.attempt((document) => removeVertex(document, corner));
    else if (selection.length > 0) desk.attempt((document) => removeFeatures(document, selection));
  };

  const insertBehind = (): void => {
    const { corner, history } = store.state();
    if (corner === null) return;
    const at = placeOfCorner(history.document, corner);
    const next =
      placeOfCorner(history.document, { ...corner, vertex: corner.vertex + 1 }) ?? firstOfRing(corner);
    if (at === null || next === null) return;
    const middle: LonLat = [(at[0] + next[0]) / 2, (at[1] + next[1]) / 2];
    if (desk.attempt((document) => insertVertex(document, corner, middle)))
      store.dispatch({ type: 'corner-chosen', corner: { ...corner, vertex: corner.vertex + 1 } });
  };

  const firstOfRing = (corner: VertexAddress): LonLat | null =>
    placeOfCorner(store.state().history.document, { ...corner, vertex: 0 });

  const stepCorner = (by: number): void => {
    const { history, corner, selection } = store.state();
    const [id] = selection;
    if (id === undefined || selection.length !== 1) return;
    const corners = cornersOf(history.document, id);
    if (corners.length === 0) return;
    const index = corner === null ? -1 : corners.findIndex((one) => sameCorner(one, corner));
    const start = index < 0 && by < 0 ? 0 : index;
    const next = corners[(start + by + corners.length) % corners.length]!;
    store.dispatch({ type: 'corner-chosen', corner: next });
    const at = placeOfCorner(history.document, next);
    if (at !== null) stage.keepInSight(at);
    desk.say(
      desk.words().drawing.map.corner({
        number: corners.findIndex((one) => sameCorner(one, next)) + 1,
        total: corners.length,
      }),
    );
  };

  element.addEventListener('keydown', pressed);
  element.addEventListener('blur', endNudge);
  return () => {
    endNudge();
    element.removeEventListener('keydown', pressed);
    element.removeEventListener('blur', endNudge);
  };
}

function sameCorner(a: VertexAddress, b: VertexAddress): boolean {
  return (a.part ?? 0) === (b.part ?? 0) && (a.ring ?? 0) === (b.ring ?? 0) && a.vertex === b.vertex;
}

/** Every corner of a feature, ring by ring. */
function cornersOf(document: EditableDocument, id: VertexAddress['feature']): VertexAddress[] {
  const feature = featureById(document, id);
  const geometry = feature === undefined ? undefined : geometryOf(feature);
  if (geometry === undefined) return [];
  return pathsOf(geometry).flatMap((rings, part) =>
    rings.flatMap(({ points }, ring) => points.map((_, vertex) => ({ feature: id, part, ring, vertex }))),
  );
}

export function placeOfCorner(document: EditableDocument, corner: VertexAddress | null): LonLat | null {
  if (corner === null) return null;
  const feature = featureById(document, corner.feature);
  const geometry = feature === undefined ? undefined : geometryOf(feature);
  const point =
    geometry === undefined
      ? undefined
      : pathsOf(geometry)[corner.part ?? 0]?.[corner.ring ?? 0]?.points[corner.vertex];
  return point === undefined ? null : [point[0], point[1]];
}

function firstPlace(document: EditableDocument, id: VertexAddress['feature'] | undefined): LonLat | null {
  const feature = id === undefined ? undefined : featureById(document, id);
  const geometry = feature === undefined ? undefined : geometryOf(feature);
  const place = geometry === undefined ? undefined : positionsOf(geometry)[0];
  return place === undefined ? null : [place[0], place[1]];
}
