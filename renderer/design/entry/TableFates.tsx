import { useEffect, useRef } from 'react';
import { tableTold, type TableRead } from '../../../core/tables/index.ts';

/** What became of each line that was pasted or read from a file. */
export function TableFates({ read }: { read: TableRead | null }) {
  const told = useRef<HTMLDivElement>(null);
  // A long table pushes them below the sheet's edge, and a line left out is not to be missed.
  useEffect(() => {
    told.current?.scrollIntoView({ block: 'nearest' });
  }, [read]);
  if (read === null) return null;
  return (
    <div role="status" className="entry-told" ref={told}>
      <p className={read.leftOut > 0 || read.tooMany !== null ? 'caution-text' : 'note'}>{tableTold(read)}</p>
      {read.rows.length > 0 && (
        <div className="entry-fates" role="region" aria-label="What became of each line" tabIndex={0}>
          <table>
            <tbody>
              {read.rows.map(({ line, text, fate, why }) => (
                <tr key={line}>
                  <th scope="row" className="line">
                    {line}
                  </th>
                  <td>{fate === 'header' ? 'heads' : fate}</td>
                  <td className="text">{text}</td>
                  <td className={fate === 'left out' ? 'caution-text' : undefined}>{why}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </div>
  );
}
