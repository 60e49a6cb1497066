import { memo, useMemo } from 'react';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { factorOf, unitOf } from '../../../core/units/index.ts';
import { Fraction } from '../../design/index.ts';
import { Exportable, type CsvTable } from '../../export/index.ts';
import { useUnits } from '../../state/useBench.ts';
import { Lettered } from '../Lettered.tsx';
import { Note } from '../readAlong/Note.tsx';
import { ReadAlong } from '../readAlong/ReadAlong.tsx';
import { Refused } from '../readAlong/Refused.tsx';
import { forceDrawDataOf, type ForceDrawData } from './data.ts';
import { forceAt, forceDrawMarks, type ForceDrawMarks } from './marks.ts';
import { headline, note, saidAt, sentence } from './words.ts';
import './forceDraw.css';

/** Force against draw, with the stored energy under it: what a bow scale reads, or what the bow's kind lets expect. */
export const ForceDrawPlot = memo(function ForceDrawPlot({ bundle, width }: { bundle: Bundle; width: number }) {
  const units = useUnits();
  const result = useMemo(() => forceDrawDataOf(bundle, units), [bundle, units]);
  return result.ok ? (
    <Drawn data={result.value} width={width} />
  ) : (
    <Refused title="Force against draw" problem={result.problem} />
  );
});

function Drawn({ data, width }: { data: ForceDrawData; width: number }) {
  const units = useUnits();
  const marks = useMemo(() => forceDrawMarks(data, width, units), [data, width, units]);
  const words = { title: headline(data, units), note: note(data, units), sentence: sentence(data, units) };
  const remarks = [
    ...data.readings.flatMap(({ flagged }, i) => (flagged === null ? [] : [`Row ${i + 1}: ${flagged}`])),
    ...data.notes,
  ];
  return (
    <div className="force-draw">
      <h2 className="plate">
        <Fraction>{words.title}</Fraction>
      </h2>
      <Note>{words.note}</Note>
      <Exportable
        of="force and draw"
        {...words}
        table={() => table(data, units)}
        beneath={
          remarks.length > 0 && (
            <ul className="remarks note">
              {remarks.slice(0, MOST_REMARKS).map((remark, i) => (
                <li key={i}>
                  <Fraction>{remark}</Fraction>
                </li>
              ))}
              {remarks.length > MOST_REMARKS && <li>and {remarks.length - MOST_REMARKS} more, in the table of readings</li>}
            </ul>
          )
        }
      >
        <ReadAlong
          width={width}
          height={marks.height}
          sentence={words.sentence}
          name="Read the force at a draw"
          window={marks.window}
          x={marks.x}
          from={data.brace}
          to={data.samples.at(-1)?.draw ?? data.full}
          step={factorOf('length', units) * { in: 0.25, cm: 0.5, mm: 5 }[units.length]}
          rest={data.full}
          says={(at) => saidAt(data, at, units)}
          mark={(at) => <circle className="read-dot" cx={marks.x(at)} cy={marks.y(forceAt(data.samples, at))} r="4" />}
        >
          <Scene marks={marks} estimated={data.from !== 'readings'} />
        </ReadAlong>
      </Exportable>
    </div>
  );
}

/** The sheet says all of them beside their rows; here they must not push the details off the page. */
const MOST_REMARKS = 2;

function Scene({ marks, estimated }: { marks: ForceDrawMarks; estimated: boolean }) {
  const { window, band, full, stacks } = marks;
  return (
    <>
      <path className={marks.lost === null ? 'stored' : 'stored back'} d={marks.energy} />
      {marks.lost !== null && <path className="lost" d={marks.lost} />}
      {marks.up.map(({ at, label }) => (
        <g key={at}>
          {at < window.bottom && <path className="grid" d={`M${window.left} ${at}H${window.right}`} />}
          {label !== null && <Lettered label={label} />}
        </g>
      ))}
      <path className="axis" d={`M${window.left} ${window.bottom}H${window.right}`} />
      {marks.across.map(({ at, label }) => (
        <g key={at}>
          <path className="axis" d={`M${at} ${window.bottom}v4`} />
          {label !== null && <Lettered label={label} />}
        </g>
      ))}
      {band !== null && (
        <>
          <path className="plot-band" d={band.area} />
          <path className="dim-line" d={band.edges[0]} />
          <path className="dim-line" d={band.edges[1]} />
        </>
      )}
      <path className="construction" d={`M${full.x} ${window.bottom}V${full.y}`} />
      <path className="past-draw" d={marks.beyond} />
      {marks.letDown !== null && <path className="let-down" d={marks.letDown} />}
      <path className={estimated ? 'curve pencil' : 'curve'} d={marks.curve} />
      {stacks !== null && <path className="stack-mark" d={`M${stacks.x} ${stacks.y - 9}v18`} />}
      {marks.dots.map((dot, i) => (
        <g key={i}>
          {dot.why !== null && <title>{dot.why}</title>}
          {dot.kind === 'flagged' ? (
            <path className="flagged" d={`M${dot.x} ${dot.y - 5.5}l5.2 9h-10.4z`} />
          ) : (
            <circle className={dot.kind === 'drawn' ? 'read-dot' : 'read-dot back'} cx={dot.x} cy={dot.y} r="3.4" />
          )}
        </g>
      ))}
      {marks.labels.map((label) => (
        <Lettered key={label.text} label={label} />
      ))}
    </>
  );
}

/** What was read, then the curve through it, in the shown units. */
function table(data: ForceDrawData, units: UnitChoice): CsvTable {
  const [perLength, perWeight] = [factorOf('length', units), factorOf('weight', units)];
  const draw = (si: number) => Number((si / perLength).toFixed(3));
  const force = (si: number) => Number((si / perWeight).toFixed(3));
  const weight = unitOf('weight', units);
  return {
    columns: [
      'what',
      `draw, AMO (${unitOf('length', units)})`,
      `force (${weight})`,
      `low (${weight})`,
      `high (${weight})`,
      'remark',
    ],
    rows: [
      ...data.readings.map((reading) => [
        reading.way === 'draw' ? 'read, drawing' : 'read, letting down',
        draw(reading.draw),
        force(reading.force),
        null,
        null,
        reading.flagged,
      ]),
      ...data.samples.map((sample) => [
        'curve',
        draw(sample.draw),
        force(sample.value),
        force(sample.low),
        force(sample.high),
        null,
      ]),
    ],
  };
}
