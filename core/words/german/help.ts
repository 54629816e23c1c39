/** The help drawer. In German. */

import type { help as english } from '../english/help.ts';
import { pictures } from './pictures.ts';
import { windowPictures } from './window-pictures.ts';

export const help: typeof english = {
  name: 'Hilfe',
  pages: 'Hilfeseiten',
  guide: 'Anleitung',
  numbers: 'Die Zahlen',
  limits: 'Grenzen',
  checked: 'Was geprüft ist',
  changes: 'Änderungen',
  licences: 'Lizenzen',
  close: 'Hilfe schließen',
  closeEsc: 'Hilfe schließen (Esc)',
  pictures,
  windowPictures,
};
