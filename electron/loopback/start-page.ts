/** The two small pages that the server writes itself. */

import { tell, type Told } from '../../core/words/told.ts';
import type { Words } from '../../core/words/words.ts';

/**
 * Shown for a moment by a start address. A redirect would not do: after a link from elsewhere the browser
 * holds back a strict cookie for the whole chain; a page of our own that moves on is the start of a new one.
 */
export function startPage({ language, refusals: { page }, system }: Words): string {
  return `<!doctype html>
<html lang="${language}">
<head><meta charset="utf-8"><title>${system.program}</title><link rel="icon" href="data:,"><meta http-equiv="refresh" content="0; url=../"></head>
<body><p>${page.opening} <a href="../">${page.goOn}</a> ${page.ifNothing}</p></body>
</html>
`;
}

/** Says why nothing is shown. `reason` is one of the program's own sentences, without markup. */
export function refusalPage(reason: Told, words: Words): string {
  const { language, refusals } = words;
  return `<!doctype html>
<html lang="${language}">
<head><meta charset="utf-8"><title>${refusals.page.notOpened}</title><link rel="icon" href="data:,"></head>
<body><h1>${refusals.page.didNotOpen}</h1><p>${tell(reason, words)}</p></body>
</html>
`;
}
