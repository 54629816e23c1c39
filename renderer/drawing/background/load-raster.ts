/** Opens a background: reads the attachment beside the course, or makes ready to ask for tiles. */

import { transfer } from 'comlink';
import { watchedDesk } from '../../workers/watched-desk.ts';
import { PMTiles, TileType } from 'pmtiles';
import type { Attachment, Host, TileSource } from '../../../electron/contract/host.ts';
import { refuse, type Result, succeed } from '../../../core/result.ts';
import type { Background } from './background.ts';
import { inflateWithin } from './bounded-inflate.ts';
import type { GeotiffApi } from './geotiff-worker.ts';
import { MOST_PICTURE_PIXELS, MOST_TILE_PIXELS, pictureSize } from './picture-size.ts';
import type { Raster } from './raster.ts';
import type { TileAddress } from './tile-grid.ts';

const PART_BYTES = 8 * 1024 * 1024;
const MOST_PICTURE_BYTES = 300 * 1024 * 1024;
const MOST_ZOOM = 22;

export interface RasterMeans {
  readonly host: Host;
  readonly token: string;
  readonly sources: readonly TileSource[];
}

/** In words why it cannot be shown, and what to do. */
export async function loadRaster(
  means: RasterMeans,
  background: Background,
): Promise<Result<Raster, string>> {
  if (background.kind === 'address') return addressRaster(means.sources, background.source);
  const found = await findAttachment(means, background.attachment);
  if (!found.ok) return found;
  switch (background.kind) {
    case 'picture':
      return pictureRaster(means.host, found.value);
    case 'geotiff':
      return geotiffRaster(means.host, found.value);
    case 'pmtiles':
      return pmtilesRaster(means.host, found.value);
    case 'mbtiles':
      return mbtilesRaster(means.host, found.value);
  }
}

async function findAttachment(
  { host, token }: RasterMeans,
  name: string,
): Promise<Result<Attachment, string>> {
  const answer = await host.listAttachments(token);
  if (!answer.ok) return refuse(answer.message);
  const found = answer.value.find((attachment) => attachment.name === name);
  return found === undefined
    ? refuse(`${name} is no longer beside the course. Bring it in again, or choose another background.`)
    : succeed(found);
}

async function readWhole(
  host: Host,
  { token, bytes, name }: Attachment,
): Promise<Result<ArrayBuffer, string>> {
  if (bytes > MOST_PICTURE_BYTES) {
    return refuse(
      `${name} is larger than ${MOST_PICTURE_BYTES / 1024 / 1024} MiB. Cut it down to the course, or make PMTiles of it.`,
    );
  }
  const whole = new Uint8Array(bytes);
  for (let offset = 0; offset < bytes; ) {
    const answer = await host.readAttachment(token, offset, Math.min(PART_BYTES, bytes - offset));
    if (!answer.ok) return refuse(answer.message);
    if (answer.value.byteLength === 0) return refuse(`${name} is shorter than it was. Bring it in again.`);
    whole.set(new Uint8Array(answer.value), offset);
    offset += answer.value.byteLength;
  }
  return succeed(whole.buffer);
}

async function pictureRaster(host: Host, attachment: Attachment): Promise<Result<Raster, string>> {
  const bytes = await readWhole(host, attachment);
  if (!bytes.ok) return bytes;
  const size = pictureSize(new Uint8Array(bytes.value));
  if (size !== null && size.width * size.height > MOST_PICTURE_PIXELS) {
    return refuse(
      `${attachment.name} has ${size.width} × ${size.height} pixels; at most ${MOST_PICTURE_PIXELS / 1e6} million are shown. Make it smaller, or make PMTiles of it.`,
    );
  }
  try {
    const bitmap = await createImageBitmap(new Blob([bytes.value], { type: attachment.mediaType }));
    return succeed({ how: 'picture', bitmap, mesh: null });
  } catch {
    return refuse(`${attachment.name} is no picture that can be shown. Save it as PNG or JPEG.`);
  }
}

