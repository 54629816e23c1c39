/** The round room: target, playing to it, cards, the day, the round typed in, trends, trying out, sharing. */

import { figures } from './figures.ts';

const { counted } = figures;

export const round = {
  pages: {
    target: 'Target',
    playing: 'Playing to it',
    cards: 'Cards',
    day: 'The day',
    after: 'After the round',
    over: 'Over rounds',
    try: 'Try it out',
    share: 'Share',
  },
  pagesName: 'Pages of the round',
  whoseRound: 'Whose round?',
  noCourse: 'No course is open',
  needsBoth:
    'A round needs a course and a player. Choose them from the lists at the top, or bring in a file.',
  hole: 'Hole',
  par: 'Par',
  sum: 'Sum',
  score: 'Score',
  putts: 'Putts',
  penalties: 'Penalties',
  budget: 'Budget',
  expected: 'Expected',
  gained: 'Gained',
  chanceUnder: 'under 1 %',
  chanceOver: 'over 99 %',
  chancePoints: ({ points }: { readonly points: string }) => `${points} % points`,
  lies: {
    rough: 'rough',
    fairway: 'fairway',
    green: 'green',
    tee: 'tee',
    bunker: 'sand',
    longRough: 'long rough',
    woods: 'trees',
    path: 'path',
    penaltyYellow: 'yellow penalty area',
    penaltyRed: 'red penalty area',
    outOfBounds: 'out of bounds',
  },
  after: {
    begin:
      'Enter the round from the card you carried: score, putts, tee club and where the tee shot ended. It takes under three minutes by keyboard and is kept in a file of its own, with the plan as it is now.',
    notOpened: ({ name }: { readonly name: string }) => `${name} could not be opened.`,
    enterToday: 'Enter a round played today',
    bringIn: 'Bring in a round file',
    otherCourse: ({ played, open }: { readonly played: string; readonly open: string }) =>
      `This round was played on ${played}; ${open} is open. Open that course to enter holes and to compare shot by shot.`,
  },
  entry: {
    ends: {
      fairway: 'fairway',
      green: 'green',
      rough: 'rough',
      longRough: 'long rough',
      bunker: 'sand',
      woods: 'trees',
      penaltyYellow: 'yellow penalty area',
      outOfBounds: 'out of bounds',
      tee: 'tee',
      path: 'path',
      penaltyRed: 'penalty area, red',
    },
    teeClub: 'Tee club',
    ended: 'Ended',
    toPar: 'To par',
    places: 'Places',
    holesOf: ({ holes, total }: { readonly holes: number; readonly total: number }) =>
      `${holes} of ${total} holes`,
    holeName: ({ number }: { readonly number: number }) => `hole ${number}`,
    date: 'Played on',
    dateStep: 'day of the round',
    scoreStep: ({ hole }: { readonly hole: string }) => `score of ${hole}`,
    puttsStep: ({ hole }: { readonly hole: string }) => `putts of ${hole}`,
    clubStep: ({ hole }: { readonly hole: string }) => `tee club of ${hole}`,
    endStep: ({ hole }: { readonly hole: string }) => `end of the tee shot of ${hole}`,
    penaltiesStep: ({ hole }: { readonly hole: string }) => `penalties of ${hole}`,
    scoreOn: ({ hole }: { readonly hole: string }) => `Score on ${hole}`,
    puttsOn: ({ hole }: { readonly hole: string }) => `Putts on ${hole}`,
    clubOn: ({ hole }: { readonly hole: string }) => `Tee club on ${hole}`,
    endOn: ({ hole }: { readonly hole: string }) => `Where the tee shot ended on ${hole}`,
    penaltiesOn: ({ hole }: { readonly hole: string }) => `Penalty strokes on ${hole}`,
    add: 'add',
    shots: ({ count }: { readonly count: number }) => counted(count, { one: 'shot', other: 'shots' }),
    placesOn: ({ hole }: { readonly hole: string }) => `, places of the shots on ${hole}`,
  },
  export: {
    asTable: 'Round as a table',
    table: 'As a table',
    holes: 'CSV, hole by hole',
    shots: 'CSV, shot by shot',
    asJson: ({ name, workspace }: { readonly name: string; readonly workspace: string }) =>
      `As JSON: ${name} in the workspace ${workspace}.`,
    text: 'CSV text',
    copy: 'Select and copy the text',
  },
  /** What a step of undo changed. */
  wishSteps: {
    targetKind: 'kind of target',
    score: 'score to play for',
    aim: 'handicap to play to',
    courseRating: 'course rating',
    slopeRating: 'slope rating',
    formSd: 'form of the day',
    peerHandicap: 'handicap of the other player',
    peerGroup: 'men or women to compare with',
    game: 'game',
    points: 'points to play for',
    kind: 'paper of the cards',
    style: 'style of the cards',
    hasGreens: 'greens on the cards',
    hole: 'hole on the cards',
    teeOff: 'tee time',
    durationMin: 'length of the round',
    food: 'food',
    allergies: 'allergies',
    hasRain: 'rain gear',
    hasSun: 'sun protection',
  },
  feed: {
    name: 'Shots for the spread',
    title: 'Shots for your spread',
    consentStep: 'consent to use the shots',
    consent: 'I allow the shots of this round to join my measured shots',
    say: ({ count }: { readonly count: number }) =>
      `${counted(count, { one: 'shot says', other: 'shots say' })} something about a club: a full swing from a good lie with its start, aim and end.`,
    leftOut: ({ count }: { readonly count: number }) =>
      `${counted(count, { one: 'shot is', other: 'shots are' })} left out`,
    because: ({
      hole,
      shot,
      reason,
    }: {
      readonly hole: number;
      readonly shot: number;
      readonly reason: string;
    }) => `Hole ${hole}, shot ${shot}: ${reason}.`,
    otherPlayer: ({ owner, open }: { readonly owner: string; readonly open: string }) =>
      `The round is ${owner}’s, but ${open} is open. Open the right player first.`,
    joined: ({ held, count }: { readonly held: number; readonly count: number }) =>
      held === count
        ? 'They have joined the measured shots, each once.'
        : `${held} of ${count} have joined the measured shots, each once.`,
    useStep: 'use the shots',
    takeOut: 'Take them out again',
    takeOutStep: 'take the shots out',
    add: ({ count, player }: { readonly count: number; readonly player: string }) =>
      `Add ${counted(count, { one: 'shot', other: 'shots' })} to ${player}`,
    copyOf: ({ name }: { readonly name: string }) => `a copy of ${name}`,
    notWritten: 'The player’s shots stay as they were',
    unreadable: 'The player file cannot be read.',
    withRounds: ({ name }: { readonly name: string }) => `${name} with rounds`,
    openElsewhere:
      'The player is open in another window or program. Close it there, then add the shots again.',
  },
  file: {
    round: 'Round',
    openEarlier: 'Open an earlier round',
    close: 'Close this round',
    readOnly: 'to look at only',
    saving: 'saving …',
    saved: 'saved',
    soon: 'typing is written down, saved in a moment',
    saveNow: 'Save now',
    changed: 'Another program changed this file. What you typed is still here.',
    keepMine: 'Keep mine as a copy',
    readAgain: 'Read the file again',
    stays: 'What you typed is still here, so the round stays open. Save again, or keep it as a copy.',
    staysChanged:
      'What you typed is not in the file, so the round stays open. Keep it as a copy, or read the file again.',
    drop: 'Close without what was typed',
    lost: ({ when, holes }: { readonly when: string; readonly holes: number }) =>
      `Typing from ${when} was not saved then: ${holes} holes.`,
    bringBack: 'Bring it back',
    leave: 'Leave it',
    theFile: 'The file',
    fixed: 'This file belongs to the program and stays as it is.',
    openElsewhere: 'The round is open in another window or program. Close it there to write in it here.',
    broughtBack: 'bring back what was typed',
    notNoted: ({ message }: { readonly message: string }) =>
      `Not written down yet: ${message} It is still in this window.`,
    notSaved: ({ message }: { readonly message: string }) =>
      `Not saved: ${message} It is tried again by itself.`,
  },
  map: {
    choose: ({ label }: { readonly label: string }) =>
      `${label}. Click a place, or move the mark with the arrow keys and press Enter.`,
  },
  next: {
    name: 'The next plan',
    title: 'The next plan changes',
    noLaw: 'No club’s law has changed.',
    odds: ({
      before,
      after,
      difference,
      target,
      chanceBefore,
      chanceAfter,
    }: {
      readonly before: string;
      readonly after: string;
      readonly difference: string;
      readonly target: string;
      readonly chanceBefore: string;
      readonly chanceAfter: string;
    }) =>
      `Expected score ${before} → ${after} (${difference}); chance to ${target} ${chanceBefore} → ${chanceAfter}.`,
    soFar: ({ ready, total }: { readonly ready: number; readonly total: number }) =>
      `${ready} of ${total} holes are planned anew; odds and choices follow.`,
    same: 'The club from every tee stays the same.',
    other: ({ count, holes }: { readonly count: number; readonly holes: string }) =>
      `Another club from ${count === 1 ? 'one tee' : `${count} tees`}: ${holes}.`,
    hole: ({
      hole,
      was,
      now,
      from,
      to,
    }: {
      readonly hole: number;
      readonly was: string;
      readonly now: string;
      readonly from: string;
      readonly to: string;
    }) => `hole ${hole} ${was} → ${now} (${from} → ${to})`,
  },
  places: {
    step: ({ hole }: { readonly hole: number }) => `places of hole ${hole}`,
    name: ({ hole }: { readonly hole: number }) => `Places on hole ${hole}`,
    where: ({ hole, shot }: { readonly hole: number; readonly shot: number }) =>
      `Hole ${hole}, shot ${shot} ended where?`,
    title: ({ hole }: { readonly hole: number }) => `Hole ${hole}: where each shot ended`,
    done: 'Done',
    click: ({ shot }: { readonly shot: number }) =>
      `Click where shot ${shot} came to rest (dashed: the plan from the tee). Putts need no places. A tee shot with its place can join the measured shots, if you allow it below.`,
    clubOf: ({ shot }: { readonly shot: number }) => `Club of shot ${shot}`,
    lieAfter: ({ shot }: { readonly shot: number }) => `Lie after shot ${shot}`,
    to: 'to',
    poor: 'poor strike',
    takeAway: 'Take the last place away',
    penaltyOf: ({ shot }: { readonly shot: number }) => `Penalty after shot ${shot}`,
    noPenalty: 'no penalty',
    penaltyPlain: ({ count }: { readonly count: number }) =>
      `${counted(count, { one: 'penalty stroke', other: 'penalty strokes' })}, kind not entered`,
    penaltyKinds: {
      penaltyArea: 'penalty area, 1 stroke',
      strokeAndDistance: 'out of bounds or lost: stroke and distance',
      unplayable: 'unplayable, 1 stroke',
    },
    giveDrop: 'Give the drop',
    moveDrop: 'Move the drop',
    dropOf: ({ shot }: { readonly shot: number }) => ` after shot ${shot}`,
    whereDropped: ({ hole, shot }: { readonly hole: number; readonly shot: number }) =>
      `Hole ${hole}, where was the ball dropped after shot ${shot}?`,
    clickDrop: ({ shot }: { readonly shot: number }) =>
      `Click where the ball was dropped after shot ${shot}.`,
    sameSpot: 'Played again from the same spot',
    sum: ({
      shots,
      putts,
      penalties,
      total,
      missing,
      score,
    }: {
      readonly shots: number;
      readonly putts: number;
      readonly penalties: number;
      readonly total: number;
      readonly missing: number;
      readonly score: number;
    }) =>
      `${counted(shots, { one: 'shot', other: 'shots' })} + ${counted(putts, { one: 'putt', other: 'putts' })} + ${counted(penalties, { one: 'penalty stroke', other: 'penalty strokes' })} = ${total}; the score is ${score}${
        missing === 0
          ? '.'
          : missing > 0
            ? `: ${counted(missing, { one: 'stroke is', other: 'strokes are' })} not entered.`
            : `: ${counted(-missing, { one: 'stroke', other: 'strokes' })} too many. Look at the card again.`
      }`,
  },
  review: {
    begins: 'The comparison with the plan begins with the first score.',
    title: 'Against the plan',
    known: ({ classes }: { readonly classes: string }) => `Of the shots whose places are known: ${classes}.`,
    classes: {
      tee: 'tee shots',
      approach: 'approaches',
      short: 'short game',
      putt: 'putts',
    },
    note: 'Gained and lost are against your own expected strokes, not somebody else’s. One round says little about skill: the page over rounds says what lasts.',
    otherPlan:
      'The player’s shots have changed since this round was planned: strokes with places are held against the plan as it is now.',
    noPlan:
      'There is no plan for these holes, so there is nothing to compare. Plan the next round before it.',
    scoreGained: ({
      score,
      expected,
      strokes,
    }: {
      readonly score: number;
      readonly expected: string;
      readonly strokes: string;
    }) => `${score} against ${expected} expected: ${strokes} strokes gained.`,
    scoreLost: ({
      score,
      expected,
      strokes,
    }: {
      readonly score: number;
      readonly expected: string;
      readonly strokes: string;
    }) => `${score} against ${expected} expected: ${strokes} strokes lost.`,
    asLow: ({ count }: { readonly count: string }) =>
      `About ${count} of 10 rounds by this plan are as low or lower.`,
    fewerThanOne: 'fewer than 1',
    followed: ({ count, of }: { readonly count: number; readonly of: number }) =>
      `The club on the card was played from ${count} of ${of} tees.`,
    gainedBy: ({ strokes, what }: { readonly strokes: string; readonly what: string }) =>
      `${strokes} gained by ${what}.`,
    lostBy: ({ strokes, what }: { readonly strokes: string; readonly what: string }) =>
      `${strokes} lost by ${what}.`,
    parts: {
      choice: 'other clubs and aims than the plan’s',
      execution: 'how far shots strayed (skill)',
      luck: 'where they strayed to (luck)',
      putting: 'putting (skill and luck)',
      unexplained: 'strokes whose start, end or drop was not entered',
    },
  },
  share: {
    name: ({ name }: { readonly name: string }) => `${name} to share`,
    written: ({ name, workspace }: { readonly name: string; readonly workspace: string }) =>
      `Written: ${name} in the workspace ${workspace}. Send that file.`,
    giveAway: 'Give away',
    oneFile: 'One file for a pupil or a partner',
    holds: ({ what, player }: { readonly what: string; readonly player: string }) =>
      `It holds the course, the player with all measured shots, and ${what}. ${player} should agree to that.`,
    planNow: 'the plan as it is now',
    theRound: ({ name }: { readonly name: string }) => `the round “${name}”`,
    make: 'Make the file',
    takeIn: 'Take in',
    fromOther: 'A file from somebody else',
    takeInText:
      'It is read like any round file: checked against the format, limited in size, nothing in it is run. What it carries is shown before anything is added to your workspace.',
    bringIn: 'Bring in a shared file',
    came: 'What came along',
    carries: ({ name }: { readonly name: string }) => `“${name}” carries`,
    noCourse: 'no course',
    course: ({ name, holes }: { readonly name: string; readonly holes: number }) =>
      `the course ${name}, ${holes} holes`,
    checked: ({ count }: { readonly count: number }) =>
      count === 0
        ? 'The course was checked as any other: nothing was found.'
        : `The course was checked as any other, with ${counted(count, { one: 'finding', other: 'findings' })}. Plans on it are only as good as it is: look at them before you trust them.`,
    finding: ({ where, message }: { readonly where: string; readonly message: string }) =>
      `${where}: ${message}`,
    moreFindings: ({ count }: { readonly count: number }) =>
      `${count} more: the Course room shows all of them once the course is open.`,
    noPlayer: 'no player',
    player: ({ name, swings }: { readonly name: string; readonly swings: number }) =>
      `the player ${name}, ${swings} clubs and swings`,
    add: 'Add them to the workspace and open them',
    unreadable: ({ where, message }: { readonly where: string; readonly message: string }) =>
      `something that cannot be read: ${where}: ${message}`,
    damaged: 'it is damaged',
    added: 'Added and opened.',
  },
  over: {
    reading: 'Reading the rounds of the workspace …',
    none: ({ player }: { readonly player: string }) =>
      `There are no rounds of ${player} yet. Enter one on the page “After the round”; from three on, trends are told with their intervals.`,
    thisPlayer: 'this player',
    leftOut: ({ count, files }: { readonly count: number; readonly files: string }) =>
      `${counted(count, { one: 'round file is', other: 'round files are' })} left out: ${files}`,
    workspace: 'the workspace',
    cannotBeRead: 'it cannot be read',
    rounds: 'Rounds',
    round: 'Round',
    holes: 'Holes',
    asPlanned: 'Club as planned',
    countOf: ({ count, of }: { readonly count: number; readonly of: number }) => `${count} of ${of}`,
    figures: {
      gained: 'strokes gained on the plan',
      score: 'score against par',
      putts: 'putts',
      penalties: 'penalty strokes',
    },
    trends: 'Trends',
    trendsTitle: 'Trends, per 18 holes',
    tooShort: ({ count, least }: { readonly count: number; readonly least: number }) =>
      `${counted(count, { one: 'round', other: 'rounds' })} of fewer than ${least} holes ${count === 1 ? 'is' : 'are'} left out of the trends: too little to be scaled to 18.`,
    figure: 'Figure',
    mean: ({ percent }: { readonly percent: number }) => `Mean, ${percent} % interval`,
    change: 'Change per round',
    said: 'What can be said',
    inOrder: 'Rounds in order',
    range: ({ low, high }: { readonly low: string; readonly high: string }) => `${low} to ${high}`,
    picture: ({ figure, count }: { readonly figure: string; readonly count: number }) =>
      `${figure} over ${count} rounds`,
    tooFew: ({ count }: { readonly count: number }) => `too few rounds yet (${count}); from three on`,
    unclear: 'neither better nor worse can be told from chance',
    better: 'getting better',
    worse: 'getting worse',
    form: ({ sd, least, count }: { readonly sd: string; readonly least: number; readonly count: number }) =>
      `The form of the day is taken to vary by ${sd} strokes. From ${least} planned rounds of 18 holes on (${count} so far) it is measured from your own.`,
    formMeasured: ({
      count,
      measured,
      used,
    }: {
      readonly count: number;
      readonly measured: string;
      readonly used: string;
    }) =>
      `From ${counted(count, { one: 'round', other: 'rounds' })} your form of the day varies by ${measured} strokes beyond the holes’ own luck; ${used} is in use.`,
    use: ({ value }: { readonly value: string }) => `Use ${value}`,
  },
  playing: {
    title: 'Playing to the target',
    needsAll: ({ ready, total }: { readonly ready: number; readonly total: number }) =>
      `${ready} of ${total} holes are worked out; this needs all of them.`,
    opponentComes: ({ counted, total }: { readonly counted: number; readonly total: number }) =>
      `The opponent’s scores are being counted, with the ledger on the first page: ${counted} of ${total} holes. What to play follows by itself.`,
    opponentStopped: ({ counted, total }: { readonly counted: number; readonly total: number }) =>
      `Counting the opponent’s scores was stopped: ${counted} of ${total} holes are counted.`,
    needsHandicap:
      'There is nobody to play against yet: type the opponent’s handicap above, or give the player one in the Player room; then the opponent is a preset player of that handicap.',
    toPlayer: 'To the Player room',
    matchHandicaps: ({
      index,
      own,
      theirIndex,
      theirs,
      difference,
    }: {
      readonly index: string;
      readonly own: number;
      readonly theirIndex: string;
      readonly theirs: number;
      readonly difference: number;
    }) =>
      `Your index ${index} makes a course handicap of ${own}; theirs of ${theirIndex} makes ${theirs}. ${
        difference === 0
          ? 'Nobody receives strokes.'
          : `${difference > 0 ? 'You receive' : 'They receive'} ${counted(Math.abs(difference), { one: 'stroke', other: 'strokes' })}, on the lowest stroke indexes.`
      }`,
    pointsHandicaps: ({
      index,
      own,
      playing,
    }: {
      readonly index: string;
      readonly own: number;
      readonly playing: number;
    }) =>
      `Your index ${index} makes a course handicap of ${own}; points count with a playing handicap of ${playing}.`,
    averageDay: ({ chance, lowest }: { readonly chance: string; readonly lowest: string }) =>
      `On a day of average form: ${chance} with the best choices, ${lowest} with the lowest mean. The choices and chances below are for such a day.`,
    onAverageDay: ({ chance }: { readonly chance: string }) => `${chance} on a day of average form`,
    working: 'Working out what to play from each tee …',
    oddsName: 'Odds by the best choices',
    withBest: ({ chance, difference }: { readonly chance: string; readonly difference: string }) =>
      `on any day, your form being better or worse than average: with the best choice on each tee, as the round goes; ${chance} with the lowest mean on each${difference}`,
    halved: 'A halved match counts half.',
    same: ': the same, to a tenth of a per cent.',
    fewer: ({ points }: { readonly points: string }) => `, ${points} points fewer.`,
    departures: 'Departures from the lowest mean',
    noDepartures:
      'However the round stands, the choice with the lowest mean is as good as anything for this aim, within a third of a per cent.',
    where: 'Where it differs from the lowest mean',
    odds: 'Odds, average day',
    costs: 'Costs, strokes',
    comesUp: 'Comes up in',
    ofRounds: ({ chance }: { readonly chance: string }) => `${chance} of rounds`,
    more: ({ count }: { readonly count: number }) =>
      `${count} more that matter less: try any tee and score below.`,
    games: {
      score: 'The target',
      stableford: 'Stableford points',
      match: 'A match',
    },
    game: 'Game',
    toTarget: ({ words, target }: { readonly words: string; readonly target: number }) =>
      `To ${words}: ${target} or fewer. The target is set on the page before this one.`,
    points: 'Points to reach',
    pointsNote: 'with the strokes of the playing handicap (95 %)',
    opponent: 'Opponent’s handicap',
    opponentNote: 'a preset player of that handicap; strokes by the full difference',
    aimRank: ({ shot, rank }: { readonly shot: string; readonly rank: number }) => `${shot} (aim ${rank})`,
    strokesSoFar: 'strokes so far',
    pointsSoFar: 'points so far',
    holesUp: 'holes up',
    standing: 'Standing on a tee',
    standingTitle: 'On the tee, with so much behind you',
    cannotBe: ({ least, most }: { readonly least: number; readonly most: number }) =>
      `That cannot come up here. On this tee from ${least} to ${most} can.`,
    lowestToo: '. It is the choice with the lowest mean too.',
    insteadOf: ({ chance, shot }: { readonly chance: string; readonly shot: string }) =>
      `${chance} with ${shot}, the choice with the lowest mean.`,
    instead: 'instead of',
  },
  help: {
    title: 'What would help most',
    work: 'Work it out',
    again: 'Work it out again',
    note: 'Each line plans the whole round anew for a player who does this one thing better. It is worked out on a coarse grid with the same luck for both; the strokes saved there move the odds of the full plan. Trust the order more than the last per cent.',
    onceAll: 'It can be asked for once every hole is worked out.',
    working: 'Working out improvements, some minutes in all',
    progress: 'Improvements worked out',
    stop: 'Stop',
    with: 'With',
    chanceOf: ({ target }: { readonly target: number }) => `Chance of ${target} or fewer`,
    changeColumn: 'Change',
    saved: 'Strokes saved',
    asItIs: 'the game as it is',
    stopped: 'Stopped; what was worked out stays.',
    failed: 'The comparison stopped',
    holeFault: ({ hole, message }: { readonly hole: number; readonly message: string }) =>
      `Hole ${hole}: ${message}`,
    wishes: {
      'tighter-driver': 'driver 10 % tighter, in length and direction',
      'longer-driver': 'driver 10 m longer, as wide in degrees',
      'tighter-irons': 'irons and hybrids 10 % tighter',
      'tighter-wedges': 'wedges and part swings 10 % tighter',
      'fewer-poor-strikes': 'half as many poor strikes',
      'better-pace': 'pace of putts 20 % closer: fewer three-putts from beyond 10 m',
      'straighter-putts': 'putts started 10 % straighter',
      'no-penalty-balls': 'no penalty strokes: water and out of bounds played as rough',
    },
  },
  cardFailed: 'A card could not be made',
  ledgerFailed: 'The ledger stopped',
  holeNotCounted: ({ hole }: { readonly hole: number }) => `The strokes of hole ${hole} cannot be counted`,
  fromTo: ({ least, most }: { readonly least: string; readonly most: string }) => `From ${least} to ${most}`,
  target: {
    title: 'What to play for',
    comes: 'The odds come with the first hole that is worked out.',
    kinds: {
      beat: 'Beat a score',
      score: 'A score or fewer',
      'net-par': 'Net par',
      handicap: 'Play to a handicap',
    },
    kind: 'Kind of target',
    beat: 'Beat',
    aimedAt: 'Handicap aimed at',
    rating: 'Course rating',
    slope: 'Slope',
    handicaps: ({
      index,
      course,
      playing,
    }: {
      readonly index: string;
      readonly course: number;
      readonly playing: number;
    }) =>
      `Handicap index ${index}: course handicap ${course}, playing handicap in stroke play ${playing} (World Handicap System, 95 %).`,
    noHandicap: '18 (the player file has none)',
    unrated: 'Without the rating on the scorecard the course counts as rated at its par, slope 113.',
    formVaries: 'Form varies by',
    peerHandicap: 'Peer’s handicap',
    peer: 'Peer',
    men: 'men',
    women: 'women',
    says: {
      orFewer: ({ score }: { readonly score: number }) => `${score} or fewer`,
      beat: ({ score }: { readonly score: number }) => `beat ${score}`,
      netPar: 'make net par or better',
      playTo: ({ handicap }: { readonly handicap: string }) => `play to ${handicap}`,
    },
  },
  odds: {
    name: 'Odds of the target',
    chance: ({
      words,
      target,
      par,
    }: {
      readonly words: string;
      readonly target: number;
      readonly par: number;
    }) => `Chance to ${words}: ${target} or fewer on par ${par}`,
    expectedScore: 'Expected score',
    toPar: ({ difference }: { readonly difference: string }) => `${difference} to par`,
    eightOfTen: '8 of 10 rounds',
    range: ({ low, high }: { readonly low: number; readonly high: number }) => `${low} to ${high}`,
    ofHundred: ({ count }: { readonly count: number }) => `${count} of 100`,
    waiting: ({
      ready,
      count,
      words,
    }: {
      readonly ready: number;
      readonly count: number;
      readonly words: string;
    }) =>
      `${ready} of ${counted(count, { one: 'hole is', other: 'holes are' })} worked out; the odds to ${words} come with the last of them`,
    expectedOver: ({ holes, par }: { readonly holes: number; readonly par: number }) =>
      `expected over these ${holes}, par ${par}`,
    note: ({
      error,
      form,
      source,
    }: {
      readonly error: string;
      readonly form: string;
      readonly source: string;
    }) =>
      `An estimate from this player’s shots: ± ${error} strokes from sampling, and from day to day form is taken to move all holes together by a standard deviation of ${form} strokes over 18 holes${source}.`,
    assumed:
      '(an assumption: no figure for club players was found; Cotton, McIntyre & Price 2016 and Knuth 2008 bound it)',
    own: '(your own figure)',
    picture: ({
      first,
      last,
      expected,
      share,
      low,
      high,
    }: {
      readonly first: number;
      readonly last: number;
      readonly expected: string;
      readonly share: number;
      readonly low: number;
      readonly high: number;
    }) =>
      `Chances of each score from ${first} to ${last}. Expected ${expected}; ${share} of 100 rounds fall from ${low} to ${high}.`,
    ofRounds: ({ share }: { readonly share: number }) => `${share} of 100 rounds`,
    meanMark: 'expected',
    parMark: 'par',
  },
  table: {
    name: 'Hole by hole',
    index: 'Index',
    fromTee: 'From the tee',
    met: 'Budget met',
    odds: 'Odds, %',
    playFor: 'Play for',
    show: ({ hole }: { readonly hole: number }) => `Show hole ${hole} in the plan`,
    impossible: ({ target }: { readonly target: number }) =>
      `No round that these odds allow comes out at ${target}; the budget is a wish. Choose a target nearer to the expected score.`,
  },
  ledger: {
    title: 'Where strokes go',
    peer: ({ peer }: { readonly peer: string }) => `against a peer: ${peer}`,
    stopped: ({ count, total }: { readonly count: number; readonly total: number }) =>
      `Stopped; ${count} of ${total} holes are counted`,
    onceAll: 'Counted once every hole is worked out',
    playing: 'Playing each hole 1 500 times, you and the peer',
    counting: 'Counting strokes',
    strokesOf: ({ count }: { readonly count: number }) =>
      `Strokes of ${count === 1 ? 'one hole' : `${count} holes`}`,
    strokes: 'Strokes',
    against: 'Against the peer',
    share: 'Share of the ups and downs',
    withStroke: 'with its stroke',
    note: ({
      greens,
      threePutts,
      balls,
    }: {
      readonly greens: string;
      readonly threePutts: string;
      readonly balls: string;
    }) =>
      `Greens in regulation ${greens}, three putts or more ${threePutts}, penalty balls ${balls} a round. Positive: better than the peer (strokes gained, Broadie 2012).`,
    kinds: {
      tee: 'tee shots (par 4 and 5)',
      approach: 'approach shots',
      short: 'short game (within 100 yards)',
      putt: 'putts',
      penalty: 'penalty strokes',
    },
  },
  try: {
    putts: ({ count }: { readonly count: number }) => counted(count, { one: 'putt', other: 'putts' }),
    title: 'Try it out',
    soon: 'A hole can be tried out as soon as it is worked out.',
    holeOption: ({ hole, par }: { readonly hole: number; readonly par: number }) => `${hole}, par ${par}`,
    note: 'Your own spread, one ball at a time: choose club and aim on the map, then play. The luck is numbered, so another choice can be tried with the same.',
    chooseAim: ({ hole }: { readonly hole: number }) => `Hole ${hole}, choose the aim`,
    holed: ({ score }: { readonly score: number }) => `Holed out in ${score}.`,
    planExpects: ({ par, strokes }: { readonly par: number; readonly strokes: string }) =>
      `Par ${par}; the plan expects ${strokes}.`,
    stroke: ({
      number,
      where,
      length,
    }: {
      readonly number: number;
      readonly where: string;
      readonly length: string;
    }) => `Stroke ${number}: ${where}, ${length} to the hole.`,
    putt: 'Putt',
    club: 'Club',
    play: 'Play',
    dropAsPlan: 'Drop, as the plan would',
    playPlan: 'Play the plan’s choice',
    planToEnd: 'Plan to the end',
    where: {
      rough: 'in the rough',
      fairway: 'on the fairway',
      green: 'on the green',
      bunker: 'in sand',
      tee: 'on the tee',
      longRough: 'in long rough',
      woods: 'in the trees',
      path: 'on a path',
      penaltyYellow: 'in the yellow penalty area',
      penaltyRed: 'in the red penalty area',
      outOfBounds: 'out of bounds',
    },
    notPlayed: 'The stroke was not played',
    soFar: ({ score }: { readonly score: number }) => `${score} so far`,
    strokeColumn: 'Stroke',
    choiceCost: 'Choice cost',
    sameLuck: 'Same luck',
    poorStrike: ', poor strike',
    anewOf: ({ number }: { readonly number: number }) => `choose anew: stroke ${number} with the same luck`,
    anew: 'choose anew',
    cost: ({ strokes }: { readonly strokes: string }) =>
      `Your choices cost ${strokes} strokes on average against the plan’s; what else was gained or lost was the strike and luck.`,
    teeSame: 'From the tee, same luck',
    teeOther: 'From the tee, other luck',
    otherWays: 'Other ways with this luck',
    now: ({ words }: { readonly words: string }) => `now ${words}`,
    dropped: 'dropped, one penalty stroke or more',
    holedShot: 'holed',
    penalty: ({ count }: { readonly count: number }) => `, ${count} penalty`,
    notTold: 'not told',
    close: ({ cost }: { readonly cost: string }) => `${cost}, too close to call`,
  },
  newRound: {
    ownPosition: 'your own',
  },
  scores: {
    par: 'Par',
    bogey: 'Bogey',
    double: 'Double bogey',
    triple: 'Triple bogey',
    over: ({ count }: { readonly count: number }) => `${count} over par`,
    birdie: 'Birdie',
    eagle: 'Eagle',
    under: ({ count }: { readonly count: number }) => `${count} under par`,
  },
  budgets: {
    par: 'Par is the score here.',
    yourPar: ({ name }: { readonly name: string }) => `${name} is your par here.`,
    calledFor: ({ name }: { readonly name: string }) => `${name} is called for here.`,
  },
  departure: {
    line: ({
      standing,
      hole,
      left,
      take,
      insteadOf,
      chance,
      lowest,
    }: {
      readonly standing: string;
      readonly hole: number;
      readonly left: string;
      readonly take: string;
      readonly insteadOf: string;
      readonly chance: string;
      readonly lowest: string;
    }) => `${standing} on ${hole}${left}: ${take} instead of ${insteadOf}, ${chance} instead of ${lowest}.`,
    level: 'Level with the target',
    inHand: ({ count }: { readonly count: number }) =>
      `${counted(count, { one: 'stroke', other: 'strokes' })} in hand`,
    toMakeUp: ({ count }: { readonly count: number }) =>
      `${counted(count, { one: 'stroke', other: 'strokes' })} to make up`,
    points: ({ count }: { readonly count: number }) =>
      `${counted(count, { one: 'point', other: 'points' })} so far`,
    allSquare: 'All square',
    up: ({ count }: { readonly count: number }) => `${count} up`,
    down: ({ count }: { readonly count: number }) => `${count} down`,
    left: ({ count }: { readonly count: number }) => `(${count} left to spend)`,
  },
  strokes: {
    none: 'No handicap strokes are received.',
    everywhere: ({ count }: { readonly count: number }) => `${count} on every hole`,
    one: ({ holes, list }: { readonly holes: number; readonly list: string }) =>
      `one on ${holes === 1 ? 'hole' : 'holes'} ${list}`,
    oneMore: ({ holes, list }: { readonly holes: number; readonly list: string }) =>
      `one more on ${holes === 1 ? 'hole' : 'holes'} ${list}`,
    received: ({ count, where }: { readonly count: number; readonly where: string }) =>
      `${count === 1 ? 'One handicap stroke is' : `${count} handicap strokes are`} received: ${where}.`,
    given: ({ count, where }: { readonly count: number; readonly where: string }) =>
      `${count === 1 ? 'One handicap stroke is' : `${count} handicap strokes are`} given: ${where}.`,
  },
  left: {
    putts: 'putts are kept apart',
    lie: 'not from a tee or fairway',
    swing: 'not a swing at the club’s own distance',
    tree: 'stopped by a tree',
    otherHole: 'its hole is not in the course that is open',
    ends: 'start or end not entered',
    aim: 'aim not entered',
    noClub: ({ club }: { readonly club: string }) => `the bag has no ${club} with that swing`,
    backwards: 'it did not go forward',
  },
  laws: {
    line: ({
      club,
      swing,
      more,
      all,
      parts,
    }: {
      readonly club: string;
      readonly swing: string;
      readonly more: number;
      readonly all: number;
      readonly parts: string;
    }) => `${club} ${swing}: ${more} more ${more === 1 ? 'shot' : 'shots'} (${all} in all); ${parts}.`,
    carry: 'carry',
    carrySpread: 'carry spread',
    direction: 'direction',
    directionSpread: 'direction spread',
  },
};
