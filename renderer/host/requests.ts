/** Requests as they go out: only what belongs in them, whatever else the page's objects carry. */

import type {
  ClearRequest,
  JournalRequest,
  SaveRequest,
  SettingsChange,
} from '../../electron/contract/host.ts';

export function saveRequest({ token, text, baseRevision, journalUpTo }: SaveRequest): SaveRequest {
  return { token, text, baseRevision, ...(journalUpTo === undefined ? {} : { journalUpTo }) };
}

export function journalRequest({ token, baseRevision, text }: JournalRequest): JournalRequest {
  return { token, baseRevision, text };
}

export function clearRequest({ token, journal, upTo }: ClearRequest): ClearRequest {
  return { token, journal, upTo };
}

export function settingsRequest(
  change: SettingsChange,
  was?: SettingsChange,
): { readonly settings: SettingsChange; readonly was?: SettingsChange } {
  return { settings: { ...change }, ...(was === undefined ? {} : { was: { ...was } }) };
}
