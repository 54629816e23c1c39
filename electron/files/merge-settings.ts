/**
 * Takes a window's change into the settings as they are on disk, so that two windows never take back what the other wrote:
 * what the window did not change stays as it is, in lists entry by entry, within an entry's text member by member.
 */

import type { KeptDay, KeptRound, Settings, SettingsChange, TileSource } from '../contract/host.ts';
import { dayKey, roundKey, tileSourceKey } from '../contract/settings-keys.ts';
import { MOST_TILE_SOURCES } from '../contract/tile-source.ts';
import { LONGEST_DAY, LONGEST_WISHES, MOST_KEPT_DAYS, MOST_KEPT_ROUNDS } from '../contract/wire.ts';

/** `was`: the changed parts as the window knew them; null where lists are meant whole. */
export function mergeSettings(kept: Settings, change: SettingsChange, was: SettingsChange | null): Settings {
  const after: { -readonly [K in keyof Settings]: Settings[K] } = {
    ...kept,
    ...change,
    tileSources: mergeLists(kept.tileSources, change.tileSources, was?.tileSources, TILE_SOURCES, was) ?? [],
  };
  const rounds = mergeLists(kept.rounds, change.rounds, was?.rounds, ROUNDS, was);
  const days = mergeLists(kept.days, change.days, was?.days, DAYS, was);
  if (rounds !== undefined) after.rounds = rounds;
  if (days !== undefined) after.days = days;
  // Who has not chosen units yet still gets those of the region.
  delete after.isNew;
  if (kept.isNew === true && change.units === undefined) after.isNew = true;
  return after;
}

/** How one list is merged. */
interface ListKind<T> {
  readonly key: (entry: T) => string;
  readonly most: number;
  /** Whether what changed last stands first and pushes out the last; else it goes to the end. */
  readonly isNewestFirst: boolean;
  /** The entry of three: on disk, as the window has it, as the window knew it. */
  readonly merge: (kept: T, mine: T, known: T) => T;
}

const TILE_SOURCES: ListKind<TileSource> = {
  key: tileSourceKey,
  most: MOST_TILE_SOURCES,
  isNewestFirst: false,
  merge: (_, mine) => mine,
};

const ROUNDS: ListKind<KeptRound> = {
  key: roundKey,
  most: MOST_KEPT_ROUNDS,
  isNewestFirst: true,
  merge: (kept, mine, known) => ({
    ...mine,
    wishes: mergeTexts(kept.wishes, mine.wishes, known.wishes, LONGEST_WISHES),
  }),
};

const DAYS: ListKind<KeptDay> = {
  key: dayKey,
  most: MOST_KEPT_DAYS,
  isNewestFirst: true,
  merge: (kept, mine, known) => ({
    ...mine,
    conditions: mergeTexts(kept.conditions, mine.conditions, known.conditions, LONGEST_DAY),
  }),
};

function mergeLists<T>(
  kept: readonly T[] | undefined,
  mine: readonly T[] | undefined,
  known: readonly T[] | undefined,
  kind: ListKind<T>,
  was: SettingsChange | null,
): readonly T[] | undefined {
  if (was === null) return mine ?? kept;
  if (mine === undefined && known === undefined) return kept;
  const { key, most, isNewestFirst } = kind;
  const knownByKey = new Map((known ?? []).map((entry) => [key(entry), entry]));
  const keptByKey = new Map((kept ?? []).map((entry) => [key(entry), entry]));
  const put = new Map(
    (mine ?? []).map((entry) => {
      const there = keptByKey.get(key(entry));
      const before = knownByKey.get(key(entry));
      const isOtherThere = there !== undefined && before !== undefined;
      return [key(entry), isOtherThere ? kind.merge(there, entry, before) : entry] as const;
    }),
  );
  // Taken out by the window: only what is still as the window knew it.
  const isTakenOut = (entry: T): boolean => {
    const before = knownByKey.get(key(entry));
    return before !== undefined && !put.has(key(entry)) && isSame(before, entry);
  };
  const stay = (kept ?? []).filter((entry) => !isTakenOut(entry));
  if (isNewestFirst) return [...put.values(), ...stay.filter((entry) => !put.has(key(entry)))].slice(0, most);
  const inPlace = stay.map((entry) => put.get(key(entry)) ?? entry);
  const added = [...put].filter(([name]) => !keptByKey.has(name)).map(([, entry]) => entry);
  return [...inPlace, ...added].slice(-most);
}

/** Texts of JSON objects: members that the window changed are its own, all others those on disk. Other texts: the window's. */
function mergeTexts(kept: string, mine: string, known: string, longest: number): string {
  if (kept === known) return mine;
  let merged: string;
  try {
    merged = JSON.stringify(mergeValues(JSON.parse(kept), JSON.parse(mine), JSON.parse(known)));
  } catch {
    return mine;
  }
  return merged.length > longest ? mine : merged;
}

function mergeValues(kept: unknown, mine: unknown, known: unknown): unknown {
  if (!isObject(kept) || !isObject(mine) || !isObject(known)) return isSame(mine, known) ? kept : mine;
  const merged: [string, unknown][] = [];
  for (const name of new Set([...Object.keys(kept), ...Object.keys(mine)])) {
    const [there, own, before] = [kept, mine, known].map((of) => member(of, name));
    const value = isObject(there) && isObject(own) ? mergeValues(there, own, before ?? {}) : undefined;
    const chosen = value ?? (isSame(own, before) ? there : own);
    if (chosen !== undefined) merged.push([name, chosen]);
  }
  return Object.fromEntries(merged);
}

type Members = Readonly<Record<string, unknown>>;

function isObject(value: unknown): value is Members {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function member(of: Members, name: string): unknown {
  return Object.hasOwn(of, name) ? of[name] : undefined;
}

function isSame(a: unknown, b: unknown): boolean {
  if (!isObject(a) || !isObject(b)) return JSON.stringify(a) === JSON.stringify(b);
  const names = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...names].every((name) => isSame(member(a, name), member(b, name)));
}
