/** Opens a background: reads the attachment beside the course, or makes ready to ask for tiles. */

import { tell } from '../../../core/words/told.ts';
import type { Words } from '../../../core/words/words.ts';
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
  readonly words: Words;
}

/** In words why it cannot be shown, and what to do. */
export async function loadRaster(
  means: RasterMeans,
  background: Background,
): Promise<Result<Raster, string>> {
  if (background.kind === 'address') return addressRaster(means, background.source);
  const found = await findAttachment(means, background.attachment);
  if (!found.ok) return found;
  switch (background.kind) {
    case 'picture':
      return pictureRaster(means, found.value);
    case 'geotiff':
      return geotiffRaster(means, found.value);
    case 'pmtiles':
      return pmtilesRaster(means, found.value);
    case 'mbtiles':
      return mbtilesRaster(means, found.value);
  }
}

async function findAttachment(
  { host, token, words }: RasterMeans,
  name: string,
): Promise<Result<Attachment, string>> {
  const answer = await host.listAttachments(token);
  if (!answer.ok) return refuse(answer.message);
  const found = answer.value.find((attachment) => attachment.name === name);
  return found === undefined ? refuse(words.underlay.gone({ name })) : succeed(found);
}

async function readWhole(
  { host, words }: RasterMeans,
  { token, bytes, name }: Attachment,
): Promise<Result<ArrayBuffer, string>> {
  if (bytes > MOST_PICTURE_BYTES) {
    return refuse(words.underlay.tooLarge({ name, most: MOST_PICTURE_BYTES / 1024 / 1024 }));
  }
  const whole = new Uint8Array(bytes);
  for (let offset = 0; offset < bytes; ) {
    const answer = await host.readAttachment(token, offset, Math.min(PART_BYTES, bytes - offset));
    if (!answer.ok) return refuse(answer.message);
    if (answer.value.byteLength === 0) return refuse(words.underlay.shorter({ name }));
    whole.set(new Uint8Array(answer.value), offset);
    offset += answer.value.byteLength;
  }
  return succeed(whole.buffer);
}

async function pictureRaster(means: RasterMeans, attachment: Attachment): Promise<Result<Raster, string>> {
  const bytes = await readWhole(means, attachment);
  if (!bytes.ok) return bytes;
  const size = pictureSize(new Uint8Array(bytes.value));
  if (size !== null && size.width * size.height > MOST_PICTURE_PIXELS) {
    return refuse(
      means.words.underlay.pixels({
        name: attachment.name,
        width: size.width,
        height: size.height,
        most: MOST_PICTURE_PIXELS / 1e6,
      }),
    );
  }
  try {
    const bitmap = await createImageBitmap(new Blob([bytes.value], { type: attachment.mediaType }));
    return succeed({ how: 'picture', bitmap, mesh: null });
  } catch {
    return refuse(means.words.underlay.noPicture({ name: attachment.name }));
  }
}

async function geotiffRaster(means: RasterMeans, attachment: Attachment): Promise<Result<Raster, string>> {
  const bytes = await readWhole(means, attachment);
  if (!bytes.ok) return bytes;
  const worker = new Worker(new URL('./geotiff-worker.ts', import.meta.url), { type: 'module' });
  try {
    const { desk } = watchedDesk<GeotiffApi>(worker, () => undefined);
    const answer = await desk.read(transfer(bytes.value, [bytes.value]));
    return answer.ok ? succeed({ how: 'picture', ...answer.value }) : refuse(tell(answer.error, means.words));
  } catch {
    return refuse(means.words.underlay.brokeOff({ name: attachment.name }));
  } finally {
    worker.terminate();
  }
}

const PICTURE_TYPES: readonly TileType[] = [TileType.Png, TileType.Jpeg, TileType.Webp, TileType.Avif];

async function pmtilesRaster(
  { host, words }: RasterMeans,
  { token, name }: Attachment,
): Promise<Result<Raster, string>> {
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
      return refuse(words.underlay.shapesOnly({ name }));
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
      words.underlay.noPmtiles({ name, why: error instanceof Error ? error.message : 'damaged' }),
    );
  }
}

async function mbtilesRaster(
  { host, words }: RasterMeans,
  { token, name }: Attachment,
): Promise<Result<Raster, string>> {
  const info = await host.tileSetInfo(token);
  if (!info.ok) return refuse(info.message);
  const { mediaType, leastZoom, mostZoom, attribution } = info.value;
  if (!mediaType.startsWith('image/')) {
    return refuse(words.underlay.noPictures({ name, type: mediaType }));
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

function addressRaster({ sources, words }: RasterMeans, name: string): Result<Raster, string> {
  const source = sources.find((one) => one.name === name);
  if (source === undefined) {
    return refuse(words.underlay.unknownAddress({ name }));
  }
  if (source.termsAcceptedOn === null) {
    return refuse(words.underlay.termsNotAccepted({ name }));
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
