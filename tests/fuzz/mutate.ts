/**
 * Spoils good samples in ways that have broken readers before: bytes turned, cut, doubled and swapped with another
 * sample; texts with words that mean something elsewhere; JSON with a member of the wrong kind or size. Same seed, same case.
 */

import fc from 'fast-check';
import seedrandom from 'seedrandom';

export interface Dice {
  /** From 0 up to, not including, `below`. */
  readonly whole: (below: number) => number;
  readonly chance: (share: number) => boolean;
  readonly one: <T>(things: readonly T[]) => T;
}

export function diceOf(seed: string): Dice {
  const random = seedrandom(seed);
  const whole = (below: number): number => Math.floor(random() * below);
  return {
    whole,
    chance: (share) => random() < share,
    one: (things) => things[whole(things.length)]!,
  };
}

/** By this a text that came out of a file is known again in what is printed, exported or drawn. */
export const MARK = 'ZZTOP7';

/** Texts that mean something to HTML, SVG, CSS, spreadsheets, paths, printing or JavaScript objects. */
export const WORDS: readonly string[] = [
  `<img src=x onerror=alert('${MARK}')>`,
  `"><script>${MARK}</script>`,
  `' onload='${MARK}`,
  `]]><!--${MARK}`,
  `&lt;${MARK};&#60;b&#62;`,
  `</text></svg><svg onload=${MARK}>`,
  `javascript:${MARK}`,
  `url(https://${MARK}.example/)`,
  `=HYPERLINK("https://${MARK}.example")`,
  `+${MARK}|'cmd'!A1`,
  `-2+3+${MARK}`,
  `@SUM(${MARK})`,
  `x;=1+${MARK}`,
  `x\t=1+${MARK}`,
  `x\r\n=1+${MARK}`,
  `  =1+${MARK}`,
  `＝1+${MARK}`,
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  '../../etc/passwd',
  'CON',
  'a'.repeat(5000),
  '\u0000',
  '\ud800',
  '\u202eabc',
  '𝟙𝟚',
  '',
  ' ',
  '%s%n%x',
  '${7*7}',
  '{{7*7}}',
];

const NUMBERS: readonly number[] = [
  ...[0, -0, 1, -1, 0.1, 1e-9, 1e9, -1e9, 1e21, 1e308, -1e308, 5e-324, 2 ** 31, 2 ** 32, 2 ** 53],
  ...[180, -180, 90, -90, 91, 181, 360, 1e5, 255, 65_536, 1.5],
];

/** A share of the cases owes nothing to the samples. */
const WILD_SHARE = 0.06;
const MOST_BYTES = 300_000;

/** Mostly one: what is spoilt but little gets furthest. */
function blows(dice: Dice): number {
  return dice.chance(0.6) ? 1 : 2 + dice.whole(5);
}

export function spoilBytes(samples: readonly Uint8Array[], dice: Dice): Uint8Array {
  if (dice.chance(WILD_SHARE)) return Uint8Array.from({ length: dice.whole(2000) }, () => dice.whole(256));
  let bytes = Uint8Array.from(dice.one(samples));
  for (let times = blows(dice); times > 0; times--) bytes = spoilOnce(bytes, samples, dice);
  return bytes.length > MOST_BYTES ? bytes.slice(0, MOST_BYTES) : bytes;
}

function spoilOnce(bytes: Uint8Array, samples: readonly Uint8Array[], dice: Dice): Uint8Array<ArrayBuffer> {
  const next = Uint8Array.from(bytes);
  // Directories and headers stand at the beginning: half of the blows fall there.
  const at = dice.chance(0.5) ? dice.whole(Math.min(next.length, 400) || 1) : dice.whole(next.length || 1);
  const most = Math.min(next.length - at, 1 + dice.whole(64));
  switch (dice.whole(8)) {
    case 0:
      if (next.length > 0) next[at] = next[at]! ^ (1 << dice.whole(8));
      return next;
    case 1:
      if (next.length > 0) next[at] = dice.one([0, 1, 0x7f, 0x80, 0xff, dice.whole(256)]);
      return next;
    case 2: {
      const width = dice.one([2, 4, 8]);
      if (at + width > next.length) return next;
      const view = new DataView(next.buffer);
      const value = dice.one([0, 1, 0x7fffffff, 0x80000000, 0xffffffff, next.length, next.length + 1]);
      const little = dice.chance(0.5);
      if (width === 2) view.setUint16(at, value & 0xffff, little);
      else if (width === 4) view.setUint32(at, value, little);
      else view.setBigUint64(at, dice.chance(0.3) ? 0xffff_ffff_ffff_ffffn : BigInt(value), little);
      return next;
    }
    case 3:
      return next.slice(0, at);
    case 4:
      return joined(next.subarray(0, at), next.subarray(at + most));
    case 5:
      return joined(
        next.subarray(0, at),
        ...Array.from({ length: 1 + dice.whole(6) }, () => next.subarray(at, at + most)),
        next.subarray(at),
      );
    case 6:
      next.fill(dice.one([0, 255, 0x20]), at, at + most);
      return next;
    default: {
      const other = dice.one(samples);
      const from = dice.whole(other.length || 1);
      return joined(
        next.subarray(0, at),
        other.subarray(from, from + 1 + dice.whole(400)),
        next.subarray(at),
      );
    }
  }
}

