import type { CompareRow } from '../../../core/compare/index.ts';
import type { ShotBundle } from '../../../core/model/bundle.ts';
import { DifferenceBar } from '../../plots/difference/DifferenceBar.tsx';
import { SetupKey } from '../../plots/SetupMark.tsx';
import { Fraction } from '../../design/index.ts';
import { useUnits } from '../../state/useBench.ts';
import type { Other } from './choices.ts';
import { chooseOther } from './store.ts';
import { rowText, sectionsOf } from './rowText.ts';

interface Props {
  rows: readonly CompareRow[];
  reference: ShotBundle;
  other: ShotBundle;
  which: Other;
  others: readonly Other[];
  stopped: readonly boolean[];
}

/** The reference's figures, the other's, and the difference with the noise behind it. */
export function CompareTable({ rows, reference, other, which, others, stopped }: Props) {
  const units = useUnits();
  return (
    <table className="compare-table">
      <thead>
        <tr>
          <th scope="col" colSpan={3} className="compare-name reference">
            <SetupKey setup={0} />
            <span>{reference.setup.name}</span>
            <small className="name">{reference.arrowSet.name}</small>
          </th>
          <th scope="col" colSpan={3} className="compare-name other">
            <SetupKey setup={1} />
            <select
              className="choice"
              aria-label="compare with"
              data-field="compare.other"
              value={which.id}
              onChange={(event) => chooseOther(reference.setup.id, event.currentTarget.value)}
            >
              {others.map((one) => (
                <option key={one.id} value={one.id}>
                  {one.kind === 'snapshot' ? `Snapshot: ${one.name}` : one.name}
                </option>
              ))}
            </select>
            <small className="name">{other.arrowSet.name}</small>
          </th>
        </tr>
      </thead>
      {sectionsOf(rows).map(({ section, rows: within }) => (
        <tbody key={section}>
          <tr className="compare-section">
            <th colSpan={6} scope="rowgroup" className="name">
              {section}
            </th>
          </tr>
          {within.map((row) => {
            const text = rowText(row, units, stopped);
            return (
              <tr key={row.key} className={`is-${row.verdict}`}>
                <th scope="row">
                  {row.name} {text.note !== '' && <small>{text.note}</small>}
                </th>
                <td className="unit">{text.unit}</td>
                <td className="figure-cell">
                  <Fraction>{text.reference}</Fraction>
                </td>
                <td className={row.verdict === 'real' ? 'figure-cell other' : 'figure-cell other noise'}>
                  <Fraction>{text.other}</Fraction>
                </td>
                {text.would === null ? (
                  <>
                    <td className="bar-cell">
                      {row.difference !== null && row.noise !== null && (
                        <DifferenceBar difference={row.difference} noise={row.noise} real={row.verdict === 'real'} />
                      )}
                    </td>
                    <td className={row.verdict === 'real' ? 'difference-cell' : 'difference-cell noise'}>
                      <Fraction>{text.difference}</Fraction>
                    </td>
                  </>
                ) : (
                  <td colSpan={2} className="would-cell">
                    <Fraction>{text.would}</Fraction>
                  </td>
                )}
              </tr>
            );
          })}
        </tbody>
      ))}
    </table>
  );
}
