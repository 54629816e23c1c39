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
  // Names of stages of work, by which the window works out how far it is.
  ...['core/plan/level-solver.ts', 'core/plan/odds.ts', 'core/plan/solve.ts'],
  ...['core/plan/spread-doubt.ts', 'core/plan/value-of-shots.ts'],
  // Descriptions in the JSON Schema of the round file; columns of a tally by name; a seed.
  ...['core/conditions/conditions.ts', 'core/round/ledger.ts', 'core/round/split-shot.ts'],
  // Names that are English in files and plans, whoever made them; `placeName` tells them where they are shown.
  ...['core/course/assumed-places.ts', 'core/course/assemble.ts', 'core/course/defaults.ts'],
  'core/course/completeness.ts',
  // Markup around words of the catalogue.
  'core/course/export/hole-svg.ts',
  // What a file calls its own things, and whom its licence asks to be named.
  ...['core/course/import/osm-data.ts', 'core/course/import/osm.ts'],
  // Refusals that only code asks for.
  ...['core/player/drift.ts', 'core/player/short-game.ts'],
];
