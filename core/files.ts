import { z } from './model/zod.ts';
import { MOST_CALL_BYTES } from './channels.ts';

/** What the bench saves outside its notebook: a drawing or plot, its picture, or figures as a table. */
export const FileKind = z.enum(['svg', 'png', 'csv']);
export type FileKind = z.infer<typeof FileKind>;

export const mimeOf: Readonly<Record<FileKind, string>> = {
  svg: 'image/svg+xml',
  png: 'image/png',
  csv: 'text/csv',
};

const LONGEST_NAME = 200;
// What one of the systems that the bench runs on does not take in a file's name, and the names that one of them keeps for its devices.
const forbidden = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}\p{Zl}\p{Zp}<>:"/\\|?*]/gu;
const devices = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;

const isFileName = (name: string): boolean =>
  name === name.trim() && name.search(forbidden) === -1 && !devices.test(name) && !name.startsWith('.') && !name.endsWith('.');

const Name = z
  .string()
  .min(1)
  .max(LONGEST_NAME)
  .refine(isFileName, 'A file’s name without folders was expected, as in Bow - force and draw.svg.');
const TOO_LARGE = 'This file is larger than 16 MiB, the most that the bench saves at once.';

/** A file for whoever can write one: the text itself, or a picture's bytes in base64. */
export const FileToSave = z.discriminatedUnion('kind', [
  z.strictObject({ name: Name, kind: z.enum(['svg', 'csv']), data: z.string().max(MOST_CALL_BYTES, TOO_LARGE) }),
  z.strictObject({ name: Name, kind: z.literal('png'), data: z.base64().max(MOST_CALL_BYTES, TOO_LARGE) }),
]);
export type FileToSave = z.infer<typeof FileToSave>;

/** What became of it. A browser downloads by itself and does not tell whether the file arrived. */
export const FileSaved = z.strictObject({ outcome: z.enum(['saved', 'cancelled', 'downloading']), name: z.string() });
export type FileSaved = z.infer<typeof FileSaved>;

/** The page of the window that asks, as it is laid out for print. */
export const PageToPrint = z.strictObject({
  name: Name.refine((name) => name.endsWith('.pdf'), 'A name that ends in .pdf was expected.'),
});
export type PageToPrint = z.infer<typeof PageToPrint>;

/** What became of it. A browser asks its own questions, and does not tell how they were answered. */
export const PagePrinted = z.strictObject({ outcome: z.enum(['saved', 'cancelled', 'printing']), name: z.string() });
export type PagePrinted = z.infer<typeof PagePrinted>;

/** A file's name out of people's own names: what no system takes becomes a hyphen, and it never ends up hidden, empty or a device. */
export function fileName(words: readonly string[], kind: FileKind | 'pdf'): string {
  const plain = words
    .map((word) => word.replace(forbidden, '-').replace(/\s+/g, ' ').trim())
    .filter((word) => word !== '')
    .join(' - ')
    .replace(/^[.\s]+/, '');
  const stem = (/^.{0,80}/su.exec(plain)?.[0] ?? '').replace(/[.\s]+$/, '');
  return `${stem === '' ? 'Fistmele' : devices.test(stem) ? `Fistmele ${stem}` : stem}.${kind}`;
}
