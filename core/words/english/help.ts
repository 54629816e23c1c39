/** The help drawer. */

import { pictures } from './pictures.ts';
import { windowPictures } from './window-pictures.ts';

export const help = {
  name: 'Help',
  pages: 'Help pages',
  guide: 'Guide',
  numbers: 'The numbers',
  limits: 'Limits',
  checked: 'What was checked',
  changes: 'Changes',
  licences: 'Licences',
  close: 'Close help',
  closeEsc: 'Close help (Esc)',
  pictures,
  windowPictures,
};
