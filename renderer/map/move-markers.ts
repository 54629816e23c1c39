/** Ball, aim and hole position as things to be taken by mouse, finger or arrow keys. */

import * as L from 'leaflet';
import type { Spot } from '../../core/plan/model.ts';
import { markerPicture } from './marker-icons.ts';
import type { MarkerKind } from './moves.ts';
import type { Words } from '../../core/words/words.ts';
import type { Sheet } from './sheet.ts';

/** Arrow keys move by this much, with Shift by the second, metres. */
const STEP_M = 1;
const LONG_STEP_M = 5;

export interface MarkerEvents {
  readonly dragged: (kind: MarkerKind, to: Spot) => void;
  readonly dropped: (kind: MarkerKind, to: Spot) => void;
  /** Metres on the screen. `press` is the same for all steps of a key held down. */
  readonly stepped: (kind: MarkerKind, right: number, up: number, press: number) => void;
}

export class MoveMarker {
  private readonly marker: L.Marker;
  private readonly picture: HTMLElement;
  private sheet: Sheet | null = null;
  private dragging = false;
  private press = 0;

  constructor(
    private readonly map: L.Map,
    private readonly kind: MarkerKind,
    private readonly events: MarkerEvents,
  ) {
    this.picture = document.createElement('span');
    this.picture.className = 'marker-body';
    this.picture.append(markerPicture(kind));
    const icon = L.divIcon({
      html: this.picture,
      className: 'map-marker',
      iconSize: [36, 36],
      iconAnchor: [18, 18],
    });
    this.marker = L.marker([0, 0], {
      icon,
      draggable: true,
      keyboard: true,
      autoPan: true,
      zIndexOffset: Z_ORDER[kind],
    });
    this.marker.on('dragstart', () => {
      this.dragging = true;
    });
    this.marker.on('drag', () => {
      if (this.sheet !== null) events.dragged(kind, this.sheet.fromMap(this.marker.getLatLng()));
    });
    this.marker.on('dragend', () => {
      this.dragging = false;
      if (this.sheet !== null) events.dropped(kind, this.sheet.fromMap(this.marker.getLatLng()));
    });
  }

  /** Shows the marker at a spot, or hides it for null. During a drag the pointer leads unless `keepTo` says otherwise. */
  show(sheet: Sheet, spot: Spot | null, label: string, words: Words, keepTo: boolean): void {
    this.sheet = sheet;
    if (spot === null) {
      this.marker.remove();
      return;
    }
    if (!this.map.hasLayer(this.marker)) {
      this.marker.addTo(this.map);
      const element = this.marker.getElement();
      element?.addEventListener('keydown', (event) => this.keyed(event));
      element?.setAttribute('data-marker', this.kind);
    }
    if (!this.dragging || keepTo) this.marker.setLatLng(sheet.toMap(spot));
    const element = this.marker.getElement();
    if (element !== undefined && element.title !== words.map.dragIt({ label })) {
      element.setAttribute('aria-label', label);
      element.title = words.map.dragIt({ label });
    }
  }

  focus(): void {
    this.marker.getElement()?.focus();
  }

  remove(): void {
    this.marker.remove();
  }

  private keyed(event: KeyboardEvent): void {
    const step = event.shiftKey ? LONG_STEP_M : STEP_M;
    const direction = DIRECTIONS[event.key];
    if (direction === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    // Otherwise the map would pan as well.
    event.preventDefault();
    event.stopPropagation();
    const [right, up] = direction;
    if (!event.repeat) this.press++;
    this.events.stepped(this.kind, right * step, up * step, this.press);
  }
}

const Z_ORDER: Readonly<Record<MarkerKind, number>> = { pin: 100, aim: 200, ball: 300 };

const DIRECTIONS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
};
