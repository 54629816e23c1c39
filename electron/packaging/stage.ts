/** Puts together what is to be packed: the built program with a package list of its own, and the demo files beside it. */

import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { licenceTexts, type Lock, packagesUsed } from './licences.ts';
import {
  DEMO_FILES,
  LICENCES_FILE,
  LOADED_PACKAGE,
  LOADED_PARTS,
  PROGRAM_PARTS,
  STAGE,
  STAGED_DEMO,
} from './plan.ts';

interface ProgramFacts {
  readonly name: string;
  readonly version: string;
  readonly description: string;
  readonly license: string;
  readonly main: string;
  readonly dependencies: Readonly<Record<string, string>>;
}

/** Returns the version. `root` is the top of the project, built. */
export function stageProgram(root: string): string {
  const app = join(root, STAGE);
  const demo = join(root, STAGED_DEMO);
  for (const folder of [app, demo]) {
    rmSync(folder, { recursive: true, force: true });
    mkdirSync(folder, { recursive: true });
  }
  for (const part of PROGRAM_PARTS) {
    mkdirSync(dirname(join(app, part)), { recursive: true });
    cpSync(join(root, part), join(app, part), { recursive: true });
  }
  const loaded = join('node_modules', LOADED_PACKAGE);
  for (const part of LOADED_PARTS) cpSync(join(root, loaded, part), join(app, loaded, part));
  for (const file of DEMO_FILES) cpSync(join(root, 'maps', file), join(demo, file));
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as Lock;
  const texts = licenceTexts(packagesUsed(lock), {
    names: (folder) => (existsSync(join(root, folder)) ? readdirSync(join(root, folder)) : []),
    text: (path) => readFileSync(join(root, path), 'utf8'),
  });
  writeFileSync(join(app, LICENCES_FILE), texts);
  const { name, version, description, license, main, dependencies } = JSON.parse(
    readFileSync(join(root, 'package.json'), 'utf8'),
  ) as ProgramFacts;
  const facts = {
    name,
    productName: 'Holewright',
    version,
    description,
    license,
    main,
    author: 'Holewright',
    dependencies: { [LOADED_PACKAGE]: dependencies[LOADED_PACKAGE] },
  };
  writeFileSync(join(app, 'package.json'), `${JSON.stringify(facts, null, 2)}\n`);
  return version;
}
