/** The page's own address under Electron: a scheme of the program's own, never `file:`. */

export const SCHEME = 'holewright';
export const PAGE_HOST = 'app';
export const PAGE_ADDRESS = `${SCHEME}://${PAGE_HOST}/`;

/** Whether an address is the program's page, by its parsed scheme and host. */
export function isPageAddress(address: string): boolean {
  let url: URL;
  try {
    url = new URL(address);
  } catch {
    return false;
  }
  return (
    url.protocol === `${SCHEME}:` && url.host === PAGE_HOST && url.username === '' && url.password === ''
  );
}
