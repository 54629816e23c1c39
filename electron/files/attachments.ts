/**
 * Pictures and map files that belong to a course lie beside it in `<course name>.files`. They are large, so
 * they are copied as a stream and read in parts; like courses they are known to the page by tokens only.
 */

import { createHash } from 'node:crypto';
import { dirname, join } from 'node:path';
import { told } from '../../core/words/told.ts';
import type { Attachment, Following, HostAnswer } from '../contract/host.ts';
import { errorCode, good, reasonOf, type Refusal, refused } from './answer.ts';
import {
  attachmentKind,
  attachmentKindByName,
  type KindOfAttachment,
  TELLING_BYTES,
  withoutAttachmentEnding,
} from './attachment-kinds.ts';
import type { PlainFile } from './disk.ts';
import { freeName, isSafeName, safeNameEnding } from './names.ts';
import { nameFile, sweepUnfinished, temporaryIn } from './replace.ts';
import type { FileStore, KnownFile } from './store.ts';

/** Left free on the disk by every copy, so that saving and the journal go on. */
export const KEPT_FREE_BYTES = 8 * 1024 * 1024;

/** What is copied: from a file or from the network. */
export interface AttachmentSource {
  /** As suggested by a person or their file; made safe here. */
  readonly name: string;
  readonly parts: AsyncIterable<Uint8Array>;
  readonly bytes: number;
}

export interface KnownAttachment {
  readonly attachment: Attachment;
  readonly path: string;
  /** Changes whenever the content may have. */
  readonly stamp: string;
}

export interface Attachments {
  readonly list: (course: string) => Promise<HostAnswer<readonly Attachment[]>>;
  readonly take: (
    course: string,
    source: AttachmentSource,
    following?: Following,
  ) => Promise<HostAnswer<Attachment>>;
  readonly find: (attachment: string) => Promise<HostAnswer<KnownAttachment>>;
  readonly read: (attachment: string, offset: number, length: number) => Promise<HostAnswer<Uint8Array>>;
}

export function openAttachments(
  store: FileStore,
  notice: (message: string) => void = () => undefined,
): Attachments {
  const { disk } = store;
  /** Course and place of every attachment ever listed; looked at anew before it is used. */
  const places = new Map<string, { readonly course: string; readonly name: string }>();

  const knownIn = (course: KnownFile, file: PlainFile): KnownAttachment | null => {
    const kind = attachmentKindByName(file.name);
    if (kind === null || !isSafeName(file.name)) return null;
    const token = tokenOf(course, file.name);
    places.set(token, { course: course.entry.token, name: file.name });
    const { name, bytes, modifiedAt, stamp } = file;
    return {
      attachment: { token, name, kind: kind.kind, mediaType: kind.mediaType, bytes, modifiedAt },
      path: join(folderOf(course), name),
      stamp,
    };
  };

  const allOf = async (course: KnownFile): Promise<readonly KnownAttachment[]> => {
    const folder = folderOf(course);
    try {
      await mustBeReal(store, folder);
      const files = await disk.plainFiles(folder);
      return files
        .map((file) => knownIn(course, file))
        .filter((known) => known !== null)
        .sort((a, b) => (a.attachment.name < b.attachment.name ? -1 : 1));
    } catch (error) {
      if (errorCode(error) === 'ENOENT') return [];
      throw error;
    }
  };

  const courseOf = async (token: string): Promise<HostAnswer<KnownFile>> => {
    const found = await store.find(token);
    if (!found.ok || found.value.entry.kind === 'course') return found;
    return refused(
      'unfit',
      told(({ refusals }) => refusals.attachments.noCourse, { name: found.value.entry.name }),
    );
  };

  /** Looks at the place that is remembered for a token, and through all courses where there is none. */
  const find = async (token: string): Promise<HostAnswer<KnownAttachment>> => {
    const place = places.get(token);
    const all = await store.known();
    if (!all.ok) return all;
    const courses = all.value.filter(
      ({ entry }) => entry.kind === 'course' && (place === undefined || entry.token === place.course),
    );
    try {
      for (const course of courses) {
        const found = (await allOf(course)).find(({ attachment }) => attachment.token === token);
        if (found !== undefined) return good(found);
      }
    } catch (error) {
      return store.refuse(
        error,
        told(({ refusals }) => refusals.doing.readingAllAttachments),
      );
    }
    return refused(
      'not-found',
      told(({ refusals }) => refusals.attachments.gone),
    );
  };

  const take = async (
    course: KnownFile,
    source: AttachmentSource,
    following: Following,
  ): Promise<HostAnswer<Attachment>> => {
    const folder = folderOf(course);
    const temporary = temporaryIn(folder);
    let kind: KindOfAttachment;
    try {
      await disk.makeInside(folder);
      await mustBeReal(store, folder);
      await disk.syncFolder(dirname(folder));
      await sweepUnfinished(disk, folder, Date.now());
      const free = await disk.freeBytes(folder);
      if (free !== null && source.bytes + KEPT_FREE_BYTES > free) throw coded('ENOSPC', 'too little room');
      const seen = watched(source, following);
      const written = await disk.writeNewFrom(temporary, seen.parts, source.bytes, (done) =>
        following.progress?.(done, source.bytes),
      );
      const { bytes } = await disk.look(temporary);
      if (written !== source.bytes || bytes !== source.bytes) throw coded('ECUT', 'not all of it came');
      kind = seen.kind();
      const name = await nameIn(folder, temporary, safeNameFor(kind, source.name));
      await disk.syncFolder(folder).catch((error: unknown) => {
        notice(
          `${name} is copied, but a power cut in the next seconds might undo that (${reasonOf(error)}).`,
        );
      });
      const known = knownIn(course, await disk.look(join(folder, name)));
      if (known === null) throw coded('ENOENT', 'the copy has gone');
      return good(known.attachment);
    } catch (error) {
      await disk.remove(temporary).catch(() => undefined);
      await disk.removeEmptyFolder(folder).catch(() => undefined);
      return (
        refusedCopy(error, source.name) ??
        store.refuse(
          error,
          told(({ refusals }) => refusals.doing.copyingBeside, {
            name: shown(source.name),
            course: course.entry.name,
          }),
        )
      );
    }
  };

  /** Gives the finished copy a free name near `wanted`. */
  const nameIn = async (folder: string, temporary: string, wanted: string): Promise<string> => {
    const taken = (await disk.plainFiles(folder)).map(({ name }) => name);
    for (;;) {
      const name = freeName(wanted, taken);
      try {
        await nameFile(disk, temporary, join(folder, name));
        return name;
      } catch (error) {
        if (errorCode(error) !== 'EEXIST' || taken.length > 10_000) throw error;
        taken.push(name);
      }
    }
  };

  return {
    list: async (token) => {
      const course = await courseOf(token);
      if (!course.ok) return course;
      try {
        return good((await allOf(course.value)).map(({ attachment }) => attachment));
      } catch (error) {
        return store.refuse(
          error,
          told(({ refusals }) => refusals.doing.readingAttachments, { name: course.value.entry.name }),
        );
      }
    },
    take: async (token, source, following = {}) => {
      const course = await courseOf(token);
      if (!course.ok) return course;
      const { name, readOnly } = course.value.entry;
      if (readOnly) {
        return refused(
          'read-only',
          told(({ refusals }) => refusals.attachments.isDemo, { name }),
        );
      }
      return take(course.value, source, following);
    },
    find,
    read: async (token, offset, length) => {
      const found = await find(token);
      if (!found.ok) return found;
      try {
        return good(await disk.readPart(found.value.path, offset, length));
      } catch (error) {
        return store.refuse(
          error,
          told(({ refusals }) => refusals.doing.reading, { name: found.value.attachment.name }),
        );
      }
    },
  };
}

