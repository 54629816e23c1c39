/** The Player room: pages, who it is, bag and clubs, distances, comparing players, files. */

import { figures } from './figures.ts';

const { counted } = figures;

export const player = {
  kinds: { driver: 'Driver', wood: 'Wood', hybrid: 'Hybrid', iron: 'Iron', wedge: 'Wedge', putter: 'Putter' },
  lies: {
    tee: 'tee',
    fairway: 'fairway',
    rough: 'rough',
    longRough: 'long rough',
    bunker: 'bunker',
    woods: 'under trees',
    range: 'range',
  },
  groups: {
    men: 'Man',
    women: 'Woman',
    'senior-men': 'Senior, man',
    'senior-women': 'Senior, woman',
    juniors: 'Junior',
  },
  partByFeel: 'part, by feel',
  source: {
    shots: ({ count }: { readonly count: number }) => counted(count, { one: 'shot', other: 'shots' }),
    stated: 'as you state it',
    preset: 'preset',
    derived: ({ swing }: { readonly swing: string }) => `from the ${swing} swing`,
  },
  fan: {
    aim: 'aim',
    title: 'Which way it leans',
    key: ({ club }: { readonly club: string }) =>
      `Line: the lean of ${club}. Thick end: where the lean itself lies, nine times in ten. Wedge: two in three solid strikes. Thin arcs: the other clubs. Angles are drawn three times as wide as they are.`,
  },
  distances: {
    kinds: { even: 'even', narrow: 'overlap', wide: 'wide gap', turned: 'turned round' },
    noLadderYet: 'The ladder appears when the estimates are worked out.',
    gaps: 'Gaps',
    gapsAndOverlaps: 'Gaps and overlaps',
    even: 'No gap is wide and none is narrow: the ladder is even.',
    between: 'Between',
    gap: ({ units }: { readonly units: string }) => `Gap, ${units}`,
    longerShorter: 'Longer comes down shorter',
    remark: 'Remark',
    pair: ({ longer, shorter }: { readonly longer: string; readonly shorter: string }) =>
      `${longer} and ${shorter}`,
    changes: 'Changes of late',
    carryOfEach: ({ units }: { readonly units: string }) => `Carry of each full swing, ${units}`,
    key: ({ unit }: { readonly unit: string }) =>
      `Upright mark: average carry in ${unit}; thick bar through it: where the average lies, nine times in ten. Box: half of the solid strikes; thin line: nine in ten. Hatched: a gap or an overlap worth a look.`,
  },
  club: {
    ofClub: ({ label, club }: { readonly label: string; readonly club: string }) => `${label} of ${club}`,
    about: ({ club }: { readonly club: string }) => `About ${club}`,
    steps: {
      name: 'name',
      kind: 'kind',
      loft: 'loft',
      length: 'length',
      statedCarry: 'stated carry',
      launch: 'measured launch',
      swings: 'swings',
      lies: 'lies',
    },
    kind: 'Kind',
    loft: 'Loft',
    length: 'Length',
    statedCarry: 'Carry, as you state it',
    notStated: 'not stated',
    launch: {
      legend: 'Launch of a full swing, where it was measured',
      angle: 'Launch angle',
      spin: 'Backspin',
      ballSpeed: 'Ball speed',
      apex: 'Top of the flight',
      byLoft: 'by loft',
    },
    swings: 'Swings',
    usedFrom: 'Used from',
    takeOutStep: ({ club }: { readonly club: string }) => `take out ${club}`,
    takeOut: 'Take this club out',
    putterNote:
      'Putting comes from putts on record: see “Short game and putting” for the ten-minute test and the log.',
    noNumbersYet: 'The numbers appear when the estimates are worked out.',
    estimatesOf: ({ club }: { readonly club: string }) => `Estimates of ${club}`,
    belowEach: ({ restsOn }: { readonly restsOn: string }) =>
      `Below each number: the interval that holds the truth nine times in ten. ± is the standard deviation of solid strikes; R and L are right and left of the aim. ${restsOn}`,
    strays: ({ count }: { readonly count: number }) =>
      ` ${count} of its readings are left out, too long to be true.`,
    restsOnShots: ({ club, strays }: { readonly club: string; readonly strays: string }) =>
      `${club} rests on your own shots, leaning on its neighbours in the bag where they are few.${strays}`,
    restsOnStated: ({ club }: { readonly club: string }) =>
      `${club} rests on what you state, not on measured shots.`,
    restsOnPreset: ({ club }: { readonly club: string }) =>
      `${club} has no measured shots: these are preset numbers, fitted to the clubs that have some.`,
    restsOnSwing: ({ club, swing }: { readonly club: string; readonly swing: string }) =>
      `${club} has no shots of its own: it is taken from the ${swing} swing.`,
  },
  name: 'Name',
  bag: {
    name: 'Bag',
    tooMany: ': too many (Rule 4.1b)',
    forTheRound: ({
      out,
      most,
      tooMany,
    }: {
      readonly out: number;
      readonly most: number;
      readonly tooMany: string;
    }) => `${out} of ${most} for the round ${tooMany}`,
    addStep: 'add a club',
    add: 'Add a club',
    goesOutNamed: ({ club }: { readonly club: string }) => `${club} goes out for the round`,
    goesOut: 'Goes out for the round',
    takeAlong: ({ club }: { readonly club: string }) => `take ${club} along`,
    leaveAtHome: ({ club }: { readonly club: string }) => `leave ${club} at home`,
    seeShortGame: 'see Short game',
    newClub: 'New club',
    newClubNumber: ({ number }: { readonly number: number }) => `New club ${number}`,
  },
  table: {
    caption: 'Estimates per swing; below each number the interval that holds the truth nine times in ten',
    swing: 'Swing',
    restsOn: 'Rests on',
    carry: ({ unit }: { readonly unit: string }) => `Carry, ${unit}`,
    carrySpread: ({ unit }: { readonly unit: string }) => `Carry ±, ${unit}`,
    lean: 'Lean, °',
    directionSpread: 'Direction ±, °',
    correlation: 'Correlation',
    poorShare: 'Poor strikes, %',
    poorCarry: 'Poor carry, %',
    poorCount: ({ count }: { readonly count: number }) => `${count} poor`,
    to: 'to',
  },
  landing: {
    title: ({ club }: { readonly club: string }) => `${club}, seen from above`,
    solid: 'solid',
    poor: 'poor strike',
    half: 'half of the solid ones',
    nineInTen: 'nine in ten',
    aim: ({ unit }: { readonly unit: string }) => `aim (${unit})`,
  },
  range: ({ low, high }: { readonly low: string; readonly high: string }) => `${low} to ${high}`,
  worth: {
    name: 'Worth of more shots',
    title: 'Which shots to measure next',
    aCourse: 'a course',
    explain: ({ course }: { readonly course: string }) =>
      `What ten more measured shots of a club would gain on ${course}: strokes per round saved by settling close calls rightly.`,
    openCourse: 'Open a course first: the gain depends on its holes.',
    unsaved: 'Unsaved changes are not in it: the plan works with the saved player.',
    workOut: 'Work it out',
    holesSoFar: ({ done, total }: { readonly done: number; readonly total: number }) =>
      `${done} of ${total} holes are worked out so far; it is over these.`,
    takes: 'Takes a minute or two.',
    hardly: ({ spots, holes }: { readonly spots: number; readonly holes: number }) =>
      `Hardly any: whatever ten more shots would say, the plan from ${spots} spots on ${holes} holes would stay as it is.`,
    best: ({ club }: { readonly club: string }) => `${club} first: its ten shots would do most.`,
    noBest: 'No club stands out: the differences are within the error of this estimate.',
    first: ({ best, strokes }: { readonly best: string; readonly strokes: string }) =>
      `${best} Knowing everything for sure would gain ${strokes} strokes a round.`,
    caption: 'Gain of ten more shots per club, strokes per round',
    tenMore: 'Ten more shots with the',
    gain: 'Gain, strokes a round',
    error: 'Standard error',
    from: ({ spots, holes }: { readonly spots: number; readonly holes: number }) =>
      `From ${spots} spots on ${holes} holes: the tees, and where the ball typically lies after.`,
  },
  make: {
    noHandicap: 'None yet? Take 54, the highest there is; it can be changed at any time.',
    handicapFault: 'Type the handicap as a number from −10 to 54; a plus handicap as +2.',
    newPlayer: 'New player',
    explain:
      'With a handicap you can plan at once: a usual bag of fourteen and the shots that players of that level hit on average. They are not your shots; measured ones take their place as you bring them in.',
    rightHanded: 'Right-handed',
    leftHanded: 'Left-handed',
    making: 'Making …',
    make: 'Make this player',
    sources:
      'Sources of the presets: the course rating system’s lengths for scratch and bogey players, club golfers’ driving distances, tour players’ and amateurs’ directions and putting from published studies; the rest is common practice. The help says which is which.',
  },
  handicap: 'Handicap',
  person: {
    player: 'Player',
    hand: 'Hand',
    steps: {
      name: 'name of the player',
      handicap: 'handicap',
      group: 'group',
      hand: 'hand',
      oldShots: 'weight of old shots',
    },
    right: 'Right',
    left: 'Left',
    halfLife: 'A shot counts half after',
    days: 'days',
    never: 'never',
  },
  back: 'Back',
  numberFault: ({
    name,
    least,
    most,
  }: {
    readonly name: string;
    readonly least: number;
    readonly most: number;
  }) => `${name} is a number from ${least} to ${most}.`,
  file: {
    makeYours: 'Make it yours',
    copy: 'Work on a copy',
    saveTitle: 'Save (Ctrl+S)',
    saving: 'Saving …',
    save: 'Save',
    saved: 'Saved',
    isSaved: ({ name }: { readonly name: string }) => `${name} is saved.`,
    takeUpStep: 'take up unsaved work',
    hadUnsaved: ({ name }: { readonly name: string }) =>
      `${name} had unsaved changes. They are kept, and offered when you open it again.`,
    nothingSaved: ({ faults }: { readonly faults: string }) => `Nothing was saved: ${faults}`,
    copyName: ({ name }: { readonly name: string }) => `${name}, copy`,
    notWritten: ({ message }: { readonly message: string }) =>
      `Unsaved work is not being written down: ${message}`,
  },
  whose: {
    fault: 'This bag cannot be worked out.',
    notYours: 'These are not your shots.',
    preset: ({ level }: { readonly level: string }) =>
      `Every number is the preset for ${level}; you can plan with it at once. Bring in shots under “Shots” and the numbers become yours, club by club.`,
    invented: 'An invented player with invented shots. ',
    shots: ({ count }: { readonly count: number }) =>
      counted(count, { one: 'measured shot counts', other: 'measured shots count' }),
    count: ({
      invented,
      shots,
      level,
    }: {
      readonly invented: string;
      readonly shots: string;
      readonly level: string;
    }) =>
      `${invented} ${shots}; where they are few, the preset for ${level} and the neighbours in the bag help out.`,
    working: 'Working out the estimates',
    workingOn: 'Working out the estimates …',
    nothingYet: 'nothing is estimated yet',
    before: 'the numbers are those from before the last change',
    stopped: ({ what }: { readonly what: string }) => `Stopped: ${what}.`,
  },
  goOn: 'Go on',
  pages: {
    clubs: 'Clubs',
    distances: 'Distances',
    shots: 'Shots',
    short: 'Short game and putting',
    field: 'Without a device',
    players: 'Players',
  },
  reading: 'Reading the player …',
  playerAndBag: 'Player and bag',
  pagesName: 'Pages of the player',
  compare: {
    name: 'Compare two players',
    title: 'Two players on one hole',
    openCourse: 'Open a course to compare players on one of its holes.',
    onlyOne: 'There is only one player so far. Make another one to compare them.',
    first: 'First',
    second: 'Second',
    hole: 'Hole',
    compare: 'Compare them',
    working: 'Working both players out',
    workingOn: 'Working both out from the tee …',
    cannot: 'One of the two cannot play from this tee.',
    fromTee: 'From the tee',
    carry: 'Carry',
    strokes: 'Strokes to hole out',
    score: 'Score',
    trouble: 'In trouble',
    alike: ({ first, second }: { readonly first: string; readonly second: string }) =>
      `${first} and ${second} cannot be told apart here.`,
    more: ({
      name,
      strokes,
      error,
    }: {
      readonly name: string;
      readonly strokes: string;
      readonly error: string;
    }) => `${name} needs ${strokes} strokes more, give or take ${error}.`,
    result: ({
      hole,
      length,
      said,
    }: {
      readonly hole: number;
      readonly length: string;
      readonly said: string;
    }) => `Hole ${hole}, ${length}: ${said}`,
    what: 'What',
    note: 'Both worked out in full with the same luck of the draw; each plays as recommended. ± is the standard error of the calculation; how sure the two are of their own shots is not in it.',
    stopped: 'It was stopped.',
    broke:
      'Working it out broke off. Try it again; if it happens twice, close the window and start the program anew.',
  },
  pupils: {
    title: 'Players in the folder',
    reading: 'Reading the players …',
    lastShot: 'Last shot',
    file: 'File',
    open: 'Open',
    more: ({ most, files }: { readonly most: number; readonly files: number }) =>
      `The first ${most} of ${files} are listed. The others are in the list of players above.`,
    kept: ({ clubs }: { readonly clubs: number }) => `${clubs} kept`,
    demo: 'demo',
    isOpen: 'open',
    openNamed: ({ name }: { readonly name: string }) => `Open ${name}`,
    unreadable: 'It cannot be read. Open it to see what is wrong.',
    noPlayer: 'It is no player file. Open it to see what is wrong.',
  },
  notices: {
    savedSince: '; the file was saved again since then',
    found: ({ when, older }: { readonly when: string; readonly older: string }) =>
      `Unsaved changes from ${when} were found${older}.`,
    foundHandicap: ({ handicap }: { readonly handicap: string }) => `, handicap ${handicap}`,
    foundHolds: ({
      clubs,
      shots,
      handicap,
    }: {
      readonly clubs: number;
      readonly shots: number;
      readonly handicap: string;
    }) =>
      `They hold ${counted(clubs, { one: 'club', other: 'clubs' })}, ${counted(shots, { one: 'measured shot', other: 'measured shots' })}${handicap}.`,
    takesPlace:
      'Taken up, they stand in the place of what is shown here; undo brings that back, and the others stay on offer.',
    takeUp: 'Take them up',
    drop: 'Drop them',
    changed: 'The file was changed by another program while you had unsaved changes here.',
    saveMine: 'Save mine over it',
    keepMine: 'Keep mine as a copy',
    giveUp: ', give mine up',
    takeFile: ({ giveUp }: { readonly giveUp: string }) => `Take the file’s${giveUp}`,
    close: 'Close',
    demo: 'This is a demo player and stays as it is. “Make it yours” makes a copy in your folder that you can change.',
    onlyRead: ({ message }: { readonly message: string }) => `Only to be read: ${message}`,
    otherWindow: 'in another window',
    otherProgram: 'by another program on this computer',
    otherComputer: ({ computer }: { readonly computer: string }) => `on another computer${computer}`,
    held: ({ where }: { readonly where: string }) =>
      `Only to be read: the file is being changed ${where}. Close it there, then choose the player again.`,
  },
  stop: 'Stop',
};
