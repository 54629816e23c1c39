/**
 * A Leaflet layer that is one canvas over the whole map, drawn again whenever the map moves or is told to. With a
 * margin it is drawn larger while the map is dragged, and moves along until the margin is used up.
 */

import * as L from 'leaflet';
import type { Spot } from '../../core/plan/model.ts';
import type { Sheet } from './sheet.ts';

/** What a painter draws with. Sizes are screen pixels from the canvas's corner; `metres` turns the context to metres of the hole's frame. */
export interface Brush {
  readonly context: CanvasRenderingContext2D;
  readonly width: number;
  readonly height: number;
  /** Screen pixels in a metre. */
  readonly scale: number;
  /** Where the frame's origin is on the screen. */
  readonly originX: number;
  readonly originY: number;
  readonly place: (spot: Spot) => readonly [number, number];
  /** Runs `draw` with the context in metres: x east, y north. Line widths are metres then. */
  readonly metres: (draw: (context: CanvasRenderingContext2D) => void) => void;
}

export type Painter = (brush: Brush) => void;

export class CanvasLayer extends L.Layer {
  private readonly canvas = document.createElement('canvas');
  private sheet: Sheet | null = null;
  private painter: Painter | null = null;
  private frame = 0;
  private shownOn: L.Map | null = null;
  /** Screen pixels beyond each edge that are drawn at the moment. */
  private margin = 0;
  /** Where the map's corner was when it was drawn. */
  private drawnAt = L.point(0, 0);
  private readonly soon = (): void => {
    cancelAnimationFrame(this.frame);
    this.frame = requestAnimationFrame(() => this.draw());
  };

  constructor(
    private readonly paneName: string,
    private readonly dragMarginPx = 0,
  ) {
    super();
    this.canvas.className = 'map-canvas';
    // What it shows is told in the panels.
    this.canvas.setAttribute('aria-hidden', 'true');
    // Sleep or a fault of the graphics driver may take what was drawn; the browser gives an empty canvas back.
    this.canvas.addEventListener('contextrestored', this.soon);
  }

  override onAdd(map: L.Map): this {
    this.shownOn = map;
    map.getPane(this.paneName)?.append(this.canvas);
    map.on('zoom resize viewreset', this.soon);
    map.on('move', this.moved);
    map.on('dragstart', this.dragBegun);
    map.on('dragend', this.dragEnded);
    this.soon();
    return this;
  }

  override onRemove(map: L.Map): this {
    map.off('zoom resize viewreset', this.soon);
    map.off('move', this.moved);
    map.off('dragstart', this.dragBegun);
    map.off('dragend', this.dragEnded);
    cancelAnimationFrame(this.frame);
    this.canvas.remove();
    this.shownOn = null;
    return this;
  }

  show(sheet: Sheet | null, painter: Painter | null): void {
    if (sheet === this.sheet && painter === this.painter) return;
    this.sheet = sheet;
    this.painter = painter;
    this.soon();
  }

  /** Draws again what the painter has since got to show. */
  redraw(): void {
    this.soon();
  }

  private readonly moved = (): void => {
    const { shownOn: map, margin, drawnAt } = this;
    if (margin > 0 && map !== null) {
      const { x, y } = map.containerPointToLayerPoint([0, 0]).subtract(drawnAt);
      if (Math.max(Math.abs(x), Math.abs(y)) <= margin) return;
    }
    this.soon();
  };

  private readonly dragBegun = (): void => {
    if (this.dragMarginPx === 0) return;
    this.margin = this.dragMarginPx;
    this.soon();
  };

  private readonly dragEnded = (): void => {
    if (this.dragMarginPx === 0) return;
    this.margin = 0;
    this.soon();
  };

  private draw(): void {
    const { shownOn: map, canvas, sheet, margin } = this;
    if (map === null) return;
    const size = map.getSize().add([2 * margin, 2 * margin]);
    const dense = window.devicePixelRatio;
    const width = Math.round(size.x * dense);
    const height = Math.round(size.y * dense);
    if (canvas.width !== width || canvas.height !== height) {
      canvas.width = width;
      canvas.height = height;
      canvas.style.width = `${size.x}px`;
      canvas.style.height = `${size.y}px`;
    }
    this.drawnAt = map.containerPointToLayerPoint([0, 0]);
    L.DomUtil.setPosition(canvas, this.drawnAt.subtract([margin, margin]));
    const context = canvas.getContext('2d');
    if (context === null) return;
    context.setTransform(dense, 0, 0, dense, 0, 0);
    context.clearRect(0, 0, size.x, size.y);
    if (sheet !== null && this.painter !== null) this.painter(makeBrush(map, sheet, context, dense, margin));
  }
}

function makeBrush(
  map: L.Map,
  sheet: Sheet,
  context: CanvasRenderingContext2D,
  dense: number,
  margin: number,
): Brush {
  const size = map.getSize().add([2 * margin, 2 * margin]);
  const scale = map.getZoomScale(map.getZoom(), 0);
  const origin = map.latLngToContainerPoint([0, 0]).add([margin, margin]);
  const a = scale * Math.cos(sheet.up);
  const b = scale * Math.sin(sheet.up);
  return {
    context,
    width: size.x,
    height: size.y,
    scale,
    originX: origin.x,
    originY: origin.y,
    place: ({ x, y }) => [origin.x + a * x - b * y, origin.y - b * x - a * y],
    metres: (draw) => {
      context.save();
      context.setTransform(dense * a, -dense * b, -dense * b, -dense * a, dense * origin.x, dense * origin.y);
      draw(context);
      context.restore();
    },
  };
}
