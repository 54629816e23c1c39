/** The bar at the top: rooms, files, undo, settings, print and help; and the notices. */

import { figures } from './figures.ts';

const { counted } = figures;

export const bar = {
  rooms: {
    plan: 'Plan',
    course: 'Course',
    player: 'Player',
    round: 'Round',
  },
  roomsOfProgram: 'Rooms of the program',
  nothingToUndo: 'Nothing to undo',
  undo: ({ step }: { readonly step: string }) => `Undo: ${step} (Ctrl+Z)`,
  nothingToRedo: 'Nothing to redo',
  redo: ({ step }: { readonly step: string }) => `Redo: ${step} (Ctrl+Shift+Z)`,
  undoAndRedo: 'Undo and redo',
  units: 'Units',
  yards: 'Yards',
  metres: 'Metres',
  theme: 'Theme',
  asTheSystem: 'As the system',
  light: 'Light',
  dark: 'Dark',
  language: 'Language',
  printThisHole: 'Print this hole',
  chooseHoleToPrint: 'Choose a hole to print it',
  help: 'Help',
  files: {
    course: {
      name: 'Course',
      bring: 'Bring in a course file',
      none: 'No course yet',
    },
    player: {
      name: 'Player',
      bring: 'Bring in a player file',
      none: 'No player yet',
    },
  },
  readingFiles: 'Reading files …',
  inventedDemoMark: '(invented demo)',
  noteCount: ({ count }: { readonly count: number }) => counted(count, { one: 'note', other: 'notes' }),
  notesOn: ({ notes, kind }: { readonly notes: string; readonly kind: 'course' | 'player' }) =>
    `${notes} on the ${kind} file`,
  closeNotice: 'Close this notice',
  couldNotBeOpened: ({ name }: { readonly name: string }) => `${name} could not be opened`,
  changedByOther: ({ name }: { readonly name: string }) => `${name} was changed by another program`,
  notesOnFile: ({ name }: { readonly name: string }) => `Notes on ${name}`,
  toPutRight: ({ count }: { readonly count: number }) =>
    `${counted(count, { one: 'thing is', other: 'things are' })} to be put right in it.`,
  chooseOrMend: 'Choose another file, or mend this one and bring it in again.',
  staysOpen: ({ name }: { readonly name: string }) => `${name} stays open.`,
  worthALook: 'The file is open; these things in it are worth a look.',
  asItWasBefore: 'What you see is as it was before.',
  readAgain: 'Read it again',
  warning: 'warning',
  holeTitle: ({ number }: { readonly number: number }) => `Hole ${number}`,
  calculationFailed: 'A calculation could not go on',
  startAgain: ({ message }: { readonly message: string }) =>
    `${message} Close the window and start the program again.`,
  calculationStopped: 'A calculation stopped',
  begunAnew:
    'It was begun anew by itself; the holes concerned are worked out again. Your files and drawings are not touched.',
  chooseAgain: ({ said }: { readonly said: string }) =>
    `Technical message: “${said}”. Choose the hole again; if it happens twice, close the window and start the program anew.`,
  /** What the engine of the program says, which is English wherever it runs. */
  engineSaid: ({ said }: { readonly said: string }) => `Technical message: “${said}”.`,
  calculationNotStarted: 'A calculation could not be started.',
  settingsNotKept: 'Settings were not kept',
  noAnswer: 'The program does not answer',
  noFileList: 'The list of files could not be read',
  noLongerThere: ({ name }: { readonly name: string }) => `${name} is no longer in the folder`,
  staysTillClosed:
    'What you see stays until this window is closed. Put the file back, or write it anew in the Course or the Player room.',
  leftBehind: ({ name }: { readonly name: string }) => `Unsaved work on ${name}`,
  leftBehindWhy: ({ when }: { readonly when: string }) =>
    `It was written down on ${when} and not saved, and the file is no longer in the folder. It can be made a file again; till you choose it stays on the disk.`,
  keepAsFile: {
    course: 'Make it a file and open it',
    player: 'Make it a file and open it',
    round: 'Make it a file: it is then among the rounds',
  },
  notKeptAsFile: ({ name }: { readonly name: string }) => `The work on ${name} was not made a file`,
  notGivenUp: ({ name }: { readonly name: string }) => `The work on ${name} is still on the disk`,
  notBroughtIn: 'The file could not be brought in',
  printingFailed: 'Printing did not work',
};
