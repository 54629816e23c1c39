/** The map of the course room: shows the state; pointer and keys are looked after in files of their own. */

import type { Figures } from '../../../core/words/figures.ts';
import * as L from 'leaflet';
import type { LonLat } from '../../../core/course/model.ts';
import type { Spot } from '../../../core/plan/model.ts';
import { CanvasLayer, type Painter } from '../../map/canvas-layer.ts';
import { groundPainter } from '../../map/ground-painter.ts';
import type { GroundPaths } from '../../map/ground-paths.ts';
import { paletteOf, type Theme } from '../../map/palette.ts';
import { makeSheet, type Sheet } from '../../map/sheet.ts';
import { remember } from '../../state/remember.ts';
import type { DrawingDesk } from '../desk.ts';
import type { DrawingState } from '../drawing-state.ts';
import { boxAround, type Box, type Shape } from '../shapes.ts';
import { sketchedAs } from '../sketching.ts';
import { chosenShapes, visibleShapes } from '../selectors.ts';
import { DrawnGrounds } from './drawn-grounds.ts';
import { gridPainter } from './grid-painter.ts';
import { handlesPainter } from './handles-painter.ts';
import { listenForKeys } from './map-keys.ts';
import { listenForPointer } from './map-pointer.ts';
import { hasMark, marksPainter } from './marks-painter.ts';
import { overPicturePainter } from './over-picture-painter.ts';
import { sketchColours } from './sketch-colours.ts';

export interface DrawingStageNews {
  readonly zoomed: (metresPerPixel: number) => void;
}

/** Side of the ground shown where nothing is drawn yet, metres. */
const EMPTY_SIDE_M = 600;
const AROUND_M = 25;
/** Drawn beyond the edges while the map is dragged, so that not every step of the way is drawn anew. */
const DRAG_MARGIN_PX = 128;

export class DrawingStage {
  readonly map: L.Map;
  private readonly base = new CanvasLayer('base', DRAG_MARGIN_PX);
  private readonly ground = new CanvasLayer('ground', DRAG_MARGIN_PX);
  private readonly marks = new CanvasLayer('marks', DRAG_MARGIN_PX);
  private readonly handles = new CanvasLayer('handles', DRAG_MARGIN_PX);
  private readonly grounds = new DrawnGrounds();
  private readonly watcher: ResizeObserver;
  private readonly stops: (() => void)[] = [];
  private frameRequest = 0;
  private fitted: string | null = null;
  private pointedOut: Shape | null = null;
  private preview: readonly Shape[] = [];
  private basePainter: Painter | null = null;
  private lastMarked: readonly Shape[] = [];
  /** Share of the drawing's colour over a picture. */
  private cover = 1;

  constructor(
    readonly element: HTMLElement,
    readonly desk: DrawingDesk,
    private readonly theme: () => Theme,
    private readonly figures: () => Figures,
    private readonly news: DrawingStageNews,
  ) {
    this.map = L.map(element, {
      crs: L.CRS.Simple,
      attributionControl: false,
      zoomControl: false,
      zoomAnimation: false,
      fadeAnimation: false,
      markerZoomAnimation: false,
      inertia: false,
      zoomSnap: 0,
      zoomDelta: 0.5,
      wheelPxPerZoomLevel: 120,
      minZoom: -4,
      maxZoom: 6,
      doubleClickZoom: false,
      // arrows belong to the cross-hair and to what is chosen
      keyboard: false,
      boxZoom: false,
    });
    this.map.setView([0, 0], 0);
    ['base', 'ground', 'marks', 'handles'].forEach((name, i) => {
      this.map.createPane(name).style.zIndex = String(200 + 50 * i);
    });
    for (const layer of [this.base, this.ground, this.marks, this.handles]) layer.addTo(this.map);
    this.map.on('zoom resize', () => this.tellZoom());
    this.watcher = new ResizeObserver(() => this.map.invalidateSize({ pan: false }));
    this.watcher.observe(element);
    this.stops.push(desk.store.subscribe(() => this.soon()));
    this.stops.push(listenForPointer(this), listenForKeys(this));
    this.soon();
  }

  destroy(): void {
    cancelAnimationFrame(this.frameRequest);
    this.watcher.disconnect();
    for (const stop of this.stops) stop();
    this.map.remove();
  }

  state(): DrawingState {
    return this.desk.store.state();
  }

  metresPerPixel(): number {
    return 1 / this.map.getZoomScale(this.map.getZoom(), 0);
  }

  sheet(): Sheet {
    return sheetOf(this.state().frame);
  }

  /** The spot under a point of the map's element, in pixels from its corner. */
  spotAt(x: number, y: number): Spot {
    return this.sheet().fromMap(this.map.containerPointToLatLng([x, y]));
  }

  placeAt(x: number, y: number): LonLat {
    return this.state().frame.toLonLat(this.spotAt(x, y));
  }

  pixelOf(place: LonLat): L.Point {
    const sheet = this.sheet();
    return this.map.latLngToContainerPoint(sheet.toMap(sheet.frame.toSpot(place)));
  }

  zoomBy(steps: number): void {
    this.map.setZoom(this.map.getZoom() + steps);
  }

