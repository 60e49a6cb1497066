import { useDeferredValue, useMemo, useState } from 'react';
import { face as faceOf } from '../../../../core/group/index.ts';
import type { ShotGroup } from '../../../../core/model/group.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { readShots, type ShotsRead } from '../../../../core/tables/index.ts';
import { textQuantity, unitOf } from '../../../../core/units/index.ts';
import { Choice } from '../../../design/index.ts';
import { EntrySheet, EntryTable, PasteTable, TableFates, withSpare } from '../../../design/entry/index.ts';
import { useBenchApi, useUnits } from '../../../state/useBench.ts';
import { keepShots } from '../edits.ts';
import { originsOn } from './origins.ts';
import { ReadingAsked, type Asked } from './ReadingAsked.tsx';
import { ShotsPreview } from './ShotsPreview.tsx';
import { blankShot, MOST_TYPED, shotColumns, shotRows, shotsOf, type RowShot, type ShotRow } from './shotRows.ts';

/** What was understood of a line, in the person's own units: "15 mm across, −8 mm up". */
const placeText = ({ x, y }: { x: number; y: number }, units: UnitChoice): string =>
  `${textQuantity(x, 'setting', units)} across, ${textQuantity(y, 'setting', units)} up`;

/** The picture comes once the sheet is open. */
const nothing: readonly RowShot[] = [];

const shotsText = (count: number): string => `${count.toLocaleString('en-GB')} ${count === 1 ? 'shot' : 'shots'}`;

/** The shots of a group as a table: typed, mended, pasted or out of a file, seen on the face, and kept as one Change. */
export function ShotsSheet({ group, onClose }: { group: ShotGroup; onClose(): void }) {
  const units = useUnits();
  const bench = useBenchApi();
  // The shots as they were when the sheet was opened: what another window does meanwhile is told, not mixed in.
  const [opened] = useState(group.shots);
  const typed = opened.length <= MOST_TYPED;
  const [start] = useState(() => withSpare(typed ? shotRows(opened, units) : [], blankShot, MOST_TYPED));
  const [rows, setRows] = useState<readonly ShotRow[]>(start);
  const [text, setText] = useState<string | null>(null);
  const [instead, setInstead] = useState(false);
  const face = useMemo(() => faceOf(group.context.face), [group.context.face]);
  const origins = useMemo(() => originsOn(face, opened), [face, opened]);
  const [asked, setAsked] = useState<Asked>({ layout: null, unit: '', origin: 'centre', yGrows: 'up' });

  const table: ShotsRead | null = useMemo(() => {
    if (text === null) return null;
    const origin = origins.find(({ value }) => value === asked.origin)?.at ?? { x: 0, y: 0 };
    return readShots(text, { ...asked, origin }, units, instead ? [] : opened);
  }, [text, asked, origins, units, instead, opened]);
  const understood = useMemo(() => {
    const byLine = new Map(table?.shots.map((shot) => [shot.line, shot]));
    return (line: number) => {
      const shot = byLine.get(line);
      return shot === undefined ? null : placeText(shot, units);
    };
  }, [table, units]);
  const fromRows = useMemo(() => shotsOf(rows, units), [rows, units]);
  const shots = useMemo((): readonly RowShot[] => {
    const pasted = (table?.shots ?? []).map(({ x, y, arrow, end, leftOut }): RowShot => ({
      x,
      y,
      arrow,
      end,
      leftOut,
      id: null,
    }));
    if (instead && table !== null) return pasted;
    return [...(typed ? fromRows.shots : opened), ...pasted];
  }, [table, instead, typed, fromRows, opened]);
  const previewed = useDeferredValue(shots, nothing);
  const wrong = instead && table !== null ? null : fromRows.wrong;

  return (
    <EntrySheet
      title="Shots as a table"
      wide
      keep={shots.length > 0 ? `Keep ${shotsText(shots.length)}` : opened.length > 0 ? 'Remove every shot' : 'Keep the shots'}
      nothing={shots.length + opened.length === 0 && wrong === null}
      changed={rows !== start || table !== null}
      wrong={wrong}
      held={group.shots}
      onKeep={() =>
        keepShots(
          bench,
          group.id,
          'Shots as a table',
          shots,
          opened.map(({ id }) => id),
        )
      }
      onClose={onClose}
    >
      <div className="shots-sheet">
        <div className="shots-sheet-table">
          {typed ? (
            <EntryTable
              name="Shots"
              columns={shotColumns}
              rows={rows}
              blank={blankShot}
              most={MOST_TYPED}
              onChange={setRows}
              rowName={(row, index) => (row.arrow.text === '' ? `row ${index + 1}` : `arrow ${row.arrow.text}, row ${index + 1}`)}
            />
          ) : (
            <p className="note">
              {shotsText(opened.length)} are too many to type in. Save them as CSV, mend the file, and read it back in place of
              them.
            </p>
          )}
          <PasteTable holds="across and up; arrow and end where they were noted" onRead={setText} />
          {table !== null && (
            <>
              <Choice
                name="what was read"
                value={instead ? 'instead' : 'added'}
                options={[
                  { value: 'added', text: 'is added to the shots above' },
                  { value: 'instead', text: 'takes the place of all shots of this group' },
                ]}
                onKeep={(value) => setInstead(value === 'instead')}
              />
              <ReadingAsked
                asked={asked}
                found={table.layout}
                ownUnit={unitOf('setting', units)}
                origins={origins}
                onChange={setAsked}
              />
              <button type="button" className="link" onClick={() => setText(null)}>
                Drop what was pasted or read
              </button>
            </>
          )}
          <TableFates read={table?.read ?? null} understood={understood} />
        </div>
        <ShotsPreview face={face} shots={previewed} name={group.fletching} />
      </div>
      <p className="hint">
        Across is positive to the right, up is positive above the centre. Any unit may follow a number. Enter and the arrow keys
        move on, Ctrl+Delete takes a row out. A reason in the last column leaves the shot out of the figures.
      </p>
    </EntrySheet>
  );
}
