/** What the desktop program says outside its page: menu, dialogs for files, mishaps. */

export const system = {
  program: 'Holewright',
  menu: {
    program: '&Holewright',
    about: 'About Holewright',
    quit: 'Quit',
    text: '&Text',
    cut: 'Cut',
    copy: 'Copy',
    paste: 'Paste',
    selectAll: 'Select everything',
    window: '&Window',
    larger: 'Larger',
    smaller: 'Smaller',
    usualSize: 'Usual size',
    wholeScreen: 'Whole screen',
    minimise: 'Minimise',
  },
  about: {
    version: ({ version }: { readonly version: string }) => `Holewright ${version}`,
    files: ({ folder }: { readonly folder: string }) => `Your files: ${folder}`,
  },
  bringIn: {
    course: 'Course file to copy into the workspace',
    player: 'Player file to copy into the workspace',
    round: 'Round file to copy into the workspace',
  },
  kinds: { course: 'Course', player: 'Player', round: 'Round' },
  everyFile: 'Every file',
  attach: 'Picture or map file to copy beside the course',
  picturesAndMaps: 'Pictures and map files',
  saveAs: ({ kind }: { readonly kind: string }) => `Save as ${kind}`,
  exports: {
    pdf: 'PDF',
    '.geojson': 'GeoJSON map',
    '.json': 'JSON data',
    '.csv': 'Table (CSV)',
    '.svg': 'SVG drawing',
    '.png': 'PNG picture',
  },
  mishaps: {
    savedWork:
      'Files on disk are as they were last saved; work in progress is offered again when the page opens.',
    openAgain: 'Open the page again',
    quit: 'Quit',
    wait: 'Wait',
    stopped: ({ cause }: { readonly cause: string }) => `The window's page has stopped (${cause}).`,
    noMemory: 'it ran out of memory',
    stoppedDetail: ({ savedWork }: { readonly savedWork: string }) =>
      `${savedWork} If it stops again, open a smaller course.`,
    noAnswer: 'The window does not answer.',
    noAnswerDetail: ({ savedWork }: { readonly savedWork: string }) =>
      `Waiting often helps. Opening the page again ends what it was doing. ${savedWork}`,
    partMissing: ({ path, reason }: { readonly path: string; readonly reason: string }) =>
      `A part of the program could not be loaded (${path}: ${reason}).`,
    notLoaded: ({ reason, address }: { readonly reason: string; readonly address: string }) =>
      `The page could not be loaded (${reason}, ${address}).`,
    notBuilt: ({ folder }: { readonly folder: string }) =>
      `The page is not built: there is no index.html in ${folder}.`,
    unsaved: 'Some of your work is not saved yet.',
    unsavedDetail: 'Go back to save it, or close and lose what came after the last save.',
    goBack: 'Go back',
    closeUnsaved: 'Close without saving',
    hasToClose: 'Holewright has to close',
    endDetail: ({ what, savedWork }: { readonly what: string; readonly savedWork: string }) =>
      `${what}\n\n${savedWork} Start the program again; if this comes back, run "npm ci" and "npm run build" in its folder.`,
  },
};
