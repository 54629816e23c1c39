/** How far the day may change before the recommendation does. */

interface At {
  readonly at: string;
}

export const sensitivity = {
  title: 'How far the day may change',
  intro:
    'One condition at a time, for this shot; later shots are reckoned as today. A change counts where it saves more than chance and your margin can explain.',
  workingOut: 'Trying other days',
  stop: 'Stop',
  stopped: 'Stopped.',
  again: 'Try again',
  waiting: 'Told as soon as the hole is worked out in full.',
  noClub: 'A putt or a drop is recommended: another day changes no club.',
  now: ({ value }: { readonly value: string }) => `${value} now`,
  /** A line of the strip as it is read aloud or printed. */
  line: ({ name, now, said }: { readonly name: string; readonly now: string; readonly said: string }) =>
    `${name}: ${now} now; ${said}.`,
  conditions: {
    'wind-along': 'Wind along the shot',
    'wind-across': 'Wind across it',
    temperature: 'Temperature',
    firmness: 'Ground',
    'green-speed': 'Green speed',
    season: 'Trees',
  },
  none: 'no wind',
  against: ({ speed }: { readonly speed: string }) => `${speed} against`,
  behind: ({ speed }: { readonly speed: string }) => `${speed} behind`,
  fromLeft: ({ speed }: { readonly speed: string }) => `${speed} from the left`,
  fromRight: ({ speed }: { readonly speed: string }) => `${speed} from the right`,
  ground: { soft: 'soft', medium: 'medium', firm: 'firm' },
  trees: { leaf: 'in leaf', bare: 'bare' },
  swings: {
    full: '',
    'three-quarter': ' three-quarter',
    half: ' half',
    punch: ' punch',
    part: ' part swing',
    'curved-left': ' curved left',
    'curved-right': ' curved right',
  },
  takesOver: ({ club, at }: At & { readonly club: string }) => `from ${at} the ${club} takes over`,
  saves: ({ gain, error }: { readonly gain: string; readonly error: string }) =>
    ` (saves ${gain} ± ${error})`,
  savesAt: ({ gain, error, at }: At & { readonly gain: string; readonly error: string }) =>
    ` (saves ${gain} ± ${error} at ${at})`,
  notAhead: ({ at }: At) => ` (no longer ahead at ${at})`,
  aimLeft: ({ degrees, at }: At & { readonly degrees: number }) => `from ${at} aim ${degrees}° further left`,
  aimRight: ({ degrees, at }: At & { readonly degrees: number }) =>
    `from ${at} aim ${degrees}° further right`,
  noChange: ({ from, to }: { readonly from: string; readonly to: string }) =>
    `nothing changes from ${from} to ${to}`,
  noStep: 'no other changes the recommendation',
  legend: 'Filled: the recommendation stays. Dots: the aim turns. Stripes: another club. The line is today.',
};