function folderOf(course: KnownFile): string {
  const stem = course.entry.name.replace(/\.(?:geojson|json)$/iu, '');
  return join(dirname(course.path), `${stem}.files`);
}

/** Same attachment, same token, also after a restart. */
function tokenOf(course: KnownFile, name: string): string {
  return createHash('sha256')
    .update(`attachment\u0000${course.entry.token}\u0000${name}`)
    .digest('base64url')
    .slice(0, 32);
}

async function mustBeReal({ disk }: FileStore, folder: string): Promise<void> {
  if ((await disk.realPath(folder)) !== folder) throw coded('ELOOP', 'the folder is a link');
}

function coded(code: string, message: string): Error {
  return Object.assign(new Error(message), { code });
}

/** Passes the parts on once the first bytes have told a kind that may come in, and stops when told to. */
function watched(
  source: AttachmentSource,
  { signal }: Following,
): { readonly parts: AsyncIterable<Uint8Array>; readonly kind: () => KindOfAttachment } {
  let kind: KindOfAttachment | null = null;

  const tell = (first: Uint8Array): void => {
    kind = attachmentKind(first);
    if (kind === null) throw coded('EUNFIT', 'none of our kinds');
    if (source.bytes > kind.mostBytes) throw coded('EVAST', `more than ${kind.mostBytes} bytes`);
  };

  async function* pass(): AsyncGenerator<Uint8Array> {
    let first: Uint8Array = new Uint8Array();
    for await (const part of source.parts) {
      if (signal?.aborted === true) throw coded('ESTOPPED', 'stopped by the person');
      if (kind === null) {
        first = Buffer.concat([first, part]);
        if (first.byteLength < TELLING_BYTES) continue;
        tell(first);
        yield first;
      } else yield part;
    }
    if (kind === null) tell(first);
  }

  return {
    parts: pass(),
    kind: () => {
      if (kind === null) throw coded('EUNFIT', 'nothing came');
      return kind;
    },
  };
}

function safeNameFor({ ending }: KindOfAttachment, name: string): string {
  return safeNameEnding(ending, withoutAttachmentEnding(name), 'attachment');
}

/** A person's file name as it may stand in a sentence. */
function shown(name: string): string {
  return safeNameEnding('', name, '…');
}

function refusedCopy(error: unknown, source: string): Refusal | null {
  const file = { name: shown(source) };
  switch (errorCode(error)) {
    case 'EUNFIT':
      return refused(
        'unfit',
        told(({ refusals }) => refusals.attachments.unfit, file),
      );
    case 'EVAST':
      return refused(
        'too-large',
        told(({ refusals }) => refusals.attachments.tooLarge, file),
      );
    case 'ENOSPC':
    case 'EDQUOT':
      return refused(
        'disk-full',
        told(({ refusals }) => refusals.attachments.noRoom, file),
      );
    case 'ECUT':
    case 'ETOOLARGE':
    case 'ERR_STREAM_PREMATURE_CLOSE':
    case 'ECONNRESET':
      return refused(
        'unknown',
        told(({ refusals }) => refusals.attachments.brokeOff, file),
      );
    case 'ESTOPPED':
      return refused(
        'cancelled',
        told(({ refusals }) => refusals.attachments.stopped, file),
      );
    default:
      return null;
  }
}
