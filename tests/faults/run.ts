/**
 * `npm run faults -- [--saves N] [--seed TEXT] [--json FILE]`: a program that saves is killed in the middle of N saves, at
 * random moments; then the checks of full, failing, read-only and lost disks, removed and exchanged files and clocks that
 * jump are run. Exits with 1 where anything acknowledged was lost or a check failed.
 */

import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { parseArgs } from 'node:util';
import seedrandom from 'seedrandom';
import { build } from 'vite';
import { openFileStore } from '../../electron/files/store.ts';
import { textNumber, versionText } from './versions.ts';

const ROOT = join(import.meta.dirname, '..', '..');

const { values } = parseArgs({
  options: {
    saves: { type: 'string', default: '1000' },
    seed: { type: 'string', default: 'faults' },
    json: { type: 'string' },
  },
});
const kills = Number(values.saves);
if (!Number.isInteger(kills) || kills < 1)
  throw new Error(`--saves takes a whole number, not ${values.saves}`);

/** Files of checks, and what each stands for in the table. */
const CHECKS: readonly (readonly [string, string])[] = [
  ['full disk (small tmpfs)', 'tests/electron/files/full-disk.test.ts'],
  ['disk that fails or a kill at each single step', 'tests/electron/files/faults.test.ts'],
  ['read-only, full and lost drives under way', 'tests/electron/files/troubles.test.ts'],
  ['journal: kills, cuts, damage, power cut', 'tests/electron/files/journal.test.ts'],
  ['changes and hosts killed in a row', 'tests/electron/files/crash.test.ts'],
  ['files removed, exchanged, changed by others; kept copies', 'tests/electron/files/store.test.ts'],
  ['locks: crashes, sleep, clocks that differ', 'tests/electron/files/lock.test.ts'],
];

interface Row {
  readonly what: string;
  readonly cases: number;
  readonly failures: number;
  readonly note: string;
}

/** How long a save has taken of late, as seen from outside. */
let usualMs = 20;
const folder = mkdtempSync(join(tmpdir(), 'holewright-faults-'));
const rows: Row[] = [];
try {
  rows.push(await killSaves());
  for (const [what, file] of CHECKS) rows.push(runChecks(what, file));
} finally {
  rmSync(folder, { recursive: true, force: true });
}
const failures = rows.reduce((sum, row) => sum + row.failures, 0);
console.log(`${failures} failures, seed ${values.seed}`);
if (values.json !== undefined)
  writeFileSync(values.json, `${JSON.stringify({ seed: values.seed, rows, failures }, null, 1)}\n`);
process.exitCode = failures === 0 ? 0 : 1;

function tell(row: Row): Row {
  console.log(
    `${row.what}: ${row.cases} cases, ${row.failures} failures${row.note === '' ? '' : `; ${row.note}`}`,
  );
  return row;
}

/** Made into one plain file first: a thousand starts through a loader would take most of an hour. */
async function childProgram(): Promise<string> {
  await build({
    root: ROOT,
    configFile: false,
    logLevel: 'error',
    build: {
      ssr: join(import.meta.dirname, 'save-child.ts'),
      outDir: join(folder, 'program'),
      emptyOutDir: true,
      target: 'node20',
      rolldownOptions: { output: { entryFileNames: 'save-child.mjs' } },
    },
    ssr: { noExternal: true },
  });
  return join(folder, 'program', 'save-child.mjs');
}

