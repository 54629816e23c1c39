/** What lies under the drawing: kept in the course's own header, so that a picture stays where it was put. */

import { english } from '../../../core/words/english/english.ts';
import type { Words } from '../../../core/words/words.ts';
import * as v from 'valibot';
import type { EditableDocument } from '../../../core/course/document.ts';
import { type EditResult, makeEdit, refuseEdit } from '../../../core/course/edits/edit.ts';

/** A place recognised in the picture (pixels from its upper left corner) and on earth (degrees). */
const pinSchema = v.object({
  pixelX: v.number(),
  pixelY: v.number(),
  lon: v.pipe(v.number(), v.minValue(-180), v.maxValue(180)),
  lat: v.pipe(v.number(), v.minValue(-90), v.maxValue(90)),
});

const nameSchema = v.pipe(v.string(), v.minLength(1), v.maxLength(200));

const backgroundSchema = v.variant('kind', [
  v.object({
    kind: v.literal('picture'),
    attachment: nameSchema,
    fit: v.picklist(['turn', 'stretch']),
    pins: v.pipe(v.array(pinSchema), v.maxLength(100)),
  }),
  v.object({ kind: v.literal('geotiff'), attachment: nameSchema }),
  v.object({ kind: v.literal('pmtiles'), attachment: nameSchema }),
  v.object({ kind: v.literal('mbtiles'), attachment: nameSchema }),
  /** A tile address of the person's own, by the name that it has in the settings. */
  v.object({ kind: v.literal('address'), source: nameSchema }),
]);

export type Background = v.InferOutput<typeof backgroundSchema>;
export type PictureBackground = Extract<Background, { kind: 'picture' }>;
export type PicturePin = v.InferOutput<typeof pinSchema>;

const BACKGROUND_MEMBER = 'background';

/** Null where none is named, or none that can be read. */
export function backgroundOf({ holewright }: EditableDocument): Background | null {
  const parsed = v.safeParse(backgroundSchema, holewright[BACKGROUND_MEMBER]);
  return parsed.success ? parsed.output : null;
}

const texts = new WeakMap<EditableDocument['holewright'], string>();

/** The background as text, `null` for none: the same for as long as it stays the same, so that a view can wait for a change. */
export function backgroundText(document: EditableDocument): string {
  const known = texts.get(document.holewright);
  if (known !== undefined) return known;
  const text = JSON.stringify(backgroundOf(document));
  texts.set(document.holewright, text);
  return text;
}

export function setBackground(
  document: EditableDocument,
  background: Background | null,
  name: string,
  words: Words = english,
): EditResult {
  const old = document.holewright[BACKGROUND_MEMBER];
  if (JSON.stringify(old ?? null) === JSON.stringify(background)) {
    return refuseEdit('nothing-to-do', words.underlay.already);
  }
  const rest = Object.entries(document.holewright).filter(([key]) => key !== BACKGROUND_MEMBER);
  const header = {
    ...(Object.fromEntries(rest) as EditableDocument['holewright']),
    ...(background === null ? {} : { [BACKGROUND_MEMBER]: background }),
  };
  return makeEdit(document, name, { header });
}
