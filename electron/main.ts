import path from 'node:path';
import { app, BrowserWindow, dialog, ipcMain, Menu, protocol, session } from 'electron';
import { benchInWorker } from './benchInWorker.ts';
import { prepare, runDesk } from './desk.ts';
import { notebookFile } from './place.ts';

const parts = { app, BrowserWindow, dialog, ipcMain, Menu, protocol, session };
const folder = import.meta.dirname;
const file = notebookFile();
prepare(parts, file);
runDesk(parts, {
  folder,
  makeBench: () => benchInWorker(path.join(folder, 'worker.js'), { file, shell: 'electron', version: app.getVersion() }),
}).catch((error: unknown) => {
  console.error(error);
  app.exit(1);
});
