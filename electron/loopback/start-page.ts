/** The two small pages that the server writes itself. */

/**
 * Shown for a moment by a start address. A redirect would not do: after a link from elsewhere the browser
 * holds back a strict cookie for the whole chain; a page of our own that moves on is the start of a new one.
 */
export const startPage = `<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><title>Holewright</title><link rel="icon" href="data:,"><meta http-equiv="refresh" content="0; url=../"></head>
<body><p>Opening Holewright. <a href="../">Go on</a> if nothing happens.</p></body>
</html>
`;

/** Says why nothing is shown. `reason` is one of the program's own sentences, without markup. */
export function refusalPage(reason: string): string {
  return `<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><title>Holewright: not opened</title><link rel="icon" href="data:,"></head>
<body><h1>Holewright did not open here</h1><p>${reason}</p></body>
</html>
`;
}
