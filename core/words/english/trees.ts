/** Ways out of trees. */

export const trees = {
  gap: ({ degrees }: { readonly degrees: string }) => `gap ${degrees}`,
  ways: {
    forwards: 'forwards',
    sideways: 'sideways',
    backwards: 'backwards',
  },
  passages: {
    open: 'no tree in the way',
    under: 'below the branches',
    over: 'over the tops',
    through: 'through leaves and twigs',
  },
  opening: {
    none: 'No opening there for this club',
    open: 'Open to both sides',
    gap: ({ degrees }: { readonly degrees: string }) => `A gap of ${degrees}`,
  },
  gapWords: ({
    opening,
    spread,
    chance,
  }: {
    readonly opening: string;
    readonly spread: string;
    readonly chance: string;
  }) =>
    `${opening}; two of three of your strikes stay within ${spread}. ${chance} of solid strikes get through.`,
  needs: 'needs',
  stayBelow: 'stay below',
  clearance: ({
    asks,
    height,
    at,
    club,
    has,
    sd,
  }: {
    readonly asks: string;
    readonly height: string;
    readonly at: string;
    readonly club: string;
    readonly has: string;
    readonly sd: string;
  }) => `${asks} ${height} at ${at}; your ${club} has ${has} ± ${sd}`,
  swungClub: ({ swing, club }: { readonly swing: string; readonly club: string }) => `${swing} ${club}`,
  waysOut: 'Ways out of the trees',
  outOfTrees: 'Out of the trees',
  chooseBelow: 'Choose a shot below to see how it passes the trees.',
  looking: 'Looking at the trees around the ball.',
  onceWorkedOut: 'The ways out are compared once the hole is worked out in full.',
  noClub: 'No club of the bag is played from here: see the drops below.',
  none: 'none',
  openGap: 'open',
  columns: {
    way: 'Way out',
    gap: 'Gap / yours',
    through: 'Through',
    strokes: 'Strokes',
  },
  tryIt: 'Try it',
  note: 'Strokes from few samples; choose one to weigh it in full as your own aim. The table below has the drops for an unplayable ball too. How thick the trees are is a guess of the map: look before you play, and never play towards people.',
};
