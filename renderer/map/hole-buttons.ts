/** On the whole-course view: a button at each tee that opens its hole. */

import * as L from 'leaflet';
import type { Course } from '../../core/course/model.ts';
import type { Words } from '../../core/words/words.ts';
import type { Sheet } from './sheet.ts';

export class HoleButtons {
  private readonly group = L.layerGroup();
  private shownFor: { readonly course: Course; readonly sheet: Sheet; readonly words: Words } | null = null;

  constructor(
    private readonly map: L.Map,
    private readonly choose: (hole: number) => void,
    private readonly words: () => Words,
  ) {}

  show(course: Course, sheet: Sheet): void {
    const words = this.words();
    if (this.shownFor?.course === course && this.shownFor.sheet === sheet && this.shownFor.words === words)
      return;
    this.hide();
    this.shownFor = { course, sheet, words };
    for (const hole of course.holes) {
      const start = hole.line[0];
      if (start === undefined) continue;
      const body = document.createElement('span');
      body.textContent = String(hole.number);
      const icon = L.divIcon({
        html: body,
        className: 'hole-button',
        iconSize: [26, 26],
        iconAnchor: [13, 13],
      });
      const marker = L.marker(sheet.toMap(sheet.frame.toSpot(start)), { icon, keyboard: true });
      marker.on('add', () =>
        marker
          .getElement()
          ?.setAttribute('aria-label', words.map.holeLabel({ number: hole.number, par: hole.par })),
      );
      marker.on('click', () => this.choose(hole.number));
      marker.on('keypress', ({ originalEvent }) => {
        if (originalEvent.key === 'Enter' || originalEvent.key === ' ') this.choose(hole.number);
      });
      this.group.addLayer(marker);
    }
    this.group.addTo(this.map);
  }

  hide(): void {
    this.group.clearLayers();
    this.group.remove();
    this.shownFor = null;
  }
}
