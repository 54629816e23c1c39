/** Text on its way into a table that a spreadsheet may open (OWASP, CSV Injection): nothing of it is to be worked out. */

/** Signs that begin a formula, in their wide forms too, after blanks and quotes that spreadsheets skip. */
const AT_START = /^[\s\u00a0"]*[=+\-@|\uff1d\uff0b\uff0d\uff20]/u;
/** The same behind what a spreadsheet of another country takes for the end of a cell. */
const WITHIN = /([;\t\r\n,][\s\u00a0"]*)(?=[=+\-@|\uff1d\uff0b\uff0d\uff20])/gu;

/** With an apostrophe before each, which makes it text. */
export function withoutFormulas(text: string): string {
  const safe = AT_START.test(text) ? `'${text}` : text;
  return safe.replace(WITHIN, "$1'");
}
