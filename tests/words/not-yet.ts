/** Folders and files whose words are still in their source. This list only ever grows shorter. */
export const NOT_YET: readonly string[] = ['core/conditions/', 'core/course/', 'core/plan/', 'core/round/'];

/** Where texts are read by machines only, or are what a file holds, and why. */
export const NOT_FOR_PEOPLE: readonly string[] = [
  // Names of columns in a table that is read in again; of a new player's clubs, which the player may rename.
  ...['core/player/csv/export.ts', 'core/player/csv/sniff.ts', 'core/player/presets.ts'],
  // Commands and logs speak English, and so do the programs that build and start this one.
  ...['electron/cli/', 'electron/launcher/', 'electron/packaging/', 'electron/vite.config.ts'],
  // Free of core: its refusals stand in the catalogue as well, word for word; the rest only code asks for.
  ...['electron/contract/', 'electron/main/page-scheme.ts'],
  // Two pages around words of the catalogue.
  'electron/loopback/start-page.ts',
  // Refusals that only code asks for.
  ...['core/player/drift.ts', 'core/player/short-game.ts'],
];
