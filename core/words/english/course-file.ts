/** The file of a course: beginning, opening, saving, lost work, earlier versions. */

import { figures } from './figures.ts';

const { counted } = figures;

export const courseFile = {
  saved: 'saved',
  openFirst: 'Open or begin a course first.',
  gone: ({ name }: { readonly name: string }) =>
    `${name} is no longer in its folder. Your work is still here and in the journal, but there is no file to save it into.`,
  writeAnew: 'Write the file anew',
  writtenAnew: ({ name }: { readonly name: string }) => `Your work is in ${name} now.`,
  unreadable: 'it cannot be read.',
  cannotEdit: ({ name, why }: { readonly name: string; readonly why: string }) =>
    `${name} cannot be edited: ${why}`,
  demo: ({ name }: { readonly name: string }) =>
    `${name} is a demo and stays as it is. Make a copy of it to edit.`,
  asking: 'Asking for the file …',
  onOpening: ({ notes }: { readonly notes: string }) => `On opening: ${notes}`,
  notSavedOnLeaving: ({ name, message }: { readonly name: string; readonly message: string }) =>
    `${name} could not be saved on leaving: ${message} Its changes are in the journal and are offered when it is opened again.`,
  kept: 'Your changes stay in this window and in the journal; saving is tried again by itself.',
  notSaved: ({ message, kept }: { readonly message: string; readonly kept: string }) =>
    `Not saved: ${message} ${kept}`,
  onDiskUnreadable: ({ why }: { readonly why: string }) =>
    `The file as it is on disk cannot be read (${why}). Save over it, or go back to a kept copy.`,
  notInJournal: ({ message }: { readonly message: string }) =>
    `The last change is not in the journal yet: ${message} It is still in this window.`,
  journalUnreadable: ({ message }: { readonly message: string }) =>
    `The journal of earlier changes cannot be read: ${message}`,
  bringBackStep: 'Bring back unsaved changes',
  giveName: 'Give the course a name first.',
  longName: ({ length, most }: { readonly length: number; readonly most: number }) =>
    `The name has ${length} characters; ${most} are enough.`,
  newUnreadable: 'The new file cannot be read.',
  writePlace: 'Write latitude and longitude in degrees, such as 52.3702, 4.8952.',
  holder: {
    window: 'Another window',
    program: 'Another program on this computer',
    somebody: 'of somebody else',
    computer: ({ whose }: { readonly whose: string }) => `The computer ${whose}`,
    held: ({ where, when }: { readonly where: string; readonly when: string }) =>
      `${where} has had this course open since ${when}. You can look at it here; close it there to edit it here.`,
  },
  tryAgain: 'Try again',
  course: 'Course',
  myCopy: ({ name }: { readonly name: string }) => `${name}, my copy`,
  copying: 'Copying …',
  copyToEdit: 'Make a copy to edit',
  lost: {
    name: 'Unsaved work was found',
    title: ({ when }: { readonly when: string }) => `Work of ${when} was not saved.`,
    notes: 'the course’s notes',
    wouldBring: ({ what }: { readonly what: string }) => `It would bring back: ${what}.`,
    changes: ({ count }: { readonly count: number }) => counted(count, { one: 'change', other: 'changes' }),
    last: ({
      changes,
      names,
      more,
    }: {
      readonly changes: string;
      readonly names: string;
      readonly more: string;
    }) => `${changes}, the last: ${names} ${more}`,
    bringBack: 'Bring it back',
    giveUp: 'Give it up for good',
    added: ({ count }: { readonly count: number }) =>
      `${counted(count, { one: 'thing', other: 'things' })} added`,
    changed: ({ count }: { readonly count: number }) =>
      `${counted(count, { one: 'thing', other: 'things' })} changed`,
    removed: ({ count }: { readonly count: number }) =>
      `${counted(count, { one: 'thing', other: 'things' })} removed`,
  },
  changedUnsaved: ({ name }: { readonly name: string }) =>
    `${name} was changed by another program, and you have changes that are not saved. Saving by itself waits until you choose.`,
  changed: ({ name }: { readonly name: string }) => `${name} was changed by another program.`,
  takeOther: 'Take the other version; mine is given up',
  readAgain: 'Read it again',
  keepMine: 'Keep mine and save over it',
  trySave: 'Try to save now',
  beginAnother: 'Begin another course',
  begin: 'Begin a course',
  noneOpen: 'No course is open',
  chooseOrBegin: 'Choose one in the bar above, or begin one here.',
  copies: {
    title: 'Earlier versions',
    unreadable: ({ why }: { readonly why: string }) => `That version cannot be read: ${why}`,
    same: 'That version is the same as what is on the map.',
    goBackStep: ({ when }: { readonly when: string }) => `Go back to ${when}`,
    asItWas: ({ when }: { readonly when: string }) =>
      `This is the course as it was at ${when}. Undo brings the later one back.`,
    none: 'None yet: a copy is kept each time a version is saved over, a minute apart.',
    goBack: 'Go back to it',
  },
  nameOfCourse: 'Name of the course',
  where: 'Where it lies: latitude, longitude',
  whereNote: 'Any point near the middle. It may be left out where a map file is brought in afterwards.',
  beginIt: 'Begin the course',
  lookingOnly: 'looking only',
  saving: 'saving …',
  isNotSaved: 'not saved',
  soon: 'saved when you rest',
  steps: ({ count }: { readonly count: number }) => counted(count, { one: 'step', other: 'steps' }),
  saveNow: ({ steps }: { readonly steps: string }) => `Save now (Ctrl+S); ${steps} can be undone`,
  save: 'Save',
  savedNow: 'Saved.',
  recover: {
    newer:
      'It was written by a newer version of the program. Open the course with that version to get it back.',
    noFit: 'The file was changed by another program since, so these changes no longer fit on it.',
    lost: ({ count }: { readonly count: number }) => `The last ${count} of its changes cannot be read.`,
    undo: ({ step }: { readonly step: string }) => `Undo: ${step}`,
    asOpened: 'As opened',
  },
};
