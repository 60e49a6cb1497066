import { textWidth, type Lettering } from '../plots/textWidth.ts';
import { wrapped } from '../plots/wrapped.ts';
import { faces } from './faces.ts';
import { xml, type XmlNode } from './xml.ts';

/** Whatever is exported: what it shows, in words, and how it is drawn [px]. */
export interface Drawn {
  readonly title: string;
  readonly note: string;
  /** The picture in a sentence, for those who hear it. */
  readonly sentence: string;
  readonly width: number;
  readonly height: number;
  readonly content: readonly XmlNode[];
}

const MARGIN = 12;
const TITLE = { size: 16, line: 22 } as const;
const NOTE = { size: 13, line: 18 } as const;
/** No usual typeface is so much wider that a shorter line could run over the edge [-]. */
const NEARLY = 0.7;
/** A CSS pixel on paper [mm]. */
const PIXEL_MM = 25.4 / 96;

/** A whole SVG file: black on a white ground, its size in mm, what it is called and shows for those who cannot see it. */
export function svgPage({ title, note, sentence, width, height, content }: Drawn): XmlNode {
  const titles = wrapped(title, width, TITLE.size);
  const notes = wrapped(note, width, NOTE.size);
  const top = MARGIN + titles.length * TITLE.line + notes.length * NOTE.line + (titles.length + notes.length > 0 ? 6 : 0);
  const [wide, high] = [width + 2 * MARGIN, top + height + MARGIN];
  const lines = [
    ...titles.map((line, i) =>
      xml(
        'text',
        {
          x: MARGIN,
          y: MARGIN + 16 + i * TITLE.line,
          'font-family': faces.head,
          'font-size': TITLE.size,
          fill: '#000000',
          ...held(line, width, TITLE.size, 'name'),
        },
        [line],
      ),
    ),
    ...notes.map((line, i) =>
      xml(
        'text',
        {
          x: MARGIN,
          y: MARGIN + titles.length * TITLE.line + 13 + i * NOTE.line,
          'font-family': faces.text,
          'font-size': NOTE.size,
          fill: '#222222',
          ...held(line, width, NOTE.size, 'text'),
        },
        [line],
      ),
    ),
  ];
  return xml(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${(wide * PIXEL_MM).toFixed(2)}mm`,
      height: `${(high * PIXEL_MM).toFixed(2)}mm`,
      viewBox: `0 0 ${Math.ceil(wide)} ${Math.ceil(high)}`,
      role: 'img',
    },
    [
      xml('title', {}, [title]),
      xml('desc', {}, [sentence]),
      xml('rect', { width: Math.ceil(wide), height: Math.ceil(high), fill: '#ffffff' }),
      ...lines,
      xml('g', { transform: `translate(${MARGIN} ${top})` }, withPlainIds(content)),
    ],
  );
}

/** A long line keeps its width: where another typeface stands in, a wider one would run over the edge. */
function held(line: string, width: number, size: number, lettering: Lettering) {
  const wide = textWidth(line, size, lettering);
  if (wide < NEARLY * width) return {};
  return { textLength: Math.round(Math.min(width, wide)), lengthAdjust: 'spacingAndGlyphs' };
}

/** Ids made for a page hold signs that some readers of SVG trip over; here they are counted. */
function withPlainIds(nodes: readonly XmlNode[]): readonly XmlNode[] {
  const names = new Map<string, string>();
  const collect = (node: XmlNode) => {
    const { id } = node.attributes;
    if (typeof id === 'string') names.set(id, names.get(id) ?? `p${names.size + 1}`);
    for (const child of node.children) if (typeof child !== 'string') collect(child);
  };
  nodes.forEach(collect);
  const renamed = (node: XmlNode): XmlNode => ({
    name: node.name,
    attributes: Object.fromEntries(
      Object.entries(node.attributes).map(([key, value]) => {
        if (typeof value !== 'string') return [key, value];
        if (key === 'id') return [key, names.get(value)];
        if (key === 'href' && value.startsWith('#')) return [key, `#${names.get(value.slice(1)) ?? value.slice(1)}`];
        return [key, value.replace(/url\("?#([^")]+)"?\)/g, (_all, id: string) => `url(#${names.get(id) ?? id})`)];
      }),
    ),
    children: node.children.map((child) => (typeof child === 'string' ? child : renamed(child))),
  });
  return nodes.map(renamed);
}
