/**
 * The checks that every request passes before anything is done for it. A page of a foreign site can make a
 * browser send requests here, under a host name of its own that it has turned to 127.0.0.1 (DNS rebinding) or
 * with this one: the first fails on Host, the second on Origin, Sec-Fetch-Site and the missing key.
 */

import type { IncomingHttpHeaders } from 'node:http';
import { told, type Told } from '../../core/words/told.ts';
import type { Keys } from './keys.ts';

export interface Asked {
  readonly method: string;
  /** The request's target as it came. */
  readonly target: string;
  readonly headers: IncomingHttpHeaders;
}

export type Passage =
  | { readonly kind: 'start'; readonly path: string }
  /** `path` is relative to the served folder, not decoded. */
  | { readonly kind: 'inside'; readonly path: string; readonly query: string }
  | { readonly kind: 'refused'; readonly status: number; readonly reason: Told };

function refuseRequest(status: number, reason: Told): Passage {
  return { kind: 'refused', status, reason };
}

/** `authority` is `127.0.0.1:port`. */
export function passGate(asked: Asked, authority: string, keys: Keys): Passage {
  const { headers, method, target } = asked;
  if (headers.host !== authority) {
    return refuseRequest(
      421,
      told(({ refusals }) => refusals.request.otherAddress),
    );
  }
  // Absolute targets (`GET http://other/`) would bypass the Host check; other bytes have no business here.
  if (!target.startsWith('/') || target.length > 1024 || !/^[\u0021-\u007e]+$/u.test(target)) {
    return refuseRequest(
      400,
      told(({ refusals }) => refusals.request.noPath),
    );
  }
  const mark = target.indexOf('?');
  const path = mark < 0 ? target : target.slice(0, mark);
  const query = mark < 0 ? '' : target.slice(mark + 1);
  const origin = headers.origin;
  if (origin !== undefined && origin !== `http://${authority}`) {
    return refuseRequest(
      403,
      told(({ refusals }) => refusals.request.foreignPage),
    );
  }
  if (keys.isStart(path)) {
    return method === 'GET'
      ? { kind: 'start', path }
      : refuseRequest(
          405,
          told(({ refusals }) => refusals.request.startOnly),
        );
  }
  const site = headers['sec-fetch-site'];
  if (site !== undefined && site !== 'same-origin' && site !== 'none') {
    return refuseRequest(
      403,
      told(({ refusals }) => refusals.request.foreignPage),
    );
  }
  // Files to be attached and those that are taken out are put, and only there.
  const isPut =
    method === 'PUT' && (path.startsWith(`${keys.folder}api/attach/`) || path === `${keys.folder}api/export`);
  if (method !== 'GET' && method !== 'HEAD' && method !== 'POST' && !isPut) {
    return refuseRequest(
      405,
      told(({ refusals }) => refusals.request.readAndPost),
    );
  }
  if ((method === 'POST' || isPut) && origin === undefined) {
    return refuseRequest(
      403,
      told(({ refusals }) => refusals.request.noOrigin),
    );
  }
  if (!keys.holdsKey(headers.cookie)) {
    return refuseRequest(
      403,
      told(({ refusals }) => refusals.request.noKey),
    );
  }
  if (!path.startsWith(keys.folder))
    return refuseRequest(
      404,
      told(({ refusals }) => refusals.request.nothingHere),
    );
  return { kind: 'inside', path: path.slice(keys.folder.length), query };
}
