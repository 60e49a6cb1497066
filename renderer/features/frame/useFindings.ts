import { useMemo } from 'react';
import type { Finding } from '../../../core/findings/finding.ts';
import { allFindings } from '../../../core/findings/index.ts';
import { now } from '../../state/clock.ts';
import { useBench, useBundle, useUnits } from '../../state/useBench.ts';
import { useRange } from '../aim/useRange.ts';

/** Every check of the set-up on the bench, worst first; the same list on every screen. */
export function useFindings(): readonly Finding[] {
  const bundle = useBundle();
  const units = useUnits();
  const screen = useBench((state) => state.screen);
  const range = useRange(screen === 'aim' ? bundle : null);
  return useMemo(
    () => (bundle === null ? [] : allFindings(bundle, { units, now: now(), screen, ...range })),
    [bundle, units, screen, range],
  );
}
