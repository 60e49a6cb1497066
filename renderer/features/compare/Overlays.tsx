import { useMemo } from 'react';
import { shortNames } from '../../../core/compare/index.ts';
import type { ShotBundle } from '../../../core/model/bundle.ts';
import type { Result } from '../../../core/model/problem.ts';
import { unitOf } from '../../../core/units/index.ts';
import { Fraction } from '../../design/index.ts';
import { GroupsOverlay } from '../../plots/groupsOverlay/GroupsOverlay.tsx';
import { Heights } from '../../plots/heights/Heights.tsx';
import { useUnits } from '../../state/useBench.ts';
import { heightsDrawn } from './heights.ts';
import type { Overlay } from './overlay.ts';

interface Props {
  reference: ShotBundle;
  other: ShotBundle;
  overlay: Result<Overlay>;
  /** Nothing that rests on a flight is drawn while one of the two may not be shot. */
  stopped: boolean;
}

/** How the two shoot: groups over each other, and one arrow's height over the other's. */
export function Overlays({ reference, other, overlay, stopped }: Props) {
  const units = useUnits();
  const heights = useMemo(() => heightsDrawn(reference, other, units), [reference, other, units]);
  return (
    <div className="overlays">
      <section aria-labelledby="overlay-groups">
        <h2 id="overlay-groups" className="plate">
          <Fraction>{overlay.ok ? overlay.value.title : 'Groups'}</Fraction>
        </h2>
        {overlay.ok ? (
          <>
            <GroupsOverlay data={overlay.value.data} sentence={overlay.value.sentence} />
            <p className="note faint">Each circle holds its centre with 95 %.</p>
          </>
        ) : (
          <Waits>{overlay.problem.sentence}</Waits>
        )}
      </section>
      <section aria-labelledby="overlay-heights">
        <h2 id="overlay-heights" className="plate">
          <Fraction>{`Strikes higher than “${shortNames(reference.setup.name, other.setup.name)[0]}”, ${unitOf('drop', units)}`}</Fraction>
        </h2>
        {stopped && <Waits>Held back until the stop is answered.</Waits>}
        {!stopped && heights.ok && (
          <>
            <Heights data={heights.value.data} sentence={heights.value.sentence} />
            <p className="note faint">
              At the first one’s sight mark for each distance. The band holds what is not known of speed and drag.
            </p>
          </>
        )}
        {!stopped && !heights.ok && <Waits>{heights.problem.sentence}</Waits>}
      </section>
    </div>
  );
}

function Waits({ children }: { children: string }) {
  return (
    <p className="overlay-waits">
      <span aria-hidden="true">–</span> <Fraction>{children}</Fraction>
    </p>
  );
}
