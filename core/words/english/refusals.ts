/** What the host refuses and why: files, copies, journals, the disk, printing. */

import { capital } from '../capital.ts';

type Named = { readonly name: string };

export const refusals = {
  /** What was being done; stands within the sentences below. */
  doing: {
    openingWorkspace: ({ folder }: { readonly folder: string }) => `opening the workspace folder ${folder}`,
    readingFolder: ({ folder }: { readonly folder: string }) => `reading the folder "${folder}"`,
    opening: ({ name }: Named) => `opening ${name}`,
    openingToEdit: ({ name }: Named) => `opening ${name} for editing`,
    saving: ({ name }: Named) => `saving ${name}`,
    writing: ({ name }: Named) => `writing ${name}`,
    reading: ({ name }: Named) => `reading ${name}`,
    readingCopies: ({ name }: Named) => `reading the kept copies of ${name}`,
    readingAttachments: ({ name }: Named) => `reading the pictures and map files of ${name}`,
    readingAllAttachments: 'reading the pictures and map files of your courses',
    copyingBeside: ({ name, course }: Named & { readonly course: string }) =>
      `copying ${name} beside ${course}`,
    writingJournal: ({ name }: Named) => `writing the journal of ${name}`,
    readingJournal: ({ name }: Named) => `reading the journal of ${name}`,
    clearingJournal: ({ name }: Named) => `clearing the journal of ${name}`,
    savingSettings: 'saving your settings',
    readingSettings: 'reading your settings',
  },
  diskFull: ({ doing }: { readonly doing: string }) =>
    `The disk is full, so ${doing} was stopped. The file on disk is as it was. Make room and try again.`,
  forbidden: ({ doing, code }: { readonly doing: string; readonly code: string }) =>
    `The system does not allow ${doing} (${code}). Check who may read and write that folder, then try again.`,
  gone: ({ doing }: { readonly doing: string }) =>
    `${capital(doing)} failed: the file or its folder is no longer there. Put it back, or save your work under a new name.`,
  notPlain: ({ doing }: { readonly doing: string }) =>
    `${capital(doing)} was refused: it is a link or not a plain file. Put a copy of the file itself into the folder.`,
  tooLarge: ({ doing }: { readonly doing: string }) =>
    `${capital(doing)} was refused: the file is larger than 64 MiB. Cut it down and try again.`,
  busy: ({ doing, code }: { readonly doing: string; readonly code: string }) =>
    `${capital(doing)} failed: another program is using the file just now (${code}). Try again in a moment.`,
  failed: ({ doing, reason }: { readonly doing: string; readonly reason: string }) =>
    `${capital(doing)} failed (${reason}). Try again; if it stays, keep a copy elsewhere.`,
  folderGone: ({ folder, doing }: { readonly folder: string; readonly doing: string }) =>
    `The folder "${folder}" is not there any more, so ${doing} was not possible. Your work stays in this window: put the drive or folder back and try again.`,
  workspaceIsLink: ({ folder }: { readonly folder: string }) =>
    `The workspace folder "${folder}" has become a link. Put the real folder back and start Holewright again.`,
  exportsIsLink: ({ folder, workspace }: { readonly folder: string; readonly workspace: string }) =>
    `The folder "${folder}" of "${workspace}" has become a link, so nothing was written. Put a real folder there and try again.`,
  notHeld: ({ name }: Named) =>
    `This window does not hold ${name} (any more), so nothing was written. Your work stays here: open it for editing again, or save it as a new file.`,
  noSuchFile:
    'That file is no longer in the workspace folder. Pick another one, or save your work as a new file.',
  isDemo: ({ name }: Named) =>
    `${name} is one of the demo files and stays as it is. Save your work as a file of your own.`,
  changedOnDisk: ({ name }: Named) =>
    `${name} was changed by another program since you opened it. Nothing was written: open the version on disk, or save yours as a new file.`,
  journalFull: ({ name }: Named) =>
    `The journal of ${name} has no more room (256 MiB), so this change is not in it. Save ${name}: that makes room.`,
  content: {
    notText: ({ name }: Named) =>
      `${name} is not UTF-8 text. It may be damaged or of another kind: export it again as GeoJSON or JSON, or take a copy from the .holewright-backups folder beside it.`,
    wouldBeTooLarge: ({ name }: Named) =>
      `${name} would be larger than 64 MiB. Nothing was written; cut it down and save again.`,
    oddCharacters: ({ name }: Named) =>
      `${name} holds characters that no text file can keep (a zero or half a character). Nothing was written; remove them and save again.`,
    notWritten: ({ name, fault }: Named & { readonly fault: string }) =>
      `${name} was not written: ${fault}. Nothing on disk was changed.`,
    incomplete: ({ reason }: { readonly reason: string }) => `it is not complete JSON (${reason})`,
    cutOff: 'cut off',
    noObject: 'it is not a JSON object',
    noCollection: 'it is not a GeoJSON FeatureCollection',
    noFeatures: 'its list of features is missing',
    unreadable: 'it cannot be read',
    fault: ({
      where,
      message,
      more,
    }: {
      readonly where: string;
      readonly message: string;
      readonly more: number;
    }) => `${where}: ${message.replace(/\.$/u, '')}${more === 0 ? '' : ` (and ${more} more)`}`,
  },
  attachments: {
    noCourse: ({ name }: Named) => `${name} is no course. Pictures and map files belong to a course.`,
    gone: 'That picture or map file is no longer beside its course. Put it back, or attach it again.',
    isDemo: ({ name }: Named) =>
      `${name} is one of the demo files and stays as it is. Save it as a file of your own, then attach to that.`,
    unfit: ({ name }: Named) =>
      `${name} is no picture (PNG, JPEG, WebP), GeoTIFF, PMTiles or MBTiles file, so it was not copied. Export it as one of these and try again.`,
    tooLarge: ({ name }: Named) =>
      `${name} is too large to attach: pictures may have 256 MiB, map files 2 GiB. Nothing was copied; cut it down and try again.`,
    noRoom: ({ name }: Named) =>
      `There is too little room on the disk for ${name}. Nothing was copied; make room and try again.`,
    brokeOff: ({ name }: Named) =>
      `${name} changed or broke off while it was copied, so nothing was kept. Try again.`,
    stopped: ({ name }: Named) => `Copying ${name} was stopped. Nothing was kept.`,
    notPlain: ({ name }: Named) => `${name} is not a plain file. Choose another one.`,
    noTiles: ({ name }: Named) => `${name} is no MBTiles file, so it has no tiles.`,
    noIndex: ({ name }: Named) =>
      `Looking up a tile in ${name} takes too long: its index is missing. Make the MBTiles file anew with an index on zoom, column and row.`,
    damagedTiles: ({ name, reason }: Named & { readonly reason: string }) =>
      `${name} could not be read as MBTiles (${reason}). Make or fetch the file anew and attach it again.`,
  },
  noExport: ({ name }: Named) => `${name} is no kind of file that is written.`,
  inExports: ({ folder, name, workspace }: Named & { readonly folder: string; readonly workspace: string }) =>
    `${folder}/${name} in the folder ${workspace}`,
  isThere: ({ name }: Named) =>
    `${name} is there already, so nothing was written. Save it under another name.`,
  noneOfOurs: ({ name }: Named) => `${name} is no course, player or round, so it was not opened.`,
  noneChosen: 'No file was chosen.',
  nothingWritten: 'Nothing was written.',
  noPdf: 'No PDF was written.',
  notLaidOut: ({ reason }: { readonly reason: string }) =>
    `The page could not be laid out for paper (${reason}). Print it instead, or try again.`,
  nothingPrinted: 'Nothing was printed.',
  printer: ({ reason }: { readonly reason: string }) =>
    `The printer did not take it (${reason}). Check the printer, or save a PDF instead.`,
  windowClosed: 'The window is closed. Start Holewright again.',
  request: {
    ownPageOnly: 'Only the program’s own page may ask this.',
    tooLarge: 'That is more than 64 MiB. Nothing was written; cut the file down and try again.',
    textTooLarge: 'That is more than 64 MiB of text. Nothing was written; cut the file down and try again.',
    fileTooLarge: ({ name }: Named) => `${name} is larger than 64 MiB. Nothing was written.`,
    malformed: ({ method }: { readonly method: string }) =>
      `The request "${method}" is not as it should be. Nothing was done; reload the window and try again.`,
    malformedAt: ({ method, where }: { readonly method: string; readonly where: string }) =>
      `The request "${method}" is not as it should be at "${where}". Nothing was done; reload the window and try again.`,
    answer: ({ method }: { readonly method: string }) =>
      `The program gave an answer to "${method}" that this page does not understand. Close every Holewright window and start it again.`,
    failedAt: ({ method, error }: { readonly method: string; readonly error: string }) =>
      `The program failed at "${method}": ${error}. Try again.`,
    failed: ({ error }: { readonly error: string }) => `The program failed: ${error}. Try again.`,
    unknown: 'The program knows no such request.',
    noFile: 'The request is no file.',
    noSize: 'The request does not say how large the file is.',
    noName: 'The request does not say what the file is called.',
    notJson: 'The request is not JSON.',
    incomplete: 'The request is not complete JSON in UTF-8.',
    otherAddress: 'This address is not the one that the program printed.',
    noPath: 'The request has no plain path.',
    foreignPage: 'The request comes from a foreign page.',
    startOnly: 'A start address is opened, nothing else.',
    readAndPost: 'Only reading and posting are known here.',
    noOrigin: 'The request does not say which page it comes from.',
    noKey:
      'This window has no key. Open the address that the terminal shows; press Enter there for a fresh one.',
    nothingHere: 'There is nothing at this address.',
    usedStart: 'This start address was used before. Press Enter in the terminal for a fresh one.',
  },
  page: {
    opening: 'Opening Holewright.',
    goOn: 'Go on',
    ifNothing: 'if nothing happens.',
    notOpened: 'Holewright: not opened',
    didNotOpen: 'Holewright did not open here',
  },
};
