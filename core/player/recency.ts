/** How much a shot counts by its age. */

const DAY_MS = 86_400_000;

/**
 * Days since 1970 of a date or a date and time (ISO 8601); undefined where the text is no date. A time without a zone
 * is taken as UTC, so that the answer does not depend on the machine.
 */
export function dayOf(at: string | undefined): number | undefined {
  const parts =
    /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2}(?:\.\d+)?))?(Z|[+-]\d{2}:?\d{2})?)?$/.exec(
      at?.trim() ?? '',
    );
  if (parts === null) return undefined;
  const [, year, month, day, hour = '0', minute = '0', second = '0', zone = 'Z'] = parts;
  const ms = Date.UTC(Number(year), Number(month) - 1, Number(day), Number(hour), Number(minute));
  const back = new Date(ms);
  // 31 February would roll over into March.
  if (back.getUTCMonth() !== Number(month) - 1 || Number(hour) > 23 || Number(minute) > 59) return undefined;
  const offset = /([+-])(\d{2}):?(\d{2})/.exec(zone);
  const ahead =
    offset === null ? 0 : (Number(offset[2]) * 60 + Number(offset[3])) * (offset[1] === '-' ? -1 : 1);
  return (ms + Number(second) * 1000 - ahead * 60_000) / DAY_MS;
}

/** 1 today, a half after `halfLifeDays`; what is dated later than today counts in full, as does what has no date. */
export function weightOfAge(
  day: number | undefined,
  today: number | undefined,
  halfLifeDays: number | undefined,
): number {
  if (day === undefined || today === undefined || halfLifeDays === undefined) return 1;
  // A floor keeps very old shots a positive number.
  return Math.max(1e-6, 2 ** (-Math.max(0, today - day) / halfLifeDays));
}
