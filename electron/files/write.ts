import { randomUUID } from 'node:crypto';
import fs from 'node:fs/promises';
import path from 'node:path';
import type { FileKind } from '../../core/files.ts';
import { ok, refuse, type Result } from '../../core/model/index.ts';

/**
 * Writes a file where a person has said. What stands there under the very name that the dialog asked about gives way, in one step, so
 * that a full disk leaves the old file whole. A name that gains its ending here was never asked about: nothing gives way to that.
 * "Tobin 38.5 lb" has a point and no ending.
 */
export async function writeFile(
  chosen: string,
  { kind, data }: { readonly kind: FileKind | 'pdf'; readonly data: string | Uint8Array },
): Promise<Result<{ outcome: 'saved'; name: string }>> {
  const bytes = typeof data === 'string' ? Buffer.from(data, kind === 'png' ? 'base64' : 'utf8') : data;
  const askedAbout = path.extname(chosen).toLowerCase() === `.${kind}`;
  const target = askedAbout ? chosen : `${chosen}.${kind}`;
  const name = path.basename(target);
  const written = askedAbout ? path.join(path.dirname(target), `.${randomUUID()}.part`) : target;
  let isOurs = false;
  try {
    const file = await fs.open(written, 'wx');
    isOurs = true;
    try {
      await file.writeFile(bytes);
    } finally {
      await file.close();
    }
    if (written !== target) await fs.rename(written, target);
    return ok({ outcome: 'saved', name });
  } catch (error) {
    if (isOurs) await fs.rm(written, { force: true }).catch(() => {});
    return refuse('not-saved', sentenceFor((error as NodeJS.ErrnoException).code ?? '', name));
  }
}

function sentenceFor(code: string, name: string): string {
  const why = reasons[code] ?? `the system refused (${code || 'no reason given'}). Try another folder`;
  return `“${name}” was not saved: ${why}.`;
}

const noLeave = 'nothing may be written there. Choose a folder of your own';
const reasons: Readonly<Record<string, string>> = {
  EACCES: noLeave,
  EPERM: noLeave,
  EROFS: noLeave,
  EEXIST: 'a file of that name is there already and stays as it is. Choose another name',
  EISDIR: 'that is a folder. Choose a name for a file',
  ENOTDIR: 'that folder is no longer there. Choose another',
  ENOENT: 'that folder is no longer there. Choose another',
  ENOSPC: 'the disk is full. Make room, or choose another disk',
  EDQUOT: 'the disk is full. Make room, or choose another disk',
  ENAMETOOLONG: 'its name is too long there. Choose a shorter one',
};
