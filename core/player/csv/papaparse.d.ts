/** The part of papaparse that is in use. Its own types pull in those of Node and of the DOM, which core does without. */
declare module 'papaparse' {
  export interface ParseFault {
    readonly type: string;
    readonly code: string;
    readonly message: string;
    readonly row?: number;
  }

  export interface ParseAnswer {
    readonly data: string[][];
    readonly errors: readonly ParseFault[];
  }

  export interface ParseSettings {
    readonly delimiter: string;
    readonly quoteChar?: string;
    readonly newline?: string;
    readonly skipEmptyLines?: boolean | 'greedy';
    readonly preview?: number;
  }

  export interface UnparseSettings {
    readonly delimiter?: string;
    readonly newline?: string;
    readonly escapeFormulae?: boolean;
  }

  const Papa: {
    parse(text: string, settings: ParseSettings): ParseAnswer;
    unparse(
      table: {
        readonly fields: readonly string[];
        readonly data: readonly (readonly (string | number)[])[];
      },
      settings?: UnparseSettings,
    ): string;
  };
  export default Papa;
}
