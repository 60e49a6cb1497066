import { useMemo } from 'react';
import { dependentsStopped } from '../../../core/findings/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { useBundle, useUnits } from '../../state/useBench.ts';
import { useFindings } from '../frame/useFindings.ts';
import { AimView } from './AimView.tsx';
import { aimPicture } from './derive.ts';
import { Given } from './flight/Given.tsx';
import { GoLink } from './GoLink.tsx';
import { NoFlight } from './NoFlight.tsx';
import { Stopped } from './Stopped.tsx';
import { useAimChoice } from './store.ts';
import './aim.css';

/** Where the arrow flies and where to aim: the flight with its band, or what stands in its way. */
export function Aim() {
  const bundle = useBundle();
  return bundle === null ? null : <AimOf bundle={bundle} />;
}

function AimOf({ bundle }: { bundle: Bundle }) {
  const units = useUnits();
  const findings = useFindings();
  const choice = useAimChoice(bundle.setup.id);
  const { setFor, air } = choice;
  const picture = useMemo(() => aimPicture(bundle, { setFor, air }, units), [bundle, setFor, air, units]);

  if (dependentsStopped(findings)) return <Stopped stops={findings.filter((finding) => finding.level === 'stop')} />;
  if (picture.ok) return <AimView bundle={bundle} picture={picture.value} />;

  const { problem } = picture;
  if (problem.field !== 'shootingDistance') return <NoFlight bundle={bundle} problem={problem} />;
  return (
    <>
      <div className="head">
        <h1>Out of reach</h1>
        <p>
          {problem.sentence} <GoLink to={['aim', 'aim.setFor']}>Enter it</GoLink>
        </p>
      </div>
      <div className="body">
        <Given bundle={bundle} setFor={setFor} basis={null} />
      </div>
    </>
  );
}
