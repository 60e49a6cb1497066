import { useMemo, useState } from 'react';
import { farthestOffered } from '../../../core/aim/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { limits } from '../../../core/model/limits.ts';
import { Fraction } from '../../design/index.ts';
import { Flight } from '../../plots/flight/Flight.tsx';
import { groupsOf } from '../../state/selectors.ts';
import { useBench, useUnits } from '../../state/useBench.ts';
import type { AimPicture } from './derive.ts';
import { flightData } from './flightData.ts';
import { shootsWithoutSight } from './holds.ts';
import { farEndFor } from './distances.ts';
import { DropTable } from './DropTable.tsx';
import { Given } from './Given.tsx';
import { chooseInAim } from './store.ts';
import { basis, flightSentence, headline, readingAt } from './words.ts';
import { WithoutSight } from './WithoutSight.tsx';

/** The flight, what it rests on, its figures by distance, and the aim without a sight. */
export function AimView({ bundle, picture }: { bundle: Bundle; picture: AimPicture }) {
  const units = useUnits();
  const records = useBench((state) => state.records);
  // While the target is moved the axis stands still, or it would run away under the hand.
  const [heldEnd, setHeldEnd] = useState<number | null>(null);
  const farEnd = heldEnd ?? farEndFor(picture.setFor, units);
  const without = shootsWithoutSight(bundle) && bundle.bow.bowKind !== 'compound';
  const data = useMemo(
    () => flightData(picture, farEnd, picture.basis.speed.from === 'measured' ? 'band: drag' : 'band: speed and drag', without),
    [picture, farEnd, without],
  );
  const faceId = groupsOf(records, bundle.setup.id).at(-1)?.context.face ?? '80';
  return (
    <>
      <div className="head">
        <h1>
          <Fraction>{headline(picture, without, units)}</Fraction>
        </h1>
        <p>{basis(picture, without, units)}</p>
      </div>
      <div className="body">
        <Flight
          data={data}
          title="The flight over the line of sight"
          note="Ground 1.3 m under the gold, by the rule book."
          sentence={flightSentence(picture, units)}
          nearest={limits.shootingDistance.min}
          farthest={Math.min(farEnd, farthestOffered(picture.basis.speed, picture.basis.drag))}
          onSetFor={(setFor) => chooseInAim(bundle.setup.id, { setFor })}
          onHold={(held) => setHeldEnd(held ? farEnd : null)}
          read={(distance) => readingAt(picture, distance, units)}
        />
        <Given
          bundle={bundle}
          setFor={picture.setFor}
          estimated={picture.basis.speed.from === 'estimated' ? picture.basis.speed.value : undefined}
        />
        <div className="aim-lower">
          <WithoutSight bundle={bundle} picture={picture} said={without && picture.withoutSight.pointOn.ok} faceId={faceId} />
          <DropTable picture={picture} />
        </div>
      </div>
    </>
  );
}