async function geotiffRaster(host: Host, attachment: Attachment): Promise<Result<Raster, string>> {
  const bytes = await readWhole(host, attachment);
  if (!bytes.ok) return bytes;
  const worker = new Worker(new URL('./geotiff-worker.ts', import.meta.url), { type: 'module' });
  try {
    const { desk } = watchedDesk<GeotiffApi>(worker, () => undefined);
    const answer = await desk.read(transfer(bytes.value, [bytes.value]));
    return answer.ok ? succeed({ how: 'picture', ...answer.value }) : answer;
  } catch {
    return refuse(
      `Reading ${attachment.name} broke off, most likely because it takes more memory than there is. Make it smaller, or make PMTiles of it.`,
    );
  } finally {
    worker.terminate();
  }
}

const PICTURE_TYPES: readonly TileType[] = [TileType.Png, TileType.Jpeg, TileType.Webp, TileType.Avif];

async function pmtilesRaster(host: Host, { token, name }: Attachment): Promise<Result<Raster, string>> {
  const source = {
    getKey: () => token,
    getBytes: async (offset: number, length: number) => {
      const answer = await host.readAttachment(token, offset, length);
      if (!answer.ok) throw new Error(answer.message);
      return { data: answer.value };
    },
  };
  const archive = new PMTiles(source, undefined, inflateWithin);
  try {
    const header = await archive.getHeader();
    if (!PICTURE_TYPES.includes(header.tileType)) {
      return refuse(
        `${name} holds no pictures but shapes. Make PMTiles of aerial pictures (PNG, JPEG or WebP).`,
      );
    }
    const meta: unknown = await archive.getMetadata();
    const attribution =
      typeof meta === 'object' &&
      meta !== null &&
      'attribution' in meta &&
      typeof meta.attribution === 'string'
        ? meta.attribution
        : null;
    return succeed({
      how: 'tiles',
      leastZoom: header.minZoom,
      mostZoom: header.maxZoom,
      attribution,
      tile: async ({ zoom, x, y }) => {
        const tile = await archive.getZxy(zoom, x, y);
        return tile === undefined ? null : tilePicture(tile.data);
      },
    });
  } catch (error) {
    return refuse(
      `${name} cannot be read as PMTiles: ${error instanceof Error ? error.message : 'damaged'}.`,
    );
  }
}

async function mbtilesRaster(host: Host, { token, name }: Attachment): Promise<Result<Raster, string>> {
  const info = await host.tileSetInfo(token);
  if (!info.ok) return refuse(info.message);
  const { mediaType, leastZoom, mostZoom, attribution } = info.value;
  if (!mediaType.startsWith('image/')) {
    return refuse(`${name} holds no pictures but ${mediaType}. Take MBTiles of aerial pictures.`);
  }
  return succeed({
    how: 'tiles',
    leastZoom: leastZoom ?? 0,
    mostZoom: mostZoom ?? MOST_ZOOM,
    attribution,
    tile: async ({ zoom, x, y }) => {
      const answer = await host.readTile(token, zoom, x, y);
      if (!answer.ok || answer.value === null) return null;
      return tilePicture(answer.value.bytes, answer.value.mediaType);
    },
  });
}

/** Null for a picture that is no tile: too large to be one. */
async function tilePicture(bytes: ArrayBuffer, type = ''): Promise<ImageBitmap | null> {
  const size = pictureSize(new Uint8Array(bytes));
  if (size !== null && size.width * size.height > MOST_TILE_PIXELS) return null;
  return createImageBitmap(new Blob([bytes], { type }));
}

function addressRaster(sources: readonly TileSource[], name: string): Result<Raster, string> {
  const source = sources.find((one) => one.name === name);
  if (source === undefined) {
    return refuse(
      `The tile address “${name}” is not known on this computer. Enter it, or choose another background.`,
    );
  }
  if (source.termsAcceptedOn === null) {
    return refuse(`The terms of “${name}” are not accepted on this computer, so nothing is asked of it.`);
  }
  return succeed({
    how: 'tiles',
    leastZoom: 0,
    mostZoom: source.mostZoom ?? 19,
    attribution: source.attribution,
    tile: (address) => loadImage(filled(source.address, address)),
  });
}

export function filled(address: string, { zoom, x, y }: TileAddress): string {
  return address.replace('{z}', String(zoom)).replace('{x}', String(x)).replace('{y}', String(y));
}

function loadImage(address: string): Promise<HTMLImageElement | null> {
  return new Promise((resolve) => {
    const image = new Image();
    image.referrerPolicy = 'no-referrer';
    image.addEventListener('load', () => resolve(image), { once: true });
    image.addEventListener('error', () => resolve(null), { once: true });
    image.src = address;
  });
}
