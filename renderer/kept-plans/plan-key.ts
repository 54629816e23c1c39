/**
 * Names a plan by everything that it was made from: the engine, the machine's arithmetic, and the very messages that went to the
 * worker. Equal names, equal plans; whatever a worker is given one day in addition is in the name from that day on.
 */

import type { HoleTask, PlannerApi } from '../workers/planner-api.ts';

/** What `open` gives to a worker: the texts of course and player. */
export type OpenedFiles = Readonly<Parameters<PlannerApi['open']>>;

export interface Engine {
  /** Names the sources that the page was built from. */
  readonly sources: string;
  /** Names the browser: another one may round a sine another way. */
  readonly browser: string;
}

/** SHA-256, hex. The task's own name is left out: it says nothing that the rest does not. */
export async function planKey(engine: Engine, files: OpenedFiles, task: HoleTask): Promise<string> {
  const texts = await Promise.all(files.map(hashOfFile));
  return sha256(canonical([engine, texts, { ...task, key: undefined }]));
}

/** JSON with the members of each object in the order of their names, so that equal values make equal texts. */
export function canonical(value: unknown): string {
  return JSON.stringify(value, (_name, part: unknown) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}

/** A course is large and its hash is asked for with every hole. */
const hashes = new Map<string, Promise<string>>();
const MOST_HASHES = 4;

function hashOfFile(text: string): Promise<string> {
  const known = hashes.get(text);
  if (known !== undefined) return known;
  const hash = sha256(text);
  const [oldest] = hashes.keys();
  if (hashes.size >= MOST_HASHES && oldest !== undefined) hashes.delete(oldest);
  hashes.set(text, hash);
  return hash;
}

async function sha256(text: string): Promise<string> {
  const bytes = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text)));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
