/** The longest text that an import reads. */

import type { Fault } from '../../result.ts';
import { told, toldFault } from '../../words/told.ts';
import { MOST_CHARACTERS } from '../json-text.ts';

export function textOverLimit(text: string): Fault | undefined {
  if (text.length <= MOST_CHARACTERS) return undefined;
  const message = told(({ courseImport }) => courseImport.faults.manyCharacters, {
    count: text.length,
    most: MOST_CHARACTERS,
  });
  return toldFault({ severity: 'error', code: 'file-too-large', where: 'file', message });
}
