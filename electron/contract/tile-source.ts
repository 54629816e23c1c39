/**
 * Tile addresses of the person's own: what one must look like, and the origin that the page may then ask.
 * The origin goes into the content policy, so nothing but a plain https host name comes out of here.
 */

import * as v from 'valibot';
import type { TileSource } from './host.ts';

export const MOST_TILE_SOURCES = 20;
const LONGEST_ADDRESS = 500;

const places = ['{z}', '{x}', '{y}'] as const;
// Labels of letters, digits and hyphens, the last one beginning with a letter: no number addresses, no single names.
const hostName = /^(?:[a-z0-9](?:[a-z0-9-]{0,61}[a-z0-9])?\.)+[a-z][a-z0-9-]{0,61}[a-z0-9]$/u;
const plainOrigin = /^https:\/\/[a-z0-9.-]+(?::\d{1,5})?$/u;

/** `https://host` or `https://host:port` of a tile address, null where the address is not one. */
export function tileOrigin(address: string): string | null {
  if (address.length > LONGEST_ADDRESS || !/^https:\/\/[\u0021-\u007e]+$/u.test(address)) return null;
  if (/[\\"'<>^`|;,]/u.test(address)) return null;
  let filled = address;
  for (const place of places) {
    if (address.split(place).length !== 2) return null;
    filled = filled.replace(place, '1');
  }
  if (/[{}#]/u.test(filled)) return null;
  let url: URL;
  try {
    url = new URL(filled);
  } catch {
    return null;
  }
  if (url.protocol !== 'https:' || url.username !== '' || url.password !== '') return null;
  if (!hostName.test(url.hostname) || url.hostname.length > 253) return null;
  // The places belong into path or query; in the host they would stand for many origins.
  const host = address.slice('https://'.length).split(/[/?]/u, 1)[0] ?? '';
  if (host.toLowerCase() !== url.host && host.toLowerCase() !== `${url.host}:443`) return null;
  return plainOrigin.test(url.origin) ? url.origin : null;
}

/** Origins that the page may ask: those of sources whose terms the person has accepted, each once. */
export function acceptedOrigins(sources: readonly TileSource[]): readonly string[] {
  const origins = sources
    .filter(({ termsAcceptedOn }) => termsAcceptedOn !== null)
    .map(({ address }) => tileOrigin(address))
    .filter((origin) => origin !== null);
  return [...new Set(origins)].sort();
}

const words = (most: number) => v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(most));

/** A day of the calendar, `2026-01-31`. */
function isDay(text: string): boolean {
  const time = Date.parse(`${text}T00:00:00Z`);
  return Number.isFinite(time) && new Date(time).toISOString().startsWith(text);
}

export const tileSourceSchema = v.strictObject({
  name: words(80),
  address: v.pipe(
    v.string(),
    v.check((address) => tileOrigin(address) !== null, 'no https tile address'),
  ),
  attribution: words(300),
  termsAcceptedOn: v.nullable(v.pipe(v.string(), v.isoDate(), v.check(isDay, 'no day of the calendar'))),
  mostZoom: v.exactOptional(v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(24))),
}) satisfies v.GenericSchema<unknown, TileSource>;
