import { xml, type XmlNode } from '../../export/xml.ts';
import { textWidth } from '../../plots/textWidth.ts';
import { arrowhead, dot, letters, path, ring, shortened, sizes, stroke, weights, written } from '../ink.ts';
import type { StripLine, StripMarks } from './marks.ts';
import type { StripWidth } from './widths.ts';

const DASHES = '0.5 0.4';
const DOT = 0.62;
/** Half of an interval's cross-lines [mm]. */
const CROSS = 0.75;

/** From both edges: on whichever side of the bar the pin stands. */
function lineNode({ row, y, labelled }: StripLine, { width, long, short, mirrored, warning }: StripWidth): XmlNode {
  const reach = labelled || row.known ? long : short;
  return stroke(
    path('M', 0, y, 'H', reach, ...(mirrored === 0 ? [] : ['M', width - reach * mirrored, y, 'H', width])),
    labelled ? weights.inner : weights.dimension,
    {
      'data-distance': row.label,
      'data-reading': row.reading.value,
      ...(row.weak || warning !== null ? { 'stroke-dasharray': DASHES } : {}),
    },
  );
}

/** The fullest of some wordings that fits. */
function fitting(wordings: readonly string[], room: number): string {
  const found = wordings.find((words) => textWidth(words, sizes.small, 'text') <= room);
  return found ?? shortened(wordings.at(-1) ?? '', room, sizes.small, 'text');
}

/** "not proven" up a strip, as often as it is long enough for, so that no piece of it is without. */
function warnings(x: number, height: number): XmlNode[] {
  const words = 'not proven';
  const long = textWidth(words, sizes.small, 'strong');
  const times = Math.max(1, Math.floor((height - 6) / (3 * long)));
  const apart = (height - 6) / times;
  return Array.from({ length: times }, (_, i) => {
    const y = 3 + (i + 0.5) * apart + long / 2;
    return xml('g', { transform: `rotate(-90 ${x} ${y})` }, [written(words, x, y, 'strong', sizes.small)]);
  });
}

/** A strip with its cut lines, from its upper left corner. */
export function drawStrip(marks: StripMarks, words: { readonly unit: string; readonly side: readonly string[] }): XmlNode[] {
  const { place, height, lines, labels, known, weak } = marks;
  const { width, marker, label, side, warning } = place;
  const sideRoom = height - 12;
  return [
    stroke(path('M', 0, 0, 'H', width, 'V', height, 'H', 0, 'Z'), weights.construction),
    arrowhead(marker, 1, 'up'),
    stroke(path('M', marker, 2, 'V', 4.2), weights.inner),
    written('up', marker + 1.1, 3.4, 'name', sizes.small),
    written(words.unit, label, 6.3, 'text', sizes.small, 'middle'),
    ...lines.map((line) => lineNode(line, place)),
    ...labels.map((text) => letters(text)),
    ...weak.flatMap(({ y, from, to, open }) => [
      stroke(
        path(
          ...['M', marker, from, 'V', to],
          ...(open.top ? [] : ['M', marker - CROSS, from, 'H', marker + CROSS]),
          ...(open.bottom ? [] : ['M', marker - CROSS, to, 'H', marker + CROSS]),
        ),
        weights.dimension,
      ),
      ring(marker, y, DOT, weights.dimension),
    ]),
    ...known.map((y) => dot(marker, y, DOT)),
    ...(warning === null ? [] : warnings(warning, height)),
    ...(side === null
      ? []
      : [
          xml('g', { transform: `rotate(-90 ${side} ${height - 3})` }, [
            written(fitting(words.side, sideRoom), side, height - 3, 'text', sizes.small),
          ]),
        ]),
  ];
}
