import type { Bundle } from '../../../core/model/bundle.ts';
import { AgeGroup } from '../../../core/model/archer.ts';
import { Choice, Figure, Words } from '../../design/index.ts';
import { useEdits } from '../../state/useEdits.ts';
import { BowHand, Kind, LowStretch, Nock, orNotNoted, Pass, StringFibre, StringFitted } from './choices.tsx';
import { LookOverButton } from './LookOverButton.tsx';
import type { BowFields } from './useBowFields.ts';

interface Props {
  bundle: Bundle;
  fields: BowFields;
}

/** The bow itself: everything of it that does not stand on the drawing. */
export function BowRows({ bundle, fields }: Props) {
  const edit = useEdits();
  return (
    <>
      <Words
        name="bow"
        value={bundle.bow.name}
        required
        onKeep={(name) => edit.bow('Name of the bow', { name })}
        field="bow.name"
      />
      <Kind bundle={bundle} />
      <Pass bundle={bundle} />
      <BowHand bundle={bundle} />
      <Figure {...fields.bow.markedWeight} />
      <Figure {...fields.bow.markedDraw} />
      <LookOverButton bundle={bundle} />
    </>
  );
}

/** What the bow's maker says of it. */
export function MakerRows({ bundle, fields: { bow } }: Props) {
  return (
    <>
      <Figure {...bow.braceLow} />
      <Figure {...bow.braceHigh} />
      <Figure {...bow.leastMassPerWeight} />
      <Figure {...bow.strandsLow} />
      <Figure {...bow.strandsHigh} />
      <LowStretch bundle={bundle} />
      {bundle.bow.bowKind === 'take-down recurve' && <Figure {...bow.mostBoltTurns} />}
    </>
  );
}

/** The string on the bow, and how the nock sits on its serving. */
export function StringRows({ bundle, fields: { settings } }: Props) {
  return (
    <>
      <StringFibre bundle={bundle} />
      <Figure {...settings.strands} />
      <Figure {...settings.stringMass} />
      <Figure {...settings.twists} />
      <StringFitted bundle={bundle} />
      <Nock bundle={bundle} />
    </>
  );
}

/** Who draws it. */
export function ArcherRows({ bundle, fields }: Props) {
  const edit = useEdits();
  const { archer } = bundle;
  return (
    <>
      <Words name="archer" value={archer.name} required onKeep={edit.archerName} field="archer.name" />
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
      <Figure {...fields.drawLength} />
      <Choice
        name="experience"
        value={archer.experience ?? ''}
        options={[
          { value: '', text: 'not noted: judged as a learner' },
          { value: 'learner', text: 'learner: draw still grows' },
          { value: 'settled', text: 'settled' },
        ]}
        onKeep={(value) => edit.archer('Experience', { experience: value === '' ? null : value })}
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
      <Choice
        name="age"
        value={archer.ageGroup ?? ''}
        options={orNotNoted(...AgeGroup.options)}
        onKeep={(value) => edit.archer('Age', { ageGroup: value === '' ? null : value })}
        hint="For the usual starting weights only."
        field="archer.ageGroup"
      />
      <Figure {...fields.holdTime} />
    </>
  );
}

/** Readings hold for one form: when two groups differ in it, the bench says that the difference is not the equipment's alone. */
export function FormRows({ bundle, fields }: Props) {
  const edit = useEdits();
  const { form } = bundle.setup;
  return (
    <>
      <Choice
        name="anchor"
        value={form.anchor ?? ''}
        options={orNotNoted('under the jaw', 'side of the face', 'other')}
        onKeep={(value) => edit.form('Anchor', { anchor: value === '' ? null : value })}
        field="form.anchor"
      />
      <Choice
        name="hook"
        value={form.hook ?? ''}
        options={orNotNoted('split', 'three under', 'string walk')}
        onKeep={(value) => edit.form('Hook', { hook: value === '' ? null : value })}
        field="form.hook"
      />
      <Choice
        name="finger cover"
        value={form.fingerCover ?? ''}
        options={orNotNoted('tab', 'glove', 'bare')}
        onKeep={(value) => edit.form('Finger cover', { fingerCover: value === '' ? null : value })}
        field="form.fingerCover"
      />
      <Choice
        name="aims by"
        value={form.aiming ?? ''}
        options={orNotNoted('sight', 'point of aim', 'gap', 'none')}
        onKeep={(value) => edit.form('Aiming method', { aiming: value === '' ? null : value })}
        field="form.aiming"
      />
      <Figure {...fields.eyeHeight} />
    </>
  );
}
