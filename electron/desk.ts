import path from 'node:path';
import type * as Electron from 'electron';
import { benchChannels, EVENT_CHANNEL } from '../core/channels.ts';
import type { Channel } from '../core/host.ts';
import { readAsset } from './assets.ts';
import type { Bench } from './bench.ts';
import { askWhere } from './files/ask.ts';
import { pagePrinter } from './files/pdf.ts';
import { fileSaver } from './files/save.ts';
import { menuTemplate } from './menu.ts';
import { notebookKey } from './notebook/mutex.ts';
import { isOurs, SCHEME, securityHeaders } from './policy.ts';
import { openWindow } from './window.ts';

/** The parts of Electron that the bench uses. They are passed in, so that all of this runs under plain Node in tests. */
export type Parts = Pick<typeof Electron, 'app' | 'BrowserWindow' | 'dialog' | 'ipcMain' | 'Menu' | 'protocol' | 'session'>;

export interface DeskOptions {
  /** The folder with main.js and preload.cjs; the page lies beside it. */
  readonly folder: string;
  readonly makeBench: () => Bench;
}

/**
 * What has to be said before Electron is ready, hence at once when the program starts. Electron keeps its lock, by which a second start
 * becomes a window of the first, in its own data folder: a folder per notebook lets two notebooks be open side by side.
 */
export function prepare({ app, protocol }: Parts, notebook: string): void {
  app.setPath('userData', path.join(app.getPath('userData'), `notebook-${notebookKey(notebook)}`));
  protocol.registerSchemesAsPrivileged([{ scheme: SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } }]);
  app.enableSandbox();
}

/** The desktop shell: one bench, its windows, and nothing that a window may do beyond calling it. */
export async function runDesk(parts: Parts, { folder, makeBench }: DeskOptions): Promise<void> {
  const { app, BrowserWindow, ipcMain, Menu } = parts;
  if (!app.requestSingleInstanceLock()) {
    app.quit();
    return;
  }
  await app.whenReady();
  const bench = makeBench();
  closeOnQuit(app, bench);
  servePage(parts, path.join(folder, '../renderer'));
  confine(parts);

  const answer = (channel: Channel, work: (call: Electron.IpcMainInvokeEvent, input: unknown) => Promise<unknown>) =>
    ipcMain.handle(channel, async (call, input: unknown) => {
      const frame = call.senderFrame;
      if (frame === null || frame.parent !== null || !isOurs(frame.url))
        throw new Error('this caller is not a page of the bench');
      return work(call, input);
    });
  for (const channel of benchChannels) {
    answer(channel, async (call, input) => {
      const { reply, event } = await bench.call(channel, input);
      if (event !== null) {
        for (const window of BrowserWindow.getAllWindows()) {
          if (window.webContents !== call.sender) window.webContents.send(EVENT_CHANNEL, event);
        }
      }
      return reply;
    });
  }
  const ask = askWhere(parts);
  const [save, print] = [fileSaver(ask), pagePrinter(ask)];
  answer('files.save', (call, input) => save(call.sender, input));
  answer('files.pdf', (call, input) => print(call.sender, input));

  const open = () => void openWindow(BrowserWindow, path.join(folder, 'preload.cjs'));
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(process.platform, open)));
  app.on('second-instance', open);
  app.on('activate', () => {
    if (BrowserWindow.getAllWindows().length === 0) open();
  });
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit();
  });
  open();
}

function servePage({ protocol }: Parts, pageFolder: string): void {
  protocol.handle(SCHEME, async (request) => {
    const mayAsk = isOurs(request.url) && (request.method === 'GET' || request.method === 'HEAD');
    const asset = mayAsk ? await readAsset(pageFolder, new URL(request.url).pathname) : null;
    if (asset === null) return new Response('Not Found', { status: 404, headers: securityHeaders });
    return new Response(asset.body, { headers: { ...securityHeaders, 'Content-Type': asset.type } });
  });
}

/** No permission, no download, no request outside, no other page, no other window. */
function confine({ app, session }: Parts): void {
  const { defaultSession } = session;
  defaultSession.setPermissionRequestHandler((_contents, _permission, grant) => grant(false));
  defaultSession.setPermissionCheckHandler(() => false);
  defaultSession.setDevicePermissionHandler(() => false);
  defaultSession.webRequest.onBeforeRequest((request, decide) => decide({ cancel: !isOurs(request.url) }));
  defaultSession.on('will-download', (event) => event.preventDefault());
  app.on('web-contents-created', (_event, contents) => {
    contents.on('will-navigate', (event) => {
      if (!isOurs(event.url)) event.preventDefault();
    });
    contents.on('will-redirect', (event) => event.preventDefault());
    contents.on('will-frame-navigate', (event) => {
      if (!event.isMainFrame) event.preventDefault();
    });
    contents.on('will-attach-webview', (event) => event.preventDefault());
    contents.setWindowOpenHandler(() => ({ action: 'deny' }));
  });
}

/** Quitting waits until the notebook is closed. */
function closeOnQuit(app: Electron.App, bench: Bench): void {
  let closed = false;
  app.on('will-quit', (event) => {
    if (closed) return;
    event.preventDefault();
    void bench
      .close()
      .catch((error: unknown) => console.error(error))
      .finally(() => {
        closed = true;
        app.quit();
      });
  });
}
