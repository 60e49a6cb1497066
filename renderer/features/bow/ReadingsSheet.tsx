import { useState } from 'react';
import { forceDrawOf } from '../../../core/bow/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { MOST_READINGS } from '../../../core/model/readings.ts';
import type { TableRead } from '../../../core/tables/index.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { Choice, Figure } from '../../design/index.ts';
import { EntrySheet, EntryTable, isBlank, PasteTable, TableFates, withSpare } from '../../design/entry/index.ts';
import { useUnits } from '../../state/useBench.ts';
import { useEdits } from '../../state/useEdits.ts';
import {
  blankReading,
  readingColumns,
  readingRows,
  readingsFromTable,
  readingsOf,
  type DrawDatum,
  type ReadingRow,
} from './readingRows.ts';

/** What was read off a bow scale, pair by pair: typed, pasted or out of a file, and kept as one Change. */
export function ReadingsSheet({ bundle, onClose }: { bundle: Bundle; onClose(): void }) {
  const units = useUnits();
  const edit = useEdits();
  const { bow, setup } = bundle;
  const [start] = useState(() => withSpare(readingRows(bow.forceDraw, units), blankReading, MOST_READINGS));
  const [rows, setRows] = useState<readonly ReadingRow[]>(start);
  const [datum, setDatum] = useState<DrawDatum>('AMO');
  const [letDown, setLetDown] = useState(bow.forceDraw.some(({ way }) => way === 'let-down'));
  const [startBrace] = useState(bow.forceDrawBrace ?? setup.settings.braceHeight);
  const [brace, setBrace] = useState(startBrace);
  const [read, setRead] = useState<TableRead | null>(null);

  const { readings, rowOf, wrong } = readingsOf(rows, datum, units);
  const drawn = forceDrawOf({ ...bundle, bow: { ...bow, forceDraw: [...readings], forceDrawBrace: brace } }, units);
  const flags = drawn.ok ? drawn.value.flags : [];
  const remarks = (row: number): readonly string[] => [
    ...new Set(flags.filter(({ index }) => rowOf[index] === row).map(({ sentence }) => sentence)),
  ];
  const [first] = readings;
  const count = readings.length;
  const change = (next: readonly ReadingRow[]) => {
    setRows(next);
    if (next.some((row) => row.down.text !== '')) setLetDown(true);
  };
  const onRead = (text: string) => {
    const table = readingsFromTable(text, units);
    setRead(table.read);
    change(withSpare([...rows.filter((row) => !isBlank(row, blankReading)), ...table.rows], blankReading, MOST_READINGS));
  };

  return (
    <EntrySheet
      title="Readings off the scale"
      keep={count === 0 ? 'Keep no readings' : `Keep ${count} ${count === 1 ? 'reading' : 'readings'}`}
      changed={rows !== start || brace !== startBrace || datum !== 'AMO'}
      wrong={wrong}
      held={[bow.forceDraw, bow.forceDrawBrace]}
      onKeep={() => edit.bow('Readings off the scale', { forceDraw: [...readings], forceDrawBrace: count === 0 ? null : brace })}
      onClose={onClose}
    >
      <p className="note care">
        With an arrow nocked, at the butt, let the string down slowly; never let it go. Stop at this archer’s own draw.
      </p>
      <Choice<DrawDatum>
        name="draws are read"
        value={datum}
        options={[
          { value: 'AMO', text: 'as AMO draws' },
          { value: 'grip', text: 'from the grip: nocking point to pivot' },
        ]}
        onKeep={setDatum}
        {...(datum === 'grip'
          ? {
              hint: `Kept as AMO draws, 1 3/4 in longer${first === undefined ? '' : `: the first as ${textQuantity(first.draw, 'length', units)}`}.`,
            }
          : {})}
      />
      <Choice
        name="letting down"
        value={letDown ? 'yes' : 'no'}
        options={[
          { value: 'no', text: 'not read' },
          { value: 'yes', text: 'read too, draw by draw' },
        ]}
        onKeep={(value) => setLetDown(value === 'yes' || rows.some((row) => row.down.text !== ''))}
      />
      <Figure
        measure="braceHeight"
        name="at a brace height of"
        value={brace}
        onKeep={setBrace}
        hint="The string as it stood on that day."
      />
      <EntryTable
        name="Readings"
        columns={readingColumns(letDown)}
        rows={rows}
        blank={blankReading}
        most={MOST_READINGS}
        onChange={change}
        pasted={readingColumns(true)}
        onPasted={setRead}
        remarks={remarks}
      />
      <PasteTable holds="draw, force, and letting down or which way, if it was read" onRead={onRead} />
      <TableFates read={read} />
      <p className="hint">
        Any unit may follow a number. Enter and the arrow keys move on, Ctrl+Delete takes a row out. Odd readings are kept, and
        said to be odd.
      </p>
    </EntrySheet>
  );
}
