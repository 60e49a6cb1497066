import { useMemo } from 'react';
import { flightBasis, reachBand } from '../../../core/aim/index.ts';
import type { AirGiven } from '../../../core/flight/index.ts';
import type { Band } from '../../../core/model/band.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { useUnits } from '../../state/useBench.ts';
import { setForOf } from './plan.ts';
import { useAimChoice } from './store.ts';

/** How far an arrow of this set-up could fly, loosed at the worst angle; null while its speed is not known. */
function reachOf(bundle: Bundle, air: AirGiven | null): Band | null {
  const basis = flightBasis(bundle, air);
  if (!basis.ok) return null;
  const { speed, drag, leastDrag } = basis.value;
  return reachBand(speed, { ...drag, low: leastDrag });
}

/** What the findings say of the ground beyond the target: how far an arrow could fly, and where the target stands. */
export function useRange(bundle: Bundle | null): { readonly reach: Band | null; readonly farthest: number } {
  const units = useUnits();
  const choice = useAimChoice(bundle?.setup.id ?? null);
  const reach = useMemo(() => (bundle === null ? null : reachOf(bundle, choice.air)), [bundle, choice.air]);
  const farthest = useMemo(() => (bundle === null ? 0 : (setForOf(bundle, choice, units) ?? 0)), [bundle, choice, units]);
  return useMemo(() => ({ reach, farthest }), [reach, farthest]);
}
