import { useMemo } from 'react';
import { shortNames } from '../../../core/compare/index.ts';
import type { ShotBundle } from '../../../core/model/bundle.ts';
import type { Result } from '../../../core/model/problem.ts';
import { unitOf } from '../../../core/units/index.ts';
import { Fraction } from '../../design/index.ts';
import { Exportable } from '../../export/index.ts';
import { GroupsOverlay } from '../../plots/groupsOverlay/GroupsOverlay.tsx';
import { overlayTable } from '../../plots/groupsOverlay/table.ts';
import { Heights } from '../../plots/heights/Heights.tsx';
import { heightsTable } from '../../plots/heights/table.ts';
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

const HOLDS = 'Each circle holds its centre with 95 %.';
const AT_THE_MARK = 'At the first one’s sight mark for each distance. The band holds what is not known of speed and drag.';

/** How the two shoot: groups over each other, and one arrow's height over the other's. */
export function Overlays({ reference, other, overlay, stopped }: Props) {
  const units = useUnits();
  const heights = useMemo(() => heightsDrawn(reference, other, units), [reference, other, units]);
  const higher = `Strikes higher than “${shortNames(reference.setup.name, other.setup.name)[0]}”, ${unitOf('drop', units)}`;
  const names = `${reference.setup.name}; ${other.setup.name}.`;
  return (
    <div className="overlays">
      <section aria-labelledby="overlay-groups">
        <h2 id="overlay-groups" className="plate">
          <Fraction>{overlay.ok ? overlay.value.title : 'Groups'}</Fraction>
        </h2>
        {overlay.ok ? (
          <Exportable
            of="groups compared"
            title={overlay.value.title}
            note={`${names} ${HOLDS}`}
            sentence={overlay.value.sentence}
            table={() => overlayTable(overlay.value.data)}
            beneath={<p className="note faint">{HOLDS}</p>}
          >
            <GroupsOverlay data={overlay.value.data} sentence={overlay.value.sentence} />
          </Exportable>
        ) : (
          <Waits>{overlay.problem.sentence}</Waits>
        )}
      </section>
      <section aria-labelledby="overlay-heights">
        <h2 id="overlay-heights" className="plate">
          <Fraction>{higher}</Fraction>
        </h2>
        {stopped && <Waits>Held back until the stop is answered.</Waits>}
        {!stopped && heights.ok && (
          <Exportable
            of="heights compared"
            title={higher}
            note={`${names} ${AT_THE_MARK}`}
            sentence={heights.value.sentence}
            table={() => heightsTable(heights.value.data)}
            beneath={<p className="note faint">{AT_THE_MARK}</p>}
          >
            <Heights data={heights.value.data} sentence={heights.value.sentence} />
          </Exportable>
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
