/** What is wrong with a file, a table or an entry, and what to do about it. */

import { inYards } from '../lengths.ts';
import { figures } from './figures.ts';

const { counted, whole } = figures;

export const faults = {
  player: {
    shots: ({ count }: { readonly count: number }) =>
      counted(count, { one: 'measured shot', other: 'measured shots' }),
    noneYet: 'no measured shots',
    clubSwing: ({ club, swing }: { readonly club: string; readonly swing: string }) =>
      `${club}, ${swing} swing,`,
    readings: ({ count }: { readonly count: number }) =>
      counted(count, { one: 'reading is', other: 'readings are' }),
    tooLong: ({ club, readings }: { readonly club: string; readonly readings: string }) =>
      `${club}: ${readings} left out, too long for this club. Check the readings.`,
    onStated: 'on what you state',
    onPreset: ({ handicap }: { readonly handicap: number }) => `on the preset for handicap ${handicap}`,
    onFull: 'on the full swing',
    fewShots: ({
      club,
      shots,
      least,
      on,
    }: {
      readonly club: string;
      readonly shots: string;
      readonly least: number;
      readonly on: string;
    }) => `${club} has ${shots}; with fewer than ${least} it leans mostly ${on} and on the other clubs.`,
    fitted: ({ percent }: { readonly percent: number }) =>
      ` Its carry is set to ${percent} % of the preset, in line with the clubs that are known.`,
    noShots: ({
      club,
      shots,
      handicap,
      fitted,
    }: {
      readonly club: string;
      readonly shots: string;
      readonly handicap: number;
      readonly fitted: string;
    }) => `${club} has ${shots}; the preset for handicap ${handicap} is used until it has some.${fitted}`,
    manyNoShots: ({
      clubs,
      handicap,
      fitted,
    }: {
      readonly clubs: string;
      readonly handicap: number;
      readonly fitted: string;
    }) =>
      `No measured shots of ${clubs}; the preset for handicap ${handicap} is used until there are some.${fitted}`,
    allFitted: ' Their carries are set in line with the clubs that are known.',
    twice: ({ club }: { readonly club: string }) =>
      `The bag holds "${club}" twice. Give one of them another name, such as its loft.`,
    onlyPutter: 'The bag holds no club but a putter. Add the clubs that are played.',
    noneChosen: 'No club but a putter is chosen for the round. Choose the clubs that go out.',
    noLevel: ({ least }: { readonly least: number }) =>
      `There is neither a handicap nor a club with at least ${least} measured shots or a stated carry. Add a handicap, or measure one club.`,
    noHandicap: ({ level }: { readonly level: string }) =>
      `There is no handicap: what is not measured is taken from the preset that fits the carries best (${level}). Add the handicap.`,
    noRoom: ({ most, room }: { readonly most: number; readonly room: number }) =>
      `A player file holds ${most} shots at most; there is room for ${room}. Take old shots out first.`,
    noShortShot: ({ club, metres }: { readonly club: string; readonly metres: number }) =>
      `The shortest shot in the bag is ${club}, which carries ${whole(metres)} m (${whole(inYards(metres))} yd), and no club has part swings: near the green every shot of the plan flies past the hole. Allow part swings of the most lofted club, or add a wedge.`,
    tooManyClubs: ({ count, most }: { readonly count: number; readonly most: number }) =>
      `${count} clubs are chosen for the round; Rule 4.1b allows ${most}. Take out what stays at home.`,
  },
  table: {
    quantities: { wind: 'wind speed', temperature: 'temperature', altitude: 'altitude' },
    sides: { left: 'left', right: 'right' },
    empty: 'it is empty. Type a number.',
    formula: ({ cell }: { readonly cell: string }) => `“${cell}” is a formula. Put its result there.`,
    cellTooLong: ({ cell }: { readonly cell: string }) =>
      `“${cell}” is too long for a number. Type a number.`,
    typeNumber: 'Type a number.',
    otherDecimal: ({ sign }: { readonly sign: string }) =>
      `Choose “${sign}” as the decimal sign, or retype it.`,
    noNumber: ({ cell, hint }: { readonly cell: string; readonly hint: string }) =>
      `“${cell}” is no number. ${hint}`,
    neither: ({ cell, word }: { readonly cell: string; readonly word: string }) =>
      `“${cell}”: “${word}” is neither a unit nor a side. Type a number.`,
    quote: 'A quotation mark is not closed. Close it, or take it out.',
    rowTooLong: 'The row is far too long for a shot. Take it out.',
    noCarry: 'The carry is missing. Type it, or leave the row out.',
    noClub: 'The club is missing. Type it, or leave the row out.',
    unknownClub: ({ club }: { readonly club: string }) =>
      `“${club}” is not in the bag. Say which club it is, or add it to the bag.`,
    unknownSwing: ({ swing }: { readonly swing: string }) =>
      `“${swing}” is no swing that is known. Say which one it is.`,
    angle: 'It is an angle where a length is needed. Choose another column or unit.',
    noDistance: ({ metres }: { readonly metres: number }) =>
      `${metres} m is no distance of a golf shot. Check the number and the unit.`,
    noSideways: 'How far left or right it went is missing. Type it, or leave the row out.',
    noSide: ({ cell }: { readonly cell: string }) => `“${cell}” is neither left nor right. Type one of them.`,
    behind: ({ degrees }: { readonly degrees: number }) =>
      `${degrees}° is behind the player. Check the number and the unit.`,
    fartherThanCarry: ({ metres }: { readonly metres: number }) =>
      `${metres} m off line is more than the ball carried. Check the number and the unit.`,
    noDate: ({ cell }: { readonly cell: string }) =>
      `“${cell}” is no date in the order that was chosen. Choose another order, or mend it.`,
    fields: {
      carry: 'Carry',
      total: 'Total',
      intended: 'Intended length',
      offline: 'Off line',
      direction: 'Direction',
    },
    firstOnly: ({ most, line }: { readonly most: number; readonly line: number }) =>
      `Only the first ${most} rows were read; line ${line} and what follows were not. Cut the file in parts and read them one by one.`,
    noRoom: ({ most, line }: { readonly most: number; readonly line: number }) =>
      `A player file holds ${most} shots at most; line ${line} and what follows were not read. Take old shots out of the player file first.`,
    fileTooLong: ({ count, most }: { readonly count: number; readonly most: number }) =>
      `The file holds ${count} characters; at most ${most} are read. Cut it into several files.`,
    noCarryColumn: 'No column is read as the carry. Choose the column that holds it.',
    noSideColumn: 'No column is read as the distance off line or as the direction. Choose one of the two.',
    noClubColumn: 'No column names the club. Choose one, or say which club the table is of.',
    noQuantity: ({ cell, quantity }: { readonly cell: string; readonly quantity: string }) =>
      `${cell} is no ${quantity}. Type a number, or leave it empty.`,
    beyond: ({ cell, quantity }: { readonly cell: string; readonly quantity: string }) =>
      `${cell} is beyond any ${quantity} on a course. Check the number and the unit.`,
    noWindSide: ({ cell }: { readonly cell: string }) =>
      `“${cell}” is no side that a wind comes from. Type degrees, 0 from ahead and 90 from the right, or words such as “from the left”.`,
    holdsTooMuch: ({ count, most }: { readonly count: number; readonly most: number }) =>
      `It holds ${count} characters; at most ${most} are read. Cut it into several files.`,
    utf16: 'It is UTF-16 or no text at all. Save it as CSV in UTF-8 and try again.',
    noTable: 'No rows of two or more columns were found. Export a table with one shot per row, as CSV.',
    letters:
      'Some letters could not be read. If names of clubs look odd, save the file as UTF-8 and try again.',
    doubts: {
      noSide: 'No column tells how far left or right the ball went. Choose one, or no shot can be used.',
      unit: ({ column, unit }: { readonly column: string; readonly unit: string }) =>
        `The unit of “${column}” is not said; ${unit} is taken. Check it.`,
      windFrom: ({ column }: { readonly column: string }) =>
        `“${column}” is taken as the player sees it: 0 from ahead, 90 from the right. If it is by the compass, set it to “not read”.`,
      noWindFrom:
        'No column tells from which side the wind came. Say it for the whole table, or the shots count as measured.',
      sign: ({ column, side }: { readonly column: string; readonly side: string }) =>
        `In “${column}” numbers without a minus are taken as ${side}. Check it with a shot that you remember.`,
      notInBag: ({ names }: { readonly names: string }) =>
        `Not in the bag: ${names}. Say which clubs they are, or their shots are left out.`,
      takenAsCarry: ({ column }: { readonly column: string }) =>
        `“${column}” is taken as the carry. If it holds the roll too, the clubs come out too long.`,
      noCarry: 'No column holds the carry. Choose one, or no shot can be used.',
      dates:
        'Whether the day or the month comes first in the dates does not show; the day is taken. Check it.',
    },
    paces: 'That many paces are no distance of a golf shot. Check the number.',
    notUtf8: 'The file is not UTF-8; it was read as western European text. Check letters with accents.',
    megabytes: ({ size, most }: { readonly size: number; readonly most: number }) =>
      `It holds ${size} MB; at most ${most} MB are read. Cut it into several files.`,
    gone: 'The table is no longer open. Choose the file again.',
    inField: ({ field, message }: { readonly field: string; readonly message: string }) =>
      `${field}: ${message}`,
  },
  bag: {
    full: ({ most }: { readonly most: number }) =>
      `The bag holds ${most} clubs, and no more are kept. Take one out first.`,
    oneSwing: 'A club is used for one swing at least. Choose another one before this is taken out.',
    oneClub: 'A bag holds one club beside the putter at least. Add another before this one goes.',
    noName: 'A club needs a name. Type one.',
    longName: 'The name is longer than 60 letters. Shorten it.',
    taken: ({ name }: { readonly name: string }) =>
      `The bag holds “${name}” already. Choose another name, such as its loft.`,
  },
  putts: {
    holed: ({
      made,
      tries,
      feet,
    }: {
      readonly made: number;
      readonly tries: number;
      readonly feet: number;
    }) => `${made} holed of ${tries} from ${feet} ft cannot be. Mend that line.`,
    none: 'No putt is filled in. Say how many you tried and how many you holed.',
    tooMany: 'There are more tests than a file keeps. Take old ones out first.',
    noTry: 'No try is filled in. Say how often you were there and how often you saved it.',
    saved: ({ saved, tries }: { readonly saved: number; readonly tries: number }) =>
      `${saved} saved of ${tries} cannot be. Mend that line.`,
    noRecord: 'There are no putts on record. Putt some, or fill in the ten-minute test.',
    holedMetres: ({
      made,
      tries,
      metres,
    }: {
      readonly made: number;
      readonly tries: number;
      readonly metres: number;
    }) => `${made} holed of ${tries} from ${metres} m cannot be. Mend that line.`,
    count: ({ putts, metres }: { readonly putts: number; readonly metres: number }) =>
      `${putts} putts from ${metres} m cannot be. Mend that line.`,
    past: ({ metres, past }: { readonly metres: number; readonly past: number }) =>
      `A putt from ${metres} m that stopped ${past} m beyond the hole cannot be. Mend that line.`,
  },
  file: {
    where: 'file',
    newerPlayer: ({ version, current }: { readonly version: number; readonly current: number }) =>
      `The player file is of format version ${version}; this program reads up to version ${current}. Open it with a newer release of Holewright.`,
    playerTooLong: ({ count, most }: { readonly count: number; readonly most: number }) =>
      `It holds ${count} characters; at most ${most} are read. Take old shots out of it.`,
    notPlayer:
      'It does not say that it is a player file (holewright.format "player" with a formatVersion from 1). Choose a player file, or make a new player.',
    manyClubs: ({ count, most }: { readonly count: number; readonly most: number }) =>
      `The bag holds ${count} clubs; at most ${most} are read. Take out what is not played.`,
    manyShots: ({ count, most }: { readonly count: number; readonly most: number }) =>
      `It holds ${count} shots; at most ${most} are read. Take out the oldest.`,
    somethingElse: 'something else',
    missing: ({ wanted }: { readonly wanted: string }) =>
      `It is missing; ${wanted} is needed. Add it to the file, or restore the last good copy.`,
    unexpected: ({ found, wanted }: { readonly found: string; readonly wanted: string }) =>
      `It is ${found}; ${wanted} was expected. Correct it in the file, or restore the last good copy.`,
    moreFields: ({ count }: { readonly count: number }) =>
      `${count} more fields cannot be read. Mend these first.`,
  },
  round: {
    tooLong: ({ count, most }: { readonly count: number; readonly most: number }) =>
      `It holds ${count} characters; at most ${most} are read. Split it into single rounds.`,
    notRound:
      'It does not say that it is a round file (holewright.format "round" with a formatVersion from 1). Choose a round file, or begin a new round.',
    newer: ({ version, current }: { readonly version: number; readonly current: number }) =>
      `The round file is of format version ${version}; this program reads up to version ${current}. Open it with a newer release of Holewright.`,
    holeTwice: ({ hole }: { readonly hole: number }) =>
      `Hole ${hole} is entered twice. Take one of the two out.`,
    doNotAddUp: ({ score, others }: { readonly score: number; readonly others: number }) =>
      `The score is ${score}, putts and penalties are ${others}. Look at the card again.`,
    penalties: ({ hole, shots }: { readonly hole: number; readonly shots: number }) =>
      `The hole has ${hole} penalty strokes, its shots have ${shots}. Look at the shots again.`,
    moreShots: ({ score, counted: come }: { readonly score: number; readonly counted: number }) =>
      `The score is ${score}, its shots and penalties come to ${come}. Look at the shots again.`,
    sharedPlan: 'shared plan',
    shareTooLarge: ({ count, most }: { readonly count: number; readonly most: number }) =>
      `Together they hold ${count} characters; at most ${most} can be opened again. Share the course as a file of its own.`,
  },
  day: ({ problem }: { readonly problem: string }) =>
    `${problem}. Correct it, or leave it out for the default.`,
  /** Why a hole cannot be planned. */
  plan: {
    noSuchHole: ({ numbers }: { readonly numbers: string }) =>
      `the course has no such hole; it has ${numbers}.`,
    noHoles: 'the course has no such hole; it has no holes at all.',
    noGreen:
      'no green is drawn, so there is nothing to play to. Draw its green (golf=green with this hole’s ref).',
    player: ({ name }: { readonly name: string }) => `player ${name}`,
    noClubs:
      'the bag has no club with a spread. Add clubs with measured shots, stated spreads or a handicap.',
    offGreen: ({ name }: { readonly name: string }) =>
      `hole position “${name}” is not on this hole’s green. Move it onto the green.`,
    called: ({ name }: { readonly name: string }) => `“${name}”`,
    noTee: ({ name, names }: { readonly name: string; readonly names: string }) =>
      `it has no tee named “${name}”; it has ${names}.`,
    noPosition: ({ name, names }: { readonly name: string; readonly names: string }) =>
      `it has no hole position named “${name}”; it has ${names}.`,
  },
  photo: {
    height: 'The camera’s height is a number from 0.3 to 30 m above the ground.',
    distances: 'The marks’ distances are numbers from 5 to 400 m.',
    alike: 'The two marks are nearly as far away as each other. Choose one that is clearly farther.',
    lower:
      'The farther mark lies lower in the picture than the nearer one. Check which distance belongs to which.',
    sky: 'That point lies above the horizon that the two marks give: no ball can lie there.',
    tooFar: 'That point lies farther away than a ball can be hit. Check the marks.',
  },
};
