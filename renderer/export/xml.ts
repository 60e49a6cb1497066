/** An element of a drawing that is being written out; children are elements and texts. */
export interface XmlNode {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string | number | undefined>>;
  readonly children: readonly (XmlNode | string)[];
}

export const xml = (name: string, attributes: XmlNode['attributes'] = {}, children: XmlNode['children'] = []): XmlNode => ({
  name,
  attributes,
  children,
});

// What XML 1.0 does not take at all, escaped or not: most control characters, halves of surrogate pairs, and two non-characters.
const forbidden = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (text: string): string => text.replace(forbidden, '').replace(/[&<>"]/g, (sign) => escapes[sign] ?? sign);
/** A line break in an attribute would come back as a space. */
const inAttribute = (text: string): string => escaped(text).replace(/[\t\n\r]/g, (sign) => `&#${sign.charCodeAt(0)};`);

const figure = (value: number): string => String(Number(value.toFixed(3)));

/** The element as XML, its texts and attributes escaped. Nothing is laid out: a space more inside a text would be a space drawn. */
export function writeXml({ name, attributes, children }: XmlNode): string {
  const given = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? figure(value) : inAttribute(value ?? '')}"`)
    .join('');
  if (children.length === 0) return `<${name}${given}/>`;
  const inside = children.map((child) => (typeof child === 'string' ? escaped(child) : writeXml(child))).join('');
  return `<${name}${given}>${inside}</${name}>`;
}
