/** `npm run --silent import`: brings a map, GPS tracks or an elevation model into a course file. */

import { basename } from 'node:path';
import {
  type EditableDocument,
  newDocument,
  openDocumentText,
  serialise,
} from '../../core/course/document.ts';
import { countWords } from '../../core/course/edits/words.ts';
import { type FeatureKind, KIND_WORDS } from '../../core/course/feature-kind.ts';
import { inEnglish } from '../../core/words/told.ts';
import { applyProposal } from '../../core/course/import/apply-proposal.ts';
import { type KindMapping, readGeojson } from '../../core/course/import/geojson.ts';
import { readGpx } from '../../core/course/import/gpx.ts';
import { guessImportKind } from '../../core/course/import/guess-kind.ts';
import { DEFAULT_SPACING_M, readHeights } from '../../core/course/import/heights.ts';
import { MOST_FILE_BYTES } from '../../core/course/import/elevation-model.ts';
import { readOsm } from '../../core/course/import/osm.ts';
import {
  contextOf,
  type ImportContext,
  type ImportKind,
  type ImportProposal,
} from '../../core/course/import/proposal.ts';
import { suggestMappings } from '../../core/course/import/suggest-mappings.ts';
import type { Fault, Result } from '../../core/result.ts';
import { errorCode } from '../files/answer.ts';
import { bytesOf, revisionOf, textOf } from '../files/content.ts';
import { readsInCore } from '../files/core-check.ts';
import { nodeDisk } from '../files/disk.ts';
import { makeFile, replaceFile } from '../files/replace.ts';
import {
  EXIT,
  optionalText,
  readArguments,
  requiredText,
  Stop,
  stopForFaults,
  stopForUsage,
  wholeNumber,
} from './command.ts';

const USAGE = [
  'usage: npm run --silent import -- --from FILE --to COURSE.geojson [--kind osm|geojson|gpx|heights] [--json]',
  '       geojson: [--map PROPERTY=VALUE:KIND,…] [--hole-property NAME]; without --map the words of the file are gone by',
  '       gpx:     [--tracks KIND], what tracks without a telling name go round',
  '       heights: [--spacing METRES], 20 where not given',
  `       KIND: ${Object.keys(KIND_WORDS).join(', ')}`,
].join('\n');

const KINDS: readonly ImportKind[] = ['osm', 'geojson', 'gpx', 'heights'];

interface Wishes {
  readonly kind: ImportKind | undefined;
  readonly mappings: readonly KindMapping[] | undefined;
  readonly holeProperty: string | undefined;
  readonly trackKind: FeatureKind | undefined;
  readonly spacingM: number;
}

export async function importFile(args: readonly string[]): Promise<void> {
  const text = { type: 'string' } as const;
  const values = readArguments(
    args,
    {
      from: text,
      to: text,
      kind: text,
      map: text,
      'hole-property': text,
      tracks: text,
      spacing: text,
      json: { type: 'boolean' },
    },
    USAGE,
  );
  const from = requiredText(values, 'from', USAGE);
  const to = requiredText(values, 'to', USAGE);
  const kind = optionalText(values, 'kind');
  if (kind !== undefined && !KINDS.includes(kind as ImportKind)) {
    throw stopForUsage(`--kind takes ${KINDS.join(', ')}, not “${kind}”.`, USAGE);
  }
  const map = optionalText(values, 'map');
  const tracks = optionalText(values, 'tracks');
  const wishes: Wishes = {
    kind: kind as ImportKind | undefined,
    mappings: map === undefined ? undefined : map.split(',').map(readMapping),
    holeProperty: optionalText(values, 'hole-property'),
    trackKind: tracks === undefined ? undefined : readKind(tracks),
    spacingM: wholeNumber(
      values,
      'spacing',
      { lowest: 1, highest: 1000, fallback: DEFAULT_SPACING_M },
      USAGE,
    ),
  };

  const bytes = await readBytes(from, MOST_FILE_BYTES);
  const course = await openCourse(to);
  const importKind = wishes.kind ?? guessImportKind(bytes);
  if (importKind === undefined) {
    throw new Stop(EXIT.badInput, [
      `${from}: error: it cannot be told what kind of file it is. Name one with --kind ${KINDS.join('|')}.`,
    ]);
  }
  const read = await readProposal(from, bytes, importKind, contextOf(course.document), wishes);
  if (!read.ok) throw stopForFaults(from, read.error);
  const proposal = read.value;
  const report = reportOf(from, to, course.revision === undefined, proposal);
  const print = () => {
    process.stdout.write(
      values.json === true ? `${JSON.stringify(report, null, 1)}\n` : `${wordsOf(report).join('\n')}\n`,
    );
  };
  if (proposal.features.length === 0 && proposal.leftOut.some(({ why }) => why.includes('already'))) {
    print();
    return;
  }
  const edit = applyProposal(named(course.document, to, proposal), proposal);
  if (!edit.ok) {
    print();
    throw new Stop(EXIT.badInput, [`${from}: error: ${edit.error.message}`]);
  }
  await writeCourse(to, edit.value.document, course.revision);
  print();
}

