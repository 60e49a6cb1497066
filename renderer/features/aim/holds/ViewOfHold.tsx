import { goldAboveGround, type HoldRow } from '../../../../core/aim/index.ts';
import { face } from '../../../../core/group/index.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import type { FaceId } from '../../../../core/model/group.ts';
import { factorOf, textQuantity } from '../../../../core/units/index.ts';
import { Exportable } from '../../../export/index.ts';
import type { CsvTable } from '../../../export/index.ts';
import { ArcherView } from '../../../plots/archerView/ArcherView.tsx';
import type { ArcherViewData } from '../../../plots/archerView/data.ts';
import { useUnits } from '../../../state/useBench.ts';
import { chooseInAim } from '../store.ts';
import { holdSentence } from '../words.ts';
import type { Aimed } from './derive.ts';
import { whereItLies } from './words.ts';

interface Props {
  bundle: Bundle;
  aimed: Aimed;
  row: HoldRow;
  diameter: number;
  faceId: FaceId;
  table: () => CsvTable;
}

/** Nearer than this nobody puts up a butt, in metres or yards. */
const NEAREST = 5;

/** The archer's view of the hold in hand, with its sentence over it. */
export function ViewOfHold({ bundle, aimed, row, diameter, faceId, table }: Props) {
  const units = useUnits();
  const says = holdSentence(row.distance, row.hold, units);
  const step = factorOf('distance', units);
  const data: ArcherViewData = {
    distance: row.distance,
    face: face(faceId),
    hand: bundle.archer.hand,
    eyeAboveGround: aimed.eyeUp,
    centreAboveGround: goldAboveGround,
    by: { kind: 'tip', forward: aimed.tipForward, eyeHeight: aimed.launches.value.eyeHeight, diameter },
    up: row.hold,
    across: 0,
    marker: row.ground,
  };
  const sentence = `${says}. ${whereItLies(row, units)}`;
  return (
    <div>
      <Exportable
        of="point of aim"
        title={says}
        note={`Seen from the eye, ${textQuantity(aimed.eyeUp, 'length', units)} above level ground, in true perspective; the point is drawn a little longer than it looks. Lines on the ground in ${units.distance}.`}
        sentence={sentence}
        table={table}
      >
        <ArcherView
          data={data}
          sentence={sentence}
          move={{
            nearest: NEAREST * step,
            farthest: Math.floor(aimed.farthest / step) * step,
            onDistance: (setFor) => chooseInAim(bundle.setup.id, { setFor }),
          }}
        />
      </Exportable>
    </div>
  );
}
