import type { Bundle } from '../../../core/model/bundle.ts';
import { Choice, Figure, Words } from '../../design/index.ts';
import { useEdits } from '../../state/useEdits.ts';

/** Who draws it. */
export function ArcherForm({ bundle }: { bundle: Bundle }) {
  const edit = useEdits();
  const { archer } = bundle;
  return (
    <>
      <h2>The archer</h2>
      <Words name="name" value={archer.name} required onKeep={edit.archerName} field="archer.name" />
      <Choice
        name="hand"
        value={archer.hand}
        options={[
          { value: 'right', text: 'right: draws with the right hand' },
          { value: 'left', text: 'left: draws with the left hand' },
        ]}
        onKeep={(hand) => edit.archer('Hand of the archer', { hand })}
        field="archer.hand"
      />
      <Figure
        measure="drawLength"
        name="draw length"
        value={archer.drawLength}
        onKeep={(drawLength) => edit.drawLength(drawLength)}
        hint="AMO: nocking point to the pivot of the grip at full draw, plus 1 3/4 in."
        field="archer.drawLength"
      />
      <Choice
        name="experience"
        value={archer.experience}
        options={[
          { value: 'learner', text: 'learner: the draw still grows' },
          { value: 'settled', text: 'settled' },
        ]}
        onKeep={(experience) => edit.archer('Experience', { experience })}
        field="archer.experience"
      />
      <Choice
        name="clicker"
        value={archer.clicker ? 'yes' : 'no'}
        options={[
          { value: 'no', text: 'none' },
          { value: 'yes', text: 'shoots with a clicker' },
        ]}
        onKeep={(value) => edit.archer('Clicker', { clicker: value === 'yes' })}
        field="archer.clicker"
      />
    </>
  );
}
