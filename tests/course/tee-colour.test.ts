/** A tee's colour is the course's own choice, the same on all holes. */

import { expect, it } from 'vitest';
import { setProperties } from '../../core/course/edits/set-properties.ts';
import { propertiesOf } from '../../core/course/document.ts';
import { markersOfTee, teeColourOf } from '../../core/course/tee-colour.ts';
import { at, point } from './builders.ts';
import { feature, must, open, withId } from './edits/edit-builders.ts';

it('is read as a hex triplet or a basic name, and nothing else', () => {
  expect(teeColourOf({ colour: '#C23A00' })).toBe('#c23a00');
  expect(teeColourOf({ colour: ' Navy ' })).toBe('#000080');
  for (const colour of ['#fff', 'url(x)', 'constructor', 7, null, undefined])
    expect(teeColourOf({ colour })).toBeUndefined();
});

it('is written on every marker of that name', () => {
  const marker = (id: string, ref: string, name: string) =>
    withId(id, point({ holewright_kind: 'tee_marker', ref, name }, at(0, 0)));
  const document = open(marker('a', '1', 'Oak'), marker('b', '2', 'Oak'), marker('c', '2', 'Ash'));
  const ids = markersOfTee(document, feature(document, 'a'));
  expect(ids).toEqual(['a', 'b']);
  const coloured = must(setProperties(document, ids, { colour: '#c23a00' })).document;
  expect(['a', 'b', 'c'].map((id) => teeColourOf(propertiesOf(feature(coloured, id))))).toEqual([
    '#c23a00',
    '#c23a00',
    undefined,
  ]);
});