  /** Moves the map so that the place is well inside. */
  keepInSight(place: LonLat): void {
    const at = this.pixelOf(place);
    const { x: width, y: height } = this.map.getSize();
    const margin = 60;
    const dx = at.x < margin ? at.x - margin : at.x > width - margin ? at.x - width + margin : 0;
    const dy = at.y < margin ? at.y - margin : at.y > height - margin ? at.y - height + margin : 0;
    if (dx !== 0 || dy !== 0) this.map.panBy([dx, dy], { animate: false });
  }

  /** Shows all of it; nothing drawn shows the place of the course. */
  fit(shapes: readonly Shape[] = visibleShapes(this.state())): void {
    const drawn = shapes.filter(({ kind }) => kind !== 'ground-level');
    const box = boxAround(drawn.length > 0 ? drawn : shapes);
    const half = EMPTY_SIDE_M / 2;
    this.fitBox(box ?? { west: -half, south: -half, east: half, north: half });
  }

  fitBox(box: Box): void {
    const { toMap } = this.sheet();
    const bounds = L.latLngBounds([
      toMap({ x: box.west - AROUND_M, y: box.south - AROUND_M }),
      toMap({ x: box.east + AROUND_M, y: box.north + AROUND_M }),
    ]);
    this.map.invalidateSize({ pan: false });
    this.map.fitBounds(bounds, { animate: false, paddingTopLeft: [0, 40], paddingBottomRight: [0, 40] });
  }

  /** Shows the hole's own things; its line at least. */
  fitHole(hole: number): void {
    const own = visibleShapes(this.state()).filter((shape) => shape.hole === hole);
    if (own.length > 0) this.fit(own);
  }

  /** Draws attention to a feature until something else is pointed out. */
  pointOut(shape: Shape | null): void {
    this.pointedOut = shape;
    if (shape !== null) this.fitBox(shape.box);
    this.soon();
  }

  /** What an import would bring. */
  showPreview(shapes: readonly Shape[]): void {
    this.preview = shapes;
    this.soon();
  }

  showBase(painter: Painter | null, cover: number): void {
    this.basePainter = painter;
    this.cover = cover;
    this.soon();
  }

  /** A piece of the background has come: it is drawn in the next frame. */
  repaintBase(): void {
    this.base.redraw();
  }

  repaint(): void {
    this.soon();
  }

  private soon(): void {
    cancelAnimationFrame(this.frameRequest);
    this.frameRequest = requestAnimationFrame(() => this.draw(this.state()));
  }

  private draw(state: DrawingState): void {
    const sheet = this.sheet();
    this.fitOnce(state);
    const theme = this.theme();
    const colours = sketchColours(theme);
    const shapes = visibleShapes(state);
    this.base.show(sheet, this.basePainter);
    const cover = this.basePainter === null ? null : this.cover;
    this.ground.show(sheet, groundFor(this.grounds.of(shapes), theme, cover));
    this.marks.show(sheet, marksFor(this.marked(shapes), theme, state.hole, state.gridM, this.figures()));
    const toSpot = (place: LonLat): Spot => sheet.frame.toSpot(place);
    const { cursor, mode } = state;
    const pointedOut =
      this.pointedOut === null
        ? null
        : (shapes.find(({ feature }) => feature.id === this.pointedOut?.feature.id) ?? null);
    this.handles.show(
      sheet,
      handlesPainter(
        {
          chosen: chosenShapes(state),
          handles: mode.do === 'choose' && state.selection.length === 1,
          corner: state.corner,
          sketch: state.sketch.map(toSpot),
          closes: sketchedAs(mode) === 'area',
          cursor:
            cursor === null || (mode.do === 'choose' && cursor.by === 'mouse')
              ? null
              : { at: toSpot(cursor.at), by: cursor.by, caught: cursor.caught !== null },
          pointedOut,
          preview: this.preview,
        },
        colours,
      ),
    );
    this.element.dataset['mode'] = mode.do;
  }

  /** The shapes that have marks; the identical list where none of them has changed. */
  private marked(shapes: readonly Shape[]): readonly Shape[] {
    const marked = shapes.filter(hasMark);
    const { lastMarked: last } = this;
    if (last.length === marked.length && last.every((shape, i) => shape === marked[i])) return last;
    this.lastMarked = marked;
    return marked;
  }

  private fitOnce(state: DrawingState): void {
    const key = `${state.file?.entry.token ?? ''} ${state.frame.origin.join()}`;
    if (key === this.fitted) return;
    this.fitted = key;
    if (this.preview.length === 0) this.fit();
    this.tellZoom();
  }

  private tellZoom(): void {
    this.news.zoomed(this.metresPerPixel());
  }
}

const sheetOf = remember((frame: DrawingState['frame']): Sheet => makeSheet(frame, 0));

const groundFor = remember((paths: GroundPaths, theme: Theme, cover: number | null): Painter => {
  return cover === null
    ? groundPainter(paths, paletteOf(theme), null)
    : overPicturePainter(paths, paletteOf(theme), cover);
});

const marksFor = remember(
  (
    shapes: readonly Shape[],
    theme: Theme,
    hole: number | null,
    gridM: number | null,
    figures: Figures,
  ): Painter => {
    const colours = sketchColours(theme);
    const marks = marksPainter(shapes, paletteOf(theme), colours, hole, figures);
    if (gridM === null) return marks;
    const grid = gridPainter(colours, gridM);
    return (brush) => {
      grid(brush);
      marks(brush);
    };
  },
);
