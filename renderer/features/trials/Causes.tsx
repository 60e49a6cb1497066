import type { Cause } from '../../../core/trials/index.ts';
import { Fraction } from '../../design/index.ts';

/** What may lie behind a reading, each with what speaks for it and what against; those of which nothing is known share a line. */
export function Causes({ causes }: { causes: readonly Cause[] }) {
  const told = causes.filter(({ evidenceFor, evidenceAgainst }) => evidenceFor.length + evidenceAgainst.length > 0);
  const untold = causes.filter((cause) => !told.includes(cause));
  return (
    <>
      {told.length > 0 && <Table causes={told} />}
      {untold.length > 0 && (
        <p className="note">
          {told.length > 0
            ? 'It may also be, with nothing for or against it known here: '
            : 'What may lie behind it, with nothing for or against it known here: '}
          <Fraction>{untold.map(({ cause }) => lowered(cause)).join('; ')}</Fraction>.
        </p>
      )}
    </>
  );
}

const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

function Table({ causes }: { causes: readonly Cause[] }) {
  return (
    <table className="table causes">
      <thead>
        <tr>
          <th scope="col">what may lie behind it</th>
          <th scope="col">for</th>
          <th scope="col">against</th>
        </tr>
      </thead>
      <tbody>
        {causes.map(({ cause, evidenceFor, evidenceAgainst }) => (
          <tr key={cause}>
            <th scope="row">
              <Fraction>{cause}</Fraction>
            </th>
            <td>
              <Lines lines={evidenceFor} />
            </td>
            <td>
              <Lines lines={evidenceAgainst} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Lines({ lines }: { lines: readonly string[] }) {
  if (lines.length === 0) return <span className="faint">–</span>;
  return (
    <>
      {lines.map((line) => (
        <span key={line} className="cause-line">
          <Fraction>{line}</Fraction>
        </span>
      ))}
    </>
  );
}
