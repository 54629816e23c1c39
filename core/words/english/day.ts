/** The day: wind, air, ground, season, local rules, in words and on its panel. */

export const day = {
  day: 'Day',
  close: 'Close',
  change: 'Change',
  numberFromTo: ({ least, most }: { readonly least: string; readonly most: string }) =>
    `A number from ${least} to ${most}.`,
  firmness: {
    soft: 'Soft',
    medium: 'Medium',
    firm: 'Firm',
  },
  seasons: {
    leaf: 'In leaf',
    bare: 'Bare',
  },
  temperature: 'Temperature',
  height: 'Height above the sea',
  greenSpeed: 'Green speed (Stimpmeter)',
  ground: 'Ground',
  firmnessOfGround: 'Firmness of the ground',
  trees: 'Trees',
  backToOrdinary: 'Back to an ordinary day',
  forEveryHole: 'For every hole of this course, until you change it. Thunder heard: leave the course.',
  wind: 'Wind',
  comesFrom: 'comes from',
  gusts: 'Gusts, ±',
  giveASpeed: 'The knob stands where the wind comes from, north at the top. Give a speed to feel it.',
  windNote: ({ from, here }: { readonly from: string; readonly here: string }) =>
    `From the ${from}${here}. Two of three shots meet a wind within ± the gusts.`,
  onThisHole: ({ wind }: { readonly wind: string }) => `; on this hole ${wind}`,
  windComesFrom: 'Wind comes from',
  dialValue: ({ point, degrees }: { readonly point: string; readonly degrees: number }) =>
    `the ${point}, ${degrees} degrees`,
  plannedFor: ({ day }: { readonly day: string }) =>
    `Planned for this day: ${day}. Change it here or under Plan.`,
  steps: {
    temperature: ({ value }: { readonly value: string }) => `temperature ${value}`,
    height: 'height above the sea',
    greenSpeed: ({ feet }: { readonly feet: string }) => `green speed ${feet} ft`,
    bare: 'bare trees',
    leaf: 'trees in leaf',
    ordinary: 'back to an ordinary day',
    windFrom: ({ point }: { readonly point: string }) => `wind from the ${point}`,
    wind: ({ speed }: { readonly speed: string }) => `wind ${speed}`,
    gusts: ({ speed }: { readonly speed: string }) => `gusts ± ${speed}`,
    inForce: ({ rule }: { readonly rule: string }) => `${rule} in force`,
    notInForce: ({ rule }: { readonly rule: string }) => `${rule} not in force`,
  },
  localRules: ({ which }: { readonly which: string }) => `Local rules: ${which}`,
  noneInForce: 'none in force',
  inForce: ({ rules }: { readonly rules: string }) => `${rules} in force`,
  onlyWhereMade: 'Only where the committee has made them; its own text is what counts.',
  rules: {
    strokeAndDistanceAlternative: {
      name: 'Alternative to stroke and distance (Model Local Rule E-5)',
      label: 'Local Rule E-5',
      text: 'A ball lost or out of bounds may be dropped for two penalty strokes between where it is thought to be and the nearest edge of the fairway, not nearer the hole, instead of playing again.',
    },
    preferredLies: {
      name: 'Preferred lies (Model Local Rule E-3)',
      label: 'preferred lies (E-3)',
      text: 'A ball on grass cut to fairway height may be lifted, cleaned and placed nearby, not nearer the hole, without penalty.',
    },
  },
  parts: {
    still: 'still air',
    hardlyAny: ({ gusts }: { readonly gusts: string }) => `hardly any wind${gusts}`,
    gusts: ({ speed }: { readonly speed: string }) => `, gusts ± ${speed}`,
    wind: ({
      speed,
      point,
      gusts,
    }: {
      readonly speed: string;
      readonly point: string;
      readonly gusts: string;
    }) => `wind ${speed} from the ${point}${gusts}`,
    altitude: ({ height }: { readonly height: string }) => `${height} above the sea`,
    humidity: ({ percent }: { readonly percent: number }) => `humidity ${percent} %`,
    ground: {
      soft: 'soft ground',
      medium: 'medium ground',
      firm: 'firm ground',
    },
    greens: ({ feet }: { readonly feet: string }) => `greens ${feet} ft`,
    bare: 'bare trees',
    ruleE5: 'Local Rule E-5',
    ruleE3: 'preferred lies (E-3)',
  },
  ordinary: ({ temperature, feet }: { readonly temperature: string; readonly feet: string }) =>
    `An ordinary day: still air, ${temperature}, medium ground, greens ${feet} ft`,
  /** The day that a played round keeps. */
  ofRound: {
    label: 'Day of the round',
    under: ({ day }: { readonly day: string }) => `Played under this day: ${day}.`,
    none: 'No day is noted: the round is held against an ordinary day.',
    take: 'Note the day that is set now',
    step: 'note the day of the round',
    working: ({ done, total }: { readonly done: number; readonly total: number }) =>
      `Holes are worked out for the day of the round: ${done} of ${total} compared`,
    stop: 'Stop',
    stopped: 'Stopped: holes that are not worked out for the day of the round are compared by their totals.',
    goOn: 'Go on',
  },
  /** Rounds once kept weather of their own beside the plan's day. */
  oneDay: {
    step: 'the round’s own weather',
    title: 'The round’s own weather has joined the day',
    temperature: ({ own, plan }: { readonly own: number; readonly plan: number }) =>
      `The round had ${own} °C, the day has ${plan} °C: the day’s stays.`,
    greenSpeed: ({ own, plan }: { readonly own: number; readonly plan: number }) =>
      `The round had greens of ${own} ft, the day has ${plan} ft: the day’s stays.`,
    wind: ({ point }: { readonly point: string }) =>
      `The round had a wind from the ${point}, the day has another: the day’s stays.`,
    windWithoutSpeed: ({ point }: { readonly point: string }) =>
      `The round had a wind from the ${point} without a speed: give one, and plan and cards reckon with it.`,
  },
  windOn: {
    into: 'into',
    behind: 'behind',
    intoLeft: 'into, from the left',
    intoRight: 'into, from the right',
    behindLeft: 'behind, from the left',
    behindRight: 'behind, from the right',
    acrossLeft: 'across, from the left',
    acrossRight: 'across, from the right',
  },
};
