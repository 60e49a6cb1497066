import type { Cause } from '../../../core/trials/index.ts';
import { Fraction } from '../../design/index.ts';

/** What may lie behind a reading, each with what speaks for it and what against. */
export function Causes({ causes }: { causes: readonly Cause[] }) {
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
