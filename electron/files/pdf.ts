import type * as Electron from 'electron';
import { contract } from '../../core/host.ts';
import type { PagePrinted } from '../../core/files.ts';
import { ok, refuse, type Result } from '../../core/model/index.ts';
import { notUnderstood } from '../api.ts';
import type { AskWhere } from './ask.ts';

/** The sheet's own size and its own white edge: anything else would make what is drawn at true size larger or smaller. */
const asLaidOut: Electron.PrintToPDFOptions = {
  preferCSSPageSize: true,
  printBackground: true,
  scale: 1,
  margins: { top: 0, bottom: 0, left: 0, right: 0 },
};

/** The window's own page as a PDF, as its print styles lay it out. */
export const pagePrinter =
  (ask: AskWhere) =>
  async (sender: Electron.WebContents, input: unknown): Promise<Result<PagePrinted>> => {
    const parsed = contract['files.pdf'].input.safeParse(input);
    if (!parsed.success) return { ok: false, problem: notUnderstood(parsed.error) };
    return ask(sender, { name: parsed.data.name, kind: 'pdf' }, async () => {
      try {
        return ok(await sender.printToPDF(asLaidOut));
      } catch (error) {
        console.error(error);
        return refuse('not-printed', 'The page could not be made into a PDF. Save it as SVG, or try again.');
      }
    });
  };
