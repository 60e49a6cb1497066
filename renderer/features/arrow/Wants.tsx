import { memo, useMemo } from 'react';
import { dependentsStopped } from '../../../core/findings/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { Result } from '../../../core/model/problem.ts';
import { whatWouldCentre, type Move, type Suitability } from '../../../core/suitability/index.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { Fraction, Mark } from '../../design/index.ts';
import { Exportable } from '../../export/index.ts';
import { MoveArrow } from '../../plots/spine/MoveArrow.tsx';
import { SpineAxis } from '../../plots/spine/SpineAxis.tsx';
import { useUnits } from '../../state/useBench.ts';
import { useFindings } from '../frame/useFindings.ts';
import { actsText, axisOf, moveName, movesInReach, outOfReach, reachText, shaftMark, spineViews, viewsTitle } from './wants.ts';

interface Props {
  bundle: Bundle;
  answer: Result<Suitability>;
  width: number;
}

/** Whether this bow wants the shaft, and what would centre it. A stop stands in the place of both. */
export const Wants = memo(function Wants({ bundle, answer, width }: Props) {
  const stopped = dependentsStopped(useFindings());
  return (
    <section className="wants">
      <h2 className="plate">{answer.ok && !stopped ? viewsTitle(answer.value.views.length) : 'What this bow wants'}</h2>
      {stopped ? (
        <p className="note">
          <Mark level="stop" /> Not shown while a stop stands: see the findings.
        </p>
      ) : answer.ok ? (
        <Axis bundle={bundle} answer={answer.value} width={width} />
      ) : (
        <p className="note">
          <Fraction>{answer.problem.sentence}</Fraction>
        </p>
      )}
    </section>
  );
});

function Axis({ bundle, answer, width }: { bundle: Bundle; answer: Suitability; width: number }) {
  const units = useUnits();
  const found = useMemo(() => whatWouldCentre(bundle, units), [bundle, units]);
  const views = useMemo(() => spineViews(answer, units), [answer, units]);
  const shaft = useMemo(() => shaftMark(answer, units), [answer, units]);
  const moves = useMemo(() => (found.ok ? movesInReach(found.value) : []), [found]);
  const beyond = found.ok ? outOfReach(found.value) : null;
  const scale = useMemo(() => axisOf(answer, moves, width, units), [answer, moves, width, units]);
  const { rule, cycles } = answer;
  return (
    <>
      <Exportable
        of="spine"
        title={viewsTitle(views.length)}
        note={bundle.setup.name}
        sentence={`${shaft.text}. ${views.map((view) => `${view.name}: ${view.says}.`).join(' ')}`}
      >
        <SpineAxis views={views} shaft={shaft} scale={scale} />
        {answer.why !== null && (
          <p className="note" data-export-text="">
            {answer.why}
          </p>
        )}
        {moves.length > 0 && (
          <>
            <h3 className="wants-moves-title" data-export-text="">
              {answer.verdict === 'in range' ? 'In range: nothing has to change. What would centre it' : 'What would centre it'}
            </h3>
            <ul className="wants-moves">
              {moves.map((move) => (
                <MoveRow key={`${move.what} ${move.to}`} move={move} from={shaft.value} scale={scale} />
              ))}
            </ul>
            {beyond !== null && (
              <p className="note faint" data-export-text="">
                {beyond}
              </p>
            )}
          </>
        )}
      </Exportable>
      {!found.ok && found.problem.sentence !== answer.why && (
        <p className="note">
          <Fraction>{found.problem.sentence}</Fraction>
        </p>
      )}
      {!rule.applies && <p className="note faint">{rule.why}</p>}
      <p className="note faint">
        {cycles.applies
          ? `The bends while the string drives it are reckoned with a virtual mass of ${textQuantity(cycles.virtualMass, 'mass', units)} (limbs and string, counted as if so much rode along with the arrow): a figure without a verdict. Ordinary set-ups lie near 0.9, not checked against a source.`
          : cycles.why}
      </p>
    </>
  );
}

function MoveRow({ move, from, scale }: { move: Move; from: number; scale: ReturnType<typeof axisOf> }) {
  const units = useUnits();
  return (
    <li>
      <MoveArrow
        name={moveName(move, units)}
        from={from}
        actsLike={move.actsLike}
        acts={actsText(move, units)}
        ends={reachText(move)}
        stopped={move.stopped !== null}
        scale={scale}
      />
      {move.stopped !== null && (
        <p className="note caution-text" data-export-text="">
          <Fraction>{move.stopped}</Fraction>
        </p>
      )}
      {move.stopped === null && move.cost !== '' && (
        <p className="note" data-export-text="">
          <Fraction>{move.cost}</Fraction>
        </p>
      )}
    </li>
  );
}
