/** Folders and files whose words are still in their source. This list only ever grows shorter. */
export const NOT_YET: readonly string[] = [
  'renderer/bag/',
  'renderer/drawing/',
  'renderer/round/',
  'renderer/print/',
  'renderer/host/',
  'core/',
  'electron/',
];

/** Where texts are read by machines only, and why. */
export const NOT_FOR_PEOPLE: readonly string[] = [];
