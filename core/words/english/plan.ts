/** The planning room: holes at the side, advice, options, comparison, the ball and one's own aim. */

import { figures } from './figures.ts';

const { counted } = figures;

export const plan = {
  holes: 'Holes',
  holeWord: 'Hole',
  parIs: ({ par }: { readonly par: number }) => `Par ${par}`,
  par: 'Par',
  theWholeCourse: 'The whole course',
  holeNamed: ({ number, name }: { readonly number: number; readonly name: string }) =>
    `Hole ${number}: ${name}`,
  waiting: 'waiting',
  cannotBePlanned: 'cannot be planned',
  stopped: 'stopped',
  workingOut: 'Working out',
  strokeIndex: ({ index }: { readonly index: number }) => `stroke index ${index}`,
  shortStrokeIndex: ({ index }: { readonly index: number }) => `SI ${index}`,
  inventedDemo: 'invented demo',
  tee: 'Tee',
  playFromTees: ({ name }: { readonly name: string }) => `play from the ${name} tees`,
  holePosition: 'Hole position',
  positionTaken: ({ name, hole }: { readonly name: string; readonly hole: number }) =>
    `hole position ${name} on hole ${hole}`,
  whereYouPutIt: 'where you put it',
  courseFacts: ({ holes, par }: { readonly holes: number; readonly par: number }) =>
    `${counted(holes, { one: 'hole', other: 'holes' })}, par ${par}`,
  choosePlayer: 'Choose a player to plan the holes.',
  allWorkedOut: ({ total }: { readonly total: number }) =>
    total === 1 ? 'The hole is worked out.' : `All ${total} holes are worked out.`,
  someWorkedOut: ({
    ready,
    total,
    failed,
  }: {
    readonly ready: number;
    readonly total: number;
    readonly failed: number;
  }) => `${ready} of ${total} holes are worked out; ${failed} cannot be planned.`,
  holesReady: ({ ready, total }: { readonly ready: number; readonly total: number }) =>
    `${ready} of ${total} holes ready`,
  stoppedReady: ({ ready, total }: { readonly ready: number; readonly total: number }) =>
    `Stopped, ${ready} of ${total} ready`,
  stop: 'Stop',
  goOn: 'Go on',
  holesWorkedOut: 'Holes worked out',
  plan: 'Plan',
  holeCannotBePlanned: 'This hole cannot be planned.',
  roughWhileMoving: 'Rough while it moves; worked out in full when you let go.',
  stoppedRough: 'Stopped: these numbers are rough.',
  stoppedBefore: 'Stopped before this hole was worked out.',
  roughForNow: 'A rough answer for now; working out the full one',
  workingOutHole: 'Working out this hole',
  empty: {
    course: {
      title: 'No course is open',
      text: 'Bring in a course: one GeoJSON file with the holes, greens, bunkers and water drawn. Or choose the demo course from the list at the top.',
      button: 'Bring in a course file',
    },
    player: {
      title: 'Whose shots?',
      text: 'Planning needs a player: the clubs in the bag and how far they carry. Bring in a player file, or choose the sample player from the list at the top.',
      button: 'Bring in a player file',
    },
  },
  howToMakeOne: 'How to make one',
  recommendation: 'Recommendation',
  recommendedFrom: ({ where, length }: { readonly where: string; readonly length: string }) =>
    `Recommended ${where}, ${length} from the hole`,
  forThisDay: ({ day }: { readonly day: string }) => `For this day: ${day}`,
  showOnMap: 'Show it on the map',
  strokesToHoleOut: 'strokes to hole out',
  doubt: ({ low, high, chance }: { readonly low: string; readonly high: string; readonly chance: string }) =>
    `Your shots leave room for ${low} to ${high} (nine in ten); it is the lowest of all in ${chance} of the bags that fit them.`,
  announcement: ({
    hole,
    where,
    day,
    shot,
    strokes,
    reason,
  }: {
    readonly hole: number;
    readonly where: string;
    readonly day: string;
    readonly shot: string;
    readonly strokes: string;
    readonly reason: string;
  }) => `Hole ${hole}, ${where}${day === '' ? '' : `, ${day}`}: ${shot}, ${strokes} strokes. ${reason}`,
  noProvisional: ({ chance }: { readonly chance: string }) =>
    `${chance} of these shots end out of bounds. The plan then drops near the fairway for two strokes by the local rule; who plays a provisional may not.`,
  provisional: ({ chance }: { readonly chance: string }) =>
    `${chance} of these shots end out of bounds. Where yours may be out or lost, say so and play a provisional before you go forward (Rule 18.3).`,
  reason: {
    out: 'Out of bounds: play again from where the last stroke was made, under one penalty stroke.',
    none: 'No club of the bag has a shot from here that can be reckoned with: allow part swings of a club, or add a shorter one.',
    only: 'The only option from here.',
    safer: ({
      strokes,
      best,
      from,
      to,
    }: {
      readonly strokes: string;
      readonly best: string;
      readonly from: string;
      readonly to: string;
    }) =>
      `Costs ${strokes} strokes more than ${best}, too close to call, and cuts the chance of double bogey or worse from ${from} to ${to}.`,
    noSafer: ({
      other,
      theirs,
      mine,
    }: {
      readonly other: string;
      readonly theirs: string;
      readonly mine: string;
    }) =>
      `Lowest on average; ${other} is too close to call but no safer (double bogey or worse ${theirs} against ${mine}).`,
    riskier: ({
      other,
      theirs,
      mine,
    }: {
      readonly other: string;
      readonly theirs: string;
      readonly mine: string;
    }) =>
      `Lowest on average; ${other} is too close to call but riskier (double bogey or worse ${theirs} against ${mine}).`,
    hardlySafer: ({
      other,
      theirs,
      mine,
    }: {
      readonly other: string;
      readonly theirs: string;
      readonly mine: string;
    }) =>
      `Lowest on average; ${other} is too close to call but hardly safer (double bogey or worse ${theirs} against ${mine}).`,
    saves: ({
      strokes,
      error,
      next,
    }: {
      readonly strokes: string;
      readonly error: string;
      readonly next: string;
    }) => `Saves ${strokes} strokes (± ${error}) on the next best, ${next}.`,
    theClub: ({ club }: { readonly club: string }) => `the ${club}`,
    theShortClub: ({ club, swing }: { readonly club: string; readonly swing: string }) =>
      `the ${club} ${swing}`,
  },
  carryAndAim: ({ carry, aim }: { readonly carry: string; readonly aim: string }) =>
    `carry ${carry}, aim ${aim}`,
  atTheHole: 'at the hole',
  atTheFlag: 'at the flag',
  onTheLine: 'on the line',
  onTheHolesLine: 'on the hole’s line',
  ofTheFlag: ({ aside }: { readonly aside: string }) => `${aside} of the flag`,
  ofFlag: ({ aside }: { readonly aside: string }) => `${aside} of flag`,
  ofTheHolesLine: ({ aside }: { readonly aside: string }) => `${aside} of the hole’s line`,
  ofLine: ({ aside }: { readonly aside: string }) => `${aside} of line`,
  optionsName: 'Options',
  shotsFromHere: 'Shots from here',
  roughBeingRefined: 'rough, being refined',
  columns: {
    shot: 'Shot and aim',
    strokes: 'Strokes',
    odds: 'Odds, %',
    trouble: 'Trouble',
    leaves: 'Leaves',
    compare: 'Compare',
  },
  lipBlocks: ({ clubs, lip, at }: { readonly clubs: string; readonly lip: string; readonly at: string }) =>
    `Left out, since it does not clear the lip (${lip} at ${at}) on the way to the hole: ${clubs}.`,
  recommended: 'recommended',
  yourAim: 'your aim',
  lowest: 'lowest',
  closeLoss: ({ loss }: { readonly loss: string }) => `${loss}, too close to call`,
  twoStrokes: 'two strokes',
  oneStroke: 'one stroke',
  hardlyAny: 'hardly any',
  andMore: ({ count }: { readonly count: number }) => `and ${count} more`,
  compareAs: ({ shot, side }: { readonly shot: string; readonly side: string }) =>
    `Compare ${shot} as ${side}`,
  endCompareOf: ({ shot }: { readonly shot: string }) => `Take ${shot} out of the comparison`,
  odds: {
    parOrBetter: 'par or better',
    bogey: 'bogey',
    doubleOrWorse: 'double bogey or worse',
    short: {
      parOrBetter: 'par or better',
      bogey: 'bogey',
      doubleOrWorse: 'double +',
    },
  },
  comparison: 'Comparison',
  twoShots: 'Two shots side by side',
  endComparing: 'End comparing',
  nowChoose: ({
    shot,
    side,
    other,
  }: {
    readonly shot: string;
    readonly side: string;
    readonly other: string;
  }) => `${shot} is ${side}. Now choose ${other} in another row of the table.`,
  comparing: 'Comparing them on the same shots …',
  verdictSize: ({ strokes, error }: { readonly strokes: string; readonly error: string }) =>
    `${strokes} ± ${error} strokes`,
  tooClose: 'Too close to call:',
  closeVerdict: ({ shot, size }: { readonly shot: string; readonly size: string }) =>
    `${shot} comes out ${size} lower.`,
  savesOver: ({ size, other }: { readonly size: string; readonly other: string }) =>
    `saves ${size} over ${other}.`,
  number: 'Number',
  compared: {
    strokes: 'Strokes',
    odds: 'Par / bogey / double +, %',
    carry: 'Carry',
    leaves: 'Leaves',
    trouble: 'Trouble',
  },
  detail: {
    about: ({ shot }: { readonly shot: string }) => `More about ${shot}`,
    onMap: ({ shot }: { readonly shot: string }) => `On the map: ${shot}`,
    ends: 'Ends',
    leaves: 'Leaves',
    leave: ({
      median,
      low,
      high,
    }: {
      readonly median: string;
      readonly low: string;
      readonly high: string;
    }) => `${median} to the hole; eight of ten between ${low} and ${high}`,
    trouble: 'Trouble',
    doubt: 'Doubt',
    doubtOf: ({
      low,
      high,
      chance,
    }: {
      readonly low: string;
      readonly high: string;
      readonly chance: string;
    }) =>
      `${low} to ${high} strokes, nine in ten; lowest of all in ${chance} of the bags that fit your shots`,
    spread: 'Spread',
  },
  source: {
    measured: ({ shots }: { readonly shots: number }) =>
      `your own ${counted(shots, { one: 'measured shot', other: 'measured shots' })}`,
    poor: ({ measured, poor }: { readonly measured: string; readonly poor: number }) =>
      `${measured}, ${poor} of them poor strikes`,
    stated: 'the spread that you stated',
    preset: ({ level }: { readonly level: string }) =>
      `a preset for ${level}, since no shots of yours are known`,
    derived: ({ club, swing }: { readonly club: string; readonly swing: string }) =>
      `worked out from your ${club}, ${swing}`,
  },
  ball: 'Ball',
  strokesPlayedBefore: 'Strokes played before',
  guessed: 'a guess from where it lies',
  backToTee: 'Back to the tee',
  steps: {
    strokesPlayed: ({ hole }: { readonly hole: number }) => `strokes played on hole ${hole}`,
    ballBack: ({ hole }: { readonly hole: number }) => `put the ball back on the tee on hole ${hole}`,
    tryOwn: ({ hole }: { readonly hole: number }) => `try a shot of your own on hole ${hole}`,
    dropOwn: ({ hole }: { readonly hole: number }) => `drop your own aim on hole ${hole}`,
    moveBall: ({ hole }: { readonly hole: number }) => `move the ball on hole ${hole}`,
    movePosition: ({ hole }: { readonly hole: number }) => `move the hole position on hole ${hole}`,
    moveAim: ({ hole }: { readonly hole: number }) => `move the aim on hole ${hole}`,
    tryWay: ({ club, way, hole }: { readonly club: string; readonly way: string; readonly hole: number }) =>
      `try ${club} ${way} on hole ${hole}`,
  },
  ownShot: 'Try a shot of your own',
  chooseClub: 'Choose a club, or drag the aim on the map',
  swingChoice: ({
    club,
    swing,
    length,
  }: {
    readonly club: string;
    readonly swing: string;
    readonly length: string;
  }) => `${club}, ${swing}, ${length}`,
  swingUpTo: ({
    club,
    swing,
    length,
  }: {
    readonly club: string;
    readonly swing: string;
    readonly length: string;
  }) => `${club}, ${swing}, up to ${length}`,
  dropIt: 'Drop it',
  clubNotPlayed: 'This club is not played from where the ball lies. Choose another.',
  course: {
    expectedScore: 'Expected score',
    expected: 'Expected under the plan',
    expectedSoFar: 'Expected so far under the plan',
    notYetKnown: 'Not yet known',
    toPar: ({ difference }: { readonly difference: string }) => `${difference} to par`,
    overAll:
      'Strokes over all holes, each played as recommended from its tee. A single round comes out higher or lower: choose a hole for its odds.',
    overSome: ({ ready, total }: { readonly ready: number; readonly total: number }) =>
      `${ready} of ${total} holes are worked out so far; the sum is over these.`,
    inShort: 'Holes in short',
    fromTheTee: 'From the tee',
    toParColumn: 'To par',
  },
  about: {
    title: 'About these numbers',
    text: ({ margin }: { readonly margin: string }) =>
      `They are estimates. The ± is the chance error of the sampled shots alone; an honest map and honest shots matter more. Shots within ${margin} strokes, or within twice the error of their difference, are called too close to call.`,
    sampled: 'Shots sampled',
    few: 'few, while something moves or the full answer is on its way',
    each: ({ count }: { readonly count: number }) =>
      `${counted(count, { one: 'shot', other: 'shots' })} for each option, the same draws for all`,
    seed: 'Seed',
    how: 'How the numbers come about',
    limits: 'What they cannot tell',
    fromSeed: 'Works out every hole again from this seed',
    again: 'Work out again',
    grid: 'Grid',
    sweeps: ({ spacing, sweeps }: { readonly spacing: number; readonly sweeps: number }) =>
      `${spacing} m, ${counted(sweeps, { one: 'sweep', other: 'sweeps' })}`,
    changed: ({ rms, most }: { readonly rms: string; readonly most: string }) =>
      `: changed by ${rms} strokes (root mean square), at most ${most}`,
  },
};
