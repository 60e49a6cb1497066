import type { MenuItemConstructorOptions } from 'electron';

/** Undo and redo are left out on purpose: as menu roles they would take the keys away from the bench's own journal. */
export function menuTemplate(platform: NodeJS.Platform, newWindow: () => void): MenuItemConstructorOptions[] {
  const bench: MenuItemConstructorOptions = {
    label: 'Bench',
    submenu: [
      { label: 'New window', accelerator: 'CmdOrCtrl+Shift+N', click: newWindow },
      { role: 'close' },
      { type: 'separator' },
      { role: 'quit' },
    ],
  };
  const edit: MenuItemConstructorOptions = {
    label: 'Edit',
    submenu: [{ role: 'cut' }, { role: 'copy' }, { role: 'paste' }, { role: 'selectAll' }],
  };
  const view: MenuItemConstructorOptions = {
    label: 'View',
    submenu: [{ role: 'resetZoom' }, { role: 'zoomIn' }, { role: 'zoomOut' }, { role: 'togglefullscreen' }],
  };
  return platform === 'darwin' ? [{ role: 'appMenu' }, bench, edit, view] : [bench, edit, view];
}