function readMapping(text: string): KindMapping {
  const found = /^([^=]+)=(.*):([a-z-]+)$/.exec(text.trim());
  if (found === null) throw stopForUsage(`--map takes PROPERTY=VALUE:KIND, not “${text}”.`, USAGE);
  return { property: found[1]!, value: found[2]!, kind: readKind(found[3]!) };
}

function readKind(text: string): FeatureKind {
  if (!Object.hasOwn(KIND_WORDS, text)) throw stopForUsage(`there is no kind “${text}”.`, USAGE);
  return text as FeatureKind;
}

async function readBytes(file: string, mostBytes: number): Promise<Uint8Array> {
  try {
    return await nodeDisk.read(await nodeDisk.realPath(file), mostBytes);
  } catch (error) {
    throw new Stop(EXIT.badInput, [`${file}: error: ${whyUnreadable(errorCode(error))}`]);
  }
}

function whyUnreadable(code: string): string {
  switch (code) {
    case 'ENOENT':
      return 'there is no such file. Check the path.';
    case 'ENOTPLAIN':
    case 'EISDIR':
      return 'it is no plain file.';
    case 'ETOOLARGE':
      return 'it is too large. Cut it down to the course.';
    default:
      return `it cannot be read (${code}).`;
  }
}

/** The course to add to, with its revision; a new one without where the file is not there. */
async function openCourse(
  file: string,
): Promise<{ readonly document: EditableDocument; readonly revision: string | undefined }> {
  let path: string;
  try {
    path = await nodeDisk.realPath(file);
  } catch (error) {
    if (errorCode(error) !== 'ENOENT')
      throw new Stop(EXIT.badInput, [`${file}: error: ${whyUnreadable(errorCode(error))}`]);
    return { document: newDocument(''), revision: undefined };
  }
  const bytes = await readBytes(path, MOST_FILE_BYTES);
  const text = textOf(bytes, file);
  if (!text.ok) throw new Stop(EXIT.badInput, [`${file}: error: ${text.message}`]);
  const opened = openDocumentText(text.value);
  if (!opened.ok) throw stopForFaults(file, opened.error);
  return { document: opened.value.document, revision: revisionOf(bytes) };
}

async function readProposal(
  file: string,
  bytes: Uint8Array,
  kind: ImportKind,
  context: ImportContext,
  wishes: Wishes,
): Promise<Result<ImportProposal, readonly Fault[]>> {
  if (kind === 'heights') {
    const buffer = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer;
    return readHeights(buffer, context, wishes.spacingM);
  }
  const text = textOf(bytes, file);
  if (!text.ok) throw new Stop(EXIT.badInput, [`${file}: error: ${text.message}`]);
  switch (kind) {
    case 'osm':
      return readOsm(text.value, context);
    case 'gpx':
      return readGpx(
        text.value,
        context,
        wishes.trackKind === undefined ? {} : { trackKind: wishes.trackKind },
      );
    case 'geojson': {
      const suggested = suggestMappings(text.value);
      if (!suggested.ok) return suggested;
      // words are only gone by where the file has no tags of ours
      const guessed = suggested.value.tagged > 0 ? [] : suggested.value.mappings;
      const holeProperty =
        wishes.holeProperty ?? (suggested.value.tagged > 0 ? undefined : suggested.value.holeProperty);
      return readGeojson(text.value, context, {
        mappings: wishes.mappings ?? guessed,
        ...(holeProperty === undefined ? {} : { holeProperty }),
      });
    }
  }
}

/** A new course takes the map's name, else the file's. */
function named(document: EditableDocument, to: string, proposal: ImportProposal): EditableDocument {
  const { courseName } = document.holewright;
  if (proposal.courseName !== undefined || courseName !== '') return document;
  return newDocument(basename(to).replace(/\.(geo)?json$/i, ''));
}

