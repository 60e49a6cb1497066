import type { ReactNode } from 'react';

/** Under the row in hand: the way on, and what else can be set of it. */
export function RowFoot({ children }: { children: ReactNode }) {
  return <div className="row-foot">{children}</div>;
}
