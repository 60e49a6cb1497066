import { useMemo } from 'react';
import { standingEye } from '../../../../core/aim/index.ts';
import type { PartProps } from '../part.ts';
import { aimedBy } from './derive.ts';
import { HeldBy } from './HeldBy.tsx';
import { Missing } from './Missing.tsx';
import { Points } from './Points.tsx';

/** Where to hold the tip of the arrow when there is no sight. */
export function WithoutSight({ bundle, picture }: PartProps) {
  const { basis, setFor } = picture;
  const aimed = useMemo(() => aimedBy(bundle, basis, bundle.archer.eyeAboveGround ?? standingEye), [bundle, basis]);
  return (
    <>
      <HeldBy bundle={bundle} setFor={setFor} />
      {aimed.ok ? (
        <Points bundle={bundle} picture={picture} aimed={aimed.value} chosen={setFor} />
      ) : (
        <Missing problem={aimed.problem} />
      )}
    </>
  );
}
