import { describe, expect, it } from 'vitest';

import { tell, told } from '../../../core/words/told.ts';
import { wordsInUnits } from '../../../core/words/lengths.ts';
import { wordsIn } from '../../../core/words/words.ts';
import { fieldsOf, shownValue, typedValue } from '../../../renderer/drawing/fields.ts';

const [english, german] = [wordsIn('en'), wordsIn('de')];
const fieldOf = (key: string, units: 'yards' | 'metres', words = english) =>
  fieldsOf('tree', units, words).find((field) => field.key === key)!;

describe('the measures of a tree', () => {
  // 1 ft is 0.3048 m (international yard and pound agreement of 1959).
  it('are feet where yards are chosen, and metres in the file', () => {
    const height = fieldOf('height', 'yards');
    expect(height).toMatchObject({ unit: 'ft', standard: '32.8' });
    expect(shownValue(height, 12, 'yards')).toBe('39.4');
    expect(typedValue(height, '50', 'yards')).toBe(15.24);
    expect(typedValue(height, '49,2', 'yards')).toBe(15);
  });

  it('stay as they are in metres, and so does what is no length', () => {
    const height = fieldOf('height', 'metres');
    expect(height).toMatchObject({ unit: 'm', standard: '10' });
    expect(shownValue(height, 12.25, 'metres')).toBe('12.25');
    expect(typedValue(height, '12.25', 'metres')).toBe(12.25);
    const density = fieldOf('canopy_density_per_m', 'yards');
    expect(typedValue(density, '0.2', 'yards')).toBe(0.2);
    expect(fieldOf('canopy_base_m', 'metres', german).standard).toMatch(/^\d+(,\d)?$/u);
  });

  it('have their leaves in words, as the file’s values', () => {
    expect(fieldOf('leaf_type', 'yards', german).options).toContainEqual({
      value: 'needleleaved',
      words: 'Nadeln',
    });
  });

  it('are told in the same units where they are lacking', () => {
    const high = told(({ courseNotes }) => courseNotes.high, { metres: 12 });
    expect(tell(high, wordsInUnits(english, 'yards'))).toBe('39.4 ft high');
    expect(tell(high, wordsInUnits(german, 'yards'))).toBe('39,4 ft hoch');
    expect(tell(high, wordsInUnits(german, 'metres'))).toBe('12 m hoch');
  });
});
