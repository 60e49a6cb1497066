import { useMemo } from 'react';
import { standingEye } from '../../../../core/aim/index.ts';
import { useUnits } from '../../../state/useBench.ts';
import type { PartProps } from '../part.ts';
import { useAimChoice } from '../store.ts';
import { aimedBy } from './derive.ts';
import { HeldBy } from './HeldBy.tsx';
import { aimAtOf } from './holds.ts';
import { Missing } from './Missing.tsx';
import { Points } from './Points.tsx';

/** Where to hold the tip of the arrow when there is no sight. */
export function WithoutSight({ bundle, picture }: PartProps) {
  const { basis } = picture;
  const units = useUnits();
  const choice = useAimChoice(bundle.setup.id);
  const { eyeUp } = choice;
  const chosen = aimAtOf(choice, units);
  const aimed = useMemo(() => aimedBy(bundle, basis, eyeUp ?? standingEye), [bundle, basis, eyeUp]);
  return (
    <>
      <HeldBy bundle={bundle} aimAt={chosen} />
      {aimed.ok ? (
        <Points bundle={bundle} picture={picture} aimed={aimed.value} chosen={chosen} />
      ) : (
        <Missing problem={aimed.problem} />
      )}
    </>
  );
}
