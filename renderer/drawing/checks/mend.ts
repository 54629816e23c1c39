/** Faults that can be mended without a choice that only a person can make. */

import type { Words } from '../../../core/words/words.ts';
import {
  courseOf,
  type EditableDocument,
  featureById,
  type FeatureId,
  geometryOf,
  holeOf,
} from '../../../core/course/document.ts';
import { type EditResult, makeEdit, noSuchFeature, refuseEdit } from '../../../core/course/edits/edit.ts';
import { moveVertex } from '../../../core/course/edits/move-vertex.ts';
import { setProperties } from '../../../core/course/edits/set-properties.ts';
import { holeNumbers } from '../../../core/course/edits/renumber-holes.ts';
import { tidyGeometry } from '../../../core/course/edits/shape.ts';
import { featureWords } from '../../../core/course/edits/words.ts';
import { greenOf } from '../../../core/course/hole-features.ts';
import { middleOf } from '../../../core/course/polygon.ts';
import type { Rings } from '../../../core/course/model.ts';
import type { CourseFault } from '../../../core/course/report.ts';

export interface Mending {
  readonly words: string;
  readonly make: (document: EditableDocument) => EditResult;
}

export function mendingOf({ code, feature }: CourseFault, words: Words): Mending | null {
  if (feature === null) return null;
  const { mend } = words.drawing;
  switch (code) {
    case 'position-off-green':
      return {
        words: mend.toGreen,
        make: (document) => moveInto(document, feature, 'green', words),
      };
    case 'marker-off-tee':
      return {
        words: mend.toTee,
        make: (document) => moveInto(document, feature, 'tee', words),
      };
    case 'ring-not-closed':
      return { words: mend.close, make: (document) => closeRings(document, feature, words) };
    case 'duplicate-hole':
      return {
        words: mend.number,
        make: (document) => {
          let free = 1;
          while (holeNumbers(document).includes(free)) free++;
          return setProperties(document, [feature], { ref: String(free) });
        },
      };
    default:
      return null;
  }
}

function moveInto(
  document: EditableDocument,
  id: FeatureId,
  kind: 'green' | 'tee',
  words: Words,
): EditResult {
  const feature = featureById(document, id);
  if (feature === undefined) return noSuchFeature(id);
  const course = courseOf(document);
  const number = holeOf(feature);
  const hole = course.ok ? course.value.holes.find((one) => one.number === number) : undefined;
  const rings: Rings | undefined =
    !course.ok || hole === undefined
      ? undefined
      : kind === 'green'
        ? greenOf(course.value, hole)?.rings
        : course.value.areas.find((area) => area.kind === 'tee' && area.hole === number)?.rings;
  if (rings === undefined) {
    return refuseEdit(
      'no-such-hole',
      words.drawing.mend[kind === 'green' ? 'noGreen' : 'noTee']({ hole: String(number ?? '?') }),
    );
  }
  return moveVertex(document, { feature: id, vertex: 0 }, middleOf(rings));
}

function closeRings(document: EditableDocument, id: FeatureId, words: Words): EditResult {
  const feature = featureById(document, id);
  const geometry = feature === undefined ? undefined : geometryOf(feature);
  if (feature === undefined || geometry === undefined) return noSuchFeature(id);
  return makeEdit(document, words.drawing.mend.closeStep({ what: featureWords(feature, words) }), {
    changed: [{ ...feature, geometry: tidyGeometry(geometry) }],
  });
}
