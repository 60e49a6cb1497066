import { useEffect, useRef, useState } from 'react';
import { tableTold, type TableRead } from '../../../core/tables/index.ts';
import { wholeCount } from '../../../core/units/index.ts';

/** Lines that are shown at once: a page of many thousands would take its time [count]. */
const PAGE = 300;

interface Props {
  read: TableRead | null;
  /** What a taken line came to; null where there is nothing to say. Without it the lines stand as they were written. */
  understood?: (line: number) => string | null;
}

/** What became of each line that was pasted or read from a file. */
export function TableFates({ read, understood }: Props) {
  const told = useRef<HTMLDivElement>(null);
  // A long table pushes them below the sheet's edge, and a line left out is not to be missed.
  useEffect(() => {
    told.current?.scrollIntoView({ block: 'nearest' });
  }, [read]);
  if (read === null) return null;
  return (
    <div role="status" className="entry-told" ref={told}>
      <p className={read.leftOut > 0 || read.tooMany !== null ? 'caution-text' : 'note'}>{tableTold(read)}</p>
      {read.rows.length > 0 && <Lines rows={read.rows} {...(understood === undefined ? {} : { understood })} />}
    </div>
  );
}

/** A long table is shown page by page, or only those of its lines of which there is something to say. */
function Lines({ rows, understood }: { rows: TableRead['rows'] } & Pick<Props, 'understood'>) {
  const [asked, setAsked] = useState({ page: 0, only: false });
  const long = rows.length > PAGE;
  const chosen = long && asked.only ? rows.filter(({ fate, why }) => fate !== 'taken' || why !== null) : rows;
  const pages = Math.max(1, Math.ceil(chosen.length / PAGE));
  // Another table may have fewer pages.
  const page = Math.min(asked.page, pages - 1);
  const shown = chosen.slice(page * PAGE, (page + 1) * PAGE);
  return (
    <>
      {long && (
        <div className="acts">
          <button type="button" className="link" onClick={() => setAsked({ page: 0, only: !asked.only })}>
            {asked.only ? 'All lines' : 'Only lines left out or remarked on'}
          </button>
          <span className="note">
            {chosen.length === 0
              ? 'None'
              : `${wholeCount(page * PAGE + 1)} to ${wholeCount(page * PAGE + shown.length)} of ${wholeCount(chosen.length)}`}
          </span>
          <button type="button" className="link" disabled={page === 0} onClick={() => setAsked({ ...asked, page: page - 1 })}>
            Earlier lines
          </button>
          <button
            type="button"
            className="link"
            disabled={page >= pages - 1}
            onClick={() => setAsked({ ...asked, page: page + 1 })}
          >
            Later lines
          </button>
        </div>
      )}
      <div className="entry-fates" role="region" aria-label="What became of each line" tabIndex={0}>
        <table>
          <tbody>
            {shown.map(({ line, text, fate, why }) => (
              <tr key={line}>
                <th scope="row" className="line">
                  {line}
                </th>
                <td className="fate">{fate === 'header' ? 'heads' : fate}</td>
                <td className="text">{text}</td>
                {understood !== undefined && <td className="text">{fate === 'taken' ? understood(line) : null}</td>}
                <td className={fate === 'left out' ? 'caution-text' : undefined}>{why}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}
