import { useMemo } from 'react';
import { dependentsStopped } from '../../../core/findings/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { factorOf, textQuantity, unitOf } from '../../../core/units/index.ts';
import { Fraction, Mark, useSize } from '../../design/index.ts';
import { SpineAxis } from '../../plots/spine/SpineAxis.tsx';
import { useUnits } from '../../state/useBench.ts';
import { useFindings } from '../frame/useFindings.ts';
import { reckonedFigures, spineViews, suitabilityOf } from './derive.ts';

/** What follows from the parts, and whether this bow wants the shaft. A stop stands in the place of the verdict. */
export function Reckoned({ bundle }: { bundle: Bundle }) {
  const units = useUnits();
  const [place, room] = useSize();
  const findings = useFindings();
  const stopped = dependentsStopped(findings);
  const figures = useMemo(() => reckonedFigures(bundle, units), [bundle, units]);
  const answer = useMemo(() => suitabilityOf(bundle), [bundle]);
  const views = useMemo(() => (answer.ok ? spineViews(answer.value) : []), [answer]);
  return (
    <div className="reckoned-side" ref={place}>
      <h2 className="plate">What follows from it</h2>
      <table className="table">
        <tbody>
          {figures.map((figure) => (
            <tr key={figure.name}>
              <th scope="row">{figure.name}</th>
              <td>
                <b>
                  <Fraction>{figure.text}</Fraction>
                </b>
              </td>
              <td className="reckoned-note">
                <Fraction>{figure.note}</Fraction>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <h2 className="plate spine-plate">What this bow wants</h2>
      {stopped ? (
        <p className="note">
          <Mark level="stop" /> Not shown while a stop stands: see the findings.
        </p>
      ) : !answer.ok ? (
        <p className="note">
          <Fraction>{answer.problem.sentence}</Fraction>
        </p>
      ) : (
        <>
          {room !== null && (
            <SpineAxis
              views={views}
              measured={answer.value.margin.measured}
              measuredText={`this shaft, ${textQuantity(answer.value.margin.measured, 'deflection', units)}`}
              width={room.width}
              perUnit={factorOf('deflection', units)}
              unit={unitOf('deflection', units)}
            />
          )}
          {answer.value.why !== null && <p className="note">{answer.value.why}</p>}
          {!answer.value.rule.applies && <p className="note faint">{answer.value.rule.why}</p>}
          {answer.value.cycles.applies ? (
            <p className="note faint">
              It bends {answer.value.cycles.figure.toFixed(2)} times while the string drives it, reckoned with a virtual mass of{' '}
              {textQuantity(answer.value.cycles.virtualMass, 'mass', units)} (limbs and string, counted as if so much rode along
              with the arrow): a figure without a verdict. Ordinary set-ups lie near 0.9, not checked against a source.
            </p>
          ) : (
            <p className="note faint">{answer.value.cycles.why}</p>
          )}
        </>
      )}
    </div>
  );
}
