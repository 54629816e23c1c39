/** The Leaflet map and its layers. Told the state, it shows it; what the person does to it comes back as actions. */

import * as L from 'leaflet';
import type { Hole } from '../../core/course/model.ts';
import type { Spot } from '../../core/plan/model.ts';
import { type AppState, OWN_AIM } from '../state/app-state.ts';
import { shown } from '../state/history.ts';
import { lengthText, toHoleText } from '../state/measures.ts';
import { remember } from '../state/remember.ts';
import {
  currentHole,
  currentPlan,
  drawingFrame,
  holeSituation,
  paintedShot,
  positionOf,
  teeOf,
} from '../state/selectors.ts';
import type { Store } from '../state/store.ts';
import type { TreePassage } from '../workers/ways-out.ts';
import { passageLabels, passagePainter } from '../recovery/passage-painter.ts';
import { CanvasLayer, type Painter } from './canvas-layer.ts';
import { groundPainter } from './ground-painter.ts';
import { groundPaths } from './ground-paths.ts';
import { HoleButtons } from './hole-buttons.ts';
import { labelPainter } from './label-painter.ts';
import { courseLines, holeLine } from './line-painter.ts';
import { mapLabels } from './map-labels.ts';
import { MoveMarker } from './move-markers.ts';
import { ballSpot, type MarkerKind, markerSpot, moveLabel, moveMarker } from './moves.ts';
import { type Palette, paletteOf, type Theme } from './palette.ts';
import { positionName, wordsOf } from '../state/use-words.ts';
import { holeBearing, makeSheet, moveOnScreen, type Sheet, spotsOf } from './sheet.ts';
import { shotPainter } from './shot-painter.ts';
import { type DrawnShot, isComparing, shotScene } from './shot-scene.ts';
import { slopeArrows } from './slope-arrow.ts';
import { strokesScale } from './strokes-ramp.ts';
import { surfacePainter } from './surface-painter.ts';

/** What the panels around the map want to know of it. */
export interface StageNews {
  /** Metres that a screen pixel stands for, after each zoom. */
  readonly zoomed: (metresPerPixel: number) => void;
  /** Distances of the pointer's place, or null when it leaves. */
  readonly pointed: (from: { readonly ballM: number; readonly holeM: number } | null) => void;
}

/** Ground shown around a hole's line, metres. */
const AROUND_HOLE_M = 30;

export class MapStage {
  private readonly map: L.Map;
  private readonly ground = new CanvasLayer('ground');
  private readonly surface = new CanvasLayer('surface');
  private readonly shots = new CanvasLayer('shots');
  private readonly markers: Readonly<Record<MarkerKind, MoveMarker>>;
  private readonly holeButtons: HoleButtons;
  private readonly unsubscribe: () => void;
  private frameRequest = 0;
  private fitted: string | null = null;
  private sheet: Sheet | null = null;
  private readonly watcher: ResizeObserver;

  constructor(
    element: HTMLElement,
    private readonly store: Store,
    private readonly theme: () => Theme,
    private readonly news: StageNews,
  ) {
    this.map = L.map(element, {
      crs: L.CRS.Simple,
      attributionControl: false,
      zoomControl: false,
      // Canvas layers are drawn anew at each zoom: nothing to animate, and nothing moves that need not.
      zoomAnimation: false,
      fadeAnimation: false,
      markerZoomAnimation: false,
      inertia: !window.matchMedia('(prefers-reduced-motion: reduce)').matches,
      zoomSnap: 0,
      zoomDelta: 0.5,
      wheelPxPerZoomLevel: 120,
      minZoom: -3,
      maxZoom: 5,
      doubleClickZoom: false,
    });
    this.map.setView([0, 0], 0);
    ['ground', 'surface', 'shots'].forEach((name, i) => {
      this.map.createPane(name).style.zIndex = String(200 + 50 * i);
    });
    for (const layer of [this.ground, this.surface, this.shots]) layer.addTo(this.map);
    const events = {
      dragged: (kind: MarkerKind, to: Spot) => this.moved(kind, to, 'dragged', null),
      dropped: (kind: MarkerKind, to: Spot) => this.moved(kind, to, 'dropped', null),
      stepped: (kind: MarkerKind, right: number, up: number, press: number) =>
        this.stepped(kind, right, up, `${kind} ${press}`),
    };
    this.markers = {
      pin: new MoveMarker(this.map, 'pin', events),
      aim: new MoveMarker(this.map, 'aim', events),
      ball: new MoveMarker(this.map, 'ball', events),
    };
    this.holeButtons = new HoleButtons(
      this.map,
      (hole) => this.store.dispatch({ type: 'hole-shown', hole }),
      () => wordsOf(this.store.state()),
    );
    this.map.on('zoom resize', () => this.tellZoom());
    this.map.on('mousemove', (event) => this.tellPointer(event.latlng));
    this.map.on('mouseout', () => this.news.pointed(null));
    this.watcher = new ResizeObserver(() => this.map.invalidateSize({ pan: false }));
    this.watcher.observe(element);
    this.unsubscribe = store.subscribe(() => this.soon());
    this.soon();
  }

