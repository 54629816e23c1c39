/** Shows on the map what a file would bring, before it is taken in. */

import type { DocumentFeature } from '../../../core/course/document.ts';
import type { ImportProposal } from '../../../core/course/import/proposal.ts';
import type { DrawingDesk } from '../desk.ts';
import { frameFor } from '../frame.ts';
import { boxAround, shapeOf } from '../shapes.ts';

export function previewOf(desk: DrawingDesk, { features }: ImportProposal): void {
  const { store, stage } = desk;
  const drawn = features.map(
    ({ properties, geometry }, index): DocumentFeature => ({
      id: `preview-${index}`,
      properties,
      geometry,
    }),
  );
  const { document } = store.state().history;
  if (document.features.length === 0 && drawn.length > 0) {
    // nothing has a place yet: the map goes to where the file lies
    store.dispatch({ type: 'frame-moved', frame: frameFor({ ...document, features: drawn }) });
  }
  const { frame } = store.state();
  const shapes = drawn.map((feature) => shapeOf(feature, frame)).filter((shape) => shape !== null);
  stage.current?.showPreview(shapes);
  const box = boxAround(shapes);
  if (box !== null) stage.current?.fitBox(box);
}
