/** The help drawer. */

export const help = {
  name: 'Help',
  pages: 'Help pages',
  guide: 'Guide',
  numbers: 'The numbers',
  limits: 'Limits',
  close: 'Close help',
  closeEsc: 'Close help (Esc)',
};
