/** Gathers what an import leaves out, so that a thousand buildings become one line. */

import { type Said, sayIn, told } from '../../words/told.ts';
import type { LeftOut } from './proposal.ts';

const MOST_EXAMPLES = 3;
/** Beyond this many sorts the rest is told in one line. */
const MOST_SORTS = 200;

export class LeftOutList {
  readonly #sorts = new Map<string, { what: Said; why: Said; count: number; examples: Said[] }>();

  add(what: Said, why: Said, example: Said): void {
    const full = this.#sorts.size >= MOST_SORTS;
    const asked = `${sayIn(what)}\n${sayIn(why)}`;
    const key = full && !this.#sorts.has(asked) ? 'rest' : asked;
    let sort = this.#sorts.get(key);
    if (sort === undefined) {
      sort =
        key === 'rest'
          ? {
              what: told(({ courseImport }) => courseImport.things.others),
              why: told(({ courseImport }) => courseImport.why.manySorts),
              count: 0,
              examples: [],
            }
          : { what, why, count: 0, examples: [] };
      this.#sorts.set(key, sort);
    }
    sort.count++;
    if (sort.examples.length < MOST_EXAMPLES) sort.examples.push(example);
  }

  list(): LeftOut[] {
    return [...this.#sorts.values()].map(({ what, why, count, examples }) => ({
      what: sayIn(what),
      why: sayIn(why),
      count,
      examples: examples.map((example) => sayIn(example)),
      told: { what, why, examples },
    }));
  }
}
