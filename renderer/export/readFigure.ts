import type { Box } from '../plots/boxes.ts';
import { inPrintInk } from './printInk.ts';
import type { Drawn } from './page.ts';
import { linesOf } from './linesOf.ts';
import { looks, plainColour, readSvg, withPlainSpaces } from './readSvg.ts';
import { xml, type XmlNode } from './xml.ts';

/**
 * A figure of the page as it would be on paper: every drawing in it, and the words that stand over a drawing as fields
 * (`data-export-text`, whose value is the text where the element's own is not it) as texts where they stand.
 */
export function readFigure(figure: Element): Pick<Drawn, 'width' | 'height' | 'content'> {
  const frame = figure.getBoundingClientRect();
  const content = inPrintInk(figure, (copy) => {
    const twins = [...copy.querySelectorAll('*')];
    const twinOf = new Map([...figure.querySelectorAll('*')].map((element, i) => [element, twins[i] ?? element] as const));
    twinOf.set(figure, copy);
    const within = (selector: string) => [...(figure.matches(selector) ? [figure] : []), ...figure.querySelectorAll(selector)];
    const drawings = within('svg').filter((svg) => svg.parentElement?.closest('svg') === null || svg === figure);
    const found: XmlNode[] = [];
    for (const svg of drawings) {
      const read = readSvg(svg, twinOf.get(svg) ?? svg);
      if (read === null || svg.closest('[data-export="no"]') !== null) continue;
      const place = svg.getBoundingClientRect();
      found.push(xml('g', { transform: `translate(${fixed(place.left - frame.left)} ${fixed(place.top - frame.top)})` }, [read]));
    }
    for (const element of within('[data-export-text]'))
      found.push(...overText(element, getComputedStyle(twinOf.get(element) ?? element), frame));
    return found;
  });
  return { width: frame.width, height: frame.height, content };
}

const fixed = (value: number): number => Number(value.toFixed(2));

/** Whether it shows just now does not matter: a field at rest may leave it to another element to say the same. */
function overText(element: Element, style: CSSStyleDeclaration, frame: DOMRect): readonly XmlNode[] {
  const given = element.getAttribute('data-export-text') ?? '';
  const text = (given !== '' ? given : element instanceof HTMLInputElement ? element.value : (element.textContent ?? '')).trim();
  const box = boxOf(element, style);
  if (text === '' || box.right <= box.left || style.display === 'none') return [];
  const size = Number.parseFloat(style.fontSize);
  const lines = given === '' && !(element instanceof HTMLInputElement) ? linesOf(element) : [{ ...box, text }];
  const anchor = { right: 'end', end: 'end', center: 'middle' }[style.textAlign] ?? 'start';
  return lines.map((line) => {
    const { left, right, top, bottom } = line;
    const x = anchor === 'end' ? right : anchor === 'middle' ? (left + right) / 2 : left;
    return xml(
      'text',
      {
        ...looks(style, 'letters'),
        fill: plainFill(style.color),
        stroke: undefined,
        'text-anchor': anchor,
        x: fixed(x - frame.left),
        y: fixed((top + bottom) / 2 - frame.top + 0.34 * size),
        // Another typeface is wider or narrower: what stands beside it must not be touched.
        ...(given === '' ? { textLength: fixed(right - left), lengthAdjust: 'spacingAndGlyphs' } : {}),
      },
      withFractions(withPlainSpaces(line.text)),
    );
  });
}

/** Where the text itself is; an element may be wider. A field's own text cannot be asked for: its box without the padding must do. */
function boxOf(element: Element, style: CSSStyleDeclaration): Box {
  if (!(element instanceof HTMLInputElement) && element.childNodes.length > 0) {
    const range = document.createRange();
    range.selectNodeContents(element);
    return range.getBoundingClientRect();
  }
  const { left, right, top, bottom } = element.getBoundingClientRect();
  return { left: left + Number.parseFloat(style.paddingLeft), right: right - Number.parseFloat(style.paddingRight), top, bottom };
}

/** "64 3/4 in": the typeface builds the fraction where it can; where it cannot, it reads as it is typed. */
function withFractions(text: string): readonly (XmlNode | string)[] {
  const parts = text.split(/(?<=\d )(\d+\/\d+)/);
  return parts.map((part, i) => (i % 2 === 1 ? xml('tspan', { style: "font-feature-settings:'frac'" }, [part]) : part));
}

/** A field's own text may be made clear where another element shows it; on paper it is ink. */
const plainFill = (colour: string): string => (/, 0\)$/.test(colour) ? '#000000' : plainColour(colour));
