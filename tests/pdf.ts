import zlib from 'node:zlib';
import { type Line, linesOf } from './pdfLines.ts';

/** A page of a PDF: its size and the straight lines drawn on it, in millimetres from its upper left corner. */
export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly Line[];
}

const POINT = 25.4 / 72;

interface PdfObject {
  readonly dictionary: string;
  readonly stream: Buffer | null;
}

/** Every object of a file, by its number. Objects within compressed streams are not looked for: Chromium writes none. */
function objectsOf(file: Buffer): ReadonlyMap<number, PdfObject> {
  const text = file.toString('latin1');
  const found = new Map<number, PdfObject>();
  const begin = /(\d+) \d+ obj\b/g;
  for (let at = begin.exec(text); at !== null; at = begin.exec(text)) {
    const from = begin.lastIndex;
    const end = text.indexOf('endobj', from);
    const body = text.indexOf('stream', from);
    if (body === -1 || body > end) {
      found.set(Number(at[1]), { dictionary: text.slice(from, end), stream: null });
      begin.lastIndex = end;
      continue;
    }
    const dictionary = text.slice(from, body);
    // ISO 32000-1, 7.3.8.1: the word, then a line feed or a carriage return with one.
    const data = body + (text[body + 6] === '\r' ? 8 : 7);
    const length = Number(/\/Length (\d+)/.exec(dictionary)?.[1]);
    if (!Number.isInteger(length)) throw new Error('a stream of the PDF does not say its length');
    found.set(Number(at[1]), { dictionary, stream: file.subarray(data, data + length) });
    begin.lastIndex = data + length;
  }
  return found;
}

function contentOf({ dictionary, stream }: PdfObject): string {
  if (stream === null) return '';
  return (dictionary.includes('/FlateDecode') ? zlib.inflateSync(stream) : stream).toString('latin1');
}

const referred = (dictionary: string, key: string): readonly number[] => {
  const [, list = ''] = new RegExp(`/${key}\\s*(\\[[^\\]]*\\]|\\d+ \\d+ R)`).exec(dictionary) ?? [];
  return [...list.matchAll(/(\d+) \d+ R/g)].map(([, number]) => Number(number));
};

/** The pages of a PDF as Chromium writes it. */
export function readPdf(file: Buffer): readonly PdfPage[] {
  const objects = objectsOf(file);
  return [...objects.values()]
    .filter(({ dictionary }) => /\/Type\s*\/Page\b/.test(dictionary))
    .map(({ dictionary }) => {
      const [parent] = referred(dictionary, 'Parent');
      const inherited = parent === undefined ? '' : (objects.get(parent)?.dictionary ?? '');
      const box = /\/MediaBox\s*\[([^\]]*)\]/.exec(dictionary) ?? /\/MediaBox\s*\[([^\]]*)\]/.exec(inherited);
      const [left = NaN, bottom = NaN, right = NaN, top = NaN] = (box?.[1] ?? '').trim().split(/\s+/).map(Number);
      const content = referred(dictionary, 'Contents')
        .map((number) => objects.get(number))
        .map((object) => (object === undefined ? '' : contentOf(object)))
        .join('\n');
      return {
        width: (right - left) * POINT,
        height: (top - bottom) * POINT,
        lines: linesOf(content).map(({ from, to, painted }) => ({
          from: { x: (from.x - left) * POINT, y: (top - from.y) * POINT },
          to: { x: (to.x - left) * POINT, y: (top - to.y) * POINT },
          painted,
        })),
      };
    });
}
