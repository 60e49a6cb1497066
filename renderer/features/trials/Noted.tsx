import type { Trial } from '../../../core/model/trial.ts';
import type { TrialRow } from '../../../core/trials/index.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { useBenchApi, useUnits } from '../../state/useBench.ts';
import { tearsOf } from './derive.ts';
import { dropClearance, dropTear } from './edits.ts';
import { touchedText, turnText } from './touched.ts';
import { tearText } from './words.ts';

/** The tears at the distance of the row in hand, each of which can be taken back. */
export function NotedTears({ trial, row }: { trial: Trial; row: TrialRow }) {
  const bench = useBenchApi();
  const units = useUnits();
  return (
    <ol className="noted">
      {tearsOf(trial.tears, row).map(({ tear, index }, i) => (
        <li key={index} className={row.done && i === row.end - 1 ? 'in-hand' : undefined}>
          <span>{tearText(tear, units)}</span>
          <button type="button" className="link" onClick={() => void dropTear(bench, trial.id, index)}>
            Take back
            <span className="heard">{`: tear ${i + 1} at ${textQuantity(tear.distance, 'distance', units)}`}</span>
          </button>
        </li>
      ))}
    </ol>
  );
}

/** What the powder showed, shot by shot. */
export function NotedTouches({ trial }: { trial: Trial }) {
  const bench = useBenchApi();
  return (
    <ol className="noted">
      {trial.clearance.map((shot, i) => (
        <li key={i}>
          <span>
            {touchedText(shot.touched)}
            {shot.nockTurn !== 0 && `, nock turned ${turnText(shot.nockTurn)}`}
          </span>
          <button type="button" className="link" onClick={() => void dropClearance(bench, trial.id, i)}>
            Take back<span className="heard">{`: shot ${i + 1}`}</span>
          </button>
        </li>
      ))}
    </ol>
  );
}
