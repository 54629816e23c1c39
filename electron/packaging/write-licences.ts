/** `npm run licences`: writes the list of licences that the program shows, from the lock file. */

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { licencesPage, type Lock, packagesUsed } from './licences.ts';

const ROOT = join(import.meta.dirname, '..', '..');
const lock = JSON.parse(readFileSync(join(ROOT, 'package-lock.json'), 'utf8')) as Lock;
const used = packagesUsed(lock);
const help = join(ROOT, 'renderer', 'help');
writeFileSync(join(help, 'licences.md'), licencesPage(used));
writeFileSync(join(help, 'german', 'licences.md'), licencesPage(used, 'de'));
console.log(`${used.length} packages`);
