import { PageToPrint, type PagePrinted } from '../../core/files.ts';
import { ok, refuse, type Result } from '../../core/model/problem.ts';

/** In a browser printing is the browser's own: it asks for printer or PDF, and offers the page's title as the file's name. */
export function printPage(input: unknown): Result<PagePrinted> {
  const page = PageToPrint.safeParse(input);
  if (!page.success) return refuse('bad-input', page.error.issues[0]?.message ?? 'This page could not be printed.');
  const { name } = page.data;
  const { title } = document;
  document.title = name.replace(/\.pdf$/, '');
  try {
    window.print();
  } finally {
    document.title = title;
  }
  return ok({ outcome: 'printing', name });
}
