import type { Finding } from '../../../core/findings/finding.ts';
import { Fraction, Mark } from '../../design/index.ts';
import type { Bench } from '../../state/bench.ts';
import { useBenchApi } from '../../state/useBench.ts';
import { answer } from '../frame/goTo.ts';

/** A stop stands where the flight would: nobody is told where to aim an arrow that must not be drawn. */
export function Stopped({ stops }: { stops: readonly Finding[] }) {
  const bench = useBenchApi();
  const [first, ...others] = stops;
  if (first === undefined) return null;
  return (
    <>
      <div className="head">
        <h1>
          <Mark level="stop" /> <Fraction>{first.title}</Fraction>
        </h1>
        <p>
          <Sentence stop={first} bench={bench} />
        </p>
      </div>
      <div className="body">
        {others.map((stop) => (
          <section key={stop.id} className="aim-stop">
            <h2>
              <Mark level="stop" /> <Fraction>{stop.title}</Fraction>
            </h2>
            <p>
              <Sentence stop={stop} bench={bench} />
            </p>
          </section>
        ))}
        <p className="aim-wait">
          The flight and the points of aim are not shown until {others.length === 0 ? 'this is' : 'these are'} answered.
        </p>
      </div>
    </>
  );
}

function Sentence({ stop: { detail, action }, bench }: { stop: Finding; bench: Bench }) {
  return (
    <>
      <Fraction>{detail}</Fraction>{' '}
      {action !== null && (
        <button type="button" className="link" onClick={() => answer(bench, action)}>
          {action.label}
        </button>
      )}
    </>
  );
}
