/**
 * Which packages of others the program is made of, and under which licences: read off the lock file, so that the list
 * says what is really installed. Tools that only start or build the program are left out.
 */

import type { Language } from '../../core/words/language.ts';

/** What the lock file (npm, version 3) says of one package. */
export interface LockedPackage {
  readonly version?: string;
  readonly license?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly optional?: boolean;
}

export interface Lock {
  readonly packages: Readonly<Record<string, LockedPackage>>;
}

export interface PackageUsed {
  readonly name: string;
  readonly version: string;
  /** SPDX expression. */
  readonly licence: string;
  /** Folder from the top of the project. */
  readonly folder: string;
}

/** Start the program from its sources; no part of a packed one, or one with texts of its own. */
const NOT_BUILT_IN: ReadonlySet<string> = new Set(['tsx', 'electron']);

/** What these packages' own lists leave out or misspell; read in their licence files. */
const KNOWN: Readonly<Record<string, string>> = {
  arc: 'BSD-2-Clause',
  'png-js': 'MIT',
  'splaytree-ts': 'BSD-3-Clause',
};

/** Everything that the program's own dependencies lead to, in the order of names and versions. */
export function packagesUsed(
  lock: Lock,
  known: Readonly<Record<string, string>> = KNOWN,
): readonly PackageUsed[] {
  const found = new Map<string, PackageUsed>();
  const visit = (from: string): void => {
    for (const name of Object.keys(lock.packages[from]?.dependencies ?? {})) {
      if (from === '' && NOT_BUILT_IN.has(name)) continue;
      const folder = resolveFrom(lock, from, name);
      // One that this system has no use for is not in the lock file's tree.
      if (folder === null || found.has(folder)) continue;
      const { version = '', license } = lock.packages[folder] ?? {};
      found.set(folder, { name, version, licence: known[name] ?? license ?? 'not stated', folder });
      visit(folder);
    }
  };
  visit('');
  return [...found.values()].sort((a, b) => (a.name + a.version < b.name + b.version ? -1 : 1));
}

/** As Node looks for a package: in the folder's own `node_modules`, then in those above. */
function resolveFrom(lock: Lock, from: string, name: string): string | null {
  for (let folder = from; ; folder = folder.slice(0, Math.max(0, folder.lastIndexOf('node_modules/') - 1))) {
    const tried = `${folder === '' ? '' : `${folder}/`}node_modules/${name}`;
    if (tried in lock.packages) return tried;
    if (folder === '') return null;
  }
}

/** The page that people read: one row a package, those of one family under one licence together. */
export function licencesPage(used: readonly PackageUsed[], language: Language = 'en'): string {
  const rows = new Map<
    string,
    { readonly name: string; readonly licence: string; readonly versions: Set<string>; count: number }
  >();
  for (const { name, version, licence } of used) {
    const family = /^(@[^/]+)\//u.exec(name)?.[1];
    const shown = family !== undefined && FAMILIES.has(family) ? `${family}/…` : name;
    const row = rows.get(`${shown} ${licence}`) ?? {
      name: shown,
      licence,
      versions: new Set<string>(),
      count: 0,
    };
    row.versions.add(version);
    row.count += 1;
    rows.set(`${shown} ${licence}`, row);
  }
  const lines = [...rows.values()].map(({ name, licence, versions, count }) => {
    const many = name.endsWith('…') ? ` (${count})` : '';
    return `| ${name}${many} | ${[...versions].join(', ')} | ${licence.replace(/^\((.*)\)$/u, '$1')} |`;
  });
  const { introduction, columns } = PAGE[language];
  return `${introduction}

| ${columns.join(' | ')} |
| --- | --- | --- |
${lines.join('\n')}
`;
}

const FAMILIES: ReadonlySet<string> = new Set(['@turf', '@noble', '@types']);

const PAGE: Readonly<
  Record<Language, { readonly introduction: string; readonly columns: readonly string[] }>
> = {
  en: {
    columns: ['package', 'version', 'licence'],
    introduction: `# Licences

Holewright is free software under the MIT licence. It is made with the packages of others listed here, each under its own
licence; a packed program carries all their texts in \`LICENCES.txt\`, and in the source tree each lies in its package's
folder. Electron brings the texts of Chromium, Node and their parts along.

This page is written by \`npm run licences\` from the lock file.`,
  },
  de: {
    columns: ['Paket', 'Version', 'Lizenz'],
    introduction: `# Lizenzen

Holewright ist freie Software unter der MIT-Lizenz. Es enthält die hier genannten Pakete anderer, jedes unter seiner eigenen
Lizenz; ein gepacktes Programm führt alle Texte in \`LICENCES.txt\` mit, und im Quellordner liegt jeder beim Paket.
Electron bringt die Texte von Chromium, Node und deren Teilen mit.

Diese Seite schreibt \`npm run licences\` aus der Liste der installierten Pakete.`,
  },
};

/** All licence texts, one after the other. `read` gives a folder's file names and a file's text. */
export function licenceTexts(
  used: readonly PackageUsed[],
  read: { readonly names: (folder: string) => readonly string[]; readonly text: (path: string) => string },
): string {
  const parts = used.map(({ name, version, licence, folder }) => {
    const files = read
      .names(folder)
      .filter((file) => /^(?:[\w-]*licen[cs]e|copying|notice)[\w.-]*$/iu.test(file));
    const texts = files.map((file) => read.text(`${folder}/${file}`).trim());
    const said =
      texts.length > 0 ? texts.join('\n\n') : `Its package says: ${licence}. It comes without a text of it.`;
    return `${name} ${version}: ${licence}\n\n${said}\n`;
  });
  return parts.join(`\n${'-'.repeat(72)}\n\n`);
}
