/**
 * What the packager (electron-builder) is told: what goes in, the fuses, installers, icons, files that open with the program.
 * Keys for signing are read by the packager itself from the environment (`CSC_LINK`, `CSC_KEY_PASSWORD`, `WIN_CSC_LINK`,
 * `APPLE_API_KEY` and others of its documentation); none stands here, and without them nothing is signed.
 */

/** Sizes of the pictures in `icons/`, pixels: freedesktop.org's icon theme, and the packager's for Windows and macOS. */
export const ICON_SIZES = [16, 24, 32, 48, 64, 128, 256, 512, 1024] as const;

/** Folders: what is put together to be packed, the demo beside it, and where packages come to lie. */
export const STAGE = 'out/app';
export const STAGED_DEMO = 'out/app-demo';
export const PACKAGES = 'out/packages';
export const ICONS = 'electron/packaging/icons';

/** What the program is made of; the build has bundled whatever it uses of other packages, but for one. */
export const PROGRAM_PARTS = ['dist/electron', 'dist/renderer', 'LICENSE'] as const;
/** The package that is found at run time, and what of it is needed there. */
export const LOADED_PACKAGE = '@sqlite.org/sqlite-wasm';
export const LOADED_PARTS = [
  'package.json',
  'node.mjs',
  'sqlite-wasm/jswasm/sqlite3-node.mjs',
  'sqlite-wasm/jswasm/sqlite3.wasm',
] as const;
/** The texts of all licences, in the archive and beside it. */
export const LICENCES_FILE = 'LICENCES.txt';
/** Beside the archive, since files in it cannot be told from links and opened as plain ones. */
export const DEMO_FILES = ['demo-course.geojson', 'demo-player.json', 'scratch-player.json'] as const;

/** Files that open with the program; `Alternate`, since a map may well belong to a program for maps. */
const COURSE_FILES = {
  ext: 'geojson',
  name: 'Course map',
  mimeType: 'application/geo+json',
  role: 'Editor',
  rank: 'Alternate',
} as const;
/** Endings of two parts are known to Linux alone; on other systems plain `.json` would be taken from everybody. */
const LINUX_FILES = [
  { ext: 'player.json', name: 'Holewright player', mimeType: 'application/vnd.holewright.player+json' },
  { ext: 'round.json', name: 'Holewright round or plan', mimeType: 'application/vnd.holewright.round+json' },
] as const;

/** Paths are from the top of the project. */
export const packagingPlan = {
  appId: 'app.holewright.planner',
  productName: 'Holewright',
  copyright: 'MIT licence',
  directories: { output: PACKAGES, buildResources: ICONS },
  files: ['**/*'],
  extraResources: [
    { from: STAGED_DEMO, to: 'maps' },
    { from: `${STAGE}/${LICENCES_FILE}`, to: LICENCES_FILE },
  ],
  asar: true,
  npmRebuild: false,
  // No update is ever looked for, so nothing is published from here either.
  publish: null,
  electronFuses: {
    runAsNode: false,
    enableNodeOptionsEnvironmentVariable: false,
    enableNodeCliInspectArguments: false,
    enableCookieEncryption: true,
    enableEmbeddedAsarIntegrityValidation: true,
    onlyLoadAppFromAsar: true,
    loadBrowserProcessSpecificV8Snapshot: false,
    grantFileProtocolExtraPrivileges: false,
  },
  fileAssociations: [COURSE_FILES],
  linux: {
    target: ['AppImage', 'deb'],
    category: 'Sports',
    synopsis: 'Plans golf holes from your own measured shots',
    executableName: 'holewright',
    fileAssociations: [COURSE_FILES, ...LINUX_FILES],
    maintainer: 'Holewright <holewright@example.invalid>',
    icon: ICONS,
    desktop: { entry: { StartupWMClass: 'Holewright', Keywords: 'golf;course;strategy;' } },
  },
  mac: {
    target: ['dmg'],
    category: 'public.app-category.sports',
    icon: `${ICONS}/icon.icns`,
    hardenedRuntime: true,
    gatekeeperAssess: false,
  },
  win: { target: ['nsis'], icon: `${ICONS}/icon.ico` },
  nsis: { oneClick: false, perMachine: false, allowToChangeInstallationDirectory: true },
} as const;