function joined(...parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Of a text format that is no JSON: words put in, pieces cut, doubled, swapped; now and then bytes as such. */
export function spoilText(samples: readonly string[], dice: Dice): string {
  if (dice.chance(WILD_SHARE)) return wildText(dice);
  if (dice.chance(0.15)) {
    const bytes = samples.map((sample) => new TextEncoder().encode(sample));
    return new TextDecoder().decode(spoilBytes(bytes, dice));
  }
  let text = dice.one(samples);
  for (let times = blows(dice); times > 0; times--) text = spoilTextOnce(text, samples, dice);
  return text.slice(0, MOST_BYTES);
}

/** Characters of all kinds, halves of pairs too. */
function wildText(dice: Dice): string {
  const most = dice.one([0x7f, 0x7f, 0x2ff, 0xffff]);
  return String.fromCharCode(...Array.from({ length: dice.whole(500) }, () => dice.whole(most + 1)));
}

function spoilTextOnce(text: string, samples: readonly string[], dice: Dice): string {
  const at = dice.whole(text.length + 1);
  const piece = text.slice(at, at + 1 + dice.whole(80));
  switch (dice.whole(7)) {
    case 0:
      return text.slice(0, at) + dice.one(WORDS) + text.slice(at);
    case 1:
      return text.slice(0, at) + text.slice(at + piece.length);
    case 2:
      return text.slice(0, at) + piece.repeat(1 + dice.whole(50)) + text.slice(at);
    case 3:
      return text.slice(0, at);
    case 4:
      // The next number becomes one of the awkward ones.
      return text.slice(0, at) + text.slice(at).replace(/-?\d+(\.\d+)?/u, () => awkwardNumber(dice));
    case 5:
      // The next quoted text or value becomes a word.
      return (
        text.slice(0, at) +
        text.slice(at).replace(/(["'>,;])[^"'<>,;]*/u, (_, open: string) => open + dice.one(WORDS))
      );
    default: {
      const other = dice.one(samples);
      const from = dice.whole(other.length + 1);
      return text.slice(0, at) + other.slice(from, from + dice.whole(300)) + text.slice(at);
    }
  }
}

function awkwardNumber(dice: Dice): string {
  return dice.chance(0.2)
    ? dice.one(['NaN', 'Infinity', '1e999', '0x10', '--1', '1,5'])
    : String(dice.one(NUMBERS));
}

/** JSON with members changed; now and then spoilt as text. */
export function spoilJson(samples: readonly string[], dice: Dice): string {
  if (dice.chance(WILD_SHARE))
    return fc.sample(fc.json({ maxDepth: 6 }), { seed: dice.whole(2 ** 31), numRuns: 1 })[0]!;
  if (dice.chance(0.2)) return spoilText(samples, dice);
  const root = { root: JSON.parse(dice.one(samples)) as unknown };
  for (let times = blows(dice); times > 0; times--) spoilMember(root, dice);
  // `__proto__` as a member that JSON.parse makes, not as an object's prototype.
  return JSON.stringify(root.root ?? null).replaceAll('"§proto§"', '"__proto__"');
}

type Holder = Record<string, unknown> | unknown[];

function spoilMember(root: Holder, dice: Dice): void {
  let holder: Holder = root;
  let key: string | number = 'root';
  // Down a random way, somewhere to stop.
  for (;;) {
    const value: unknown = (holder as Record<string | number, unknown>)[key];
    if (typeof value !== 'object' || value === null) break;
    const keys: readonly (string | number)[] = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
    if (keys.length === 0 || (key !== 'root' && dice.chance(0.15))) break;
    holder = value as Holder;
    // The first of many are as good as any, and stay small.
    key = keys[dice.chance(0.6) ? dice.whole(Math.min(keys.length, 8)) : dice.whole(keys.length)]!;
  }
  const record = holder as Record<string | number, unknown>;
  switch (dice.whole(7)) {
    case 0:
      if (Array.isArray(holder)) holder.splice(Number(key), 1);
      else if (key !== 'root') Reflect.deleteProperty(record, key);
      return;
    case 1:
      record[key] = oddValue(dice);
      return;
    case 2:
      record[key] = typeof record[key] === 'number' ? dice.one(NUMBERS) : dice.one(WORDS);
      return;
    case 3:
      record[key] = dice.one(WORDS);
      return;
    case 4:
      if (Array.isArray(holder))
        holder.push(...Array.from({ length: 1 + dice.whole(40) }, () => record[key]));
      else
        record[dice.one(['§proto§', 'constructor', 'toString', 'length', dice.one(WORDS)])] = dice.chance(0.5)
          ? { polluted: MARK }
          : record[key];
      return;
    case 5: {
      let deep: unknown = record[key];
      for (let levels = dice.one([1, 3, 30, 400]); levels > 0; levels--)
        deep = dice.chance(0.5) ? [deep] : { a: deep };
      record[key] = deep;
      return;
    }
    default:
      record[key] =
        typeof record[key] === 'string' ? `${String(record[key])}${dice.one(WORDS)}` : oddValue(dice);
  }
}

function oddValue(dice: Dice): unknown {
  return dice.one<unknown>([
    ...[null, true, false, '', [], {}, [[]], [null], '2024-02-30', 'NaN'],
    ...[
      dice.one(NUMBERS),
      dice.one(WORDS),
      { '§proto§': { polluted: MARK } },
      Array.from({ length: 2000 }, () => 0),
    ],
    ...[[dice.one(NUMBERS), dice.one(NUMBERS)], [[dice.one(NUMBERS), 1, 2, 3]], { type: 'Point' }],
  ]);
}
