import { useMemo } from 'react';
import { atCorners, bandOver, launchBand } from '../../../core/aim/index.ts';
import { greatestReach } from '../../../core/flight/index.ts';
import type { Band } from '../../../core/model/band.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { ok } from '../../../core/model/problem.ts';
import { useUnits } from '../../state/useBench.ts';
import { aimBasis, setForOf } from './basis.ts';
import { useAimChoice } from './store.ts';

/** The height at which a bow is loosed [m]: from memory, and of no weight beside the reach itself. */
const BOW_ABOVE_GROUND = 1.5;

/** How far an arrow of this set-up could fly, loosed at the worst angle; null while its speed is not known. */
function reachOf(bundle: Bundle): Band | null {
  const basis = aimBasis(bundle);
  if (!basis.ok) return null;
  const { speed, drag, eyeHeight } = basis.value;
  const reaches = atCorners(launchBand(speed, drag, eyeHeight.value, 0), (launch) =>
    ok(greatestReach(launch.speed, launch.k, BOW_ABOVE_GROUND)),
  );
  return reaches.ok ? bandOver(reaches.value, (reach) => reach) : null;
}

/** What the findings say of the ground beyond the target: how far an arrow could fly, and where the target stands. */
export function useRange(bundle: Bundle | null): { readonly reach: Band | null; readonly farthest: number } {
  const units = useUnits();
  const choice = useAimChoice(bundle?.setup.id ?? null);
  const reach = useMemo(() => (bundle === null ? null : reachOf(bundle)), [bundle]);
  const farthest = useMemo(() => (bundle === null ? 0 : (setForOf(bundle, choice, units) ?? 0)), [bundle, choice, units]);
  return useMemo(() => ({ reach, farthest }), [reach, farthest]);
}
