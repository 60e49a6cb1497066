import { tillerOf, withTiller } from '../../../core/bow/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { CentreShotDatum } from '../../../core/model/setup.ts';
import { Choice, Figure, Words, plain } from '../../design/index.ts';
import { readAt } from '../../state/births.ts';
import { useEdits } from '../../state/useEdits.ts';
import { DrawWeight } from './DrawWeight.tsx';

/** The settings that can be turned, and what was read on the scale. */
export function SettingsForm({ bundle }: { bundle: Bundle }) {
  const edit = useEdits();
  const { settings } = bundle.setup;
  const button = bundle.bow.arrowPass === 'rest and button';
  return (
    <>
      <h2>As it is set up</h2>
      <Words
        name="set-up"
        value={bundle.setup.name}
        required
        onKeep={(name) => edit.setup('Name of the set-up', { name })}
        field="setup.name"
      />
      <Figure
        measure="braceHeight"
        name="brace height"
        value={settings.braceHeight}
        onKeep={(braceHeight) => edit.settings('Brace height', { braceHeight })}
        hint="String to the deepest point of the grip, square to the string."
        field="settings.braceHeight"
      />
      <Figure
        measure="weightOnFingers"
        name="weight on the fingers"
        value={settings.weightOnFingers}
        onKeep={(weightOnFingers) => edit.settings('Weight on the fingers', readAt(weightOnFingers, bundle.archer))}
        hint="Read on a bow scale at this archer’s full draw, with an arrow nocked and the string let down slowly."
        field="settings.weightOnFingers"
      />
      <DrawWeight bundle={bundle} />
      <Figure
        measure="nockingPoint"
        name="nocking point"
        value={settings.nockingPoint}
        onKeep={(nockingPoint) => edit.settings('Nocking point', { nockingPoint })}
        hint="Bottom of the nocked arrow above square to the string."
        field="settings.nockingPoint"
      />
      <Figure
        measure="tiller"
        name="tiller"
        value={tillerOf(settings)}
        onKeep={(tiller) => edit.settings('Tiller', withTiller(tiller))}
        hint="Top minus bottom, limb root to string."
        field="settings.tiller"
      />
      <Figure
        measure="centreShot"
        name="centre shot"
        value={settings.centreShot}
        onKeep={(centreShot) => edit.settings('Centre shot', { centreShot })}
        hint="Outside the string, away from the riser."
        field="settings.centreShot"
      />
      <Choice
        name="read at"
        value={settings.centreShotDatum}
        options={CentreShotDatum.options.map((value) => ({
          value,
          text: value === 'point' ? 'the arrow’s point' : 'the button',
        }))}
        onKeep={(centreShotDatum) => edit.settings('Where the centre shot is read', { centreShotDatum })}
        field="settings.centreShotDatum"
      />
      {button && (
        <Figure
          measure="buttonTurns"
          name="button"
          value={settings.buttonTurns}
          onKeep={(buttonTurns) => edit.settings('Button', { buttonTurns })}
          hint="Turns in from fully out. Feel which way firms it: makers differ."
          field="settings.buttonTurns"
        />
      )}
      <Figure
        measure="pointAhead"
        name="shaft ahead of the rest"
        value={settings.pointAhead}
        onKeep={(pointAhead) => edit.settings('Shaft ahead of the rest', { pointAhead })}
        hint="End of shaft beyond the rest at the deepest draw, if you have looked. Otherwise it is worked out."
        field="settings.pointAhead"
      />
      <Figure
        measure="arrowSpeed"
        name="arrow speed"
        value={settings.arrowSpeed}
        onKeep={(arrowSpeed) => edit.settings('Arrow speed', { arrowSpeed })}
        hint="From a chronograph, if there is one."
        field="settings.arrowSpeed"
      />
      <h2>Form</h2>
      <FormFields bundle={bundle} />
    </>
  );
}

const choices = <T extends string>(...values: readonly T[]) => [{ value: '' as const, text: 'not noted' }, ...plain(...values)];

/** Readings hold for one form: when two groups differ in it, the bench says that the difference is not the equipment's alone. */
function FormFields({ bundle }: { bundle: Bundle }) {
  const edit = useEdits();
  const { form } = bundle.setup;
  return (
    <>
      <Choice
        name="anchor"
        value={form.anchor ?? ''}
        options={choices('under the jaw', 'side of the face', 'other')}
        onKeep={(value) => edit.form('Anchor', { anchor: value === '' ? null : value })}
        field="form.anchor"
      />
      <Choice
        name="hook"
        value={form.hook ?? ''}
        options={choices('split', 'three under', 'string walk')}
        onKeep={(value) => edit.form('Hook', { hook: value === '' ? null : value })}
        field="form.hook"
      />
      <Choice
        name="finger cover"
        value={form.fingerCover ?? ''}
        options={choices('tab', 'glove', 'bare')}
        onKeep={(value) => edit.form('Finger cover', { fingerCover: value === '' ? null : value })}
        field="form.fingerCover"
      />
      <Choice
        name="aims by"
        value={form.aiming ?? ''}
        options={choices('sight', 'point of aim', 'gap', 'none')}
        onKeep={(value) => edit.form('Aiming method', { aiming: value === '' ? null : value })}
        field="form.aiming"
      />
      <Figure
        measure="eyeHeight"
        name="eye above the arrow"
        value={form.eyeHeight}
        onKeep={(eyeHeight) => edit.form('Eye above the arrow', { eyeHeight })}
        hint="At anchor, square to the arrow."
        field="form.eyeHeight"
      />
    </>
  );
}