async function writeCourse(
  file: string,
  document: EditableDocument,
  revision: string | undefined,
): Promise<void> {
  const text = serialise(document);
  const unreadable = readsInCore('course', text);
  if (unreadable !== null)
    throw new Stop(EXIT.badInput, [`${file}: error: nothing was written: ${inEnglish(unreadable)}.`]);
  const bytes = bytesOf(text, file);
  if (!bytes.ok) throw new Stop(EXIT.badInput, [`${file}: error: ${bytes.message}`]);
  try {
    if (revision === undefined) {
      await makeFile(nodeDisk, file, bytes.value);
      return;
    }
    const path = await nodeDisk.realPath(file);
    const unchanged = async () => revisionOf(await nodeDisk.read(path, MOST_FILE_BYTES)) === revision;
    if (await replaceFile(nodeDisk, path, bytes.value, unchanged)) return;
  } catch (error) {
    throw new Stop(EXIT.badInput, [
      `${file}: error: it could not be written (${errorCode(error)}); what was there is unchanged.`,
    ]);
  }
  throw new Stop(EXIT.badInput, [
    `${file}: error: another program has changed it in the meantime; nothing was written. Import again.`,
  ]);
}

interface Report {
  readonly from: string;
  readonly to: string;
  readonly kind: ImportKind;
  /** True where the course file was not there before. */
  readonly created: boolean;
  readonly features: Readonly<Record<string, number>>;
  readonly assigned: readonly {
    readonly what: string;
    readonly origin: string;
    readonly hole: number;
    readonly by: 'ref' | 'nearness';
    readonly distanceM?: number;
  }[];
  readonly unassigned: readonly { readonly what: string; readonly origin: string; readonly why: string }[];
  readonly leftOut: readonly Omit<ImportProposal['leftOut'][number], 'told'>[];
  readonly replaced: number;
  readonly notes: readonly string[];
  readonly sources: readonly string[];
}

function reportOf(from: string, to: string, created: boolean, proposal: ImportProposal): Report {
  const told = (index: number) => {
    const { kind, origin } = proposal.features[index]!;
    return { what: KIND_WORDS[kind], origin };
  };
  return {
    from,
    to,
    kind: proposal.kind,
    created,
    features: Object.fromEntries(proposal.counts.map(({ kind, count }) => [kind, count])),
    assigned: proposal.assigned.map((each) => ({
      ...told(each.feature),
      hole: each.hole,
      by: each.by,
      ...(each.by === 'nearness' ? { distanceM: Math.round(each.distanceM * 10) / 10 } : {}),
    })),
    unassigned: proposal.unassigned.map(({ feature, why }) => ({ ...told(feature), why })),
    leftOut: proposal.leftOut.map(({ what, why, count, examples }) => ({ what, why, count, examples })),
    replaced: proposal.replaces.length,
    notes: proposal.notes,
    sources: proposal.sources,
  };
}

function wordsOf(report: Report): string[] {
  const counts = Object.entries(report.features).map(([kind, count]) =>
    countWords(count, kind as FeatureKind),
  );
  const nearby = report.assigned.filter(({ by }) => by === 'nearness');
  return [
    `${report.from} → ${report.to}${report.created && counts.length > 0 ? ' (new course)' : ''}`,
    counts.length === 0 ? 'nothing new' : `took in ${counts.join(', ')}`,
    ...(report.replaced === 0 ? [] : [`replaced ${report.replaced} features of an earlier import`]),
    ...(report.assigned.length === 0
      ? []
      : [`put to holes: ${report.assigned.length - nearby.length} by number, ${nearby.length} by nearness`]),
    ...nearby.map(
      ({ what, origin, hole, distanceM }) => `  ${what} (${origin}): hole ${hole}, ${distanceM ?? 0} m away`,
    ),
    ...report.unassigned.map(({ what, origin, why }) => `put to no hole: ${what} (${origin}): ${why}`),
    ...report.leftOut.map(
      ({ what, why, count, examples }) =>
        `left out: ${count} × ${what}: ${why} (${examples.join(', ')}${count > examples.length ? ', …' : ''})`,
    ),
    ...report.notes.map((note) => `note: ${note}`),
    ...report.sources.map((source) => `source: ${source}`),
  ];
}