  destroy(): void {
    cancelAnimationFrame(this.frameRequest);
    this.watcher.disconnect();
    this.unsubscribe();
    this.map.remove();
  }

  zoomBy(steps: number): void {
    this.map.setZoom(this.map.getZoom() + steps);
  }

  /** Shows the whole hole (or course) again. */
  fit(): void {
    this.fitted = null;
    this.soon();
  }

  /** Draws everything again: the theme changed. */
  repaint(): void {
    this.soon();
  }

  private soon(): void {
    cancelAnimationFrame(this.frameRequest);
    this.frameRequest = requestAnimationFrame(() => this.draw(this.store.state()));
  }

  private draw(state: AppState): void {
    const frame = drawingFrame(state);
    const course = state.course?.value;
    if (frame === null || course === undefined) {
      for (const layer of [this.ground, this.surface, this.shots]) layer.show(null, null);
      return;
    }
    const hole = currentHole(state);
    const sheet = sheetFor(frame, hole, state.view.holeUp);
    this.sheet = sheet;
    const palette = paletteOf(this.theme());
    this.fitOnce(state, sheet, hole);
    this.ground.show(sheet, groundFor(groundPaths(course, frame), palette, hole, sheet));
    this.drawSurface(state, sheet, hole);
    if (hole === null) {
      this.shots.show(sheet, courseLines(course.holes, frame, palette));
      this.holeButtons.show(course, sheet);
      for (const marker of Object.values(this.markers)) marker.remove();
      return;
    }
    this.holeButtons.hide();
    const pin = frame.toSpot(positionOf(hole, holeSituation(state, hole.number).position).at);
    const shots = shotScene(state);
    const trees = passageOf(state, sheet);
    this.shots.show(
      sheet,
      inTurn([
        holeLine(hole, frame, palette),
        slopeArrows(course.slopeMarks ?? [], frame, palette, wordsOf(state).figures),
        ...(trees === null ? [] : [passagePainter(trees.passage, trees.ball, palette)]),
        shotPainter(shots, frame, pin, palette, state.view.showBalls),
        labelPainter(
          [
            ...mapLabels(state, sheet, shots, pin),
            ...(trees === null ? [] : passageLabels(trees.passage, trees.ball, wordsOf(state))),
          ],
          palette,
        ),
      ]),
    );
    this.showMarkers(state, sheet, hole, pin, shots);
  }

  private drawSurface(state: AppState, sheet: Sheet, hole: Hole | null): void {
    const answer = state.answers.surface;
    const course = state.course?.value;
    if (
      !state.view.showSurface ||
      answer === null ||
      hole === null ||
      course === undefined ||
      answer.hole !== hole.number
    ) {
      this.surface.show(null, null);
      return;
    }
    const { surface } = answer;
    const paths = groundPaths(course, sheet.frame);
    this.surface.show(
      sheet,
      surfacePainter(surface, strokesScale(surface.values), paths, corridorOf(hole, sheet)),
    );
  }

  private showMarkers(
    state: AppState,
    sheet: Sheet,
    hole: Hole,
    pin: Spot,
    shots: readonly DrawnShot[],
  ): void {
    const ball = ballSpot(state);
    const { units } = state.settings;
    const words = wordsOf(state);
    const onTee = holeSituation(state, hole.number).ball === null;
    const plan = currentPlan(state);
    const toHole =
      ball === null
        ? ''
        : toHoleText(Math.hypot(pin.x - ball.x, pin.y - ball.y), plan?.lie === 'green', units, words);
    const place = onTee ? words.map.onTheTee : words.map.moved;
    this.markers.ball.show(sheet, ball, words.map.ballLabel({ place, length: toHole }), words, false);
    this.markers.pin.show(
      sheet,
      pin,
      words.map.positionLabel({ name: positionName(state, hole) }),
      words,
      true,
    );
    const main = shots.find((shot) => shot.part === 'main');
    const aim = markerSpot(state, 'aim');
    const carry =
      aim === null || ball === null ? '' : lengthText(Math.hypot(aim.x - ball.x, aim.y - ball.y), units);
    const club = main?.option?.club ?? words.map.theShot;
    this.markers.aim.show(sheet, aim, words.map.aimLabel({ club, length: carry }), words, true);
  }

