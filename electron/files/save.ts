import type * as Electron from 'electron';
import { contract } from '../../core/host.ts';
import type { FileSaved } from '../../core/files.ts';
import type { Result } from '../../core/model/index.ts';
import { notUnderstood } from '../api.ts';
import type { AskWhere } from './ask.ts';

/** A drawing, a picture or a table that a page hands over to be saved. */
export const fileSaver =
  (ask: AskWhere) =>
  async (sender: Electron.WebContents, input: unknown): Promise<Result<FileSaved>> => {
    const parsed = contract['files.save'].input.safeParse(input);
    if (!parsed.success) return { ok: false, problem: notUnderstood(parsed.error) };
    return ask(sender, parsed.data, parsed.data.data);
  };
