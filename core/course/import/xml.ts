/**
 * XML read as a stream of elements, without a DOM. A document type declaration is refused, so that no entity of a
 * file's own making is ever expanded; depth and counts are bounded.
 */

import { SaxesParser } from 'saxes';
import { type Said, sayIn, told, toldFault } from '../../words/told.ts';
import { type Fault, type Result, refuse, succeed } from '../../result.ts';

const MOST_DEPTH = 32;
const MOST_ELEMENTS = 4_000_000;

export interface XmlHandlers {
  /** Name as written, prefix included; attributes in full. */
  readonly open: (name: string, attributes: Readonly<Record<string, string>>, depth: number) => void;
  /** Text between the element's children and its own, put together; blank text is not told. */
  readonly text?: (text: string) => void;
  readonly close?: (name: string, depth: number) => void;
}

/** Thrown inside the parser to leave it at once; never leaves this file. */
class Halt extends Error {
  constructor(
    readonly code: string,
    readonly said: Said,
  ) {
    super(sayIn(said));
  }
}

/** Calls the handlers in the order of the text. `format` names what was expected, for messages. */
export function readXml(text: string, format: string, handlers: XmlHandlers): Result<null, readonly Fault[]> {
  const parser = new SaxesParser({ xmlns: false, position: true });
  let depth = 0;
  let elements = 0;
  parser.on('error', (error) => {
    // saxes writes line and column in front; they are told apart from the words here
    throw new Halt('not-xml', error.message.replace(/^\d+:\d+: /, '').replace(/\.$/, ''));
  });
  parser.on('doctype', () => {
    throw new Halt(
      'xml-doctype',
      told(({ courseImport }) => courseImport.faults.doctype),
    );
  });
  parser.on('opentag', ({ name, attributes }) => {
    depth++;
    elements++;
    if (depth > MOST_DEPTH)
      throw new Halt(
        'xml-too-deep',
        told(({ courseImport }) => courseImport.faults.deepXml, { most: MOST_DEPTH }),
      );
    if (elements > MOST_ELEMENTS)
      throw new Halt(
        'xml-too-large',
        told(({ courseImport }) => courseImport.faults.largeXml, { most: MOST_ELEMENTS }),
      );
    handlers.open(name, attributes, depth);
  });
  const tellText = (chunk: string) => {
    if (handlers.text !== undefined && chunk.trim() !== '') handlers.text(chunk);
  };
  parser.on('text', tellText);
  parser.on('cdata', tellText);
  parser.on('closetag', ({ name }) => {
    handlers.close?.(name, depth);
    depth--;
  });
  try {
    parser.write(text).close();
  } catch (error) {
    if (!(error instanceof Halt)) throw error;
    return refuse([
      toldFault({
        severity: 'error',
        code: error.code,
        where: told(({ courseReading }) => courseReading.json.where, {
          line: parser.line,
          column: parser.column + 1,
        }),
        message: told(({ courseImport }) => courseImport.faults.notXml, { format, why: error.said }),
      }),
    ]);
  }
  return succeed(null);
}
