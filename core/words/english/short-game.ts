/** Short game and putting in the Player room: part swings, putts, up and downs. */

import { figures } from './figures.ts';

const { counted } = figures;

export const shortGame = {
  putting: {
    hardly: ({ what, tell }: { readonly what: string; readonly tell: string }) =>
      ` The record hardly tells the error of ${what} yet: it leans on what is expected. ${tell}`,
    errors: { direction: 'direction', length: 'length', both: 'direction and of length' },
    name: 'Putting',
    direction: 'Direction ±',
    length: 'Length ±',
    caption: 'Chance to hole by distance',
    chance: 'Chance to hole',
    longTell: 'Putts of 20 feet and more tell most.',
    shortTell: 'Putts of 3 to 10 feet tell most.',
    restsOnPutts: ({ putts, more }: { readonly putts: number; readonly more: string }) =>
      `From ${putts} putts on record, by maximum likelihood; below each number the interval that holds the truth nine times in ten.${more}`,
    stated: 'As the file states it, not from putts on record. The test takes ten minutes.',
    preset: ({ source }: { readonly source: string }) =>
      `From the ${source}: not your putts. The test takes ten minutes.`,
  },
  saves: {
    kinds: { chip: 'Chip', pitch: 'Pitch', bunker: 'Bunker by the green' },
    small: { chip: 'chip', pitch: 'pitch', bunker: 'bunker' },
    name: 'Up and downs',
    title: 'Up and down',
    fromA: 'From a',
    onRecord: 'On record',
    chance: 'Chance, %',
    saved: 'Saved',
    of: ({ saved, tries }: { readonly saved: number; readonly tries: number }) => `${saved} of ${tries}`,
    takeOut: ({ kind }: { readonly kind: string }) => `Take out the record from a ${kind}`,
    takeOutStep: ({ kind }: { readonly kind: string }) => `take out up-and-downs from a ${kind}`,
    triedFrom: ({ kind }: { readonly kind: string }) => `Tried from a ${kind}`,
    savedFrom: ({ kind }: { readonly kind: string }) => `Saved from a ${kind}`,
    add: ({ kind }: { readonly kind: string }) => `Add up-and-downs from a ${kind}`,
    addStep: ({ kind }: { readonly kind: string }) => `add up-and-downs from a ${kind}`,
  },
  parts: {
    name: 'Part swings',
    none: 'No club is used for part swings. Tick “part, by feel” for a wedge under “Clubs”.',
    caption: 'Standard deviation of carry by the length asked for',
    carry: ({ unit }: { readonly unit: string }) => `Carry ±, ${unit}, when asked for`,
    howTo:
      'To measure them: choose a length, hit, and type the shot with swing “part” and the length under “Intended”. From eight shots on they count; wedges with fewer share theirs.',
  },
  log: {
    distanceFault: ({ most, unit }: { readonly most: number; readonly unit: string }) =>
      `The distance is a number from 1 to ${most} ${unit}.`,
    pastFault: 'Where it stopped is a number: past the hole, or short of it with a minus.',
    addStep: 'add a green to the log',
    name: 'Putting log',
    title: 'Log of greens',
    firstFrom: ({ unit }: { readonly unit: string }) => `First putt from, ${unit}`,
    putts: 'Putts',
    stopped: ({ unit }: { readonly unit: string }) => `First one stopped, ${unit} past (− short)`,
    optional: 'optional',
    greens: ({ count }: { readonly count: number }) => counted(count, { one: 'green', other: 'greens' }),
    count: ({ greens }: { readonly greens: string }) => `${greens} in the log.`,
    last: 'Last greens in the log',
    takeOut: ({ green }: { readonly green: string }) => `Take out ${green}`,
    takeOutStep: 'take a green out of the log',
  },
  add: 'Add',
  puttCount: ({ count }: { readonly count: number }) => counted(count, { one: 'putt', other: 'putts' }),
  takeOut: 'take out',
  from: 'From',
  test: {
    name: 'Ten-minute test',
    explain:
      'On a level part of the practice green, from another side of the hole each time, one putt per try. Fill in what you did; distances without a number under “holed” are left out.',
    addStep: 'add a putting test',
    tried: 'Tried',
    holed: 'Holed',
    triedFrom: ({ feet }: { readonly feet: number }) => `Tried from ${feet} ft`,
    holedFrom: ({ feet }: { readonly feet: number }) => `Holed from ${feet} ft`,
    record: 'Record this test',
    onRecord: 'Tests on record',
    undated: 'without a date',
    takeOut: ({ day }: { readonly day: string }) => `Take out the test ${day}`,
    takeOutStep: 'take out a putting test',
  },
};
