import type { Bundle } from '../../../core/model/bundle.ts';
import { ArrowPass, BowKind } from '../../../core/model/bow.ts';
import { Choice, Figure, Words, plain } from '../../design/index.ts';
import { useEdits } from '../../state/useEdits.ts';

/** How the arrow passes a bow of this kind until somebody says otherwise. */
const usualPass: Record<BowKind, ArrowPass> = {
  'take-down recurve': 'rest and button',
  'one-piece recurve': 'shelf',
  longbow: 'hand',
  flatbow: 'shelf',
  'self bow': 'hand',
  compound: 'rest and button',
};

const handOptions = [
  { value: 'right', text: 'right' },
  { value: 'left', text: 'left' },
] as const;

/** The bow itself, and what its maker says of it. */
export function BowForm({ bundle }: { bundle: Bundle }) {
  const edit = useEdits();
  const { bow } = bundle;
  return (
    <>
      <h2>The bow</h2>
      <Words name="name" value={bow.name} required onKeep={(name) => edit.bow('Name of the bow', { name })} field="bow.name" />
      <Choice
        name="kind"
        value={bow.bowKind}
        options={plain(...BowKind.options)}
        onKeep={(bowKind) =>
          edit.bow(
            'Kind of bow',
            bow.arrowPass === usualPass[bow.bowKind] ? { bowKind, arrowPass: usualPass[bowKind] } : { bowKind },
          )
        }
        field="bow.bowKind"
      />
      <Choice
        name="arrow passes"
        value={bow.arrowPass}
        options={ArrowPass.options.map((value) => ({
          value,
          text: value === 'rest and button' ? 'rest and button' : `off the ${value}`,
        }))}
        onKeep={(arrowPass) => edit.bow('Where the arrow passes', { arrowPass })}
        field="bow.arrowPass"
      />
      <Choice
        name="bow’s hand"
        value={bow.hand}
        options={handOptions}
        onKeep={(hand) => edit.bow('Hand of the bow', { hand })}
        field="bow.hand"
      />
      <Figure
        measure="bowLength"
        name="length"
        value={bow.length}
        onKeep={(length) => edit.bow('Bow length', { length })}
        hint="As marked: string master plus 3 in."
        field="bow.length"
      />
      <Figure
        measure="markedWeight"
        name="marked weight"
        value={bow.markedWeight}
        onKeep={(markedWeight) => edit.bow('Marked weight', { markedWeight })}
        hint="On the limb. Used with a band until a scale says better."
        field="bow.markedWeight"
      />
      <Figure
        measure="markedDraw"
        name="marked at"
        value={bow.markedDraw}
        required
        onKeep={(markedDraw) => markedDraw !== null && edit.bow('Draw the weight is marked at', { markedDraw })}
        hint="AMO draw; 28 in unless the maker says otherwise."
        field="bow.markedDraw"
      />
      <h2>The maker’s own limits</h2>
      <Figure
        measure="braceHeight"
        name="brace, least"
        value={bow.braceLow}
        onKeep={(braceLow) => edit.bow('Least brace height', { braceLow })}
        field="bow.braceLow"
      />
      <Figure
        measure="braceHeight"
        name="brace, most"
        value={bow.braceHigh}
        onKeep={(braceHigh) => edit.bow('Most brace height', { braceHigh })}
        hint="From the bow’s papers. With both ends they govern; without them common practice is held against it, as a caution only."
        field="bow.braceHigh"
      />
      <Figure
        measure="leastMassPerWeight"
        name="arrow mass, least"
        value={bow.leastMassPerWeight}
        onKeep={(leastMassPerWeight) => edit.bow('Least arrow mass', { leastMassPerWeight })}
        hint="Mass per draw weight, from the maker."
        field="bow.leastMassPerWeight"
      />
    </>
  );
}
