/**
 * Seeded streams of random integers. A person's seed text becomes a 128-bit key through seedrandom; each state
 * (a spot, a lie, a stage) mixes its own labels into that key, so that its numbers do not depend on the order in
 * which states are worked on, nor on how many workers share them.
 */

import seedrandom from 'seedrandom';

/** Four unsigned 32-bit words. */
export type StreamKey = readonly [number, number, number, number];

/** Key of a whole piece of work, e.g. one hole: the seed text and any labels that tell it from other work. */
export function makeStreamKey(seed: string, ...labels: readonly (string | number)[]): StreamKey {
  const generator = seedrandom([seed, ...labels].join('\u0000'));
  const word = (): number => generator.int32() >>> 0;
  return [word(), word(), word(), word()];
}

/** Avalanche finaliser of MurmurHash3 (Appleby, public domain constants). */
function mix(word: number): number {
  let h = word | 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/** One well-mixed unsigned 32-bit word from two labels. */
export function mixWords(label1: number, label2: number): number {
  return mix(mix(label1 + 0x9e3779b9) ^ (label2 + 0x7f4a7c15));
}

/** xoshiro128** 1.1 (Blackman & Vigna 2021, ACM TOMS 47:36): 32-bit outputs, period 2^128 - 1. */
export class RandomStream {
  private a = 1;
  private b = 0;
  private c = 0;
  private d = 0;

  /** Starts the stream of one state: the work's key and up to three integer labels. */
  restart(key: StreamKey, label1: number, label2 = 0, label3 = 0): void {
    this.a = mix(key[0] ^ mix(label1 + 0x9e3779b9) ^ mix(label3 + 0x3c6ef372));
    this.b = mix(key[1] ^ mix(label2 + 0x7f4a7c15) ^ this.a);
    this.c = mix(key[2] ^ mix(label3 + 0x94d049bb) ^ this.b);
    this.d = mix(key[3] ^ this.c);
    if ((this.a | this.b | this.c | this.d) === 0) this.a = 1;
  }

  /** Uniform over the integers 0 .. 2^32 - 1. */
  nextUint32(): number {
    const times5 = Math.imul(this.b, 5);
    const result = Math.imul((times5 << 7) | (times5 >>> 25), 9) >>> 0;
    const t = this.b << 9;
    this.c ^= this.a;
    this.d ^= this.b;
    this.b ^= this.c;
    this.a ^= this.d;
    this.c ^= t;
    this.d = (this.d << 11) | (this.d >>> 21);
    return result;
  }

  /** Uniform on (0, 1), never 0 or 1. */
  nextUniform(): number {
    return (this.nextUint32() + 0.5) / 4294967296;
  }
}
