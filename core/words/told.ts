/**
 * A message as an entry of the catalogue with its values, in place of finished text: it is made where no language is
 * known (a worker, the reading of a file) and told where one is. Plain data, so that it crosses to the window.
 */

import type { Fault } from '../result.ts';
import { english } from './english/english.ts';
import type { Words } from './words.ts';

export interface Told {
  /** Where the entry stands: `faults.player.noClub`. */
  readonly entry: readonly string[];
  readonly values: Readonly<Record<string, string | number | Told>>;
}

type Values<V> = { readonly [K in keyof V]: V[K] | (string extends V[K] ? Told : never) };

/** `told(({ faults }) => faults.noClub)`, `told(({ faults }) => faults.twice, { club })`; texts may be told ones. */
export function told(pick: (words: Words) => string): Told;
export function told<V extends object>(
  pick: (words: Words) => (values: V) => string,
  values: Values<V>,
): Told;
export function told(pick: (words: Words) => unknown, values: Told['values'] = {}): Told {
  const entry: string[] = [];
  const trace: object = new Proxy(
    {},
    {
      get: (_, name) => {
        entry.push(String(name));
        return trace;
      },
    },
  );
  pick(trace as Words);
  return { entry, values };
}

type Texts = Readonly<Record<string, string | number>>;

/** The message in a language. `read` is how its values are looked at. */
export function tell(
  { entry, values }: Told,
  words: Words,
  read: (texts: Texts) => Texts = (texts) => texts,
): string {
  const found = entryOf(entry, words);
  if (typeof found === 'string') return found;
  if (typeof found !== 'function') throw new Error(`The catalogue has no entry ${entry.join('.')}.`);
  const texts = Object.entries(values).map(([name, value]): [string, string | number] => [
    name,
    typeof value === 'object' ? tell(value, words, read) : value,
  ]);
  return (found as (values: Texts) => string)(read(Object.fromEntries(texts)));
}

/** Throws where an entry asks for a value that is not there, in place of saying "undefined". */
function withoutGaps(texts: Texts): Texts {
  return new Proxy(texts, {
    get: (of, name) => {
      if (typeof name === 'symbol' || !Object.hasOwn(of, name))
        throw new TypeError(`The message has no ${String(name)}.`);
      return of[name];
    },
  });
}

function entryOf(entry: readonly string[], words: Words): unknown {
  let found: unknown = words;
  for (const name of entry) {
    if (typeof found !== 'object' || found === null || !Object.hasOwn(found, name)) return undefined;
    found = (found as Readonly<Record<string, unknown>>)[name];
  }
  return found;
}

/** Entries that say something: `figures` write numbers, and take theirs in another way. */
const SAYS_NOTHING: readonly string[] = ['figures'];

/** As `tell`, for a message from outside: null where the catalogue does not have it or it lacks a value. */
export function tellKnown(message: Told, words: Words): string | null {
  const isKnown = ({ entry, values }: Told): boolean =>
    !SAYS_NOTHING.includes(entry[0] ?? '') &&
    ['string', 'function'].includes(typeof entryOf(entry, words)) &&
    Object.values(values).every((value) => typeof value !== 'object' || isKnown(value));
  if (!isKnown(message)) return null;
  try {
    const text: unknown = tell(message, words, withoutGaps);
    return typeof text === 'string' ? text : null;
  } catch {
    return null;
  }
}

/** What a thing is called in the language of the window, where the catalogue has it. */
export function nameIn(
  { name, told: of }: { readonly name: string; readonly told?: Told },
  words: Words,
): string {
  return of === undefined ? name : tell(of, words);
}

/** In English, as commands and files have it. */
export function inEnglish(message: Told): string {
  return tell(message, english);
}

/** What a file calls something, or a message of the catalogue. */
export type Said = string | Told;

/** As it is said in a language: English for commands and files. */
export function sayIn(said: Said, words: Words = english): string {
  return typeof said === 'string' ? said : tell(said, words);
}

/** A fault with the messages of the catalogue: in English for commands and files, told again in the window. */
export function toldFault({
  where,
  message,
  ...rest
}: Omit<Fault, 'where' | 'message' | 'told'> & {
  readonly where: string | Told;
  readonly message: Told;
}): Fault {
  return {
    ...rest,
    where: typeof where === 'string' ? where : inEnglish(where),
    message: inEnglish(message),
    told: typeof where === 'string' ? { message } : { where, message },
  };
}

/** A fault as commands print it: without the entries. */
export function plainFault(fault: Fault): Fault {
  const plain = { ...fault };
  Reflect.deleteProperty(plain, 'told');
  return plain;
}

/** Where and what, in the language of the window. */
export function faultText(fault: Fault, words: Words): { readonly where: string; readonly message: string } {
  const { told: of } = fault;
  return {
    where:
      of?.where !== undefined
        ? tell(of.where, words)
        : fault.where === 'file'
          ? words.faults.file.where
          : fault.where,
    message: of === undefined ? fault.message : tell(of.message, words),
  };
}

/** What the first of the faults says, in the language of the window; undefined where there is none. */
export function firstFault(faults: readonly Fault[], words: Words): string | undefined {
  const [first] = faults;
  return first === undefined ? undefined : faultText(first, words).message;
}

/** `where: message`, one after another. */
export function faultsText(faults: readonly Fault[], words: Words): string {
  return faults
    .map((fault) => faultText(fault, words))
    .map(({ where, message }) => `${where}: ${message}`)
    .join(' ');
}
