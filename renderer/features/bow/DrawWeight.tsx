import { drawWeight, isWeighed } from '../../../core/bow/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { textQuantity, showQuantity } from '../../../core/units/index.ts';
import { Fraction } from '../../design/index.ts';
import { useUnits } from '../../state/useBench.ts';

/** The weight the other checks rest on: the scale's, or the marked one carried to this draw with its band. */
export function DrawWeight({ bundle }: { bundle: Bundle }) {
  const units = useUnits();
  const weight = drawWeight(bundle.bow, bundle.archer, bundle.setup.settings);
  if (!weight.ok) {
    return (
      <p className="reckoned note">
        <Fraction>{weight.problem.sentence}</Fraction>
      </p>
    );
  }
  const { value, low, high, from } = weight.value;
  if (isWeighed(from)) return null;
  const range = `${showQuantity(low, 'weight', units).figure} to ${textQuantity(high, 'weight', units)}`;
  return (
    <p className="reckoned note">
      At this draw about <b>{textQuantity(value, 'weight', units)}</b>, {range}:{' '}
      {from === 'marked weight'
        ? 'from the marked weight. A reading on the fingers'
        : 'from a reading at another draw. A reading at this one'}{' '}
      settles it.
    </p>
  );
}
