import { memo, useMemo, useState } from 'react';
import { farthestOffered, goldAboveGround } from '../../../core/aim/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { limits } from '../../../core/model/limits.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { Fraction } from '../../design/index.ts';
import { Flight } from '../../plots/flight/Flight.tsx';
import { useUnits } from '../../state/useBench.ts';
import { useLowWindow } from './useLowWindow.ts';
import type { AimPicture } from './derive.ts';
import { farEndFor } from './distances.ts';
import { flightData } from './flightData.ts';
import type { Part } from './part.ts';
import { parts, partsFor } from './parts.ts';
import { Raised } from './Raised.tsx';
import { type AimPart, chooseInAim, useAimChoice } from './store.ts';
import { flightSentence, readingAt } from './words.ts';

interface Props {
  bundle: Bundle;
  picture: AimPicture;
}

/** The finding, the flight, and under it one part of the page at a time. */
export function AimView({ bundle, picture }: Props) {
  const { part } = useAimChoice(bundle.setup.id);
  const { usual, offered } = partsFor(bundle);
  // The eye's height, which a link may lead to, stands among the flight's figures too.
  const chosen = part === null ? usual : offered.includes(part) ? part : 'flight';
  // Each part has hooks of its own, so that another part is another component.
  return <PartView key={chosen} bundle={bundle} picture={picture} chosen={chosen} offered={offered} part={parts[chosen]} />;
}

function PartView({
  bundle,
  picture,
  chosen,
  offered,
  part: { useHead, Body },
}: Props & { chosen: AimPart; offered: readonly AimPart[]; part: Part }) {
  const { title, note } = useHead({ bundle, picture });
  return (
    <>
      <div className="head">
        <h1>
          <Fraction>{title}</Fraction>
        </h1>
        <p>{note}</p>
      </div>
      <div className="body">
        <FlightAbove bundle={bundle} picture={picture} />
        <Raised by={picture.plan.elevation.high} />
        <nav className="aim-parts" aria-label="Parts of Aim">
          {offered.map((one) => (
            <button
              key={one}
              type="button"
              aria-current={one === chosen ? 'true' : undefined}
              onClick={() => chooseInAim(bundle.setup.id, { part: one })}
            >
              {parts[one].name}
            </button>
          ))}
        </nav>
        <Body bundle={bundle} picture={picture} />
      </div>
    </>
  );
}

/** It stands still while a part's own figures move under it. */
const FlightAbove = memo(function FlightAbove({ bundle, picture }: Props) {
  const units = useUnits();
  const low = useLowWindow();
  // While the target is moved the axis stands still, or it would run away under the hand.
  const [heldEnd, setHeldEnd] = useState<number | null>(null);
  const farEnd = heldEnd ?? farEndFor(picture.setFor, units);
  const without = partsFor(bundle).usual === 'holds';
  const data = useMemo(
    () => flightData(picture, farEnd, picture.basis.speed.from === 'measured' ? 'band: drag' : 'band: speed and drag', without),
    [picture, farEnd, without],
  );
  return (
    <Flight
      data={data}
      title="The flight over the line of sight"
      ofGround={`Ground ${textQuantity(goldAboveGround, 'drop', units)} under the gold, by the rule book.`}
      sentence={flightSentence(picture, units)}
      nearest={limits.shootingDistance.min}
      farthest={Math.min(farEnd, farthestOffered(picture.basis.speed, picture.basis.drag))}
      onSetFor={(setFor) => chooseInAim(bundle.setup.id, { setFor })}
      onHold={(held) => setHeldEnd(held ? farEnd : null)}
      read={(distance) => readingAt(picture, distance, units)}
      low={low}
    />
  );
});
