import { useMemo } from 'react';
import type { BareFletchedAt } from '../../../core/aim/index.ts';
import { factorOf } from '../../../core/units/index.ts';
import { useUnits } from '../../state/useBench.ts';
import { Lettered } from '../Lettered.tsx';
import { ReadAlong } from '../readAlong/ReadAlong.tsx';
import type { Said } from '../readAlong/words.ts';
import { arrows, noseMarks, type NoseMarks } from './marks.ts';
import './noseAngle.css';

interface Props {
  samples: readonly BareFletchedAt[];
  width: number;
  /** The whole picture in a sentence. */
  sentence: string;
  /** Where the keys begin [m]. */
  rest: number;
  says(distance: number): Said;
  at(distance: number): BareFletchedAt | null;
}

/** How the nose of a bare and of a fletched arrow comes back to its path, and how far aside both get meanwhile. */
export function NoseAngle({ samples, width, sentence, rest, says, at }: Props) {
  const units = useUnits();
  const marks = useMemo(() => noseMarks(samples, width, units), [samples, width, units]);
  const [from, to] = marks.x.domain() as [number, number];
  return (
    <ReadAlong
      width={width}
      height={marks.height}
      sentence={sentence}
      name="Read the nose at a distance"
      window={marks.window}
      x={marks.x}
      from={from}
      to={to}
      step={factorOf('distance', units)}
      rest={rest}
      says={says}
      mark={(distance) => <Dots marks={marks} there={at(distance)} />}
    >
      <Scene marks={marks} />
    </ReadAlong>
  );
}

function Scene({ marks }: { marks: NoseMarks }) {
  const { window } = marks;
  return (
    <>
      {marks.lanes.map((lane) => (
        <g key={lane.quantity}>
          {lane.up.map((tick) => (
            <g key={tick.at}>
              <path className="grid" d={`M${window.left} ${tick.at}H${window.right}`} />
              {tick.label !== null && <Lettered label={tick.label} />}
            </g>
          ))}
          {lane.lines.map(({ arrow, band }) => (
            <path key={arrow} className={`nose-band ${arrow}`} d={band} />
          ))}
          <path className="nose-zero" d={`M${window.left} ${lane.y(0)}H${window.right}`} />
          {lane.lines.map(({ arrow, edges, curve }) => (
            <g key={arrow}>
              {edges.map((edge, i) => (
                <path key={i} className={`nose-edge ${arrow}`} d={edge} />
              ))}
              <path className={`curve nose-line ${arrow}`} d={curve} />
            </g>
          ))}
        </g>
      ))}
      <path className="axis" d={`M${window.left} ${window.bottom}H${window.right}`} />
      {marks.across.map((tick) => (
        <g key={tick.at}>
          <path className="axis" d={`M${tick.at} ${window.bottom}v4`} />
          {tick.label !== null && <Lettered label={tick.label} />}
        </g>
      ))}
      {marks.leaders.map((leader) => (
        <path key={leader} className="dim-line" d={leader} />
      ))}
      {marks.labels.map((one) => (
        <Lettered key={`${one.text} ${one.y}`} label={one} />
      ))}
    </>
  );
}

function Dots({ marks, there }: { marks: NoseMarks; there: BareFletchedAt | null }) {
  if (there === null) return null;
  return marks.lanes.flatMap((lane) =>
    arrows.map((arrow) => (
      <circle
        key={`${lane.quantity} ${arrow}`}
        className="read-dot"
        cx={marks.x(there.distance)}
        cy={lane.y(there[arrow][lane.quantity].value)}
        r="3.4"
      />
    )),
  );
}
