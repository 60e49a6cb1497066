import { useState } from 'react';
import { diameterOf, eyeHeightOf, type FlightBasis } from '../../../../core/aim/index.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { Figure } from '../../../design/index.ts';
import { useEdits } from '../../../state/useEdits.ts';
import { chooseInAim } from '../store.ts';
import { AirFields } from './AirFields.tsx';
import './flight.css';

interface Props {
  bundle: Bundle;
  /** Null where there is no flight to set it for. */
  setFor: number | null;
  /** What the flight rests on; null where there is none. */
  basis: FlightBasis | null;
}

/** What the flight rests on, under the flight: each figure can be changed here. */
export function Given({ bundle, setFor, basis }: Props) {
  const edit = useEdits();
  const { setup, arrowSet } = bundle;
  // Once asked for, the field stays while it is being filled in.
  const [asksDiameter] = useState(arrowSet.diameter === null);
  // A speed that the bow's own figures give stands in pencil until one is measured.
  const estimated = basis !== null && basis.speed.from !== 'measured' ? basis.speed.value : undefined;
  return (
    <>
      <div className="aim-given flight-given">
        {setFor !== null && (
          <Figure
            measure="shootingDistance"
            name="set for"
            value={setFor}
            required
            onKeep={(value) => chooseInAim(setup.id, { setFor: value })}
            field="aim.setFor"
          />
        )}
        <Figure
          measure="arrowSpeed"
          name="measured arrow speed"
          value={setup.settings.arrowSpeed}
          assumed={estimated}
          again={basis?.speed.from === 'carried'}
          onKeep={(arrowSpeed) => edit.settings('Arrow speed', { arrowSpeed })}
          field="settings.arrowSpeed"
        />
        <Figure
          measure="eyeHeight"
          name="eye above the arrow"
          value={setup.form.eyeHeight}
          assumed={eyeHeightOf({ ...setup.form, eyeHeight: null }).value}
          onKeep={(eyeHeight) => edit.form('Eye above the arrow', { eyeHeight })}
          field="form.eyeHeight"
        />
        {asksDiameter && (
          <Figure
            measure="shaftDiameter"
            name="shaft diameter"
            value={arrowSet.diameter}
            assumed={diameterOf({ ...arrowSet, diameter: null }).value}
            onKeep={(diameter) => edit.arrowSet('Shaft diameter', { diameter })}
            field="arrowSet.diameter"
          />
        )}
      </div>
      {basis !== null && <AirFields setupId={setup.id} basis={basis} />}
    </>
  );
}
