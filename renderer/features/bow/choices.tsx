import { useId } from 'react';
import { ArrowPass, BowKind } from '../../../core/model/bow.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { CentreShotDatum, NockFit, StringMaterial } from '../../../core/model/setup.ts';
import { Choice, plain } from '../../design/index.ts';
import { useEdits } from '../../state/useEdits.ts';

interface Props {
  bundle: Bundle;
}

/** A few words to choose from, and that nobody has noted it. */
export const orNotNoted = <T extends string>(...values: readonly T[]) => [
  { value: '' as const, text: 'not noted' },
  ...plain(...values),
];

/** How the arrow passes a bow of this kind until somebody says otherwise. */
const usualPass: Readonly<Record<BowKind, ArrowPass>> = {
  'take-down recurve': 'rest and button',
  'one-piece recurve': 'shelf',
  longbow: 'hand',
  flatbow: 'shelf',
  'self bow': 'hand',
  compound: 'rest and button',
};

export function Kind({ bundle: { bow } }: Props) {
  const edit = useEdits();
  return (
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
  );
}

export function Pass({ bundle: { bow } }: Props) {
  const edit = useEdits();
  return (
    <Choice
      name="arrow passes"
      value={bow.arrowPass}
      options={ArrowPass.options.map((value) => ({ value, text: value === 'rest and button' ? value : `off the ${value}` }))}
      onKeep={(arrowPass) => edit.bow('Where the arrow passes', { arrowPass })}
      field="bow.arrowPass"
    />
  );
}

export function BowHand({ bundle: { bow } }: Props) {
  const edit = useEdits();
  return (
    <Choice
      name="bow’s hand"
      value={bow.hand}
      options={plain('right', 'left')}
      onKeep={(hand) => edit.bow('Hand of the bow', { hand })}
      field="bow.hand"
    />
  );
}

/** Where along the arrow its distance from the string's line is read. */
export const datumText: Readonly<Record<CentreShotDatum, string>> = { point: 'the arrow’s point', button: 'the button' };

export function Datum({ bundle: { setup } }: Props) {
  const edit = useEdits();
  return (
    <Choice
      name="read at"
      value={setup.settings.centreShotDatum}
      options={CentreShotDatum.options.map((value) => ({ value, text: datumText[value] }))}
      onKeep={(centreShotDatum) => edit.settings('Where the centre shot is read', { centreShotDatum })}
      field="settings.centreShotDatum"
    />
  );
}

export function Nock({ bundle: { setup } }: Props) {
  const edit = useEdits();
  return (
    <Choice
      name="nock fit"
      value={setup.settings.nockFit ?? ''}
      options={orNotNoted(...NockFit.options)}
      onKeep={(value) => edit.settings('Nock fit', { nockFit: value === '' ? null : value })}
      field="settings.nockFit"
    />
  );
}

export function StringFibre({ bundle: { setup } }: Props) {
  const edit = useEdits();
  return (
    <Choice
      name="string material"
      value={setup.settings.stringMaterial ?? ''}
      options={orNotNoted(...StringMaterial.options)}
      onKeep={(value) => edit.settings('String material', { stringMaterial: value === '' ? null : value })}
      field="settings.stringMaterial"
    />
  );
}

export function LowStretch({ bundle: { bow } }: Props) {
  const edit = useEdits();
  return (
    <Choice
      name="low-stretch string"
      value={bow.lowStretch ?? ''}
      options={[{ value: '', text: 'nobody has asked' }, ...plain('allowed', 'not allowed')]}
      onKeep={(value) => edit.bow('Low-stretch string', { lowStretch: value === '' ? null : value })}
      hint="Whether the maker allows it on this bow."
      field="bow.lowStretch"
    />
  );
}

/** When the string was put on: the browser's own date field, kept when it is left. */
export function StringFitted({ bundle: { setup } }: Props) {
  const edit = useEdits();
  const id = useId();
  const kept = setup.settings.stringFitted ?? '';
  return (
    <div className="row">
      <label htmlFor={id}>fitted on</label>
      <div className="row-value">
        <input
          // What is kept elsewhere meanwhile stands here too.
          key={kept}
          id={id}
          type="date"
          className="words"
          data-field="settings.stringFitted"
          defaultValue={kept}
          min="1980-01-01"
          onBlur={(event) => {
            const { value, validity } = event.currentTarget;
            if (value === kept || !validity.valid) return;
            void edit.settings('Date of the string', { stringFitted: value === '' ? null : value });
          }}
        />
      </div>
    </div>
  );
}
