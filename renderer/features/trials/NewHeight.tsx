import type { TrialRow } from '../../../core/trials/index.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { Fraction, Mark } from '../../design/index.ts';
import { useUnits } from '../../state/useBench.ts';

/** What is seen to before the first arrow at every new height; it stays beside the face while the end is shot. */
export function NewHeight({ row }: { row: TrialRow }) {
  const units = useUnits();
  const step = row.place?.step;
  if (step == null) return null;
  return (
    <div className="new-height">
      <p className="note caution-line">
        <Mark level="caution" /> <Fraction>{`Before the first arrow at ${textQuantity(step, 'length', units)}:`}</Fraction>
      </p>
      <ul className="plan-steps">
        <li>measure the brace height on the bow;</li>
        <li>look at both loops, each seated in its groove;</li>
        <li>bring the nocking point back to where it was above square, and see that it holds;</li>
        <li>the same anchor and the same form as before.</li>
      </ul>
    </div>
  );
}
