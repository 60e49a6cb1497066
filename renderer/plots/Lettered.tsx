import { Fraction } from '../design/index.ts';
import type { Label } from './labels.ts';
import './lettered.css';

const classes = { text: 'tick', note: '', strong: 'plot-figure', name: 'name' } as const;

/** A text where the marks put it. */
export function Lettered({ label, halo = false }: { label: Label; halo?: boolean }) {
  return (
    <text className={`${classes[label.lettering]}${halo ? ' halo' : ''}`} x={label.x} y={label.y} textAnchor={label.anchor}>
      <Fraction>{label.text}</Fraction>
    </text>
  );
}
