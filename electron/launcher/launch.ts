/** `npm start`: builds what is stale, then opens the program in Electron's window or, failing that, in the browser. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { programPlaces } from '../pages/places.ts';
import { readArguments, usage, type Wanted } from './arguments.ts';
import { buildWhereStale } from './build.ts';
import { findElectron, surroundings } from './electron-binary.ts';
import { type Ran, runElectron } from './run-electron.ts';
import { runLoopback } from './run-loopback.ts';

const say = (line: string): void => {
  console.log(line);
};

async function launch(): Promise<number> {
  // npm runs scripts in the project's folder and tells here where the person was.
  const read = readArguments(process.argv.slice(2), process.env['INIT_CWD'] ?? process.cwd());
  if (!read.ok) {
    console.error(`${read.error}\n\n${usage}`);
    return 2;
  }
  const wanted = read.value;
  if (wanted.showsHelp) {
    say(usage);
    return 0;
  }
  const places = programPlaces(import.meta.dirname);
  const { version } = JSON.parse(readFileSync(join(places.root, 'package.json'), 'utf8')) as {
    version: string;
  };
  const fault = await buildWhereStale(places.root, 'page', say);
  if (fault !== null) {
    console.error(fault);
    return 1;
  }
  if (!wanted.mustUseBrowser) {
    const ran = await tryElectron(places.root, wanted);
    if (ran.kind === 'ended') return ran.code;
    say(`Electron cannot be used here (${ran.reason}): opening the same program in your browser.`);
  }
  return runLoopback(places, wanted, version, surroundings, say);
}

async function tryElectron(root: string, wanted: Wanted): Promise<Ran> {
  const program = await findElectron(root, surroundings, say);
  if (!program.ok) return { kind: 'never-opened', reason: program.error };
  const unbuilt = await buildWhereStale(root, 'electron', say);
  if (unbuilt !== null) return { kind: 'never-opened', reason: unbuilt };
  return runElectron(program.value, root, wanted);
}

process.exitCode = await launch();
