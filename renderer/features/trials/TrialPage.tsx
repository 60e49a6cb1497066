import { useMemo } from 'react';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { Trial } from '../../../core/model/trial.ts';
import { brief, readTrial, sheet, type TrialReading, type TrialSheet } from '../../../core/trials/index.ts';
import { Fraction, Mark, useSize } from '../../design/index.ts';
import { now } from '../../state/clock.ts';
import { useBench, useBenchApi, useUnits } from '../../state/useBench.ts';
import { answer } from '../frame/goTo.ts';
import { wasChanged } from './changed.ts';
import { ChangePart } from './ChangePart.tsx';
import { shotText, trialInput } from './derive.ts';
import { headOf } from './headOf.ts';
import { Part } from './Part.tsx';
import { PlanPart } from './PlanPart.tsx';
import { planText } from './planText.ts';
import { ReadPart } from './ReadPart.tsx';
import { ShootPart } from './ShootPart.tsx';
import { soFar } from './standing.ts';
import { useTrialPlace, type PartName } from './store.ts';

/** One trial as a numbered page: plan, shoot, read, change. The part that the trial has come to is open, the others are a line each. */
export function TrialPage({ bundle, trial }: { bundle: Bundle; trial: Trial }) {
  const units = useUnits();
  const bench = useBenchApi();
  const records = useBench((state) => state.records);
  const place = useTrialPlace(trial.id);
  const [body, room] = useSize();
  const input = useMemo(() => trialInput(records, bundle, trial, units, now()), [records, bundle, trial, units]);
  const told = useMemo(() => brief(input), [input]);
  const rows = useMemo(() => sheet(input), [input]);
  const reading = useMemo(() => readTrial(input), [input]);
  const [stop] = told.stops;
  const head = headOf(trial, told, rows, reading);
  const changed = wasChanged(trial, reading);
  const open = place.part ?? reached(trial, rows.next, changed);
  const shared = { input, trial, told, rows, reading };
  const part = (name: PartName) => ({ trialId: trial.id, name, open: open === name });

  return (
    <>
      <div className="head trial-head">
        <h1>
          <Fraction>{head.headline}</Fraction>
        </h1>
        <p>
          <Fraction>{head.subline}</Fraction>
        </p>
        {stop !== undefined && (
          <p className="trial-stop">
            <Mark level="stop" /> <Fraction>{stoppedText(head.headline, stop.title, rows)}</Fraction>{' '}
            {stop.action !== null && (
              <button type="button" className="link" onClick={() => stop.action !== null && answer(bench, stop.action)}>
                {stop.action.label}
              </button>
            )}
          </p>
        )}
      </div>
      <div className="body trial-body" ref={body}>
        <Part {...part('plan')} number={1} title="Plan" line={`${planText(trial, units)}: ${told.arrows} arrows`}>
          <PlanPart {...shared} />
        </Part>
        <Part
          {...part('shoot')}
          number={2}
          title="Shoot"
          line={changed ? `${shotText(rows)}; closed since the change was noted` : shotText(rows)}
        >
          {room !== null && <ShootPart {...shared} width={room.width} height={room.height} />}
        </Part>
        <Part
          {...part('read')}
          number={3}
          title="Read"
          line={soFar(trial, rows, reading) ? `so far: ${reading.headline}` : reading.headline}
        >
          <ReadPart {...shared} />
        </Part>
        <Part
          {...part('change')}
          number={4}
          title="Change"
          line={soFar(trial, rows, reading) ? 'once the plan is shot' : changeLine(trial, reading)}
        >
          <ChangePart {...shared} bundle={bundle} />
        </Part>
      </div>
    </>
  );
}

/** A headline that names the stop is not said again. */
const stoppedText = (headline: string, title: string, { rows }: TrialSheet): string =>
  `${headline.toLowerCase().includes(title.toLowerCase()) ? '' : `${title}. `}${rows.some(({ shot }) => shot > 0) ? 'What was shot may be noted; no' : 'No'} arrow is shot until this is mended.`;

function reached(trial: Trial, next: string | null, changed: boolean): PartName {
  if (trial.ended !== null || changed) return 'change';
  if (trial.cautionsRead === null) return 'plan';
  return next === null ? 'read' : 'shoot';
}

function changeLine(trial: Trial, reading: TrialReading): string {
  const { changes, ended } = trial;
  const next = reading.next.title;
  const done = wasChanged(trial, reading) ? `noted: ${changes.at(-1)?.title ?? ''}` : '';
  if (ended !== null) return done === '' ? 'ended' : `ended; ${done}`;
  return done === '' ? next : done;
}
