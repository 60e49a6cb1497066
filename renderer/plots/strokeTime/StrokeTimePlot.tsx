import { useDeferredValue, useMemo } from 'react';
import { strokeChanges, strokeOfSetup, type StrokeChange } from '../../../core/bow/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { ok } from '../../../core/model/problem.ts';
import { showQuantity, unitOf, type Use } from '../../../core/units/index.ts';
import { Fraction } from '../../design/index.ts';
import { Exportable } from '../../export/index.ts';
import { useUnits } from '../../state/useBench.ts';
import { Lettered } from '../Lettered.tsx';
import { Note } from '../readAlong/Note.tsx';
import { ReadAlong } from '../readAlong/ReadAlong.tsx';
import { Refused } from '../readAlong/Refused.tsx';
import { sampleAt, strokeData, type StrokeData } from './data.ts';
import { strokeMarks, type StrokeMarks } from './marks.ts';
import { besideIt, headline, note, saidAt, sentence, table } from './words.ts';
import './strokeTime.css';

/** From the loose to the exit: forces, speed, and where the energy goes. Typing never waits for it; the last answer stands in grey meanwhile. */
export function StrokeTimePlot({ bundle, width }: { bundle: Bundle; width: number }) {
  const units = useUnits();
  const later = useDeferredValue(bundle);
  const result = useMemo(() => {
    const stroke = strokeOfSetup(later, units);
    if (!stroke.ok) return stroke;
    const changes = strokeChanges(later);
    return ok(strokeData(stroke.value, changes.ok ? changes.value : []));
  }, [later, units]);
  if (!result.ok) return <Refused title="The stroke" problem={result.problem} />;
  return <Drawn data={result.value} width={width} stale={later !== bundle} />;
}

function Drawn({ data, width, stale }: { data: StrokeData; width: number; stale: boolean }) {
  const units = useUnits();
  const marks = useMemo(() => strokeMarks(data, width, units), [data, width, units]);
  const words = { title: headline(data), note: note(data, units), sentence: sentence(data, units) };
  return (
    <div className={stale ? 'stroke-time computing' : 'stroke-time'} aria-busy={stale}>
      <h2 className="plate">{words.title}</h2>
      <Note>{words.note}</Note>
      <Exportable of="stroke" {...words} table={() => table(data, units)} beneath={<Beneath data={data} />}>
        <ReadAlong
          width={width}
          height={marks.height}
          sentence={words.sentence}
          name="Read the stroke at a moment"
          window={marks.window}
          x={marks.x}
          from={0}
          to={data.exit.time}
          step={0.0002}
          rest={data.exit.time}
          says={(at) => saidAt(data, at, units)}
          mark={(at) => <Moment data={data} marks={marks} at={at} />}
        >
          <Scene marks={marks} />
        </ReadAlong>
      </Exportable>
    </div>
  );
}

/** The simpler model's answer, what a change would do, and what was not measured. */
function Beneath({ data }: { data: StrokeData }) {
  const units = useUnits();
  return (
    <>
      <Note>{besideIt(data, units)}</Note>
      {data.changes.length > 0 && <Changes changes={data.changes} />}
      {data.assumed.length > 0 && (
        <>
          <h3>What was assumed</h3>
          <ul className="assumed note">
            {data.assumed.map((one) => (
              <li key={one}>
                <Fraction>{one}</Fraction>
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

function Scene({ marks }: { marks: StrokeMarks }) {
  const { window } = marks;
  return (
    <>
      {marks.energy.map(({ part, area }) => (
        <path key={part} className={`energy-part ${part}`} d={area} />
      ))}
      {marks.lanes.map((lane) => (
        <g key={lane.name}>
          {lane.up.map(({ at, label }) => (
            <g key={at}>
              <path className={at === lane.bottom ? 'axis' : 'grid'} d={`M${window.left} ${at}H${window.right}`} />
              {label !== null && <Lettered label={label} />}
            </g>
          ))}
        </g>
      ))}
      {marks.across.map(({ at, label }) => (
        <g key={at}>
          <path className="axis" d={`M${at} ${window.bottom}v4`} />
          {label !== null && <Lettered label={label} />}
        </g>
      ))}
      {marks.energy.map(({ part, edge }) => (
        <path key={part} className={part === 'arrow' ? 'curve' : 'dim-line'} d={edge} />
      ))}
      <path className="exit-line" d={`M${marks.exit} ${window.top - 16}V${window.bottom}`} />
      <path className="curve" d={marks.tension} />
      <path className="curve" d={marks.thrust} />
      <path className="curve" d={marks.speed} />
      <path className="simple-mark" d={`M${marks.simple.x} ${marks.simple.y - 5}l5 5l-5 5l-5 -5z`} />
      {marks.leaders.map((leader) => (
        <path key={leader} className="dim-line" d={leader} />
      ))}
      {marks.labels.map((label) => (
        <Lettered key={`${label.text} ${label.y}`} label={label} />
      ))}
    </>
  );
}

function Moment({ data, marks, at }: { data: StrokeData; marks: StrokeMarks; at: number }) {
  const sample = sampleAt(data.samples, at);
  if (sample === null) return null;
  const values = { thrust: [sample.thrust], tension: [sample.tension], speed: [sample.speed], energy: [sample.energy.arrow] };
  return marks.lanes.flatMap((lane) =>
    values[lane.name].map((value, i) => (
      <circle key={`${lane.name} ${i}`} className="read-dot" cx={marks.x(sample.time)} cy={lane.y(value)} r="3.4" />
    )),
  );
}

const columns: readonly { readonly key: 'speed' | 'energy' | 'time' | 'weight'; readonly use: Use }[] = [
  { key: 'speed', use: 'speed' },
  { key: 'energy', use: 'energy' },
  { key: 'time', use: 'time' },
  { key: 'weight', use: 'weight' },
];

/** What a turn of the string or an inch of draw would do, by the same model. */
function Changes({ changes }: { changes: readonly StrokeChange[] }) {
  const units = useUnits();
  // Differences line up on their tenths; a time with fixed decimals would be shown in whole seconds.
  const shown = (value: number, use: Use) =>
    showQuantity(value, use, units, use === 'time' ? { signed: true } : { signed: true, digits: 1 }).figure;
  return (
    <table className="stroke-changes">
      <thead>
        <tr>
          <th scope="col">change</th>
          {columns.map(({ key, use }) => (
            <th key={key} scope="col">
              {key}
              <span className="unit">{key === 'time' ? 'ms' : unitOf(use, units)}</span>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {changes.map((change) => (
          <tr key={change.change}>
            <th scope="row">{change.change.replace('-', '−')}</th>
            {columns.map(({ key, use }) => (
              <td key={key}>{shown(change[key], use)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
