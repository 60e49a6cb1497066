import { faces } from './faces.ts';
import { xml, type XmlNode } from './xml.ts';

const geometry = [
  ...['id', 'd', 'x', 'y', 'cx', 'cy', 'r', 'rx', 'ry', 'x1', 'y1', 'x2', 'y2', 'dx', 'dy', 'width', 'height', 'points', 'href'],
  ...['transform', 'viewBox', 'clipPathUnits', 'patternUnits', 'patternContentUnits', 'patternTransform'],
];
const groups = new Set(['g', 'defs', 'clipPath', 'pattern', 'svg']);
const shapes = new Set(['path', 'rect', 'circle', 'ellipse', 'line', 'polyline', 'polygon', 'use']);
const letters = new Set(['text', 'tspan']);

/** What is the same when it is left out. */
const usual: Readonly<Record<string, string>> = {
  opacity: '1',
  'fill-opacity': '1',
  'stroke-opacity': '1',
  'fill-rule': 'nonzero',
  'stroke-dasharray': 'none',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  'paint-order': 'normal',
  'vector-effect': 'none',
  'clip-path': 'none',
  'font-style': 'normal',
  'font-weight': '400',
  'text-anchor': 'start',
};
const ofGroups = ['opacity', 'clip-path'];
const ofStrokes = [
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'stroke-opacity',
  'vector-effect',
];
const ofShapes = [...ofGroups, 'fill', 'fill-opacity', 'fill-rule', 'paint-order'];
const ofLetters = ['font-family', 'font-size', 'font-style', 'font-weight', 'text-anchor'];

const systemNames = (families: string): string => (families.includes('Serif') ? faces.head : faces.text);

export function plainColour(value: string): string {
  const parts = /^rgb\((\d+), (\d+), (\d+)\)$/.exec(value);
  if (parts === null) return value;
  return `#${parts
    .slice(1)
    .map((part) => Number(part).toString(16).padStart(2, '0'))
    .join('')}`;
}

const isNothing = (colour: string): boolean => colour === 'none' || /^rgba\(.*, 0\)$/.test(colour);

/** The looks of an element as attributes of its own, so that it needs no stylesheet. */
export function looks(style: CSSStyleDeclaration, kind: 'group' | 'shape' | 'letters'): Record<string, string> {
  const stroked = !isNothing(style.getPropertyValue('stroke'));
  const wanted =
    kind === 'group' ? ofGroups : [...ofShapes, ...(stroked ? ofStrokes : []), ...(kind === 'letters' ? ofLetters : [])];
  const found: Record<string, string> = {};
  for (const name of wanted) {
    const value = style.getPropertyValue(name);
    if (value === '' || value === usual[name]) continue;
    found[name] =
      name === 'font-family' ? systemNames(value) : isNothing(value) ? 'none' : plainColour(value.replace(/(\d)px/g, '$1'));
  }
  return found;
}

/**
 * What is drawn of an element. Places and lengths are read off the element itself; looks off its copy, which may stand under another ink.
 * What nobody sees, what only hands and ears need, and whatever asks to be left out (`data-export="no"`) stays behind.
 */
export function readSvg(live: Element, copy: Element): XmlNode | null {
  const name = live.localName;
  if (live.getAttribute('data-export') === 'no') return null;
  if (name === 'title') return xml('title', {}, [live.textContent ?? '']);
  const kind = groups.has(name) ? 'group' : shapes.has(name) ? 'shape' : letters.has(name) ? 'letters' : null;
  if (kind === null) return null;
  const style = getComputedStyle(copy);
  if (style.display === 'none' || style.visibility === 'hidden' || style.opacity === '0') return null;
  const attributes: Record<string, string> = {};
  for (const given of geometry) {
    const value = live.getAttribute(given);
    if (value !== null && !(name === 'svg' && (given === 'width' || given === 'height'))) attributes[given] = value;
  }
  Object.assign(attributes, looks(style, kind));
  if (kind === 'shape' && name !== 'use' && attributes['fill'] === 'none' && attributes['stroke'] === undefined) return null;
  // Another typeface is wider or narrower: the text keeps its length, so that no label touches the next.
  if (live instanceof SVGTextElement && live.textContent !== '') {
    attributes['textLength'] = live.getComputedTextLength().toFixed(2);
    attributes['lengthAdjust'] = 'spacingAndGlyphs';
  }
  // It has no attribute of its own in SVG.
  const features = kind === 'letters' ? style.getPropertyValue('font-feature-settings') : 'normal';
  if (features !== 'normal' && features !== '') attributes['style'] = `font-feature-settings:${features.replaceAll('"', "'")}`;
  return xml(name === 'svg' ? 'g' : name, attributes, childrenOf(live, copy, kind === 'letters'));
}

/** A hair space, which a built fraction stands off by, is nothing at all in a typeface that builds none. */
export const withPlainSpaces = (text: string): string => text.replaceAll('\u200a', ' ');

function childrenOf(live: Element, copy: Element, withTexts: boolean): readonly (XmlNode | string)[] {
  const copies = [...copy.childNodes];
  return [...live.childNodes].flatMap((child, i): readonly (XmlNode | string)[] => {
    const twin = copies[i];
    if (child instanceof Element && twin instanceof Element) {
      const read = readSvg(child, twin);
      return read === null ? [] : [read];
    }
    return withTexts && child instanceof Text ? [withPlainSpaces(child.data)] : [];
  });
}
