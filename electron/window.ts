import type { BrowserWindow, BrowserWindowConstructorOptions } from 'electron';
import { ORIGIN } from './policy.ts';

const windowOptions = (preload: string): BrowserWindowConstructorOptions => ({
  width: 1280,
  height: 820,
  minWidth: 900,
  minHeight: 600,
  show: false,
  title: 'Fistmele',
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
    spellcheck: false,
  },
});

/** A window of the bench, shown when it has something to show. */
export async function openWindow(Window: typeof BrowserWindow, preload: string): Promise<void> {
  const window = new Window(windowOptions(preload));
  window.once('ready-to-show', () => window.show());
  await window.loadURL(`${ORIGIN}/index.html`);
}
