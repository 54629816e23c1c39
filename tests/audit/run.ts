/**
 * `npm run audit [-- --tell]`: asks the registry for known holes in what the program is made of. Exits with 1 for high and critical
 * ones; with `--tell` never, since what others publish overnight makes no change of ours wrong. Offline it says so.
 */

import { spawnSync } from 'node:child_process';
import { verdictOf } from './verdict.ts';

const LIMIT_MS = 20_000;
const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
const asked = spawnSync(npm, ['audit', '--omit=dev', '--json', '--fetch-retries=0'], {
  encoding: 'utf8',
  timeout: LIMIT_MS,
  stdio: ['ignore', 'pipe', 'ignore'],
  shell: npm.endsWith('.cmd'),
});
const { line, isBad } = verdictOf(asked.stdout);
console.log(line);
process.exitCode = isBad && !process.argv.includes('--tell') ? 1 : 0;
