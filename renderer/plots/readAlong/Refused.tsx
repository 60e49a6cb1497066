import type { Problem } from '../../../core/model/problem.ts';
import { Fraction } from '../../design/index.ts';

/** In a plot's place: why there is none, and what would give it. */
export function Refused({ title, problem }: { title: string; problem: Problem | null }) {
  return (
    <div className="plot-refused">
      <h2 className="plate">{title}</h2>
      <p className="note">
        <Fraction>{problem?.sentence ?? 'This cannot be drawn yet.'}</Fraction>
      </p>
    </div>
  );
}
