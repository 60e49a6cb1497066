import type { Hand } from '../../../core/model/archer.ts';
import type { Bow } from '../../../core/model/bow.ts';
import type { ClearanceShot } from '../../../core/model/trial.ts';
import { label, type Anchor } from '../labels.ts';
import { Lettered } from '../Lettered.tsx';
import './tail.css';

type Part = ClearanceShot['touched'][number];

interface Props {
  hand: Hand;
  /** What the arrow passes on its way out. */
  pass: Bow['arrowPass'];
  touched: readonly Part[];
  onTouch(part: Part): void;
}

const WIDTH = 460;

interface Named {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: Anchor;
}

/** Where each part is named, for a right-handed archer [px]. */
const always: readonly Named[] = [
  { text: 'window', x: 66, y: 26, anchor: 'start' },
  { text: 'fletching', x: 290, y: 30, anchor: 'middle' },
  { text: 'nock end', x: 398, y: 82, anchor: 'start' },
  { text: 'arm or clothing', x: 300, y: 159, anchor: 'middle' },
];
const passed: Readonly<Record<Bow['arrowPass'], readonly Named[]>> = {
  'rest and button': [
    { text: 'button', x: 88, y: 64, anchor: 'start' },
    { text: 'rest', x: 104, y: 104, anchor: 'start' },
  ],
  shelf: [{ text: 'shelf', x: 90, y: 103, anchor: 'start' }],
  hand: [{ text: 'hand', x: 102, y: 106, anchor: 'start' }],
};
/** Shelf and hand carry the arrow: they are drawn, and no mark on them counts. */
const carries = {
  shelf: 'M60 85H80C80 92 70 98 60 100Z',
  hand: 'M60 86C74 83 92 85 95 93C97 101 92 106 84 107C90 110 90 118 82 119H60Z',
} as const;

const mirrored: Readonly<Record<Anchor, Anchor>> = { start: 'end', middle: 'middle', end: 'start' };

/**
 * The arrow's tail and what it passes, seen from the arrow's side: a right-handed archer's points left. What is touched is hatched; a click
 * marks it. The list below the drawing does the same for keys and ears.
 */
export function Tail({ hand, pass, touched, onTouch }: Props) {
  const names = [...always, ...passed[pass]];
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
      aria-label={`The tail of the arrow with ${pass === 'rest and button' ? 'rest, button' : `the ${pass}`} and window. ${touched.length === 0 ? 'Nothing is marked' : `Marked: ${touched.join(', ')}`}.`}
    >
      <defs>
        <pattern id="powder" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path className="powder-line" d="M0 0V6" />
        </pattern>
      </defs>
      <g transform={hand === 'left' ? `translate(${WIDTH} 0) scale(-1 1)` : undefined}>
        {shape('window', 'M20 8H52C58 30 60 50 60 66V112C60 130 56 146 50 160H20C26 146 28 130 28 112V66C28 50 26 30 20 8Z')}
        {pass === 'rest and button' ? (
          <>
            {shape('button', 'M60 66H84V82H60Z')}
            {shape('rest', 'M60 96H68C74 96 74 88 82 87L96 85V89L84 91C77 93 76 101 68 101H60Z')}
          </>
        ) : (
          <path className="tail-carries" d={carries[pass]} />
        )}
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
      {names.map(({ text, x, y, anchor }) => (
        <Lettered
          key={text}
          halo
          label={
            hand === 'left' ? label(text, WIDTH - x, y, mirrored[anchor], 'name', 13) : label(text, x, y, anchor, 'name', 13)
          }
        />
      ))}
    </svg>
  );
}
