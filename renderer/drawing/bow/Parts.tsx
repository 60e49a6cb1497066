import { pathOf } from '../path.ts';
import type { Place } from './points.ts';
import type { Part } from './shape.ts';

interface Props {
  parts: readonly Part[];
  x(across: number): number;
  y(up: number): number;
}

/** The bow's own lines: outlines and inner edges, filled with what they are made of. */
export function Parts({ parts, x, y }: Props) {
  return parts.map(({ name, material, weight, closed, line }) => (
    <path
      key={name}
      className={`bow-part ${weight} ${closed || material === 'hole' ? material : 'line'}`}
      d={pathOf(
        line.map(([u, v]: Place) => [x(u), y(v)] as const),
        closed,
      )}
    />
  ));
}
