import { standingEye } from '../../../../core/aim/index.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { Figure } from '../../../design/index.ts';
import { useEdits } from '../../../state/useEdits.ts';
import { chooseInAim } from '../store.ts';

/** What the points of aim hang on, right over them. */
export function HeldBy({ bundle, setFor }: { bundle: Bundle; setFor: number }) {
  const edit = useEdits();
  const { form, id } = bundle.setup;
  return (
    <div className="aim-given holds-given">
      <Figure
        measure="shootingDistance"
        name="aim at"
        value={setFor}
        required
        onKeep={(value) => chooseInAim(id, { setFor: value })}
        field="aim.setFor"
      />
      <Figure
        measure="eyeHeight"
        name="eye above the arrow"
        value={form.eyeHeight}
        onKeep={(eyeHeight) => edit.form('Eye above the arrow', { eyeHeight })}
        field="form.eyeHeight"
      />
      <Figure
        measure="eyeAboveGround"
        name="eye above the ground"
        value={bundle.archer.eyeAboveGround}
        assumed={standingEye}
        onKeep={(eyeAboveGround) => edit.archer('Eye above the ground', { eyeAboveGround })}
        field="archer.eyeAboveGround"
      />
    </div>
  );
}
