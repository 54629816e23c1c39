/** The program's window, with everything switched off that the page does not need. */

import { BrowserWindow } from 'electron';
import { PAGE_ADDRESS } from './page-address.ts';

/** Makes the window and loads the page; `preload` is the path of the built preload. */
export function openWindow(preload: string, isPackaged: boolean): BrowserWindow {
  const window = new BrowserWindow({
    title: 'Holewright',
    width: 1280,
    height: 860,
    minWidth: 720,
    minHeight: 520,
    show: false,
    backgroundColor: '#f4f4f0',
    webPreferences: {
      preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      // Dictionaries would be fetched from elsewhere.
      spellcheck: false,
      devTools: !isPackaged,
    },
  });
  window.once('ready-to-show', () => {
    window.show();
  });
  void window.loadURL(PAGE_ADDRESS);
  return window;
}
