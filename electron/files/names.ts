/**
 * File names: which ones the store shows, what kind a name says, and how a suggestion from the page becomes a
 * safe name. A name is one folder entry, never a path.
 */

import type { FileKind } from '../contract/host.ts';

/** Longest name made here, in bytes: room for the store's own suffixes within the usual 255. */
const LONGEST_NAME_BYTES = 120;

// Names that Windows gives to devices whatever the extension (Microsoft, "Naming Files, Paths, and Namespaces").
const deviceName = /^(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³]|conin\$|conout\$)\s*(\.|$)/iu;
// Separators, drive and stream colons, wildcards, quotes, control and bidirectional control characters.
const forbidden = /[\u0000-\u001f\u007f-\u009f/\\:*?"<>|\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/u;

/** Half of a character pair without its other half: no file system keeps it as it is. */
const loneSurrogate = /\p{Surrogate}/u;

/** Whether a folder entry may be shown and written: no path parts, device names, hidden or trailing-dot names. */
export function isSafeName(name: string): boolean {
  return (
    name.length > 0 &&
    Buffer.byteLength(name) <= 240 &&
    !loneSurrogate.test(name) &&
    !forbidden.test(name) &&
    !deviceName.test(name) &&
    !name.startsWith('.') &&
    !/[. ]$/u.test(name)
  );
}

const endings: Readonly<Record<FileKind, string>> = {
  course: '.geojson',
  player: '.player.json',
  round: '.round.json',
};

/** The kind that a name tells: `null` for names that are no file of ours, `ask` for plain `.json`. */
export function kindByName(name: string): FileKind | 'ask' | null {
  const lower = name.toLowerCase();
  if (lower.endsWith(endings.course)) return 'course';
  if (lower.endsWith(endings.player)) return 'player';
  if (lower.endsWith(endings.round)) return 'round';
  return lower.endsWith('.json') ? 'ask' : null;
}

/** A safe name with the kind's ending near what the page suggests. */
export function safeName(kind: FileKind, suggested: string): string {
  return safeNameEnding(endings[kind], suggested, kind);
}

/**
 * A safe name with `ending`. Everything that could be read as a path, also percent-encoded, becomes a hyphen;
 * where nothing is left, `fallback` serves.
 */
export function safeNameEnding(ending: string, suggested: string, fallback: string): string {
  let stem = suggested.replace(new RegExp(loneSurrogate.source, 'gu'), '-').normalize('NFC');
  for (const known of [ending, '.geojson', '.json', '.player', '.round']) {
    if (known !== '' && stem.toLowerCase().endsWith(known)) stem = stem.slice(0, -known.length);
  }
  stem = stem
    .replace(/%(?:2e|2f|5c|3a|00|25)/giu, '-')
    .replace(new RegExp(forbidden.source, 'gu'), '-')
    .replace(/\.{2,}/gu, '-')
    .replace(/\s+/gu, ' ')
    .replace(/-{2,}/gu, '-')
    .replace(/^[\s.-]+|[\s.-]+$/gu, '');
  while (Buffer.byteLength(stem) > LONGEST_NAME_BYTES - ending.length) {
    stem = stem.replace(/.$/su, '').trimEnd();
  }
  if (stem === '') stem = fallback;
  if (deviceName.test(stem)) stem = `${fallback}-${stem.replace(/\$/gu, '')}`;
  return stem + ending;
}

/** A name near `name` that none of `taken` has, letter case aside: `oak.geojson`, `oak 2.geojson`, … */
export function freeName(name: string, taken: readonly string[]): string {
  const used = new Set(taken.map((other) => other.normalize('NFC').toLowerCase()));
  const dot = name.search(/\.(?:geojson|player\.json|round\.json|[a-z0-9]{1,8})$/iu);
  const stem = dot < 0 ? name : name.slice(0, dot);
  const ending = dot < 0 ? '' : name.slice(dot);
  for (let count = 1; ; count++) {
    const tried = count === 1 ? name : `${stem} ${count}${ending}`;
    if (!used.has(tried.toLowerCase())) return tried;
  }
}
