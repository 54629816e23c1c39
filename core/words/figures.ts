/** Numbers, plurals, lists and dates as a language writes them, on Intl. Thousands stand apart by a narrow gap in each. */

import type { Language } from './language.ts';

export const MINUS = '−';
/** Keeps a number and its unit on one line. */
export const NARROW_GAP = '\u202f';

/** Words for a count: `one` and `other` are the cases of all languages that there are. */
export interface CountForms {
  readonly one: string;
  readonly other: string;
}

export interface Figures {
  /** `1 234`: a whole number. */
  readonly whole: (value: number) => string;
  /** `0.12`, `0,12`: so many decimals. */
  readonly fixed: (value: number, decimals: number) => string;
  /** `0.5`, `12`: no more decimals than it has, at most so many. */
  readonly short: (value: number, mostDecimals: number) => string;
  /** The form of words that goes with the count, without the count. */
  readonly plural: (count: number, forms: CountForms) => string;
  /** `3 holes`. */
  readonly counted: (count: number, forms: CountForms) => string;
  /** `a, b and c`. */
  readonly list: (items: readonly string[]) => string;
  /** `a, b or c`. */
  readonly choice: (items: readonly string[]) => string;
  /** A day of the calendar, `2026-05-09`, as it is written out; other texts come back as they are. */
  readonly date: (isoDay: string) => string;
  /** A moment (milliseconds since 1970) in the computer's zone: its clock, `14:05`, or its day with the clock, to the second where asked. */
  readonly moment: (ms: number, style: 'clock' | 'day' | 'second') => string;
}

export function figuresOf(language: Language): Figures {
  const locale = language === 'en' ? 'en-GB' : 'de-DE';
  const rules = new Intl.PluralRules(locale);
  const formats = new Map<string, Intl.NumberFormat>();
  const format = (least: number, most: number): Intl.NumberFormat => {
    const key = `${least} ${most}`;
    const known = formats.get(key);
    if (known !== undefined) return known;
    const made = new Intl.NumberFormat(locale, {
      minimumFractionDigits: least,
      maximumFractionDigits: most,
    });
    formats.set(key, made);
    return made;
  };
  const write = (value: number, least: number, most: number): string =>
    format(least, most)
      .formatToParts(value)
      .map(({ type, value: part }) => (type === 'group' ? NARROW_GAP : type === 'minusSign' ? MINUS : part))
      .join('');
  const plural: Figures['plural'] = (count, forms) =>
    rules.select(count) === 'one' ? forms.one : forms.other;
  const whole = (value: number): string => write(value, 0, 0);
  const lists = new Intl.ListFormat(locale, { type: 'conjunction' });
  const choices = new Intl.ListFormat(locale, { type: 'disjunction' });
  const days = new Intl.DateTimeFormat(locale, {
    ...{ day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' },
  });
  const moments = {
    clock: new Intl.DateTimeFormat(locale, { hour: '2-digit', minute: '2-digit' }),
    day: new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' }),
    second: new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'medium' }),
  };
  return {
    whole,
    fixed: (value, decimals) => write(value, decimals, decimals),
    short: (value, mostDecimals) => write(value, 0, mostDecimals),
    plural,
    counted: (count, forms) => `${whole(count)} ${plural(count, forms)}`,
    list: (items) => lists.format(items),
    choice: (items) => choices.format(items),
    date: (isoDay) => {
      const time = /^\d{4}-\d{2}-\d{2}$/.test(isoDay) ? Date.parse(`${isoDay}T00:00:00Z`) : NaN;
      return Number.isNaN(time) ? isoDay : days.format(time);
    },
    moment: (ms, style) => moments[style].format(ms),
  };
}
