/**
 * What a course on the way still lacks, hole by hole, and what would mend it. The check (check.ts) says what is
 * wrong; this says what is missing, in the order in which a person would draw it.
 */

import { parForLength } from './defaults.ts';
import { courseOf, type EditableDocument } from './document.ts';
import { addFeature, type NewFeature } from './edits/add-feature.ts';
import type { EditResult } from './edits/edit.ts';
import { holeNumbers } from './edits/renumber-holes.ts';
import { setProperties } from './edits/set-properties.ts';
import { polylineLengthM } from './ellipsoid.ts';
import { greenOf } from './hole-features.ts';
import { teeLengths, type TeeLength } from './hole-lengths.ts';
import { filedPlace } from './longitude.ts';
import { canopyMissing, type Canopied, guessedCanopies } from './missing-canopy.ts';
import type { Fix, Missing } from './missing.ts';
import type { Course, Hole, LonLat } from './model.ts';
import { middleOf } from './polygon.ts';
import { inEnglish, told } from '../words/told.ts';

export interface HoleCompleteness {
  readonly hole: number;
  readonly missing: readonly Missing[];
  /** Along the line from each tee; empty without a line. */
  readonly lengths: readonly TeeLength[];
}

export interface CourseCompleteness {
  readonly holes: readonly HoleCompleteness[];
  /** What is missing for the course as a whole, and woods and trees near no hole. */
  readonly course: readonly Missing[];
}

/** Card and map may differ by this much: markers are moved, cards are rounded. Common practice, no source. */
const CARD_TOLERANCE_M = 5;
const CARD_TOLERANCE_SHARE = 0.02;
const MOST_STROKE_INDEX = 18;

/** Empty lists where the document cannot be read as a course at all; opening has refused such a file before. */
export function completenessOf(document: EditableDocument): CourseCompleteness {
  const parsed = courseOf(document);
  if (!parsed.ok) return { holes: [], course: [] };
  const course = parsed.value;
  const numbers = holeNumbers(document);
  const canopies = guessedCanopies(document, course);
  const claimed = new Set<Canopied>();
  const holes = numbers.map((number): HoleCompleteness => {
    const hole = course.holes.find((each) => each.number === number);
    if (hole === undefined) return { hole: number, missing: [noLine(number)], lengths: [] };
    const near = canopies.filter(({ holes }) => holes.has(number));
    for (const canopy of near) claimed.add(canopy);
    const lengths = teeLengths(document, hole);
    return {
      hole: number,
      missing: [...ofHole(document, course, hole), ...canopyMissing(near), ...cardMissing(lengths)],
      lengths,
    };
  });
  const elsewhere = canopies.filter((canopy) => !claimed.has(canopy));
  return { holes, course: [...ofCourse(course, numbers.length), ...canopyMissing(elsewhere)] };
}

/** Does what a fix says. The others are the person's to do; asking for one of them is a fault of the program. */
export function applyFix(document: EditableDocument, fix: Fix): EditResult {
  switch (fix.how) {
    case 'write':
      return setProperties(document, fix.features, fix.values);
    case 'add':
      return addFeature(document, fix.feature);
    case 'draw':
    case 'ask':
      throw new Error(`"${inEnglish(fix.label)}" is for the person to do`);
  }
}

function noLine(hole: number): Missing {
  return {
    code: 'no-line',
    weight: 'stops',
    message: told(({ courseNotes }) => courseNotes.noLine, { hole }),
    features: [],
    fix: { how: 'draw', label: told(({ courseNotes }) => courseNotes.drawLine), kind: 'hole', hole },
  };
}

