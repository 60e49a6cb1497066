import zlib from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { readPdf } from '../pdf.ts';

/** A PDF written by hand after ISO 32000-1, annex H: 200 by 100 points, its content packed. */
function pdfOf(content: string): Buffer {
  const packed = zlib.deflateSync(Buffer.from(content, 'latin1'));
  return Buffer.concat([
    Buffer.from(
      `%PDF-1.4
1 0 obj
<< /Type /Catalog /Pages 2 0 R >>
endobj
2 0 obj
<< /Type /Pages /Kids [3 0 R] /Count 1 /MediaBox [0 0 200 100] >>
endobj
3 0 obj
<< /Type /Page /Parent 2 0 R /Contents 4 0 R >>
endobj
4 0 obj
<< /Length ${packed.length} /Filter /FlateDecode >>
stream
`,
      'latin1',
    ),
    packed,
    Buffer.from('\nendstream\nendobj\ntrailer\n<< /Root 1 0 R >>\n%%EOF\n', 'latin1'),
  ]);
}

/** An inch is 72 points and 25.4 mm. */
const round = ({ x, y }: { x: number; y: number }) => [x, y].map((mm) => Number(mm.toFixed(6)));
const read = (content: string) =>
  (readPdf(pdfOf(content))[0]?.lines ?? []).map(({ from, to, painted }) => [...round(from), ...round(to), painted]);

describe('The reader of printed pages', () => {
  it('finds a page’s size, its own or its parent’s', () => {
    const [page, ...more] = readPdf(pdfOf(''));
    expect(more).toEqual([]);
    expect([page?.width, page?.height].map((mm) => mm?.toFixed(4))).toEqual(['70.5556', '35.2778']);
  });

  it('finds a line of an inch where it stands, from the upper left corner', () => {
    expect(read('72 28 m 144 28 l S')).toEqual([[25.4, 25.4, 50.8, 25.4, 'stroke']]);
  });

  it('follows the matrix, and what is saved and restored', () => {
    const drawn = 'q 1 0 0 -1 0 100 cm q 2 0 0 2 10 0 cm 0 0 m 0 18 l S Q 0 72 m 72 72 l S Q 0 100 m 36 100 l S';
    expect(read(drawn)).toEqual([
      [3.527778, 0, 3.527778, 12.7, 'stroke'],
      [0, 25.4, 25.4, 25.4, 'stroke'],
      [0, 0, 12.7, 0, 'stroke'],
    ]);
  });

  it('tells strokes from fills, closes paths, and leaves out what only clips', () => {
    expect(read('0 100 36 -36 re W n 0 100 m 36 100 l 36 64 l b')).toHaveLength(6);
    expect(read('0 100 36 -36 re f').map((line) => line.at(-1))).toEqual(['fill', 'fill', 'fill', 'fill']);
    expect(read('(1 2 m 3 4 l S) Tj')).toEqual([]);
  });
});
