/**
 * What a file's bytes must be before the store takes or gives them: UTF-8 text of a sane size that reads as
 * the JSON object its kind calls for. Meaning beyond that is the page's business: half-drawn work must be saved too.
 */

import { createHash } from 'node:crypto';
import { told, type Told } from '../../core/words/told.ts';
import type { FileKind, HostAnswer } from '../contract/host.ts';
import { LARGEST_TEXT_BYTES } from '../contract/wire.ts';
import { good, refused } from './answer.ts';

/** Says why a text is no file of this kind, null where it is one. */
export type ContentCheck = (kind: FileKind, text: string) => Told | null;

/** SHA-256 of the bytes, hex. */
export function revisionOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/** Bytes to text; refuses what is no UTF-8 or holds a zero byte. A byte-order mark is dropped. */
export function textOf(bytes: Uint8Array, name: string): HostAnswer<string> {
  const notText = refused(
    'not-text',
    told(({ refusals }) => refusals.content.notText, { name }),
  );
  if (bytes.includes(0)) return notText;
  try {
    return good(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return notText;
  }
}

/** Text to bytes for the disk; refuses what is too large or would not come back the same. */
export function bytesOf(text: string, name: string): HostAnswer<Uint8Array> {
  // The cheap test first: a UTF-16 unit is at least one byte.
  if (text.length > LARGEST_TEXT_BYTES || Buffer.byteLength(text) > LARGEST_TEXT_BYTES) {
    return refused(
      'too-large',
      told(({ refusals }) => refusals.content.wouldBeTooLarge, { name }),
    );
  }
  if (text.includes('\u0000') || /\p{Surrogate}/u.test(text)) {
    return refused(
      'not-text',
      told(({ refusals }) => refusals.content.oddCharacters, { name }),
    );
  }
  return good(Buffer.from(text, 'utf8'));
}

/** The least that every file of a kind is: a JSON object, and for a course a GeoJSON FeatureCollection (RFC 7946). */
export const readsAsItsKind: ContentCheck = (kind, text) => {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    const reason = error instanceof Error ? error.message : told(({ refusals }) => refusals.content.cutOff);
    return told(({ refusals }) => refusals.content.incomplete, { reason });
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return told(({ refusals }) => refusals.content.noObject);
  if (kind !== 'course') return null;
  if (!('type' in value) || value.type !== 'FeatureCollection')
    return told(({ refusals }) => refusals.content.noCollection);
  if (!('features' in value) || !Array.isArray(value.features))
    return told(({ refusals }) => refusals.content.noFeatures);
  return null;
};
