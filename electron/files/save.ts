import type * as Electron from 'electron';
import { contract } from '../../core/host.ts';
import type { FileKind, FileSaved } from '../../core/files.ts';
import { ok, refuse, type Result } from '../../core/model/index.ts';
import { notUnderstood } from '../api.ts';
import { writeFile } from './write.ts';

const kinds: Readonly<Record<FileKind, string>> = { svg: 'SVG drawing', png: 'PNG picture', csv: 'CSV table' };

/** Asks a window's user where a file goes and writes it there. One question at a time: a page that asks twice gets one dialog. */
export function fileSaver({ BrowserWindow, dialog }: Pick<typeof Electron, 'BrowserWindow' | 'dialog'>) {
  const asking = new WeakSet<object>();
  return async (sender: Electron.WebContents, input: unknown): Promise<Result<FileSaved>> => {
    const parsed = contract['files.save'].input.safeParse(input);
    if (!parsed.success) return { ok: false, problem: notUnderstood(parsed.error) };
    if (asking.has(sender)) return refuse('asking', 'The bench is still asking where to save another file. Answer that first.');
    const { name, kind } = parsed.data;
    const options: Electron.SaveDialogOptions = {
      defaultPath: name,
      filters: [{ name: kinds[kind], extensions: [kind] }],
      properties: ['createDirectory', 'showOverwriteConfirmation'],
    };
    asking.add(sender);
    try {
      const window = BrowserWindow.fromWebContents(sender);
      const answer = await (window === null ? dialog.showSaveDialog(options) : dialog.showSaveDialog(window, options));
      if (answer.canceled || answer.filePath === '') return ok({ outcome: 'cancelled', name });
      return await writeFile(answer.filePath, parsed.data);
    } finally {
      asking.delete(sender);
    }
  };
}
