import { createElement, type ReactElement } from 'react';
import type { XmlNode } from '../export/xml.ts';

/** "stroke-width" as React calls it; names of data and of what is heard stay. */
const reactName = (name: string): string =>
  /^(data|aria)-/.test(name) ? name : name.replace(/-(\w)/g, (_all, letter: string) => letter.toUpperCase());

/** Set as style, because the bench's stylesheet speaks of every text of a drawing and would win over attributes. */
const ofLetters = new Set(['font-family', 'font-size', 'font-weight', 'font-style', 'fill']);

function letterStyle(attributes: XmlNode['attributes']): Record<string, string | number | undefined> {
  const { 'font-size': size, 'font-family': family, 'font-weight': weight, 'font-style': slope, fill } = attributes;
  return {
    fontSize: `${size}px`,
    fontFamily: String(family).includes('Serif') ? 'var(--font-head)' : 'var(--font-text)',
    fontWeight: weight ?? 400,
    fontStyle: String(slope ?? 'normal'),
    fill: String(fill),
  };
}

/** A drawing that was made for paper and file, as elements of the page: the very same one. */
export function Drawn({ node, index = 0 }: { node: XmlNode; index?: number }): ReactElement {
  const isText = node.name === 'text';
  const given = Object.entries(node.attributes)
    .filter(([name, value]) => value !== undefined && !(isText && ofLetters.has(name)))
    .map(([name, value]) => [reactName(name), value] as const);
  return createElement(
    node.name,
    { ...Object.fromEntries(given), key: index, ...(isText ? { style: letterStyle(node.attributes) } : {}) },
    // A sheet is drawn anew as a whole: its parts have no other name than their place.
    ...node.children.map((child, i) => (typeof child === 'string' ? child : <Drawn key={i} node={child} index={i} />)),
  );
}
