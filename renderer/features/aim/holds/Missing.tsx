import { fieldOf } from '../../../../core/findings/index.ts';
import type { Problem } from '../../../../core/model/problem.ts';
import { useUnits } from '../../../state/useBench.ts';
import { GoLink } from '../GoLink.tsx';
import { eyeHeightTells } from './words.ts';

/** What the points of aim wait for, and how it is measured. */
export function Missing({ problem }: { problem: Problem }) {
  const units = useUnits();
  const eye = problem.field === 'eyeHeight';
  return (
    <p className="aim-wait">
      {eye
        ? `It takes a helper with a ruler: at full draw, from the middle of the shaft straight up to the eye. ${eyeHeightTells(units)}`
        : 'From the throat of the nock to the end of the shaft. It says how far before the eye the tip stands.'}{' '}
      <GoLink to={eye ? ['aim', 'form.eyeHeight'] : fieldOf(problem.field, ['aim', 'aim.setFor'])}>Enter it</GoLink>
    </p>
  );
}
