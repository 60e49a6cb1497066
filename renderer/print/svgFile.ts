import { writeXml, type XmlNode } from '../export/xml.ts';
import { type Lettering, textWidth } from '../plots/textWidth.ts';
import type { Sheet } from './sheet.ts';

const letteringOf = (attributes: XmlNode['attributes']): Lettering =>
  String(attributes['font-family']).includes('Serif') ? 'name' : attributes['font-weight'] === undefined ? 'text' : 'strong';

/** Another typeface is wider or narrower: a text keeps its length, so that none touches the next. */
function held(node: XmlNode): XmlNode {
  const [text] = node.children;
  if (node.name !== 'text' || typeof text !== 'string')
    return { ...node, children: node.children.map((child) => (typeof child === 'string' ? child : held(child))) };
  const textLength = textWidth(text, Number(node.attributes['font-size']), letteringOf(node.attributes));
  return { ...node, attributes: { ...node.attributes, textLength, lengthAdjust: 'spacingAndGlyphs' } };
}

/** The sheet as a file of its own: the same drawing, its size in millimetres. */
export const svgFile = ({ svg }: Sheet): string => `<?xml version="1.0" encoding="UTF-8"?>\n${writeXml(held(svg))}\n`;
