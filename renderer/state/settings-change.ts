/** What of the settings a window changed, and what that was for it before: all that it sends, so that others' changes stay. */

import type { KeptDay, KeptRound, Settings, SettingsChange } from '../../electron/contract/host.ts';
import { dayKey, roundKey, tileSourceKey } from '../../electron/contract/settings-keys.ts';
import { MOST_KEPT_DAYS } from '../../electron/contract/wire.ts';
import { DEFAULT_CONDITIONS } from '../../core/conditions/conditions.ts';
import { wishesFor } from '../round/state/kept-wishes.ts';

export interface ChangeOfSettings {
  readonly settings: SettingsChange;
  /** Of lists the changed entries alone. */
  readonly was: SettingsChange;
}

const SINGLE = ['units', 'theme', 'language', 'tourSeen', 'lastCourse', 'lastPlayer'] as const;

type Parts = { -readonly [K in keyof SettingsChange]: SettingsChange[K] };

/** Null where nothing was changed. */
export function changeOfSettings(before: Settings, after: Settings): ChangeOfSettings | null {
  const settings: Parts = {};
  const was: Parts = {};
  for (const name of SINGLE) {
    if (after[name] === before[name] || after[name] === undefined) continue;
    Object.assign(settings, { [name]: after[name] });
    if (before[name] !== undefined) Object.assign(was, { [name]: before[name] });
  }

  const sources = changedEntries(before.tileSources, after.tileSources, tileSourceKey);
  if (sources !== null) [settings.tileSources, was.tileSources] = [sources.now, sources.was];

  const rounds = changedEntries(before.rounds, after.rounds, roundKey);
  // A round is never taken out: one that is no longer there made room for another, which is the host's business.
  if (rounds !== null && rounds.now.length > 0) {
    settings.rounds = rounds.now;
    was.rounds = rounds.now.map((entry) => knownRound(entry, before.rounds ?? []));
  }

  const days = changedEntries(before.days, after.days, dayKey);
  const madeRoom = (after.days ?? []).length >= MOST_KEPT_DAYS;
  if (days !== null && (days.now.length > 0 || !madeRoom)) {
    const takenOut = madeRoom ? [] : days.was.filter((entry) => !isIn(entry, days.now, dayKey));
    settings.days = days.now;
    const known = days.now.map((entry) => knownDay(entry, before.days ?? []));
    was.days = [...known, ...takenOut].slice(0, MOST_KEPT_DAYS);
  }
  return Object.keys(settings).length === 0 ? null : { settings, was };
}

/** As the window showed it before: what it brought back where nothing was kept of these files. */
function knownRound(entry: KeptRound, before: readonly KeptRound[]): KeptRound {
  const kept = before.find((other) => roundKey(other) === roundKey(entry));
  return kept ?? { ...entry, wishes: JSON.stringify(wishesFor(entry, before)) };
}

function knownDay(entry: KeptDay, before: readonly KeptDay[]): KeptDay {
  const kept = before.find((other) => dayKey(other) === dayKey(entry));
  return kept ?? { ...entry, conditions: JSON.stringify(DEFAULT_CONDITIONS) };
}

function isIn<T>(entry: T, list: readonly T[], key: (entry: T) => string): boolean {
  return list.some((other) => key(other) === key(entry));
}

/** Entries that are new or other than before, and those before that are other or gone; null where there are none. */
function changedEntries<T>(
  before: readonly T[] | undefined,
  after: readonly T[] | undefined,
  key: (entry: T) => string,
): { readonly now: readonly T[]; readonly was: readonly T[] } | null {
  if (before === after || after === undefined) return null;
  const texts = (list: readonly T[]): ReadonlyMap<string, string> =>
    new Map(list.map((entry) => [key(entry), JSON.stringify(entry)]));
  const [old, next] = [texts(before ?? []), texts(after)];
  const now = after.filter((entry) => old.get(key(entry)) !== JSON.stringify(entry));
  const was = (before ?? []).filter((entry) => next.get(key(entry)) !== JSON.stringify(entry));
  return now.length + was.length === 0 ? null : { now, was };
}
