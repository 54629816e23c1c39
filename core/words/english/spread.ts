/** What shots say of a club, in sentences: average, spread, lean, gaps between clubs, change over time, how a shot counts. */

import { figures } from './figures.ts';

const { counted, plural } = figures;

const lengths = { one: 'yard', other: 'yards' };
const metres = { one: 'metre', other: 'metres' };

export const spread = {
  /** As it stands after a number. */
  lengthUnit: {
    yards: ({ count }: { readonly count: number }) => plural(count, lengths),
    metres: ({ count }: { readonly count: number }) => plural(count, metres),
  },
  unit: { yards: 'yards', metres: 'metres' },
  clubSwing: ({ club, swing }: { readonly club: string; readonly swing: string }) =>
    `${club}, ${swing} swing`,
  sides: { left: 'left', right: 'right' },
  rung: ({
    club,
    carry,
    low,
    high,
    unit,
    doubt,
  }: {
    readonly club: string;
    readonly carry: string;
    readonly low: string;
    readonly high: string;
    readonly unit: string;
    readonly doubt: string;
  }) =>
    `${club} carries ${carry} ${unit} on average, half of its solid strikes between ${low} and ${high}.${doubt}`,
  rungDoubt: ({ low, high }: { readonly low: string; readonly high: string }) =>
    ` The average itself lies between ${low} and ${high} nine times in ten.`,
  gaps: {
    wide: ({
      longer,
      shorter,
      apart,
    }: {
      readonly longer: string;
      readonly shorter: string;
      readonly apart: string;
    }) => `${apart} lie between ${longer} and ${shorter}: lengths in between need a shorter swing.`,
    narrow: ({
      longer,
      shorter,
      apart,
      times,
    }: {
      readonly longer: string;
      readonly shorter: string;
      readonly apart: string;
      readonly times: number;
    }) =>
      `${longer} and ${shorter} lie ${apart} apart: ${times} times in a hundred the longer of the two comes down shorter.`,
    turned: ({ longer, shorter }: { readonly longer: string; readonly shorter: string }) =>
      `${longer} carries no farther than ${shorter}, though it has less loft.`,
  },
  degrees: {
    left: ({ degrees }: { readonly degrees: string }) => `${degrees}° left`,
    right: ({ degrees }: { readonly degrees: string }) => `${degrees}° right`,
  },
  noLean: ({ club }: { readonly club: string }) => `${club} has no lean`,
  leans: ({ club, side }: { readonly club: string; readonly side: string }) => `${club} leans ${side}`,
  leanDoubt: ({ low, high }: { readonly low: string; readonly high: string }) =>
    `; nine times in ten the lean lies between ${low} and ${high}`,
  lean: ({
    main,
    doubt,
    within,
  }: {
    readonly main: string;
    readonly doubt: string;
    readonly within: string;
  }) => `${main}${doubt}. Two in three solid strikes start within ${within}° of it.`,
  pattern: {
    onLine: 'on the line of aim',
    left: ({ length }: { readonly length: string }) => `${length} left of the aim`,
    right: ({ length }: { readonly length: string }) => `${length} right of the aim`,
    longRight: ' Longer ones tend to the right, shorter ones to the left.',
    longLeft: ' Longer ones tend to the left, shorter ones to the right.',
    noShots: 'No measured shots stand behind this.',
    shots: ({ count }: { readonly count: number }) =>
      `${counted(count, { one: 'measured shot stands', other: 'measured shots stand' })} behind this.`,
    hardlyPoor: 'Hardly any strike is',
    poor: ({ percent }: { readonly percent: number }) => `${percent} in a hundred strikes are`,
    all: ({
      club,
      carry,
      side,
      halfAlong,
      halfAcross,
      mostAlong,
      mostAcross,
      lean,
      poor,
      poorCarry,
      basis,
    }: {
      readonly club: string;
      readonly carry: string;
      readonly side: string;
      readonly halfAlong: string;
      readonly halfAcross: string;
      readonly mostAlong: string;
      readonly mostAcross: string;
      readonly lean: string;
      readonly poor: string;
      readonly poorCarry: string;
      readonly basis: string;
    }) =>
      `${club}: solid strikes carry ${carry} on average and come down ${side}. Half of them lie within ${halfAlong} short or long and ${halfAcross} to either side of that, nine in ten within ${mostAlong} and ${mostAcross}.${lean} ${poor} poor; these carry about ${poorCarry}. ${basis}`,
  },
  drift: {
    less: ({
      club,
      by,
      period,
      low,
      high,
    }: {
      readonly club: string;
      readonly by: string;
      readonly period: string;
      readonly low: string;
      readonly high: string;
    }) => `${club} carries ${by} less than in ${period} (90 % interval ${low} to ${high}).`,
    more: ({
      club,
      by,
      period,
      low,
      high,
    }: {
      readonly club: string;
      readonly by: string;
      readonly period: string;
      readonly low: string;
      readonly high: string;
    }) => `${club} carries ${by} more than in ${period} (90 % interval ${low} to ${high}).`,
    yearBefore: ({ day }: { readonly day: string }) => `the year before ${day}`,
  },
  counted: {
    notCounted: ({ why }: { readonly why: string }) => `Not counted: ${why}`,
    asMeasured: 'As measured.',
    becomes: ({
      length,
      side,
      where,
      was,
    }: {
      readonly length: string;
      readonly side: string;
      readonly where: string;
      readonly was: string;
    }) => `${length}, ${side} ${where}; it was hit ${was}.`,
    goodLie: 'from a good lie',
    stillAir: 'in still air at 15 °C at sea level',
    from: {
      good: 'from a good lie',
      rough: 'from rough',
      longRough: 'from long rough',
      bunker: 'from sand',
      woods: 'from under trees',
      penalty: 'from a penalty area',
    },
    wind: ({ wind, side }: { readonly wind: string; readonly side: string }) => `in ${wind} of wind${side}`,
    temperature: ({ temperature }: { readonly temperature: string }) => `at ${temperature}`,
    altitude: ({ metres: height }: { readonly metres: string }) => `at ${height} m above the sea`,
  },
  /** Where a wind came from, clockwise from ahead. */
  windSides: {
    '0': 'from ahead',
    '1': 'from ahead on the right',
    '2': 'from the right',
    '3': 'from behind on the right',
    '4': 'from behind',
    '5': 'from behind on the left',
    '6': 'from the left',
    '7': 'from ahead on the left',
  },
  doubts: {
    lie: ({ lie }: { readonly lie: string }) => `the lie “${lie}” is not known; it is taken as a good one`,
    'wind-side': 'there was wind, but it is not said from which side it came',
    wind: ({ wind, most }: { readonly wind: number; readonly most: number }) =>
      `a wind of ${wind} m/s is beyond the flight model, which goes up to ${most}`,
    temperature: ({
      temperature,
      coldest,
      hottest,
    }: {
      readonly temperature: number;
      readonly coldest: number;
      readonly hottest: number;
    }) => `${temperature} °C is beyond the flight model, which goes from ${coldest} to ${hottest}`,
    altitude: ({ altitude, most }: { readonly altitude: number; readonly most: number }) =>
      `${altitude} m above the sea is beyond the flight model, which goes up to ${most}`,
    flight: 'wind and air change this club’s usual shot by more than the flight model can be trusted with',
  },
  leftOut: {
    'shot-of-unknown-club': ({ club }: { readonly club: string }) =>
      `"${club}" is not in the bag. Add the club to the bag, or correct its name in the shots.`,
    'shot-of-unknown-swing': ({ club }: { readonly club: string }) =>
      `the bag does not list this swing for the ${club}. Add the swing to the club in the bag.`,
    'shot-of-putter': ({ club }: { readonly club: string }) =>
      `the ${club} is a putter. Give putting by its two spreads instead.`,
    'part-shot-unused': ({ club }: { readonly club: string }) =>
      `part swings with the ${club} have no intended length. Add intendedM; until then they are taken from its full swing.`,
    'shot-from-bad-lie': ({ club }: { readonly club: string }) =>
      `with the ${club} from a lie whose effect on that swing is not known. They are kept, and tell nothing of the club itself.`,
    'shot-without-direction': ({ club }: { readonly club: string }) =>
      `no direction with the ${club}. Add offlineM or directionDeg.`,
    'shot-impossible': ({ club }: { readonly club: string }) =>
      `the ${club} carried less than 1 m, or landed farther off line than it carried. Check the readings.`,
  },
  someLeftOut: ({ count, why }: { readonly count: number; readonly why: string }) =>
    `${counted(count, { one: 'shot', other: 'shots' })} left out: ${why}`,
  someAsMeasured: ({
    count,
    club,
    why,
  }: {
    readonly count: number;
    readonly club: string;
    readonly why: string;
  }) => `${counted(count, { one: 'shot', other: 'shots' })} with the ${club} counted as measured: ${why}.`,
  andMore: ({ place, count }: { readonly place: string; readonly count: number }) =>
    `${place} and ${count} more`,
  level: ({ handicap, group }: { readonly handicap: string; readonly group: string }) =>
    `handicap ${handicap}, ${group}`,
  levelGroups: {
    men: 'men',
    women: 'women',
    'senior-men': 'senior men',
    'senior-women': 'senior women',
    juniors: 'juniors',
  },
};
