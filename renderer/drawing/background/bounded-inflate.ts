/** Unpacks gzip up to a limit: a tile archive from anywhere may hold little that unpacks to more than the memory holds. */

import { Compression } from 'pmtiles';

/** Largest directory, note or tile of an archive, bytes unpacked. */
export const MOST_UNPACKED_BYTES = 32 * 1024 * 1024;

/** For `PMTiles`: throws for what unpacks to more, and for compressions that browsers do not know. */
export async function inflateWithin(packed: ArrayBuffer, compression: Compression): Promise<ArrayBuffer> {
  if (compression === Compression.None || compression === Compression.Unknown) return packed;
  if (compression !== Compression.Gzip) throw new Error('its compression is not known; pack it with gzip');
  const reader = new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip')).getReader();
  const parts: Uint8Array[] = [];
  let bytes = 0;
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    bytes += part.value.length;
    if (bytes > MOST_UNPACKED_BYTES) {
      await reader.cancel();
      throw new Error(`a part of it unpacks to more than ${MOST_UNPACKED_BYTES / 1024 / 1024} MiB`);
    }
    parts.push(part.value);
  }
  const whole = new Uint8Array(bytes);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole.buffer;
}
