import type { ReactNode } from 'react';

const MIXED = /(\d+) (\d+)\/(\d+)/g;

/** Text whose fractions after a whole number are built ("28 1/4"): the typeface's own `frac` does the drawing. */
export function Fraction({ children }: { children: string }): ReactNode {
  const parts: ReactNode[] = [];
  let from = 0;
  for (const match of children.matchAll(MIXED)) {
    parts.push(
      children.slice(from, match.index),
      <span key={match.index} className="mixed">
        {match[1]}
        {'\u200a'}
        <span className="frac">{`${match[2]}/${match[3]}`}</span>
      </span>,
    );
    from = match.index + match[0].length;
  }
  if (from === 0) return children;
  parts.push(children.slice(from));
  return <>{parts}</>;
}
