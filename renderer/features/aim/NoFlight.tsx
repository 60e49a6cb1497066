import { arrowMass } from '../../../core/arrow/index.ts';
import { braceHeightRange } from '../../../core/bow/index.ts';
import { fieldOf } from '../../../core/findings/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { Problem } from '../../../core/model/problem.ts';
import { Figure } from '../../design/index.ts';
import { readAt } from '../../state/births.ts';
import { useEdits } from '../../state/useEdits.ts';
import { GoLink } from './GoLink.tsx';
import { noFlight } from './noFlight.ts';

/** Every figure that would make a flight, in the order in which they are read; as soon as they suffice the flight stands here. */
export function NoFlight({ bundle, problem }: { bundle: Bundle; problem: Problem }) {
  const edit = useEdits();
  const { archer, bow, arrowSet, setup } = bundle;
  const { settings } = setup;
  const { title, amiss, estimates } = noFlight(bundle, problem);
  const built = arrowMass(arrowSet);
  const brace = braceHeightRange(bow);
  return (
    <>
      <div className="head">
        <h1>{title}</h1>
        <p>
          {amiss !== null && (
            <>
              {amiss} <GoLink to={fieldOf(problem.field, ['bow', 'settings.weightOnFingers'])}>Look</GoLink>{' '}
            </>
          )}
          It comes up here as soon as the figures suffice.
        </p>
      </div>
      <div className="body">
        <div className="form aim-begin">
          <h2>The arrow, and how fast it leaves</h2>
          <Figure
            measure="arrowMass"
            name="whole arrow"
            value={arrowSet.weighed}
            assumed={built.ok && built.value.from === 'parts' ? built.value.mass : undefined}
            onKeep={(weighed) => edit.arrowSet('Weighed arrow', { weighed })}
            hint="On a scale, fletched and with its point."
            field="arrowSet.weighed"
          />
          <Figure
            measure="arrowSpeed"
            name="measured arrow speed"
            value={settings.arrowSpeed}
            onKeep={(arrowSpeed) => edit.settings('Arrow speed', { arrowSpeed })}
            hint={
              estimates
                ? 'From a chronograph, if there is one.'
                : 'From a chronograph: what a compound’s cams do is not estimated.'
            }
            field="settings.arrowSpeed"
          />
          {estimates && (
            <>
              <h2>Without a chronograph: the bow estimates the speed</h2>
              <Figure
                measure="weightOnFingers"
                name="weight on the fingers"
                value={settings.weightOnFingers}
                onKeep={(weight) => edit.settings('Weight on the fingers', readAt(weight, archer))}
                hint="Read on a bow scale at this archer’s full draw, with an arrow nocked and the string let down slowly."
                field="settings.weightOnFingers"
              />
              <Figure
                measure="drawLength"
                name="draw length"
                value={archer.drawLength}
                onKeep={(drawLength) => edit.drawLength(drawLength)}
                hint="AMO: nocking point to the pivot of the grip at full draw, plus 1 3/4 in."
                field="archer.drawLength"
              />
              <Figure
                measure="braceHeight"
                name="brace height"
                value={settings.braceHeight}
                assumed={brace === null ? undefined : (brace.low + brace.high) / 2}
                onKeep={(braceHeight) => edit.settings('Brace height', { braceHeight })}
                hint="String to the deepest point of the grip, square to the string."
                field="settings.braceHeight"
              />
            </>
          )}
        </div>
      </div>
    </>
  );
}
