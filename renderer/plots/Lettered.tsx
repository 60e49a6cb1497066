import type { ReactNode } from 'react';
import type { Label } from './labels.ts';
import './lettered.css';

const classes = { text: 'tick', note: '', strong: 'plot-figure', name: 'name' } as const;

/** Smaller than this a built fraction cannot be read: 1/8 stays plain [px]. */
const LEAST_BUILT = 15;

/** A text where the marks put it. */
export function Lettered({ label, halo = false }: { label: Label; halo?: boolean }) {
  return (
    <text className={`${classes[label.lettering]}${halo ? ' halo' : ''}`} x={label.x} y={label.y} textAnchor={label.anchor}>
      {label.size < LEAST_BUILT ? label.text : built(label.text)}
    </text>
  );
}

/** The typeface draws "28 1/4" as a whole number with a fraction; inside a drawing only a tspan may carry that. */
function built(text: string): ReactNode {
  const mixed = /^(.*?\d+) (\d+\/\d+)(.*)$/.exec(text);
  if (mixed === null) return text;
  const [, before, fraction, after] = mixed;
  return (
    <>
      {before}
      {'\u200a'}
      <tspan className="frac">{fraction}</tspan>
      {after}
    </>
  );
}
