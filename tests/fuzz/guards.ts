/** What must hold after a file has been read or shown, whatever was in it. */

import { SaxesParser } from 'saxes';
import { MARK } from './mutate.ts';

const BEFORE = ownNames();

function ownNames(): string {
  return [Object.prototype, Array.prototype, String.prototype, Function.prototype, Map.prototype]
    .map((prototype) => Reflect.ownKeys(prototype).map(String).join())
    .join('|');
}

/** Throws where something has written into the prototypes that all objects share. */
export function demandCleanPrototypes(): void {
  if (({} as Record<string, unknown>)['polluted'] !== undefined || ownNames() !== BEFORE) {
    Reflect.deleteProperty(Object.prototype, 'polluted');
    throw new Error('a prototype that all objects share was changed');
  }
}

const SVG_ELEMENTS: ReadonlySet<string> = new Set([
  ...['svg', 'g', 'path', 'rect', 'circle', 'line', 'text', 'tspan', 'title', 'desc', 'defs', 'pattern'],
  ...['clipPath', 'polyline', 'polygon', 'style', 'use'],
]);

/** Throws unless the text is well-formed SVG with drawing elements alone, and words of the file in its texts alone. */
export function demandPlainSvg(svg: string): void {
  const parser = new SaxesParser({ xmlns: false });
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    if (!SVG_ELEMENTS.has(name)) throw new Error(`an element <${name}> in the drawing`);
    for (const [attribute, value] of Object.entries(attributes)) {
      if (/^on/iu.test(attribute)) throw new Error(`an event attribute ${attribute} in the drawing`);
      if (/(?:javascript|data|https?):/iu.test(value) && !attribute.startsWith('xmlns'))
        throw new Error(`an address in the attribute ${attribute} of the drawing`);
      if (name === 'style' || (attribute === 'style' && value.includes(MARK)))
        throw new Error('words of the file in a style of the drawing');
    }
  });
  parser.write(svg).close();
}

/** What spreadsheets take for the beginning of a formula, in its wide forms too. */
const FORMULA = /^[\s\u00a0]*[=+\-@|\uff1d\uff0b\uff0d\uff20]/u;
const PLAIN_NUMBER = /^-?\d+(\.\d+)?(e[+-]?\d+)?$/iu;

/** Throws where a cell would be worked out, whichever separator the spreadsheet of the reader's country goes by. */
export function demandNoFormulas(csv: string): void {
  for (const separator of [',', ';', '\t']) {
    for (const cell of cellsOf(csv, separator)) {
      if (FORMULA.test(cell) && !PLAIN_NUMBER.test(cell.trim()))
        throw new Error(
          `a cell that a spreadsheet works out, split at ${JSON.stringify(separator)}: ${JSON.stringify(cell.slice(0, 80))}`,
        );
    }
  }
}

/** Cells as RFC 4180 has them, whichever separator; a quote within an unquoted cell is a letter. */
function cellsOf(csv: string, separator: string): string[] {
  const cells: string[] = [];
  let cell = '';
  let isQuoted = false;
  let isBegun = false;
  for (let i = 0; i < csv.length; i++) {
    const char = csv[i]!;
    if (isQuoted) {
      if (char === '"' && csv[i + 1] === '"') cell += csv[++i]!;
      else if (char === '"') isQuoted = false;
      else cell += char;
    } else if (char === '"' && !isBegun) {
      isQuoted = true;
      isBegun = true;
    } else if (char === separator || char === '\n' || char === '\r') {
      cells.push(cell);
      cell = '';
      isBegun = false;
    } else {
      cell += char;
      isBegun = true;
    }
  }
  cells.push(cell);
  return cells;
}

/** Throws unless it is a list of faults, or one, in words for a person. */
export function demandFaults(error: unknown): void {
  const faults: readonly unknown[] = Array.isArray(error) ? error : [error];
  if (faults.length === 0) throw new Error('refused without a reason');
  for (const fault of faults) {
    const message = typeof fault === 'string' ? fault : (fault as { message?: unknown } | null)?.message;
    if (typeof message !== 'string' || message === '') throw new Error('refused without words');
    if (message.length > 4000) throw new Error(`a message of ${message.length} characters`);
  }
}