async function killSaves(): Promise<Row> {
  const program = await childProgram();
  const workspace = join(folder, 'workspace');
  const path = join(workspace, 'a.geojson');
  const store = await openFileStore({ workspace, demoFolder: null });
  if (!store.ok) throw new Error(store.message);
  writeFileSync(path, versionText(0));
  const random = seedrandom(values.seed);
  const files = await store.value.list();
  const { token } = (files.ok ? files.value[0] : undefined)!;
  let failed = 0;
  let reached = 0;
  let saves = 0;
  let number = 0;
  for (let kill = 0; kill < kills; kill++) {
    // Within the first saves of a run, at a random moment of one or shortly after it.
    const during = 1 + Math.floor(random() * 3);
    const { acknowledged, begun } = await runAndKill(
      program,
      workspace,
      number + during,
      random() * 1.3 * usualMs,
    );
    saves += begun - number;
    const amiss = await whatIsAmiss(path, acknowledged ?? number, begun);
    if (amiss !== null) {
      failed++;
      console.log(`FAILED kill ${kill}: ${amiss}`);
    }
    if ((kill + 1) % 100 === 0) console.log(`${kill + 1} of ${kills} killed, ${failed} failures so far`);
    const now = textNumber(readFileSync(path, 'utf8'));
    if (now === begun && now !== acknowledged) reached++;
    number = now;
  }
  const note = `${saves} saves begun; ${reached} killed after the new text had taken the old one’s place, before it was acknowledged`;
  return tell({ what: 'kill -9 in the middle of a save', cases: kills, failures: failed, note });

  async function whatIsAmiss(file: string, least: number, most: number): Promise<string | null> {
    const text = readFileSync(file, 'utf8');
    let found: number;
    try {
      found = textNumber(text);
    } catch {
      return `the file is cut off or damaged (${text.length} characters)`;
    }
    if (text !== versionText(found)) return `the file is a mixture, number ${found}`;
    if (found < least || found > most)
      return `it holds number ${found}; ${least} was acknowledged, ${most} begun`;
    // The next start: the file alone is listed and every kept copy is whole.
    const next = await openFileStore({ workspace, demoFolder: null });
    if (!next.ok) return `the next start fails: ${next.message}`;
    const listed = await next.value.list();
    if (!listed.ok || listed.value.length !== 1) return 'the list of files is another';
    const copies = await next.value.copies(token);
    if (!copies.ok) return `the copies cannot be listed: ${copies.message}`;
    for (const { keptAt } of copies.value) {
      const copy = await next.value.openCopy(token, keptAt);
      if (!copy.ok || copy.value.text !== versionText(textNumber(copy.value.text)))
        return 'a kept copy is damaged';
    }
    const others = readdirSync(workspace).filter((name) => !name.startsWith('.') && name !== 'a.geojson');
    return others.length === 0 ? null : `left lying about: ${others.join(', ')}`;
  }
}

interface Ran {
  readonly acknowledged: number | null;
  readonly begun: number;
}

function runAndKill(program: string, workspace: string, during: number, delayMs: number): Promise<Ran> {
  const child = spawn(process.execPath, [program, workspace], { stdio: ['ignore', 'pipe', 'inherit'] });
  let acknowledged: number | null = null;
  let begun = 0;
  let since = 0;
  const lines = createInterface({ input: child.stdout });
  lines.on('line', (line) => {
    const [what, number] = line.split(' ');
    if (what === 'saved') {
      acknowledged = Number(number);
      usualMs += 0.05 * (performance.now() - since - usualMs);
    }
    if (what !== 'begins') return;
    begun = Number(number);
    since = performance.now();
    if (begun === during) setTimeout(() => child.kill('SIGKILL'), delayMs);
  });
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (_, signal) => {
      if (signal === 'SIGKILL') resolve({ acknowledged, begun });
      else reject(new Error('the saving program ended by itself'));
    });
  });
}

function runChecks(what: string, file: string): Row {
  const json = join(folder, 'checks.json');
  spawnSync(
    process.execPath,
    [join(ROOT, 'node_modules/vitest/vitest.mjs'), 'run', '--reporter=json', `--outputFile=${json}`, file],
    {
      cwd: ROOT,
      stdio: 'ignore',
    },
  );
  const told = JSON.parse(readFileSync(json, 'utf8')) as Record<
    'numTotalTests' | 'numFailedTests' | 'numPendingTests' | 'numPassedTests',
    number
  > & { readonly success: boolean };
  rmSync(json);
  const skipped = told.numPendingTests;
  return tell({
    what,
    cases: told.numTotalTests - skipped,
    // A file that cannot be loaded has no tests, and none that fail.
    failures: told.success ? 0 : Math.max(1, told.numFailedTests),
    note: `${file}${skipped === 0 ? '' : `; ${skipped} skipped: root is needed to mount a small disk`}`,
  });
}
