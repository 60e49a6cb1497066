import { goldAboveGround } from '../../../../core/aim/index.ts';
import type { Band } from '../../../../core/model/band.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import type { FaceId } from '../../../../core/model/group.ts';
import { fieldOf } from '../../../../core/findings/index.ts';
import { face } from '../../../../core/group/index.ts';
import { textQuantity } from '../../../../core/units/index.ts';
import { Figure } from '../../../design/index.ts';
import { Hold } from '../../../plots/hold/Hold.tsx';
import { useUnits } from '../../../state/useBench.ts';
import type { AimPicture } from '../derive.ts';
import { GoLink } from '../GoLink.tsx';
import { chooseInAim } from '../store.ts';
import { depthRange, holdSentence, rangeText } from '../words.ts';

interface Props {
  bundle: Bundle;
  picture: AimPicture;
  /** The headline already says the point-on distance. */
  said: boolean;
  faceId: FaceId;
}

/** Where to hold the tip of the arrow when there is no sight: the point-on distance, and one point of aim. */
export function WithoutSight({ bundle, picture, said, faceId }: Props) {
  const units = useUnits();
  const { pointOn, hold, distance, widest } = picture.withoutSight;
  if (bundle.bow.bowKind === 'compound')
    return (
      <section>
        <h2 className="plate">Without a sight</h2>
        <p className="note">
          Points of aim are for a bow loosed off the fingers. For a compound the flight and the table hold; they do not.
        </p>
      </section>
    );
  const refused = hold.ok ? null : hold.problem;
  // A band narrower than the last figure would only repeat it.
  const about = (band: Band) => {
    const range = rangeText(band, 'distance', units, 0);
    return range.includes(' to ') ? `${text(band.value)} (${range})` : text(band.value);
  };
  const text = (metres: number) => textQuantity(metres, 'distance', units, { digits: 0 });
  return (
    <section>
      <div className="aim-at">
        <h2 className="plate">Without a sight</h2>
        <Figure
          measure="shootingDistance"
          name="aim at"
          value={distance}
          required
          onKeep={(value) => chooseInAim(bundle.setup.id, { aimAt: value })}
          field="aim.aimAt"
        />
      </div>
      {hold.ok && <p>{holdSentence(distance, hold.value.hold, units)}.</p>}
      {refused !== null && (
        <p>
          {refused.sentence}{' '}
          <GoLink to={refused.field === 'eyeHeight' ? ['aim', 'form.eyeHeight'] : fieldOf(refused.field, ['aim', 'aim.aimAt'])}>
            Enter it
          </GoLink>
        </p>
      )}
      {hold.ok && (
        <Hold
          hold={hold.value.hold}
          face={face(faceId)}
          ground={goldAboveGround}
          sentence={holdSentence(distance, hold.value.hold, units)}
        />
      )}
      {hold.ok && (
        <p className="note">
          {hold.value.ground !== null && `There the ground comes first: the tip covers a mark ${about(hold.value.ground)} out. `}
          {!said && pointOn.ok && `Point on at ${about(pointOn.value)}. `}
          {!said && !pointOn.ok && `${pointOn.problem.sentence} `}
          {widest.ok &&
            `The gap is widest, ${textQuantity(Math.abs(widest.value.hold.value), 'drop', units)} (${depthRange(widest.value.hold, units)}), at about ${text(widest.value.distance.value)}. `}
          In the plane of the target: a marker nearer or farther scales with its distance from the eye.
        </p>
      )}
    </section>
  );
}
