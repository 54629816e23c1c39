/** The longest text that an import reads. */

import type { Fault } from '../../result.ts';
import { MOST_CHARACTERS } from '../json-text.ts';

export function textOverLimit(text: string): Fault | undefined {
  if (text.length <= MOST_CHARACTERS) return undefined;
  const message = `It holds ${text.length} characters; at most ${MOST_CHARACTERS} are read. Save a smaller area.`;
  return { severity: 'error', code: 'file-too-large', where: 'file', message };
}
