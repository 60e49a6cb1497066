import { fieldOf } from '../../../../core/findings/index.ts';
import type { Problem } from '../../../../core/model/problem.ts';
import { GoLink } from '../GoLink.tsx';

/** What the points of aim wait for, and how it is measured. */
export function Missing({ problem }: { problem: Problem }) {
  const eye = problem.field === 'eyeHeight';
  return (
    <p className="aim-wait">
      {eye
        ? 'It takes a helper with a ruler: at full draw, from the middle of the shaft straight up to the eye. A millimetre moves a point of aim by some 4 cm at 30 m, so nothing is assumed here.'
        : 'From the throat of the nock to the end of the shaft. It says how far before the eye the tip stands.'}{' '}
      <GoLink to={eye ? ['aim', 'form.eyeHeight'] : fieldOf(problem.field, ['aim', 'aim.setFor'])}>Enter it</GoLink>
    </p>
  );
}
