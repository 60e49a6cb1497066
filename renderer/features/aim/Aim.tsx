import { useMemo } from 'react';
import { dependentsStopped, fieldOf } from '../../../core/findings/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { useBundle, useUnits } from '../../state/useBench.ts';
import { useFindings } from '../frame/useFindings.ts';
import { AimView } from './AimView.tsx';
import { aimPicture } from './derive.ts';
import { Given } from './flight/Given.tsx';
import { GoLink } from './GoLink.tsx';
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
  const onThisScreen = problem.field === 'shootingDistance' || problem.field === 'arrowSpeed';
  return (
    <>
      <div className="head">
        <h1>{problem.field === 'shootingDistance' ? 'Out of reach' : 'No flight yet: a figure is missing'}</h1>
        <p>
          {problem.sentence}{' '}
          {onThisScreen ? (
            <GoLink to={['aim', problem.field === 'arrowSpeed' ? 'settings.arrowSpeed' : 'aim.setFor']}>Enter it</GoLink>
          ) : (
            <GoLink to={fieldOf(problem.field, ['bow', 'settings.weightOnFingers'])}>Enter it</GoLink>
          )}
        </p>
      </div>
      <div className="body">
        <p className="aim-wait">
          The flight needs the arrow’s mass and its speed. The speed is measured with a chronograph, or estimated from the weight
          on the fingers, the draw, the brace height and the arrow’s mass.
        </p>
        <Given bundle={bundle} setFor={choice.setFor} basis={null} />
      </div>
    </>
  );
}
