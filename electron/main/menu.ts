/**
 * The window's menu. Undo and redo are left out on purpose: the page has its own, and a menu entry would
 * take the keys away from it.
 */

import { Menu, type MenuItemConstructorOptions } from 'electron';

export function menuTemplate(showAbout: () => void): MenuItemConstructorOptions[] {
  return [
    {
      label: '&Holewright',
      submenu: [
        { label: 'About Holewright', click: showAbout },
        { type: 'separator' },
        { label: 'Quit', role: 'quit' },
      ],
    },
    {
      label: '&Text',
      submenu: [
        { label: 'Cut', role: 'cut' },
        { label: 'Copy', role: 'copy' },
        { label: 'Paste', role: 'paste' },
        { label: 'Select everything', role: 'selectAll' },
      ],
    },
    {
      label: '&Window',
      submenu: [
        { label: 'Larger', role: 'zoomIn' },
        { label: 'Smaller', role: 'zoomOut' },
        { label: 'Usual size', role: 'resetZoom' },
        { type: 'separator' },
        { label: 'Whole screen', role: 'togglefullscreen' },
        { label: 'Minimise', role: 'minimize' },
      ],
    },
  ];
}

export function setMenu(showAbout: () => void): void {
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(showAbout)));
}
