import { priorsOf, scaleOf } from '../../../../core/aim/index.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { Choice, Figure } from '../../../design/index.ts';
import { useEdits } from '../../../state/useEdits.ts';

type Grows = 'down' | 'up' | '';

const given: readonly { readonly value: Grows; readonly text: string }[] = [
  { value: 'down', text: 'down' },
  { value: 'up', text: 'up' },
];
const notYet: readonly { readonly value: Grows; readonly text: string }[] = [{ value: '', text: 'down, assumed' }, ...given];

/** The sight itself: in pencil what nobody has given. */
export function SightFigures({ bundle }: { bundle: Bundle }) {
  const edit = useEdits();
  const { settings } = bundle.setup;
  const { scale, assumed } = scaleOf(settings);
  const priors = priorsOf(bundle, { sightRadius: null, spreadPerMetre: null });
  return (
    <section aria-label="The sight">
      <h2 className="plate">The sight</h2>
      <div className="aim-given marks-sight">
        <Figure
          measure="sightUnit"
          name="one unit of its scale"
          value={settings.sightUnit}
          assumed={assumed.unit ? scale.unit : undefined}
          onKeep={(sightUnit) => edit.settings('One unit of the sight’s scale', { sightUnit })}
          field="settings.sightUnit"
        />
        <Choice<Grows>
          name="its numbers grow"
          value={settings.sightGrows ?? ''}
          options={assumed.grows ? notYet : given}
          onKeep={(grows) => edit.settings('The sight’s numbers grow', { sightGrows: grows === '' ? null : grows })}
          field="settings.sightGrows"
        />
        <Figure
          measure="sightReading"
          name="lowest number"
          value={settings.sightLowest}
          onKeep={(sightLowest) => edit.settings('Lowest number of the sight', { sightLowest })}
          field="settings.sightLowest"
        />
        <Figure
          measure="sightReading"
          name="highest number"
          value={settings.sightHighest}
          onKeep={(sightHighest) => edit.settings('Highest number of the sight', { sightHighest })}
          field="settings.sightHighest"
        />
        <Figure
          measure="sightRadius"
          name="eye to the pin"
          value={settings.sightRadius}
          assumed={priors.ok ? priors.value.sightRadius.value : undefined}
          onKeep={(sightRadius) => edit.settings('Eye to the pin', { sightRadius })}
          field="settings.sightRadius"
        />
      </div>
    </section>
  );
}
