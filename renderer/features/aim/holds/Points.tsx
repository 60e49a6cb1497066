import { useMemo } from 'react';
import { face } from '../../../../core/group/index.ts';
import { groupsOf } from '../../../state/selectors.ts';
import { useBench, useUnits } from '../../../state/useBench.ts';
import { textQuantity } from '../../../../core/units/index.ts';
import type { PartProps } from '../part.ts';
import { PrintButton } from '../print/index.ts';
import { chooseInAim } from '../store.ts';
import { AnchorChange } from './AnchorChange.tsx';
import { holdAt, holdsOf, usualLines, withLine, type Aimed } from './derive.ts';
import { HoldNotes } from './HoldNotes.tsx';
import { HoldSays } from './HoldSays.tsx';
import { HoldTable } from './HoldTable.tsx';
import { pointsMaker } from './paper.ts';
import { holdsTable } from './table.ts';
import { ViewOfHold } from './ViewOfHold.tsx';

/** The archer's view of one distance beside the table of them all, and what another anchor would change. */
export function Points({ bundle, picture, aimed, chosen }: PartProps & { aimed: Aimed; chosen: number }) {
  const units = useUnits();
  const records = useBench((state) => state.records);
  const faceId = groupsOf(records, bundle.setup.id).at(-1)?.context.face ?? '80';
  const holds = useMemo(() => holdsOf(aimed), [aimed]);
  const usual = useMemo(() => usualLines(aimed, holds.pointOn, units), [aimed, holds, units]);
  const row = useMemo(() => holdAt(aimed, chosen), [aimed, chosen]);
  const makers = useMemo(() => ({ points: pointsMaker(aimed, face(faceId), units) }), [aimed, faceId, units]);
  const crawls = bundle.setup.form.hook === 'string walk';
  const lines = withLine(usual, { distance: chosen, pointOn: false, row: row.ok ? row.value : null });
  return (
    <>
      <div className="holds-says">
        <div>
          {row.ok ? (
            <HoldSays aimed={aimed} row={row.value} crawls={crawls} />
          ) : (
            <h2 className="plate">No point of aim at {textQuantity(chosen, 'distance', units)}</h2>
          )}
        </div>
        <PrintButton bundle={bundle} label="Print card" makers={makers} />
      </div>
      <div className="holds-lower">
        {row.ok ? (
          <ViewOfHold
            bundle={bundle}
            aimed={aimed}
            row={row.value}
            diameter={picture.basis.diameter.value}
            faceId={faceId}
            table={() => holdsTable(lines, units)}
          />
        ) : (
          <p>{row.problem.sentence}</p>
        )}
        <div>
          <HoldTable
            lines={lines}
            chosen={chosen}
            crawls={crawls}
            onChoose={(setFor) => chooseInAim(bundle.setup.id, { setFor })}
          />
          <HoldNotes aimed={aimed} holds={holds} lines={lines} chosen={chosen} crawls={crawls} />
        </div>
      </div>
      <AnchorChange bundle={bundle} aimed={aimed} />
    </>
  );
}
