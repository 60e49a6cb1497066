import { useRef, useState, type ClipboardEvent } from 'react';
import { readSpine } from '../../../core/arrow/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { MOST_ARROWS } from '../../../core/model/numberedArrow.ts';
import type { TableRead } from '../../../core/tables/index.ts';
import { Choice } from '../../design/index.ts';
import { EntrySheet, EntryTable, PasteTable, TableFates, withSpare } from '../../design/entry/index.ts';
import { now } from '../../state/clock.ts';
import { useUnits } from '../../state/useBench.ts';
import { useEdits } from '../../state/useEdits.ts';
import {
  allSound,
  arrowsFromTable,
  arrowsOf,
  blankArrow,
  dozenRows,
  measuredColumns,
  numberedTo,
  seenColumns,
  tended,
  type DozenRow,
} from './dozenRows.ts';
import { looksLikeMasses } from './massesPasted.ts';

const DOZEN = 12;
type Page = 'one' | 'four' | 'seen';

/** The numbered arrows of a set: weighed, spined and rolled on one page of the table, looked over on the other. */
export function DozenSheet({ bundle, onClose }: { bundle: Bundle; onClose(): void }) {
  const units = useUnits();
  const edit = useEdits();
  const { arrowSet } = bundle;
  // The rows say where their arrow stood when the sheet was opened; another window may have moved it since.
  const [opened] = useState(arrowSet.arrows);
  const [start] = useState(() => withSpare(dozenRows(opened, units, now()), blankArrow, MOST_ARROWS));
  const [rows, setRows] = useState<readonly DozenRow[]>(start);
  const [page, setPage] = useState<Page>(arrowSet.arrows.some(({ spines }) => spines.length > 1) ? 'four' : 'one');
  const [read, setRead] = useState<TableRead | null>(null);
  const table = useRef<HTMLDivElement>(null);

  const spine = (text: string) => readSpine(text, arrowSet.convention, units);
  const columns = measuredColumns(page === 'four', spine);
  const all = [...measuredColumns(true, spine), ...seenColumns];
  const { arrows, wrong, allSeen } = arrowsOf(rows, opened, all, units, now());
  const count = arrows.length;
  const onRead = (text: string) => {
    const table = arrowsFromTable(text, rows, columns, units);
    setRead(table.read);
    setRows(table.rows);
  };
  const onNumber = () => {
    const next = numberedTo(DOZEN, rows);
    setRows(next);
    // What comes next is the scale: the first arrow that was not weighed has the focus.
    const at = next.findIndex((row) => row.mass.text === '');
    requestAnimationFrame(() => table.current?.querySelector<HTMLElement>(`[data-cell="${at} 1"]`)?.focus());
  };
  const onNumbersPasted = (event: ClipboardEvent) => {
    const text = event.clipboardData.getData('text/plain');
    const amongNumbers = event.target instanceof HTMLElement && event.target.dataset['cell']?.endsWith(' 0') === true;
    if (page === 'seen' || !amongNumbers || !looksLikeMasses(text)) return;
    event.preventDefault();
    event.stopPropagation();
    onRead(text);
  };
  return (
    <EntrySheet
      title="Numbered arrows"
      wide
      keep={count === 0 ? 'Keep no arrows' : `Keep ${count} ${count === 1 ? 'arrow' : 'arrows'}`}
      changed={rows !== start}
      wrong={wrong}
      held={arrowSet.arrows}
      onKeep={() => edit.arrowSet('Numbered arrows', { arrows: [...arrows], ...(allSeen ? { lookedOver: now() } : {}) })}
      onClose={onClose}
    >
      {page === 'seen' && (
        <p className="note care">
          Look and feel along each shaft; the nock seated, uncracked and not loose. Carbon: eyes covered, bend it away from you,
          roll and twist it; any click or creak, and it is destroyed. Bent aluminium and cracked wood are not shot.
        </p>
      )}
      <Choice<Page>
        name="the table is for"
        value={page}
        options={[
          { value: 'one', text: 'mass, spine at one place, straightness' },
          { value: 'four', text: 'mass, spine at four places, straightness' },
          { value: 'seen', text: 'looking over and setting aside' },
        ]}
        onKeep={setPage}
        hint={
          page === 'seen'
            ? 'What nobody has looked at is not taken for sound.'
            : `Spine as on this set’s tester, ${arrowSet.convention}. Straightness as the whole swing of the gauge.`
        }
      />
      <div className="acts">
        {page === 'seen' ? (
          <button type="button" className="btn" onClick={() => setRows(allSound(rows))}>
            All looked over just now and sound
          </button>
        ) : (
          <button type="button" className="btn" onClick={onNumber}>
            Number 1 to {DOZEN}
          </button>
        )}
      </div>
      <div ref={table} onPasteCapture={onNumbersPasted}>
        <EntryTable
          name="Arrows"
          columns={page === 'seen' ? seenColumns : columns}
          rows={rows}
          blank={blankArrow}
          most={MOST_ARROWS}
          onChange={(next) => setRows((before) => withSpare(tended(next, before), blankArrow, MOST_ARROWS))}
          onPasted={setRead}
          rowName={(row, index) => (row.number.text === '' ? `row ${index + 1}` : `arrow ${row.number.text}`)}
          enter="down"
        />
      </div>
      <div hidden={page === 'seen'}>
        <PasteTable holds="number if there is one, mass, spine, straightness" onRead={onRead} />
      </div>
      <TableFates read={read} />
      <p className="hint">
        Enter goes down the column.{page === 'seen' ? '' : ' A column off the scale is pasted into the first cell under mass.'}{' '}
        Ctrl+Delete takes a row out.
      </p>
    </EntrySheet>
  );
}
