/** Gathers what an import leaves out, so that a thousand buildings become one line. */

import type { LeftOut } from './proposal.ts';

const MOST_EXAMPLES = 3;
/** Beyond this many sorts the rest is told in one line. */
const MOST_SORTS = 200;

export class LeftOutList {
  readonly #sorts = new Map<string, { what: string; why: string; count: number; examples: string[] }>();

  add(what: string, why: string, example: string): void {
    const full = this.#sorts.size >= MOST_SORTS;
    const asked = `${what}\n${why}`;
    const key = full && !this.#sorts.has(asked) ? 'rest' : asked;
    let sort = this.#sorts.get(key);
    if (sort === undefined) {
      sort =
        key === 'rest'
          ? { what: 'other things', why: 'of too many sorts to be listed one by one', count: 0, examples: [] }
          : { what, why, count: 0, examples: [] };
      this.#sorts.set(key, sort);
    }
    sort.count++;
    if (sort.examples.length < MOST_EXAMPLES) sort.examples.push(example);
  }

  list(): LeftOut[] {
    return [...this.#sorts.values()];
  }
}
