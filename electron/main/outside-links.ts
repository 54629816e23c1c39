/** Links that lead out of the program: opened in the person's browser, and only to places the program itself names. */

/** Hosts of the sources and standards that the help pages cite, and of the map data's licence. */
const allowedHosts: ReadonlySet<string> = new Set([
  'www.openstreetmap.org',
  'opendatacommons.org',
  'www.rfc-editor.org',
  'datatracker.ietf.org',
  'www.w3.org',
  'doi.org',
  'arxiv.org',
  'nodejs.org',
]);

/** Whether a link may be handed to the system: https, a host of the list, no user, no port of its own. */
export function mayOpenOutside(address: string): boolean {
  let url: URL;
  try {
    url = new URL(address);
  } catch {
    return false;
  }
  return (
    url.protocol === 'https:' &&
    allowedHosts.has(url.hostname) &&
    url.port === '' &&
    url.username === '' &&
    url.password === ''
  );
}