  /** Fits once for each hole, frame and turn of the sheet; after that the person's own pan and zoom stay. */
  private fitOnce(state: AppState, sheet: Sheet, hole: Hole | null): void {
    const key = `${state.course?.entry.token ?? ''}/${hole?.number ?? 'all'}/${sheet.up}`;
    if (key === this.fitted) return;
    this.fitted = key;
    this.map.invalidateSize({ pan: false });
    const lines =
      hole === null ? (state.course?.value.holes ?? []).map((each) => each.line) : [holeExtent(state, hole)];
    const corners = lines.flatMap((line) => spotsOf(sheet.frame, line).map((spot) => sheet.toMap(spot)));
    const bounds = L.latLngBounds(corners);
    const south = bounds.getSouthWest();
    const north = bounds.getNorthEast();
    bounds.extend([south.lat - AROUND_HOLE_M * 0.6, south.lng - AROUND_HOLE_M]);
    bounds.extend([north.lat + AROUND_HOLE_M * 0.6, north.lng + AROUND_HOLE_M]);
    // The switches lie over the top edge, legend and scale over the bottom one.
    this.map.fitBounds(bounds, { animate: false, paddingTopLeft: [0, 46], paddingBottomRight: [0, 14] });
  }

  /** From where the state has the marker, not from where it was drawn last: keys may come faster than frames. */
  private stepped(kind: MarkerKind, right: number, up: number, mark: string): void {
    const from = markerSpot(this.store.state(), kind);
    if (from === null || this.sheet === null) return;
    this.moved(kind, moveOnScreen(this.sheet, from, right, up), 'stepped', mark);
  }

  private moved(
    kind: MarkerKind,
    to: Spot,
    how: 'dragged' | 'dropped' | 'stepped',
    mark: string | null,
  ): void {
    const { store } = this;
    const move = moveMarker(store.state(), kind, to);
    // A refused place leaves the last good one of the drag.
    const situation = move.ok ? move.value : store.state().history.preview;
    if (situation === null) return;
    if (how === 'dragged') {
      if (!move.ok) return;
      store.dispatch({ type: 'situation-previewed', situation });
    } else {
      const marked = mark === null ? {} : { mark };
      store.dispatch({
        type: 'situation-taken',
        situation,
        label: moveLabel(store.state(), kind),
        ...marked,
      });
    }
    if (kind === 'aim') store.dispatch({ type: 'shot-chosen', shot: OWN_AIM });
  }

  private tellZoom(): void {
    this.news.zoomed(1 / this.map.getZoomScale(this.map.getZoom(), 0));
  }

  private tellPointer(at: L.LatLng): void {
    const state = this.store.state();
    const hole = currentHole(state);
    const ball = ballSpot(state);
    if (this.sheet === null || hole === null || ball === null) {
      this.news.pointed(null);
      return;
    }
    const spot = this.sheet.fromMap(at);
    const pin = this.sheet.frame.toSpot(positionOf(hole, holeSituation(state, hole.number).position).at);
    this.news.pointed({
      ballM: Math.hypot(spot.x - ball.x, spot.y - ball.y),
      holeM: Math.hypot(spot.x - pin.x, spot.y - pin.y),
    });
  }
}

const sheetFor = remember(
  (frame: Sheet['frame'], hole: Hole | null, holeUp: boolean): Sheet =>
    makeSheet(frame, hole !== null && holeUp ? holeBearing(frame, hole) : 0),
);

const groundFor = remember(
  (paths: ReturnType<typeof groundPaths>, palette: Palette, hole: Hole | null, sheet: Sheet): Painter =>
    groundPainter(paths, palette, hole === null ? null : corridorOf(hole, sheet)),
);

const corridorOf = remember((hole: Hole, sheet: Sheet): readonly Spot[] => spotsOf(sheet.frame, hole.line));

/** Only while it is the passage of the shot on the map. */
function passageOf(
  state: AppState,
  { frame }: Sheet,
): { readonly passage: TreePassage; readonly ball: Spot } | null {
  const answer = state.answers.treePassage;
  if (answer === null || isComparing(state) || answer.shot !== paintedShot(state)) return null;
  return { passage: answer.passage, ball: frame.toSpot(answer.ball) };
}

function inTurn(painters: readonly Painter[]): Painter {
  return (brush) => {
    for (const paint of painters) paint(brush);
  };
}

/** The hole's line, its chosen tee and its ball: all of it should be in sight. */
function holeExtent(state: AppState, hole: Hole): Hole['line'] {
  const ball = holeSituation(state, hole.number).ball;
  return [...hole.line, teeOf(hole, shown(state.history).teeName).at, ...(ball === null ? [] : [ball])];
}
