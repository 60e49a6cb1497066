import { FileToSave, mimeOf, type FileSaved } from '../../core/files.ts';
import { ok, refuse, type Result } from '../../core/model/problem.ts';

/** Long enough for a browser to take a file over, which it does in its own time [ms]. */
const TAKEN_OVER = 60_000;

/** In a browser the page itself hands a file over as a download: the host must not write where nobody was asked. */
export function download(input: unknown): Result<FileSaved> {
  const file = FileToSave.safeParse(input);
  if (!file.success) return refuse('bad-input', file.error.issues[0]?.message ?? 'This file could not be saved.');
  const { name, kind, data } = file.data;
  const content = kind === 'png' ? Uint8Array.from(atob(data), (character) => character.charCodeAt(0)) : data;
  const address = URL.createObjectURL(new Blob([content], { type: `${mimeOf[kind]};charset=utf-8` }));
  const anchor = document.createElement('a');
  anchor.href = address;
  anchor.download = name;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(address), TAKEN_OVER);
  return ok({ outcome: 'downloading', name });
}
