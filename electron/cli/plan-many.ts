/**
 * `npm run --silent plan-many`: plans every hole of every course in a folder for one player, one JSON file a hole. A second
 * run does only what is missing or was planned from something else: a file's key names all that its figures depend on.
 */

import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile } from 'node:fs/promises';
import { join, parse } from 'node:path';
import { dayKey } from '../../core/conditions/day-words.ts';
import { DEFAULT_SEED } from '../../core/plan/prepare.ts';
import { faultLine } from '../../core/result.ts';
import { nodeDisk } from '../files/disk.ts';
import { replaceFile } from '../files/replace.ts';
import { EXIT, optionalText, readArguments, requiredText, Stop, wholeNumber } from './command.ts';
import { DAY_OPTIONS, DAY_USAGE, readDay } from './day-options.ts';
import { eachReply } from './hole-pool.ts';
import { type InputVersion, readCourse, readPlayer } from './inputs.ts';
import { planDocument } from './plan-document.ts';
import type { ManyReply, ManyTask, ManyWorkerData } from './plan-many-task.ts';
import { PROGRAM_VERSION } from './version.ts';

const USAGE = `usage: npm run --silent plan-many -- --courses FOLDER --player FILE --to FOLDER
       [--workers N] [--seed S]
Plans every hole of every course file (.geojson) in the folder, from its first tee, into FOLDER/COURSE-HOLE.json.
Run it again after an interruption: what is there and still holds is left alone.
${DAY_USAGE}`;

/** A hole to plan, and where its answer goes. */
interface Piece {
  readonly task: ManyTask;
  readonly file: string;
  readonly key: string;
  readonly course: InputVersion;
}

export async function planMany(args: readonly string[]): Promise<void> {
  const text = { type: 'string' } as const;
  const values = readArguments(
    args,
    { courses: text, player: text, to: text, workers: text, seed: text, ...DAY_OPTIONS },
    USAGE,
  );
  const folder = requiredText(values, 'courses', USAGE);
  const to = requiredText(values, 'to', USAGE);
  const player = await readPlayer(requiredText(values, 'player', USAGE));
  const conditions = await readDay(values, USAGE);
  const seed = optionalText(values, 'seed') ?? DEFAULT_SEED;
  const workers =
    values['workers'] === undefined
      ? undefined
      : wholeNumber(values, 'workers', { lowest: 1, highest: 64 }, USAGE);
  const notes: string[] = [];
  const pieces: Piece[] = [];
  for (const name of await courseFiles(folder)) {
    try {
      const course = await readCourse(join(folder, name));
      const key = keyOf([
        PROGRAM_VERSION,
        course.version.sha256,
        player.version.sha256,
        seed,
        dayKey(conditions),
      ]);
      for (const { number } of course.value.holes) {
        pieces.push({
          task: {
            courseFile: join(folder, name),
            sha256: course.version.sha256,
            hole: number,
            seed,
            conditions,
          },
          file: join(to, `${parse(name).name}-${number}.json`),
          key: `${key}-${number}`,
          course: course.version,
        });
      }
    } catch (error) {
      // One course that cannot be read keeps nobody from the others.
      if (!(error instanceof Stop)) throw error;
      notes.push(...error.lines);
    }
  }
  await mkdir(to, { recursive: true });
  const waiting: Piece[] = [];
  for (const piece of pieces) if ((await keyIn(piece.file)) !== piece.key) waiting.push(piece);
  process.stderr.write(`${pieces.length} holes, ${pieces.length - waiting.length} of them planned before\n`);
  await planPieces(waiting, player.text, player.version, workers, notes);
  process.stdout.write(`${pieces.length - notes.length} holes are planned in ${to}\n`);
  if (notes.length > 0) throw new Stop(EXIT.badInput, notes);
}

async function planPieces(
  waiting: readonly Piece[],
  playerText: string,
  player: InputVersion,
  workers: number | undefined,
  notes: string[],
): Promise<void> {
  const begun = performance.now();
  let done = 0;
  const data: ManyWorkerData = { playerText };
  const keep = async (reply: ManyReply, index: number): Promise<void> => {
    const { file, key, course, task } = waiting[index]!;
    if (reply.result.ok) {
      const inputs = { program: PROGRAM_VERSION, course, player };
      const document = { key, ...planDocument(reply.result.value, task.seed, inputs) };
      await replaceFile(nodeDisk, file, new TextEncoder().encode(`${JSON.stringify(document, null, 1)}\n`));
    } else {
      notes.push(`${task.courseFile}: ${faultLine(reply.result.error)}`);
    }
    done += 1;
    const minutes = ((performance.now() - begun) / done) * ((waiting.length - done) / 60_000);
    process.stderr.write(
      `planned ${done} of ${waiting.length} holes, about ${Math.ceil(minutes)} min left\n`,
    );
  };
  // Each answer is on disk before its worker takes the next hole, so memory holds no more than one a worker.
  await eachReply<ManyReply>(
    { name: 'plan-many-worker', data },
    waiting.map(({ task }) => task),
    keep,
    workers,
  );
}

async function courseFiles(folder: string): Promise<string[]> {
  let names: string[];
  try {
    names = await readdir(folder);
  } catch {
    throw new Stop(EXIT.badInput, [`${folder}: error: there is no such folder. Check the path.`]);
  }
  const courses = names.filter((name) => name.endsWith('.geojson')).sort();
  if (courses.length === 0)
    throw new Stop(EXIT.badInput, [`${folder}: error: it has no course file (.geojson). Put some there.`]);
  return courses;
}

function keyOf(parts: readonly string[]): string {
  return createHash('sha256').update(parts.join('\n')).digest('hex').slice(0, 32);
}

/** The key in a file written before; null where there is none or it is not whole. */
async function keyIn(file: string): Promise<string | null> {
  try {
    const document: unknown = JSON.parse(await readFile(file, 'utf8'));
    return typeof document === 'object' && document !== null && 'key' in document
      ? String(document.key)
      : null;
  } catch {
    return null;
  }
}
