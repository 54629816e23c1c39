/**
 * The window's menu. Undo and redo are left out on purpose: the page has its own, and a menu entry would
 * take the keys away from it.
 */

import { Menu, type MenuItemConstructorOptions } from 'electron';
import type { Words } from '../../core/words/words.ts';

export function menuTemplate(
  showAbout: () => void,
  { system: { menu } }: Words,
): MenuItemConstructorOptions[] {
  return [
    {
      label: menu.program,
      submenu: [
        { label: menu.about, click: showAbout },
        { type: 'separator' },
        { label: menu.quit, role: 'quit' },
      ],
    },
    {
      label: menu.text,
      submenu: [
        { label: menu.cut, role: 'cut' },
        { label: menu.copy, role: 'copy' },
        { label: menu.paste, role: 'paste' },
        { label: menu.selectAll, role: 'selectAll' },
      ],
    },
    {
      label: menu.window,
      submenu: [
        { label: menu.larger, role: 'zoomIn' },
        { label: menu.smaller, role: 'zoomOut' },
        { label: menu.usualSize, role: 'resetZoom' },
        { type: 'separator' },
        { label: menu.wholeScreen, role: 'togglefullscreen' },
        { label: menu.minimise, role: 'minimize' },
      ],
    },
  ];
}

/** Puts the menu up, or another in its place when the language has changed. */
export function setMenu(showAbout: () => void, words: Words): void {
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(showAbout, words)));
}
