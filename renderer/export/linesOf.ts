import type { Box } from '../plots/boxes.ts';

interface Line extends Box {
  readonly text: string;
}

/** The lines that a text of the page was broken into, each with its place. */
export function linesOf(element: Element): readonly Line[] {
  const lines: Line[] = [];
  const texts = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
  let apart = false;
  while (texts.nextNode() !== null) {
    const node = texts.currentNode as Text;
    for (const { 0: found, index } of node.data.matchAll(/\s+|\S+/g)) {
      if (/^\s/.test(found)) {
        apart = true;
        continue;
      }
      const range = document.createRange();
      range.setStart(node, index);
      range.setEnd(node, index + found.length);
      const { left, right, top, bottom } = range.getBoundingClientRect();
      const last = lines.at(-1);
      if (last === undefined || (top + bottom) / 2 > last.bottom) lines.push({ text: found, left, right, top, bottom });
      else {
        const text = `${last.text}${apart ? ' ' : ''}${found}`;
        lines[lines.length - 1] = {
          text,
          left: last.left,
          right,
          top: Math.min(top, last.top),
          bottom: Math.max(bottom, last.bottom),
        };
      }
      apart = false;
    }
  }
  return lines;
}
