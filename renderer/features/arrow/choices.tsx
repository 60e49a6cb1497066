import { ArrowSet, SpineConvention } from '../../../core/model/arrowSet.ts';
import { Choice, plain } from '../../design/index.ts';
import { useEdits } from '../../state/useEdits.ts';

/** What the shaft is made of. */
export function Material({ arrowSet }: { arrowSet: ArrowSet }) {
  const edit = useEdits();
  return (
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
  );
}

/** The tester that the deflection was read on. */
export function Convention({ arrowSet }: { arrowSet: ArrowSet }) {
  const edit = useEdits();
  return (
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
  );
}
