/** The cards to carry, the card of the round, and the sheet of the day: on screen, on paper and as PDF. */

import { figures } from './figures.ts';

const { counted } = figures;

export const cards = {
  landmarks: {
    flag: 'the flag',
    green: 'the green',
    bunker: {
      one: 'the bunker',
      near: 'the near bunker',
      far: 'the far bunker',
      at: ({ length }: { readonly length: string }) => `the bunker at ${length}`,
    },
    water: {
      one: 'the penalty area',
      near: 'the near penalty area',
      far: 'the far penalty area',
      at: ({ length }: { readonly length: string }) => `the penalty area at ${length}`,
    },
    woods: {
      one: 'the trees',
      near: 'the near trees',
      far: 'the far trees',
      at: ({ length }: { readonly length: string }) => `the trees at ${length}`,
    },
    tree: {
      one: 'the single tree',
      near: 'the near single tree',
      far: 'the far single tree',
      at: ({ length }: { readonly length: string }) => `the single tree at ${length}`,
    },
  },
  sight: {
    leftEdge: ({ name }: { readonly name: string }) => `left edge of ${name}`,
    rightEdge: ({ name }: { readonly name: string }) => `right edge of ${name}`,
    middle: ({ name }: { readonly name: string }) => `middle of ${name}`,
    leftOf: ({ length, point }: { readonly length: string; readonly point: string }) =>
      `${length} left of the ${point.replace(/^the /u, '')}`,
    rightOf: ({ length, point }: { readonly length: string; readonly point: string }) =>
      `${length} right of the ${point.replace(/^the /u, '')}`,
    leftThirdGreen: 'left third of the green',
    rightThirdGreen: 'right third of the green',
    middleGreen: 'middle of the green',
    leftThirdFairway: 'left third of the fairway',
    rightThirdFairway: 'right third of the fairway',
    middleFairway: 'middle of the fairway',
    straight: 'straight at the hole',
    rightOfLine: ({ length }: { readonly length: string }) => `${length} right of the line to the hole`,
    leftOfLine: ({ length }: { readonly length: string }) => `${length} left of the line to the hole`,
  },
  bad: {
    places: {
      woods: 'trees',
      bunker: 'bunker',
      longRough: 'long rough',
      penaltyYellow: 'yellow penalty area',
      penaltyRed: 'red penalty area',
      outOfBounds: 'out of bounds',
    },
    left: ({ place }: { readonly place: string }) => `${place} left`,
    right: ({ place }: { readonly place: string }) => `${place} right`,
    again: 'play again from the tee, one penalty stroke',
    dropBeside: 'drop beside where it crossed, one penalty stroke',
    dropBack: 'drop back on the line from hole to crossing, one penalty stroke',
    then: ({ drop, shot }: { readonly drop: string; readonly shot: string }) => `${drop}; then ${shot}`,
    unplayableLateral: 'unplayable: drop to the side, one penalty stroke',
    unplayableBack: 'unplayable: drop back on the line, one penalty stroke',
    club: ({
      club,
      manner,
      length,
    }: {
      readonly club: string;
      readonly manner: string;
      readonly length: string;
    }) => `${club}${manner}, ${length}`,
    manner: ({ swing }: { readonly swing: string }) => swing,
    atHole: ({ club }: { readonly club: string }) => `${club} at the hole`,
    toFairway: 'to the fairway',
    out: 'out',
    backwards: ({ club, where }: { readonly club: string; readonly where: string }) =>
      `${club} backwards ${where}`,
    sideways: ({ club, where }: { readonly club: string; readonly where: string }) =>
      `${club} sideways ${where}`,
    leftOfHole: ({
      club,
      where,
      degrees,
    }: {
      readonly club: string;
      readonly where: string;
      readonly degrees: number;
    }) => `${club} ${where}, ${degrees}° left of the hole`,
    rightOfHole: ({
      club,
      where,
      degrees,
    }: {
      readonly club: string;
      readonly where: string;
      readonly degrees: number;
    }) => `${club} ${where}, ${degrees}° right of the hole`,
  },
  carries: {
    bunker: 'bunker',
    'penalty-yellow': 'yellow penalty area',
    'penalty-red': 'red penalty area',
    line: ({
      hazard,
      where,
      near,
      far,
    }: {
      readonly hazard: string;
      readonly where: string;
      readonly near: number;
      readonly far: number;
    }) => `${hazard}${where} ${near}, over ${far}`,
    left: 'left',
    right: 'right',
    runOut: ({ length, into }: { readonly length: number; readonly into: string }) =>
      `fairway ends ${length}, then ${into}`,
  },
  into: {
    rough: 'rough',
    fairway: 'fairway',
    green: 'green',
    tee: 'tee',
    path: 'path',
    longRough: 'long rough',
    woods: 'trees',
    bunker: 'sand',
    penaltyYellow: 'the yellow penalty area',
    penaltyRed: 'the red penalty area',
    outOfBounds: 'out of bounds',
  },
  labels: {
    play: 'Play',
    aim: 'Aim',
    miss: 'Miss',
    fromTee: ({ unit }: { readonly unit: string }) => `From the tee (${unit})`,
    leaves: 'Leaves',
    hole: 'Hole',
    budget: 'Budget',
    wind: 'Wind',
    day: 'Day',
    remember: 'Remember',
    why: 'Why',
    green: 'Green',
  },
  clubCarry: ({ club, carry }: { readonly club: string; readonly carry: string }) =>
    `${club}, carry ${carry}`,
  clubSwing: ({ club, swing }: { readonly club: string; readonly swing: string }) => `${club}, ${swing}`,
  ownChoice: 'Your own choice.',
  leave: ({ median, low, high }: { readonly median: string; readonly low: string; readonly high: string }) =>
    `${median} left (8 of 10: ${low} to ${high})`,
  safe: {
    same: 'Left and right cost about the same.',
    left: ({ cost }: { readonly cost: string }) =>
      `Miss left of this aim: the same miss right costs ${cost} more.`,
    right: ({ cost }: { readonly cost: string }) =>
      `Miss right of this aim: the same miss left costs ${cost} more.`,
  },
  paces: ({ count }: { readonly count: number }) => counted(count, { one: 'pace', other: 'paces' }),
  greenLeft: ({ on, side, deep }: { readonly on: string; readonly side: string; readonly deep: string }) =>
    `${on} on, ${side} from left; green ${deep} deep`,
  greenRight: ({ on, side, deep }: { readonly on: string; readonly side: string; readonly deep: string }) =>
    `${on} on, ${side} from right; green ${deep} deep`,
  boxes: {
    score: 'score',
    putts: 'putts',
    teeClub: 'tee club',
    ended: 'ended',
  },
  greenNote:
    'Green at 1:480 or smaller, page no larger than 4 1/4 x 7 in (Rule 4.3a). Where a local rule forbids such pictures (G-11), leave it in the bag.',
  greenLimit: 'Where a local rule forbids such pictures (G-11), leave it in the bag.',
  playFromBelow: ({ limit }: { readonly limit: string }) => `Play from below. ${limit}`,
  playFromBelowMark: 'play from below',
  greenNotDrawn:
    'Not drawn: with a green on it a page in play may be no larger than 4 1/4 x 7 in (Rule 4.3a).',
  greenTooLarge: ({ scale, least }: { readonly scale: number; readonly least: number }) =>
    `The green is drawn at 1:${scale}; Rule 4.3a allows 1:${least} or smaller. Draw it smaller or leave it out.`,
  pageTooLarge: ({ width, height }: { readonly width: number; readonly height: number }) =>
    `The page is ${width} x ${height} mm; with a picture of a green it may be no larger than 108 x 178 mm (4 1/4 x 7 in). Cut it, choose smaller paper or leave the green out.`,
  greenPictureName: 'green picture',
  cardOf: ({ hole }: { readonly hole: number }) => `Card of hole ${hole}`,
  par: ({ par }: { readonly par: number }) => `Par ${par}`,
  index: ({ index }: { readonly index: number }) => `index ${index}`,
  tee: ({ tee }: { readonly tee: string }) => `tee ${tee}`,
  holeAt: ({ position }: { readonly position: string }) => `hole ${position}`,
  expected: ({ strokes }: { readonly strokes: string }) => `${strokes} expected`,
  playFor: ({ strokes }: { readonly strokes: number }) => `play for ${strokes}`,
  onAverage: ({ strokes }: { readonly strokes: string }) => `${strokes} on average`,
  title: 'Cards to carry',
  someMade: ({ made, total }: { readonly made: number; readonly total: number }) =>
    `${made} of ${total} cards are made; the others come as their holes are worked out. What you print now lacks them.`,
  allMade: ({ count }: { readonly count: number }) =>
    `${count === 1 ? 'The card is' : `All ${count} cards are`} made. Print at full size (100 %): the scale on each card is true only then.`,
  fileName: ({ course }: { readonly course: string }) => `Cards, ${course}`,
  pdfTitle: ({ course }: { readonly course: string }) => `Strategy cards, ${course}`,
  booklet:
    'Print on both sides, turned on the long edge; cut the sheets in two across, fold each half upright, and lay them into each other.',
  paper: 'Paper',
  style: 'Style',
  styles: {
    plain: 'Normal',
    'ink-saving': 'Ink-saving',
    'large-print': 'Large print',
  },
  papers: {
    a4: 'A4, four cards to cut',
    letter: 'Letter, four cards to cut',
    a6: 'A6 pocket paper',
    'booklet-a4': 'Booklet on A4: cut once, fold once',
    'booklet-letter': 'Booklet on Letter: cut once, fold once',
  },
  holes: 'Holes',
  allHoles: 'All, with a card of the round',
  holeOption: ({ number }: { readonly number: number }) => `Hole ${number}`,
  greens: 'Pictures of the greens (leave out where a local rule forbids them)',
  estimates: 'Odds are estimates. Check distances on the course; local rules come first.',
  estimatesLong: 'Estimates from the player’s shots. Check distances on the course; local rules come first.',
  oddsLine: ({
    target,
    chance,
    expected,
    low,
    high,
  }: {
    readonly target: number;
    readonly chance: string;
    readonly expected: string;
    readonly low: number;
    readonly high: number;
  }) => `${target} or fewer: ${chance}; ${expected} expected, 8 of 10 from ${low} to ${high}.`,
  oddsLineLong: ({
    target,
    chance,
    expected,
    low,
    high,
  }: {
    readonly target: number;
    readonly chance: string;
    readonly expected: string;
    readonly low: number;
    readonly high: number;
  }) => `${target} or fewer: ${chance}. Expected ${expected}; 8 of 10 rounds from ${low} to ${high}.`,
  greenAt: ({ hole, scale }: { readonly hole: number; readonly scale: number }) =>
    `Green of hole ${hole} at 1:${scale}`,
  holeAtScale: ({ hole, scale }: { readonly hole: number; readonly scale: number }) =>
    `Hole ${hole} at 1:${scale}`,
  tooLong: 'The hole is too long to be drawn on this paper. Choose larger paper.',
  tooLongShort: 'The hole is too long to be drawn on this paper.',
  sheet: ({ number }: { readonly number: number }) => `Sheet ${number}`,
  overview: {
    table: 'Table of the whole round',
    card: 'Card of the whole round',
    head: ({ player, tee }: { readonly player: string; readonly tee: string }) => `${player} · tee ${tee}`,
    hole: 'hole',
    par: 'par',
    index: 'ind.',
    play: 'play',
    for: 'for',
    score: 'score',
    putts: 'putts',
    club: 'club',
    sum: 'sum',
  },
  print: 'Print',
  savePdf: 'Save as PDF',
  writtenTo: ({ where }: { readonly where: string }) => `Written to ${where}.`,
  key: {
    fairway: 'fairway',
    green: 'green',
    bunker: 'sand',
    woods: 'trees',
    'long-rough': 'long rough',
    'penalty-red': 'red penalty area',
    'penalty-yellow': 'yellow penalty area',
    'out-of-bounds': 'out of bounds',
  },
};
