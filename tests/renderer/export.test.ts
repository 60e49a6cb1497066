import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { writeCsv } from '../../renderer/export/csv.ts';
import { svgPage } from '../../renderer/export/page.ts';
import { writeXml, xml } from '../../renderer/export/xml.ts';

/** Undoes the five escapes of XML 1.0 and its references to characters, as any reader of it does. */
const read = (text: string): string =>
  text
    .replace(/&#(\d+);/g, (_all, code: string) => String.fromCharCode(Number(code)))
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');

/** Any text at all, halves of surrogate pairs and control characters too. */
const anyText = fc
  .array(fc.oneof(fc.integer({ min: 0, max: 0x7f }), fc.integer({ min: 0, max: 0xffff })), { maxLength: 24 })
  .map((codes) => String.fromCharCode(...codes));

describe('An element written as XML', () => {
  it('keeps any text and any attribute, with nothing in them that a reader could take for markup', () => {
    fc.assert(
      fc.property(anyText, (given) => {
        const written = writeXml(xml('text', { 'data-name': given }, [given]));
        const parts = /^<text data-name="([^"<]*)">([^<]*)<\/text>$|^<text data-name="([^"<]*)"\/>$/s.exec(written);
        expect(parts, written).not.toBeNull();
        // XML 1.0 has no way at all to carry most control characters and lone surrogates: they are left out.
        const carried = given.replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '');
        expect(read(parts?.[1] ?? parts?.[3] ?? '')).toBe(carried);
        expect(read(parts?.[2] ?? '')).toBe(carried);
      }),
      { numRuns: 200, seed: 13 },
    );
  });

  it('leaves out what is not given and rounds figures to a thousandth of a pixel', () => {
    expect(writeXml(xml('circle', { cx: 1 / 3, cy: -0, r: undefined }))).toBe('<circle cx="0.333" cy="0"/>');
  });
});

describe('A page of a drawing', () => {
  const page = svgPage({
    title: 'Tobin’s <bow> & 36 lb: a headline that is longer than the drawing is wide',
    note: 'A note.',
    sentence: 'What it shows & says.',
    width: 240,
    height: 100,
    content: [
      xml('g', {}, [
        xml('clipPath', { id: '«r1»' }, [xml('rect', { width: 1, height: 1 })]),
        xml('path', { d: 'M0 0', 'clip-path': 'url("#«r1»")' }),
        xml('path', { d: 'M0 0', fill: 'url(#«r1»)' }),
        xml('use', { href: '#«r1»' }),
      ]),
    ],
  });
  const written = writeXml(page);

  it('is self-contained: its own size in mm, its ground, its name and what it shows', () => {
    // 25.4 mm are 96 CSS pixels, by definition.
    const [, , width, height] = String(page.attributes['viewBox']).split(' ').map(Number);
    expect(Number.parseFloat(String(page.attributes['width']))).toBeCloseTo(((width ?? 0) * 25.4) / 96, 2);
    expect(Number.parseFloat(String(page.attributes['height']))).toBeCloseTo(((height ?? 0) * 25.4) / 96, 2);
    expect(String(page.attributes['width'])).toMatch(/mm$/);
    expect(written).toMatch(/<title>Tobin’s &lt;bow&gt; &amp; 36 lb:/);
    expect(written).toContain('<desc>What it shows &amp; says.</desc>');
    expect(written).toContain('fill="#ffffff"');
    expect(written).not.toMatch(/var\(--|class=|style=/);
  });

  it('breaks a headline that is wider than the drawing into lines', () => {
    expect(written.match(/<text [^>]*font-size="16"/g)?.length).toBeGreaterThan(1);
  });

  it('never parts a figure from its fraction or its unit', () => {
    const given = { note: '', sentence: '', height: 10, content: [], title: '35.2 J stored; stacks from 23 3/4 in' };
    for (let width = 60; width < 300; width += 5) {
      const lines = [...writeXml(svgPage({ ...given, width })).matchAll(/<text [^>]*>([^<]*)</g)].map(([, line = '']) => line);
      expect(lines.join(' '), `${width} px`).toBe(given.title);
      for (const whole of ['35.2 J', '23 3/4 in'])
        expect(
          lines.some((line) => line.includes(whole)),
          `${width} px`,
        ).toBe(true);
    }
  });

  it('holds a line to the drawing’s width whatever typeface stands in, and leaves a short one as it is', () => {
    const lines = [...written.matchAll(/<text [^>]*>([^<]*)</g)].map((text) => ({
      wide: /textLength="(\d+)"/.exec(text[0])?.[1],
      line: text[1] ?? '',
    }));
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.find(({ line }) => line === 'A note.')?.wide).toBeUndefined();
    const held = lines.filter(({ wide }) => wide !== undefined);
    expect(held.length).toBeGreaterThan(0);
    for (const { wide, line } of held) expect(Number(wide), line).toBeLessThanOrEqual(240);
  });

  it('counts ids anew, wherever they are spoken of', () => {
    expect(written).toContain('<clipPath id="p1">');
    expect(written).toContain('clip-path="url(#p1)"');
    expect(written).toContain('fill="url(#p1)"');
    expect(written).toContain('href="#p1"');
    expect(written).not.toContain('r1');
  });
});

describe('A table written as comma-separated values', () => {
  it('follows RFC 4180: quotes doubled, a field with a comma, a quote or a line break in quotes, rows that end in CR LF', () => {
    const written = writeCsv({
      columns: ['name', 'mass (gr)'],
      rows: [
        ['six, "light"', 310.5],
        ['two\nlines', null],
      ],
    });
    expect(written).toBe('name,mass (gr)\r\n"six, ""light""",310.5\r\n"two\nlines",\r\n');
  });

  it('hands a spreadsheet no formula', () => {
    const written = writeCsv({
      columns: ['name', 'x'],
      rows: [
        ['=HYPERLINK("http://x")', -3],
        ['@sum', 2],
        ['+1', 1],
        ['-1 wild', 0],
      ],
    });
    expect(written.split('\r\n').slice(1)).toEqual(['"\'=HYPERLINK(""http://x"")",-3', "'@sum,2", "'+1,1", "'-1 wild,0", '']);
  });
});
