import type * as Electron from 'electron';
import type { FileKind } from '../../core/files.ts';
import { ok, refuse, type Result } from '../../core/model/index.ts';
import { writeFile } from './write.ts';

const kinds: Readonly<Record<FileKind | 'pdf', string>> = {
  svg: 'SVG drawing',
  png: 'PNG picture',
  csv: 'CSV table',
  pdf: 'PDF document',
};

interface Named {
  readonly name: string;
  readonly kind: FileKind | 'pdf';
}

/** What a file holds: at hand, or made when its turn has come. */
type Content = string | Uint8Array | (() => Promise<Result<Uint8Array>>);

export type AskWhere = (
  sender: Electron.WebContents,
  file: Named,
  content: Content,
) => Promise<Result<{ outcome: 'saved' | 'cancelled'; name: string }>>;

/** Asks a window's user where a file goes and writes it there. One question at a time: a page that asks twice gets one dialog. */
export function askWhere({ BrowserWindow, dialog }: Pick<typeof Electron, 'BrowserWindow' | 'dialog'>): AskWhere {
  const asking = new WeakSet<object>();
  return async (sender, { name, kind }, content) => {
    if (asking.has(sender)) return refuse('asking', 'The bench is still asking where to save another file. Answer that first.');
    const options: Electron.SaveDialogOptions = {
      defaultPath: name,
      filters: [{ name: kinds[kind], extensions: [kind] }],
      properties: ['createDirectory', 'showOverwriteConfirmation'],
    };
    asking.add(sender);
    try {
      // Before the question: while it stands the page may change.
      const made = typeof content === 'function' ? await content() : ok(content);
      if (!made.ok) return made;
      const window = BrowserWindow.fromWebContents(sender);
      const answer = await (window === null ? dialog.showSaveDialog(options) : dialog.showSaveDialog(window, options));
      if (answer.canceled || answer.filePath === '') return ok({ outcome: 'cancelled', name });
      return await writeFile(answer.filePath, { kind, data: made.value });
    } finally {
      asking.delete(sender);
    }
  };
}
