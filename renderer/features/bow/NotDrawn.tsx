import { memo } from 'react';
import type { Bundle } from '../../../core/model/bundle.ts';
import { Figure, Words } from '../../design/index.ts';
import { useEdits } from '../../state/useEdits.ts';
import { DrawWeight } from './DrawWeight.tsx';
import { ReadingsButton } from './ReadingsButton.tsx';
import { ArcherRows, BowRows, FormRows, MakerRows, StringRows } from './rows.tsx';
import { SpeedsButton } from './SpeedsButton.tsx';
import type { BowFields } from './useBowFields.ts';

/** Everything that no line on the drawing can stand for, in short rows under it. */
export const NotDrawn = memo(function NotDrawn({ bundle, fields }: { bundle: Bundle; fields: BowFields }) {
  const edit = useEdits();
  const { settings } = fields;
  return (
    <div className="not-drawn compact">
      <section>
        <h2 className="plate">Read on it</h2>
        <ReadingsButton bundle={bundle} />
        <SpeedsButton bundle={bundle} />
        <Figure {...settings.arrowSpeed} />
        <Figure {...settings.pointAhead} />
        <DrawWeight bundle={bundle} />
      </section>
      {bundle.bow.arrowPass === 'rest and button' && (
        <section>
          <h2 className="plate">The button</h2>
          <Figure {...settings.buttonPreload} />
          <Figure {...settings.buttonRate} />
        </section>
      )}
      <section>
        <h2 className="plate">The string</h2>
        <StringRows bundle={bundle} fields={fields} />
      </section>
      <section>
        <h2 className="plate">The bow</h2>
        <BowRows bundle={bundle} fields={fields} />
      </section>
      <section>
        <h2 className="plate">The maker’s own limits</h2>
        <MakerRows bundle={bundle} fields={fields} />
      </section>
      <section>
        <h2 className="plate">The archer</h2>
        <ArcherRows bundle={bundle} fields={fields} />
      </section>
      <section>
        <h2 className="plate">Form</h2>
        <FormRows bundle={bundle} fields={fields} />
        <Words
          name="set-up"
          value={bundle.setup.name}
          required
          onKeep={(name) => edit.setup('Name of the set-up', { name })}
          field="setup.name"
        />
      </section>
    </div>
  );
});
