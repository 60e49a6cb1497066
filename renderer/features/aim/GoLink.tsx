import type { ReactNode } from 'react';
import type { Screen } from '../../../core/findings/finding.ts';
import { useBenchApi } from '../../state/useBench.ts';
import { answer } from '../frame/goTo.ts';

/** A link to the field that a missing figure is entered in. */
export function GoLink({ to: [screen, field], children }: { to: readonly [screen: Screen, field: string]; children: ReactNode }) {
  const bench = useBenchApi();
  return (
    <button type="button" className="link" onClick={() => answer(bench, { kind: 'go', label: '', screen, field })}>
      {children}
    </button>
  );
}
