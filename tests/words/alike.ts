/** Entries that are the same in both languages on purpose. */
export const ALIKE: readonly string[] = [
  ...['bar.yards', 'day.wind', 'map.grounds.fairway', 'map.grounds.rough', 'map.grounds.bunker'],
  ...['plan.parIs', 'plan.par', 'plan.shortStrokeIndex', 'plan.compared.carry', 'plan.ball'],
];
