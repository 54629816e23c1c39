/** Folders and files whose words are still in their source. This list only ever grows shorter. */
export const NOT_YET: readonly string[] = [
  'renderer/bag/',
  'renderer/drawing/',
  'core/conditions/',
  'core/course/',
  'core/plan/',
  'core/player/',
  'core/putting/',
  'core/round/',
  'electron/',
];

/** Where texts are read by machines only, and why. */
export const NOT_FOR_PEOPLE: readonly string[] = [];
