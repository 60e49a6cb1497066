import { ok, refuse, type Result } from '../../../core/model/problem.ts';

/** Far more than a table of readings; a photograph chosen by mistake is beyond it. */
const MOST_BYTES = 1_000_000;

/** The text of a file that somebody chose: UTF-8, or the UTF-16 that some table programs write. */
export async function fileText(file: Blob & { readonly name?: string }): Promise<Result<string>> {
  if (file.size > MOST_BYTES) return refuse('too-large', 'A file of at most 1 MB was expected: this one is larger.');
  const bytes = new Uint8Array(await file.arrayBuffer());
  const [first, second] = bytes;
  const encoding = first === 0xff && second === 0xfe ? 'utf-16le' : first === 0xfe && second === 0xff ? 'utf-16be' : 'utf-8';
  const text = new TextDecoder(encoding).decode(bytes);
  return text.includes('\0') ? refuse('no-text', 'A text file was expected: this one holds something else.') : ok(text);
}
