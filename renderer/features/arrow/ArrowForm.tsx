import type { ArrowSet } from '../../../core/model/arrowSet.ts';
import { Figure, Words, type FigureProps } from '../../design/index.ts';
import { useEdits } from '../../state/useEdits.ts';
import { Convention, Material } from './choices.tsx';
import type { ArrowField } from './useArrowFields.ts';

/** The same figures as on the drawing, a row each. */
export function ArrowForm({ arrowSet, fields }: { arrowSet: ArrowSet; fields: Readonly<Record<ArrowField, FigureProps>> }) {
  return (
    <div className="arrow-form">
      <div className="form">
        <h2>The shaft</h2>
        <ArrowName arrowSet={arrowSet} />
        <Material arrowSet={arrowSet} />
        <Figure {...fields.length} />
        <Figure {...fields.deflection} />
        <Convention arrowSet={arrowSet} />
        <Figure {...fields.linearDensity} />
        <Figure {...fields.diameter} />
        <Figure {...fields.wall} />
        <Figure {...fields.weighed} />
        <Figure {...fields.balance} />
      </div>
      <div className="form">
        <h2>What is fitted to it</h2>
        <Figure {...fields.nockMass} />
        <Figure {...fields.pinMass} />
        <Figure {...fields.wrapMass} />
        <Figure {...fields.fletchingMass} />
        <Figure {...fields.vaneCount} />
        <Figure {...fields.vaneLength} />
        <Figure {...fields.vaneFromThroat} />
        <Figure {...fields.insertMass} />
        <Figure {...fields.pointMass} />
      </div>
    </div>
  );
}

/** What the set goes by. */
export function ArrowName({ arrowSet }: { arrowSet: ArrowSet }) {
  const edit = useEdits();
  return (
    <Words
      name="arrows"
      value={arrowSet.name}
      required
      onKeep={(name) => edit.arrowSet('Name of the arrows', { name })}
      field="arrowSet.name"
    />
  );
}
