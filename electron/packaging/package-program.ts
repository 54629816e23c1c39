/**
 * `npm run package -- [--linux] [--mac] [--windows] [--dir] [--electron FOLDER]`: builds the program and packs it, for this
 * system where none is named; `--dir` leaves it unpacked, `--electron` takes Electron from a folder instead of fetching it.
 */

import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { packagingPlan, PACKAGES, STAGE } from './plan.ts';
import { stageProgram } from './stage.ts';

const ROOT = join(import.meta.dirname, '..', '..');
const HERE = import.meta.dirname;

const { values } = parseArgs({
  options: {
    linux: { type: 'boolean', default: false },
    mac: { type: 'boolean', default: false },
    windows: { type: 'boolean', default: false },
    dir: { type: 'boolean', default: false },
    electron: { type: 'string' },
  },
});

const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
const run = (program: string, args: readonly string[], cwd = ROOT): void => {
  execFileSync(program, [...args], { cwd, stdio: 'inherit', shell: program.endsWith('.cmd') });
};

const builder = join(HERE, 'node_modules', 'electron-builder', 'cli.js');
if (!existsSync(builder)) {
  console.log('Fetching the packager, once (93 MB) …');
  run(npm, ['ci', '--ignore-scripts', '--no-audit', '--no-fund'], HERE);
}
run(npm, ['run', '--silent', 'build']);
const version = stageProgram(ROOT);

const packages = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as {
  dependencies: Record<string, string>;
};
const isSigned = Boolean(process.env['CSC_LINK'] ?? process.env['WIN_CSC_LINK'] ?? process.env['CSC_NAME']);
const here = (path: string): string => join(ROOT, path);
const { directories, extraResources, linux, mac, win } = packagingPlan;
// The packager works in the folder of what is packed, so that it looks for no packages of ours: paths are made whole.
const plan = {
  ...packagingPlan,
  directories: { output: here(directories.output), buildResources: here(directories.buildResources) },
  extraResources: extraResources.map(({ from, to }) => ({ from: here(from), to })),
  linux: { ...linux, icon: here(linux.icon) },
  mac: { ...mac, icon: here(mac.icon) },
  win: { ...win, icon: here(win.icon) },
  electronVersion: packages.dependencies['electron'],
  ...(values.electron === undefined
    ? {}
    : { electronDist: resolve(process.env['INIT_CWD'] ?? '.', values.electron) }),
};
const file = join(ROOT, dirname(PACKAGES), 'packaging-plan.json');
writeFileSync(file, `${JSON.stringify(plan, null, 1)}\n`);
console.log(
  `Packing ${version}, ${isSigned ? 'signed' : 'not signed: no key is named in the environment'} …`,
);

const systems = [
  ...(values.linux ? ['--linux'] : []),
  ...(values.mac ? ['--mac'] : []),
  ...(values.windows ? ['--win'] : []),
];
if (!isSigned) process.env['CSC_IDENTITY_AUTO_DISCOVERY'] = 'false';
run(process.execPath, [
  builder,
  ...systems,
  ...(values.dir ? ['--dir'] : []),
  '--publish=never',
  `--project=${here(STAGE)}`,
  `--config=${file}`,
]);
console.log(`The packages lie in ${join(ROOT, PACKAGES)}.`);