function ofHole(document: EditableDocument, course: Course, hole: Hole): Missing[] {
  const { number } = hole;
  const idAt = (featureIndex: number) => document.features[featureIndex]!.id;
  const line = idAt(hole.featureIndex);
  const missing: Missing[] = [];
  const green = greenOf(course, hole);
  if (green === undefined) {
    missing.push({
      code: 'no-green',
      weight: 'stops',
      message: told(({ courseNotes }) => courseNotes.noGreen, { hole: number }),
      features: [],
      fix: {
        how: 'draw',
        label: told(({ courseNotes }) => courseNotes.drawGreen),
        kind: 'green',
        hole: number,
      },
    });
  }
  if (hole.parAssumed) {
    const par = parForLength(polylineLengthM(hole.line));
    missing.push({
      code: 'no-par',
      weight: 'assumed',
      message: told(({ courseNotes }) => courseNotes.noPar, { hole: number, par }),
      features: [line],
      fix: {
        how: 'write',
        label: told(({ courseNotes }) => courseNotes.writePar, { par }),
        features: [line],
        values: { par },
      },
    });
  }
  if (hole.strokeIndex === undefined) {
    const used = new Set(course.holes.map(({ strokeIndex }) => strokeIndex));
    const free = Array.from({ length: MOST_STROKE_INDEX }, (_, index) => index + 1).filter(
      (index) => !used.has(index),
    );
    missing.push({
      code: 'no-stroke-index',
      weight: 'assumed',
      message: told(({ courseNotes }) => courseNotes.noIndex, { hole: number }),
      features: [line],
      fix: {
        how: 'ask',
        label: told(({ courseNotes }) => courseNotes.enterIndex),
        features: [line],
        property: 'handicap',
        choices: free,
      },
    });
  }
  if (!course.areas.some(({ kind, hole: of }) => kind === 'tee' && of === number)) {
    missing.push({
      code: 'no-tee-area',
      weight: 'assumed',
      message: told(({ courseNotes }) => courseNotes.noTee, { hole: number }),
      features: [],
      fix: { how: 'draw', label: told(({ courseNotes }) => courseNotes.drawTee), kind: 'tee', hole: number },
    });
  }
  if (hole.tees.every(({ featureIndex }) => featureIndex === undefined)) {
    missing.push({
      code: 'no-tee-marker',
      weight: 'assumed',
      message: told(({ courseNotes }) => courseNotes.noMarker, { hole: number }),
      features: [line],
      fix: {
        how: 'add',
        label: told(({ courseNotes }) => courseNotes.putMarker),
        feature: markerAt('tee-marker', number, 'Tee', hole.line[0]!),
      },
    });
  }
  if (hole.positions.every(({ featureIndex }) => featureIndex === undefined)) {
    missing.push({
      code: 'no-hole-position',
      weight: 'assumed',
      message: told(({ courseNotes }) => courseNotes.noPosition, {
        hole: number,
        taken:
          green === undefined
            ? told(({ courseNotes }) => courseNotes.endOfLine)
            : told(({ courseNotes }) => courseNotes.middleOfGreen),
      }),
      features: green === undefined ? [line] : [idAt(green.featureIndex)],
      fix: {
        how: 'add',
        label:
          green === undefined
            ? told(({ courseNotes }) => courseNotes.putAtEnd)
            : told(({ courseNotes }) => courseNotes.putInMiddle),
        feature: markerAt(
          'hole-position',
          number,
          'Middle',
          green === undefined ? hole.line.at(-1)! : middleOf(green.rings),
        ),
      },
    });
  }
  return missing;
}

function markerAt(kind: 'tee-marker' | 'hole-position', hole: number, name: string, at: LonLat): NewFeature {
  const [lon, lat] = filedPlace(at);
  return { kind, hole, properties: { name }, geometry: { type: 'Point', coordinates: [lon, lat] } };
}

function ofCourse(course: Course, holes: number): Missing[] {
  const missing: Missing[] = [];
  if (holes === 0) {
    missing.push({
      code: 'no-holes',
      weight: 'stops',
      message: told(({ courseNotes }) => courseNotes.noHoles),
      features: [],
      fix: { how: 'draw', label: told(({ courseNotes }) => courseNotes.drawFirst), kind: 'hole', hole: 1 },
    });
  }
  if (course.levels.length === 0) {
    missing.push({
      code: 'no-heights',
      weight: 'assumed',
      message: told(({ courseNotes }) => courseNotes.noHeights),
      features: [],
      fix: { how: 'draw', label: told(({ courseNotes }) => courseNotes.drawLevel), kind: 'ground-level' },
    });
  }
  return missing;
}

function cardMissing(lengths: readonly TeeLength[]): Missing[] {
  return lengths.flatMap(({ tee, feature, lengthM, cardLengthM, differenceM }): Missing[] => {
    if (feature === undefined || cardLengthM === undefined || differenceM === undefined) return [];
    if (Math.abs(differenceM) <= Math.max(CARD_TOLERANCE_M, CARD_TOLERANCE_SHARE * cardLengthM)) return [];
    const metres = Math.abs(differenceM).toFixed(0);
    const than =
      differenceM > 0
        ? told(({ courseNotes }) => courseNotes.longer, { metres })
        : told(({ courseNotes }) => courseNotes.shorter, { metres });
    return [
      {
        code: 'card-length-differs',
        weight: 'assumed',
        message: told(({ courseNotes }) => courseNotes.cardDiffers, {
          tee,
          length: lengthM.toFixed(0),
          than,
          card: cardLengthM.toFixed(0),
        }),
        features: [feature],
        fix: {
          how: 'ask',
          label: told(({ courseNotes }) => courseNotes.correctCard),
          features: [feature],
          property: 'card_length_m',
        },
      },
    ];
  });
}
