import { useMemo } from 'react';
import type { Finding } from '../../../core/findings/finding.ts';
import { allFindings, type FindingOptions } from '../../../core/findings/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { now } from '../../state/clock.ts';
import { useBench, useBundle, useUnits } from '../../state/useBench.ts';
import { useRange } from '../aim/useRange.ts';

const known = new WeakMap<Bundle, { readonly asked: string; readonly findings: readonly Finding[] }>();

/** The column, the headline and the page ask for one list at once: it is worked out for the first of them. */
function findingsOf(bundle: Bundle, options: FindingOptions): readonly Finding[] {
  const asked = JSON.stringify({ ...options, now: options.now.at.slice(0, 'YYYY-MM-DDThh:mm'.length) });
  const last = known.get(bundle);
  if (last?.asked === asked) return last.findings;
  const findings = allFindings(bundle, options);
  known.set(bundle, { asked, findings });
  return findings;
}

/** Every check of the set-up on the bench, worst first; the same list on every screen. */
export function useFindings(): readonly Finding[] {
  const bundle = useBundle();
  const units = useUnits();
  const screen = useBench((state) => state.screen);
  const range = useRange(screen === 'aim' ? bundle : null);
  return useMemo(
    () => (bundle === null ? [] : findingsOf(bundle, { units, now: now(), screen, ...range })),
    [bundle, units, screen, range],
  );
}
