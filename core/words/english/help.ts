/** The help drawer. */

import { pictures } from './pictures.ts';

export const help = {
  name: 'Help',
  pages: 'Help pages',
  guide: 'Guide',
  numbers: 'The numbers',
  limits: 'Limits',
  close: 'Close help',
  closeEsc: 'Close help (Esc)',
  pictures,
};
