import { useId, useMemo } from 'react';
import type { Bundle } from '../../../core/model/bundle.ts';
import { factorOf } from '../../../core/units/index.ts';
import { Exportable } from '../../export/index.ts';
import { useUnits } from '../../state/useBench.ts';
import { Lettered } from '../Lettered.tsx';
import { Note } from '../readAlong/Note.tsx';
import { ReadAlong } from '../readAlong/ReadAlong.tsx';
import { Refused } from '../readAlong/Refused.tsx';
import { speedAt, speedMassData, type SpeedMassData } from './data.ts';
import { speedMassMarks, type SpeedMassMarks } from './marks.ts';
import { beneath, headline, note, saidAt, sentence, table } from './words.ts';
import './speedMass.css';

/** How fast arrows of any mass leave this bow: what the chronograph read, the fit or estimate with its band, and where the arrow is too light. */
export function SpeedMassPlot({ bundle, width }: { bundle: Bundle; width: number }) {
  const units = useUnits();
  const result = useMemo(() => speedMassData(bundle, units), [bundle, units]);
  if (!result.ok) return <Refused title="Speed against arrow mass" problem={result.problem} />;
  return <Drawn data={result.value} width={width} />;
}

function Drawn({ data, width }: { data: SpeedMassData; width: number }) {
  const units = useUnits();
  const marks = useMemo(() => speedMassMarks(data, width, units), [data, width, units]);
  const words = { title: headline(data, units), note: note(data, units), sentence: sentence(data, units) };
  const [from, to] = marks.x.domain() as [number, number];
  return (
    <div className="speed-mass">
      <h2 className="plate">{words.title}</h2>
      <Note>{words.note}</Note>
      <Exportable
        of="speed and mass"
        {...words}
        table={() => table(data, units)}
        beneath={beneath(data).map((one) => (
          <Note key={one}>{one}</Note>
        ))}
      >
        <ReadAlong
          width={width}
          height={marks.height}
          sentence={words.sentence}
          name="Read the speed of an arrow of a mass"
          window={marks.window}
          x={marks.x}
          from={from}
          to={to}
          step={factorOf('mass', units) * { gr: 5, g: 0.25 }[units.mass]}
          rest={data.arrow.mass}
          says={(at) => saidAt(data, at, units)}
          mark={(at) => {
            const speed = speedAt(data.samples, at);
            return speed === null ? null : <circle className="read-dot" cx={marks.x(at)} cy={marks.y(speed.value)} r="4" />;
          }}
        >
          <Scene marks={marks} estimated={data.from === 'estimated'} />
        </ReadAlong>
      </Exportable>
    </div>
  );
}

/** The ends of a shorter interval would fill in its dot [px]. */
const LEAST_BAR = 14;

function Scene({ marks, estimated }: { marks: SpeedMassMarks; estimated: boolean }) {
  const hatch = useId();
  const { window, arrow, tooLight } = marks;
  return (
    <>
      {marks.up.map(({ at, label }) => (
        <g key={at}>
          <path className="grid" d={`M${window.left} ${at}H${window.right}`} />
          {label !== null && <Lettered label={label} />}
        </g>
      ))}
      {tooLight !== null && (
        <>
          <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path className="hatch" d="M0 0V6" />
          </pattern>
          <rect
            className="too-light"
            fill={`url(#${hatch})`}
            x={window.left}
            y={window.top}
            width={Math.max(0, tooLight.x - window.left)}
            height={window.bottom - window.top}
          />
          <path className="limit" d={`M${tooLight.x} ${window.top}V${window.bottom}`} />
        </>
      )}
      <path className="axis" d={`M${window.left} ${window.bottom}H${window.right}`} />
      {marks.across.map(({ at, label }) => (
        <g key={at}>
          <path className="axis" d={`M${at} ${window.bottom}v4`} />
          {label !== null && <Lettered label={label} />}
        </g>
      ))}
      <path className="plot-band" d={marks.band} />
      <path className="dim-line" d={marks.edges[0]} />
      <path className="dim-line" d={marks.edges[1]} />
      <path className={estimated ? 'curve pencil' : 'curve'} d={marks.curve} />
      {marks.dots.map((dot, i) => (
        <circle key={i} className="read-dot" cx={dot.x} cy={dot.y} r="3.4" />
      ))}
      <path className="construction" d={`M${marks.arrowX} ${window.bottom}V${arrow?.y ?? window.top}`} />
      {arrow !== null && (
        <>
          <path
            className="arrow-interval"
            d={`M${arrow.x} ${arrow.low}V${arrow.high}${arrow.low - arrow.high < LEAST_BAR ? '' : `M${arrow.x - 4} ${arrow.low}h8M${arrow.x - 4} ${arrow.high}h8`}`}
          />
          <circle className="arrow-dot" cx={arrow.x} cy={arrow.y} r="4" />
        </>
      )}
      {marks.labels.map((label) => (
        <Lettered key={label.text} label={label} halo />
      ))}
    </>
  );
}
