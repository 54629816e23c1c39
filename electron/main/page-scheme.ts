/** Registers the page's scheme and answers its requests from the built page's files. */

import { protocol, type Session } from 'electron';
import { type Assets, assetAt } from '../pages/assets.ts';
import { headersAllowing, pageHeaders } from '../pages/headers.ts';
import { isPageAddress, SCHEME } from './page-address.ts';

/** Must run before the app is ready. Standard and secure: an origin of its own, workers and crypto allowed. */
export function registerPageScheme(): void {
  protocol.registerSchemesAsPrivileged([
    {
      scheme: SCHEME,
      privileges: { standard: true, secure: true, supportFetchAPI: true, codeCache: true },
    },
  ]);
}

/** Serves the page in this session; `tileOrigins` are asked for with every file, so that a reload follows the settings. */
export function servePage(
  session: Session,
  assets: Assets,
  tileOrigins: () => Promise<readonly string[]> = () => Promise.resolve([]),
): void {
  session.protocol.handle(SCHEME, async (request) => answerPageRequest(assets, request, await tileOrigins()));
}

export function answerPageRequest(
  assets: Assets,
  request: Request,
  tileOrigins: readonly string[] = [],
): Response {
  if (request.method !== 'GET' && request.method !== 'HEAD') return plain(405, 'Only reading is known here.');
  if (!isPageAddress(request.url)) return plain(404, 'There is nothing at this address.');
  const asset = assetAt(assets, new URL(request.url).pathname.slice(1));
  if (asset === null) return plain(404, 'There is nothing at this address.');
  const body = request.method === 'HEAD' ? null : Buffer.from(asset.body);
  return new Response(body, {
    status: 200,
    headers: { ...headersAllowing(tileOrigins), 'content-type': asset.type },
  });
}

function plain(status: number, text: string): Response {
  return new Response(text, {
    status,
    headers: { ...pageHeaders, 'content-type': 'text/plain; charset=utf-8' },
  });
}
