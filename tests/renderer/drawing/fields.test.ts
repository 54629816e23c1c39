import { describe, expect, it } from 'vitest';

import { openDocumentText } from '../../../core/course/document.ts';
import { setProperties } from '../../../core/course/edits/set-properties.ts';
import { tell, told } from '../../../core/words/told.ts';
import { wordsInUnits } from '../../../core/words/lengths.ts';
import { wordsIn } from '../../../core/words/words.ts';
import { asTyped, fieldsOf, shownValue, typedValue } from '../../../renderer/drawing/fields.ts';

const [english, german] = [wordsIn('en'), wordsIn('de')];
const fieldOf = (key: string, units: 'yards' | 'metres', words = english) =>
  fieldsOf('tree', units, words).find((field) => field.key === key)!;

describe('a value that is refused', () => {
  const refused = (typed: string, units: 'yards' | 'metres', words = english): string => {
    const field = fieldOf('height', units, words);
    const opened = openDocumentText(
      JSON.stringify({
        type: 'FeatureCollection',
        holewright: { formatVersion: 1, courseName: 'Larkfield' },
        features: [
          {
            type: 'Feature',
            id: 'oak',
            properties: { natural: 'tree' },
            geometry: { type: 'Point', coordinates: [4, 52] },
          },
        ],
      }),
    );
    if (!opened.ok) throw new Error('the document does not open');
    const { document } = opened.value;
    const id = document.features[0]!.id;
    const made = asTyped(
      setProperties(document, [id], { height: typedValue(field, typed, units) }),
      field,
      typed,
      units,
    );
    if (made.ok) throw new Error('taken');
    return tell(made.error.told!, words);
  };

  it('is told by the field’s name, as typed, with the bounds in the field’s unit', () => {
    expect(refused('1000', 'yards')).toBe('"Height" cannot be 1000 ft: write a number from 0 to 656 ft.');
    expect(refused('1000', 'yards', german)).toBe(
      '„Höhe“ kann nicht 1000 ft sein: eine Zahl von 0 bis 656 ft eintragen.',
    );
    expect(refused('300', 'metres')).toContain('"Height" cannot be 300 m: write metres from 0 to 200');
    expect(refused('tall', 'yards')).toContain('"Height" cannot be "tall": write a number from 0 to 656 ft');
  });
});

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
