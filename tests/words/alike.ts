/** Entries that are the same in both languages on purpose. */
export const ALIKE: readonly string[] = [
  ...['bar.yards', 'day.wind', 'map.grounds.fairway', 'map.grounds.rough', 'map.grounds.bunker'],
  ...['plan.parIs', 'plan.par', 'plan.shortStrokeIndex', 'plan.compared.carry', 'plan.ball'],
  ...['cards.labels.budget', 'cards.labels.wind', 'cards.par', 'cards.styles.plain', 'prepare.sheet.min'],
  ...[
    'round.budget',
    'round.departure.down',
    'round.par',
    'round.putts',
    'round.score',
    'round.scores.birdie',
  ],
  ...[
    'round.scores.bogey',
    'round.scores.eagle',
    'round.scores.par',
    'round.table.index',
    'round.target.slope',
  ],
  ...['faults.table.fields.carry', 'player.bag.name', 'player.club.loft', 'player.compare.carry'],
  ...['player.compare.score', 'player.handicap', 'player.kinds.driver', 'player.kinds.hybrid'],
  ...['player.kinds.putter', 'player.kinds.wedge', 'player.name', 'player.person.hand'],
  ...['player.table.carry', 'player.table.carrySpread', 'shortGame.log.putts', 'shortGame.saves.chance'],
  ...[
    'shortGame.saves.kinds.chip',
    'shortGame.saves.kinds.pitch',
    'shots.columns.carry',
    'shots.conditions.wind',
  ],
  ...['shots.mapping.fields.carry'],
];
