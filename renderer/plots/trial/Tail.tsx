import type { Hand } from '../../../core/model/archer.ts';
import type { ClearanceShot } from '../../../core/model/trial.ts';
import { label, type Anchor } from '../labels.ts';
import { Lettered } from '../Lettered.tsx';
import './tail.css';

type Part = ClearanceShot['touched'][number];

interface Props {
  hand: Hand;
  touched: readonly Part[];
  onTouch(part: Part): void;
}

const WIDTH = 460;

/** Where each part is named, for a right-handed archer [px]. */
const names: readonly {
  readonly part: Part;
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: Anchor;
}[] = [
  { part: 'window', text: 'window', x: 66, y: 26, anchor: 'start' },
  { part: 'button', text: 'button', x: 88, y: 64, anchor: 'start' },
  { part: 'rest', text: 'rest', x: 104, y: 104, anchor: 'start' },
  { part: 'fletching', text: 'fletching', x: 290, y: 30, anchor: 'middle' },
  { part: 'nock end of the shaft', text: 'nock end', x: 398, y: 82, anchor: 'start' },
  { part: 'arm or clothing', text: 'arm or clothing', x: 300, y: 159, anchor: 'middle' },
];

const mirrored: Readonly<Record<Anchor, Anchor>> = { start: 'end', middle: 'middle', end: 'start' };

/**
 * The arrow's tail and what it passes, seen from the arrow's side: a right-handed archer's points left. What is touched is hatched; a click
 * marks it. The list below the drawing does the same for keys and ears.
 */
export function Tail({ hand, touched, onTouch }: Props) {
  const shape = (part: Part, d: string) => (
    <path
      className={touched.includes(part) ? 'tail-part touched' : 'tail-part'}
      d={d}
      onClick={() => onTouch(part)}
      aria-hidden="true"
    />
  );
  return (
    <svg
      className="tail"
      width={WIDTH}
      height="168"
      viewBox={`0 0 ${WIDTH} 168`}
      role="img"
      aria-label={`The tail of the arrow with rest, button and window. ${touched.length === 0 ? 'Nothing is marked' : `Marked: ${touched.join(', ')}`}.`}
    >
      <defs>
        <pattern id="powder" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path className="powder-line" d="M0 0V6" />
        </pattern>
      </defs>
      <g transform={hand === 'left' ? `translate(${WIDTH} 0) scale(-1 1)` : undefined}>
        {shape('window', 'M20 8H52C58 30 60 50 60 66V112C60 130 56 146 50 160H20C26 146 28 130 28 112V66C28 50 26 30 20 8Z')}
        {shape('button', 'M60 66H84V82H60Z')}
        {shape('rest', 'M60 96H68C74 96 74 88 82 87L96 85V89L84 91C77 93 76 101 68 101H60Z')}
        {shape('arm or clothing', 'M120 168C160 138 230 128 460 142V168Z')}
        <path className="outline" d="M0 72H372M0 84H372" />
        {shape('nock end of the shaft', 'M352 72H372V84H352Z')}
        {shape(
          'fletching',
          'M240 72L262 44C290 36 322 40 340 50L346 72ZM240 84L262 112C290 120 322 116 340 106L346 84ZM238 76H348V80H238Z',
        )}
        <path className="outline" d="M372 71H386L392 74M372 85H386L392 82" />
        <path className="inner" d="M390 8V160" />
      </g>
      {names.map(({ part, text, x, y, anchor }) => (
        <Lettered
          key={part}
          halo
          label={
            hand === 'left' ? label(text, WIDTH - x, y, mirrored[anchor], 'name', 13) : label(text, x, y, anchor, 'name', 13)
          }
        />
      ))}
    </svg>
  );
}
