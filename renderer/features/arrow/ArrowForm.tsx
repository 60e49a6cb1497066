import { readSpine } from '../../../core/arrow/index.ts';
import { ArrowSet, SpineConvention } from '../../../core/model/arrowSet.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { Choice, Figure, Words, plain } from '../../design/index.ts';
import { useUnits } from '../../state/useBench.ts';
import { useEdits } from '../../state/useEdits.ts';

/** The parts of the arrow, one figure each. */
export function ArrowForm({ bundle }: { bundle: Bundle }) {
  const edit = useEdits();
  const units = useUnits();
  const { arrowSet } = bundle;
  return (
    <>
      <h2>The shaft</h2>
      <Words
        name="arrows"
        value={arrowSet.name}
        required
        onKeep={(name) => edit.arrowSet('Name of the arrows', { name })}
        field="arrowSet.name"
      />
      <Choice
        name="material"
        value={arrowSet.material}
        options={plain(...ArrowSet.shape.material.options)}
        onKeep={(material) =>
          // Wood is tested over 26 in with 2 lb; a deflection that is there keeps the tester it was read on.
          edit.arrowSet(
            'Material',
            material === 'wood' && arrowSet.deflection === null ? { material, convention: '26 in, 2 lb' } : { material },
          )
        }
        field="arrowSet.material"
      />
      <Figure
        measure="arrowLength"
        name="length"
        value={arrowSet.length}
        onKeep={(length) => edit.arrowSet('Arrow length', { length })}
        hint="Throat of the nock to the end of the shaft."
        field="arrowSet.length"
      />
      <Figure
        measure="deflection"
        name="deflection"
        value={arrowSet.deflection}
        onKeep={(deflection) => edit.arrowSet('Spine deflection', { deflection })}
        read={(typed) => readSpine(typed, arrowSet.convention, units)}
        {...(arrowSet.convention === '26 in, 2 lb' ? { hint: 'The deflection, or the shaft’s pounds as in 45 lb.' } : {})}
        field="arrowSet.deflection"
      />
      <Choice
        name="measured over"
        value={arrowSet.convention}
        options={SpineConvention.options.map((value) => ({
          value,
          text: value === '28 in, 880 g' ? '28 in span, 880 g (1.94 lb)' : '26 in span, 2 lb (wood)',
        }))}
        onKeep={(convention) => edit.arrowSet('Span and load of the spine', { convention })}
        field="arrowSet.convention"
      />
      <Figure
        measure="linearDensity"
        name="shaft’s mass"
        value={arrowSet.linearDensity}
        onKeep={(linearDensity) => edit.arrowSet('Shaft mass per length', { linearDensity })}
        hint="Per length of bare shaft."
        field="arrowSet.linearDensity"
      />
      <Figure
        measure="shaftDiameter"
        name="outer diameter"
        value={arrowSet.diameter}
        onKeep={(diameter) => edit.arrowSet('Shaft diameter', { diameter })}
        field="arrowSet.diameter"
      />
      <h2>What is fitted to it</h2>
      <Figure
        measure="pointMass"
        name="point"
        value={arrowSet.pointMass}
        onKeep={(pointMass) => edit.arrowSet('Point mass', { pointMass })}
        field="arrowSet.pointMass"
      />
      <Figure
        measure="insertMass"
        name="insert"
        value={arrowSet.insertMass}
        onKeep={(insertMass) => edit.arrowSet('Insert mass', { insertMass })}
        field="arrowSet.insertMass"
      />
      <Figure
        measure="nockMass"
        name="nock"
        value={arrowSet.nockMass}
        onKeep={(nockMass) => edit.arrowSet('Nock mass', { nockMass })}
        field="arrowSet.nockMass"
      />
      <Figure
        measure="fletchingMass"
        name="fletching"
        value={arrowSet.fletchingMass}
        onKeep={(fletchingMass) => edit.arrowSet('Fletching mass', { fletchingMass })}
        hint="All the vanes or feathers of one arrow."
        field="arrowSet.fletchingMass"
      />
      <Figure
        measure="arrowMass"
        name="whole arrow"
        value={arrowSet.weighed}
        onKeep={(weighed) => edit.arrowSet('Weighed arrow', { weighed })}
        hint="On a scale, fletched. When it is there it governs the sum of the parts."
        field="arrowSet.weighed"
      />
    </>
  );
}
