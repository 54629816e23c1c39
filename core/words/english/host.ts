/** What the page itself says of the machine beneath it: gone, too large, not text, where a file went. */

export const host = {
  savedAs: ({ where }: { readonly where: string }) => `Saved as ${where}.`,
  partGone:
    'The part of Holewright that reads and writes files does not answer. Keep this window open, copy what you cannot lose, then quit and start Holewright again.',
  serverGone:
    'The program that serves this page has ended. Keep this window open: your work is still in it. Run "npm start" again, save a copy from the new window, then close this one.',
  noFile: 'No file was chosen.',
  printPlace: 'the place you chose in the print window (choose “Save as PDF” as the printer there)',
  largerThan: ({ name, size }: { readonly name: string; readonly size: string }) =>
    `${name} is larger than ${size}. Cut it down in the program it came from and try again.`,
  notText: ({ name }: { readonly name: string }) =>
    `${name} could not be read as UTF-8 text. Export it again as GeoJSON or JSON and try again.`,
  copyingStopped: ({ name }: { readonly name: string }) => `Copying ${name} was stopped. Nothing was kept.`,
};
