import type { Bundle } from '../../../core/model/bundle.ts';
import { Figure, Words } from '../../design/index.ts';
import { useEdits } from '../../state/useEdits.ts';
import { Datum } from './choices.tsx';
import { DrawWeight } from './DrawWeight.tsx';
import { ReadingsButton } from './ReadingsButton.tsx';
import { ArcherRows, BowRows, FormRows, MakerRows, StringRows } from './rows.tsx';
import { SpeedsButton } from './SpeedsButton.tsx';
import type { BowFields } from './useBowFields.ts';

/** The same fields as on the drawing, row by row, each with what it means. */
export function PlainForm({ bundle, fields }: { bundle: Bundle; fields: BowFields }) {
  const edit = useEdits();
  const { settings } = fields;
  const button = bundle.bow.arrowPass === 'rest and button';
  const bolts = bundle.bow.bowKind === 'take-down recurve';
  return (
    <div className="two-columns">
      <div className="form">
        <h2>As it is set up</h2>
        <Words
          name="set-up"
          value={bundle.setup.name}
          required
          onKeep={(name) => edit.setup('Name of the set-up', { name })}
          field="setup.name"
        />
        <Figure {...settings.braceHeight} />
        <Figure {...settings.weightOnFingers} />
        <DrawWeight bundle={bundle} />
        <Figure {...settings.nockingPoint} />
        <Figure {...settings.tillerUpper} />
        <Figure {...settings.tillerLower} />
        <Figure {...settings.tiller} />
        <Figure {...settings.centreShot} />
        <Datum bundle={bundle} />
        {button && (
          <>
            <Figure {...settings.buttonTurns} />
            <Figure {...settings.buttonPreload} />
            <Figure {...settings.buttonRate} />
          </>
        )}
        {bolts && (
          <>
            <Figure {...settings.upperBolt} />
            <Figure {...settings.lowerBolt} />
          </>
        )}
        <Figure {...settings.pointAhead} />
        <Figure {...fields.arrowLength} />
        <h2>Read on it</h2>
        <ReadingsButton bundle={bundle} />
        <Figure {...settings.arrowSpeed} />
        <SpeedsButton bundle={bundle} />
        <h2>Form</h2>
        <FormRows bundle={bundle} fields={fields} />
      </div>
      <div className="form">
        <h2>The bow</h2>
        <Figure {...fields.bow.length} />
        <BowRows bundle={bundle} fields={fields} />
        <h2>The string</h2>
        <Figure {...settings.stringLength} />
        <StringRows bundle={bundle} fields={fields} />
        <h2>The maker’s own limits</h2>
        <MakerRows bundle={bundle} fields={fields} />
        <h2>The archer</h2>
        <ArcherRows bundle={bundle} fields={fields} />
      </div>
    </div>
  );
}
