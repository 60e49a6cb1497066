import { memo } from 'react';
import { dependentsStopped } from '../../../core/findings/index.ts';
import type { Finding } from '../../../core/findings/finding.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { Fraction, Mark } from '../../design/index.ts';
import { SpeedMassPlot } from '../../plots/speedMass/SpeedMassPlot.tsx';
import { StrokeTimePlot } from '../../plots/strokeTime/StrokeTimePlot.tsx';

interface Props {
  bundle: Bundle;
  findings: readonly Finding[];
  width: number;
}

/** What the arrow gets from the bow. Nothing is told of a loose that a stop forbids; of too light an arrow the plot itself says what it must weigh. */
export const Curves = memo(function Curves({ bundle, findings, width }: Props) {
  const stops = dependentsStopped(findings) ? findings.filter(({ id, level }) => level === 'stop' && id !== 'braceHeight') : [];
  const [worst] = stops;
  const other = stops.find(({ id }) => id !== 'arrowMass');
  return (
    <div className="bow-curves">
      {worst === undefined ? <StrokeTimePlot bundle={bundle} width={width} /> : <Stopped title="The stroke" stop={worst} />}
      {other === undefined ? (
        <SpeedMassPlot bundle={bundle} width={width} />
      ) : (
        <Stopped title="Speed against arrow mass" stop={other} />
      )}
    </div>
  );
});

function Stopped({ title, stop }: { title: string; stop: Finding }) {
  return (
    <div className="plot-refused">
      <h2 className="plate">{title}</h2>
      <p className="note">
        <Mark level="stop" /> <Fraction>{`Not shown while this stop stands: ${stop.title}.`}</Fraction>
      </p>
    </div>
  );
}
